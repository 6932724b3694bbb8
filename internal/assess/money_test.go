package assess

import (
	"context"
	"encoding/json"
	"flag"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"railhead/api"
	"railhead/internal/estimate"
)

// tester is a test or a property.
type tester interface {
	Helper()
	Fatal(args ...any)
	Fatalf(format string, args ...any)
}

// few checks a property that assesses many requests for each room on fewer rooms than
// usual, unless the command line says how many.
func few(t *testing.T, rooms string, property func(*rapid.T)) {
	t.Helper()
	checks := flag.Lookup("rapid.checks")
	if checks.Value.String() == checks.DefValue {
		if err := checks.Value.Set(rooms); err != nil {
			t.Fatal(err)
		}
		defer func() { _ = checks.Value.Set(checks.DefValue) }()
	}
	rapid.Check(t, property)
}

// tree reads a body into maps and lists; written is its text again.
func tree(t tester, body string) map[string]any {
	t.Helper()
	var out map[string]any
	dec := json.NewDecoder(strings.NewReader(body))
	dec.UseNumber()
	if err := dec.Decode(&out); err != nil {
		t.Fatal(err)
	}
	return out
}

func written(t tester, v any) string {
	t.Helper()
	out, err := json.Marshal(v)
	if err != nil {
		t.Fatal(err)
	}
	return string(out)
}

// put sets one member of a body by its pointer (RFC 6901), with the objects on the
// way to it.
func put(t tester, body, pointer string, value any) string {
	t.Helper()
	root := tree(t, body)
	var at any = root
	steps := strings.Split(pointer, "/")[1:]
	for i, step := range steps {
		last := i == len(steps)-1
		switch here := at.(type) {
		case map[string]any:
			if last {
				here[step] = value
			} else if here[step] == nil {
				here[step] = map[string]any{}
			}
			at = here[step]
		case []any:
			n, err := strconv.Atoi(step)
			if err != nil || n >= len(here) || last {
				t.Fatalf("%s leads nowhere at %s", pointer, step)
			}
			at = here[n]
		default:
			t.Fatalf("%s leads nowhere at %s", pointer, step)
		}
	}
	return written(t, root)
}

// get is a member of a body; nil where there is none.
func get(t tester, body, pointer string) any {
	t.Helper()
	var at any = tree(t, body)
	for _, step := range strings.Split(pointer, "/")[1:] {
		switch here := at.(type) {
		case map[string]any:
			at = here[step]
		case []any:
			n, _ := strconv.Atoi(step)
			at = here[n]
		default:
			return nil
		}
	}
	return at
}

// assessed answers a body that must be good.
func assessed(t tester, body string, parts Part) *api.Assessment {
	t.Helper()
	out, faults := Assess(context.Background(), parsed(t, body), parts)
	if len(faults) > 0 {
		t.Fatalf("refused: %+v\n%s", faults, body)
	}
	return out
}

func parsed(t tester, body string) *api.Request {
	t.Helper()
	var req api.Request
	if err := json.Unmarshal([]byte(body), &req); err != nil {
		t.Fatalf("%v in %s", err, body)
	}
	return &req
}

// advised is the advice for a body, without the thresholds that a whole answer works
// out beside it.
func advised(t tester, body string) map[string]string {
	t.Helper()
	c, faults := resolved(context.Background(), parsed(t, body))
	if len(faults) > 0 {
		t.Fatalf("refused: %+v\n%s", faults, body)
	}
	out := map[string]string{}
	for _, a := range compute(context.Background(), c, 0).decisions.Advice {
		out[a.Group] = a.Option.String()
	}
	return out
}

// richRoom is a random room with what money hangs on: overheads side by side over a
// row of cabinets that mostly reach into them, as one thing or several, with what is
// inside more or less known, under a ceiling that a taller row fits or not, and
// worths and rates given or not.
func richRoom(t *rapid.T) string {
	body := richModel(t).body(inMM)
	overheads, _ := get(t, body, "/survey/walls/0/overheads").([]any)
	for i := range overheads {
		at := "/survey/walls/0/overheads/" + strconv.Itoa(i)
		body = put(t, body, at+"/inside", richInside(t, i))
		if i > 0 && rapid.IntRange(0, 4).Draw(t, "part of") == 4 {
			body = put(t, body, at+"/part_of", "one")
			body = put(t, body, "/survey/walls/0/overheads/0/part_of", "one")
		}
		if rapid.IntRange(0, 9).Draw(t, "behind") == 9 {
			body = put(t, body, at+"/behind", map[string]any{"ceiling": rapid.SampledFrom([]string{"continues", "missing"}).Draw(t, "ceiling behind")})
		}
	}
	return put(t, body, "/money", richMoney(t))
}

func richModel(t *rapid.T) model {
	m := model{length: 10 * rapid.IntRange(1200, 4200).Draw(t, "length")}
	m.floor = profile(t, "floor", 0, m.length, -12005, -12000)
	high := rapid.SampledFrom([]int{11604, 13000, 11720, 11600, 10500, 9800}).Draw(t, "ceiling")
	m.ceiling = profile(t, "ceiling", 0, m.length, high, high+300)
	from := 0
	for i := range rapid.IntRange(1, 3).Draw(t, "overheads") {
		if from+1000 > m.length {
			break
		}
		o := anyOverhead(t, i, m.length)
		o.from, o.to = from, min(m.length, from+10*rapid.SampledFrom([]int{300, 750, 1500, 4200}).Draw(t, "long"))
		o.depth = 10 * rapid.SampledFrom([]int{330, 380}).Draw(t, "deep")
		o.underside = profile(t, "low", o.from, o.to, 8800, 9180)
		if rapid.IntRange(0, 4).Draw(t, "other kind") < 4 {
			o.kind = "soffit"
		}
		if rapid.IntRange(0, 5).Draw(t, "hard") < 5 {
			o.structure = "framed"
		}
		m.overheads = append(m.overheads, o)
		from = o.to
	}
	at := 0
	for i := range rapid.IntRange(1, 6).Draw(t, "row") {
		c := cabinetModel{id: "c" + strconv.Itoa(i), kind: "wall", opens: "left", from: at, height: 6600}
		c.width = 10 * rapid.SampledFrom([]int{300, 600, 800}).Draw(t, "wide")
		switch rapid.IntRange(0, 9).Draw(t, "odd one") {
		case 8:
			c.height = 5000
		case 9:
			c.kind, c.height = "tall", 20000
		}
		if at += c.width; at > m.length {
			break
		}
		m.cabinets = append(m.cabinets, c)
	}
	return m
}

func richInside(t *rapid.T, i int) map[string]any {
	out := map[string]any{"looked": rapid.SampledFrom([]string{"no", "no", "probe_hole", "opened"}).Draw(t, "looked")}
	if i > 0 && rapid.IntRange(0, 3).Draw(t, "shares") == 3 {
		out["shares_with"] = "o0"
	}
	if rapid.IntRange(0, 2).Draw(t, "priors") == 2 {
		empty := rapid.IntRange(0, 90).Draw(t, "empty")
		few := rapid.IntRange(0, 95-empty).Draw(t, "few")
		out["priors"] = map[string]any{
			"empty": hundredths(empty), "few_wires": hundredths(few), "pipe_or_duct": hundredths(100 - empty - few),
		}
	}
	return out
}

func hundredths(n int) string { return decimal(n, 2) }

// richMoney is a currency of none, two or three places, with worths and rates for
// some things.
func richMoney(t *rapid.T) map[string]any {
	currency := rapid.SampledFrom([]string{"EUR", "EUR", "USD", "JPY", "KWD"}).Draw(t, "currency")
	size := map[string]int{"JPY": 160, "KWD": 1}[currency]
	amount := func(name string, most int) string {
		hundredth := rapid.SampledFrom([]int{70, 100, 30, 7, 0}).Draw(t, name)
		return hundredths(max(1, size) * (most*hundredth + rapid.IntRange(0, most).Draw(t, name+" more")))
	}
	out := map[string]any{"currency": currency}
	for _, worth := range []struct {
		name string
		most int
	}{{"to_ceiling_worth", 3000}, {"storage_per_litre", 5}, {"even_line_worth", 300}, {"shorter_cabinet", 200}} {
		if rapid.Bool().Draw(t, worth.name+" given") {
			out[worth.name] = amount(worth.name, worth.most)
		}
	}
	rates := map[string]any{}
	for range rapid.IntRange(0, 5).Draw(t, "rates") {
		code := rapid.SampledFrom(estimate.Codes()).Draw(t, "code")
		switch rapid.IntRange(0, 2).Draw(t, "form") {
		case 0:
			rates[code] = amount("rate", 60)
			if strings.HasPrefix(code, "hours.") {
				rates[code] = hundredths(rapid.IntRange(0, 6000).Draw(t, "hours"))
			}
		default:
			low, more, most := rapid.IntRange(0, 4000).Draw(t, "low"), rapid.IntRange(0, 4000).Draw(t, "more"), rapid.IntRange(0, 4000).Draw(t, "most")
			rate := map[string]any{"low": hundredths(low), "likely": hundredths(low + more), "high": hundredths(low + more + most)}
			if !strings.HasPrefix(code, "hours.") && !strings.HasPrefix(code, "worth.") {
				rate["tax_percent"] = rapid.SampledFrom([]string{"0", "7", "19", "8.875"}).Draw(t, "tax")
			}
			rates[code] = rate
		}
	}
	out["rates"] = rates
	return out
}
