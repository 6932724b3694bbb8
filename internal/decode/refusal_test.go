package decode

import (
	"encoding/json"
	"reflect"
	"slices"
	"strings"
	"testing"

	"railhead/api"
	"railhead/openapi"
)

func codes(faults []api.Fault) (all []string) {
	for _, f := range faults {
		all = append(all, f.Code+" "+f.Pointer)
	}
	return all
}

func TestAllErrorsComeAtOnceAndInOrder(t *testing.T) {
	bad := `{"survey": {"built": 12, "walls": [
		{"id": "a b", "length": "3 yards", "floor": [{"at": 0, "down": 1, "up": 2}], "ceiling": [], "studs": {"spacing": 400}},
		{"id": "w", "length": 1, "floor": [{"at": 0, "above_floor": 1}], "ceiling": [{"at": 0, "up": null}, {"at": 1, "up": 2, "up": 3}]}]},
		"system": {"legs": 1, "Fit_Gap": 2}, "choices": {"s": {"option": "trim", "spans": []}}, "units": "furlong"}`
	want := []string{
		"body.relation.excluded /choices/s/spans",
		"body.value.too_small /survey/built",
		"body.list.too_short /survey/walls/0/ceiling",
		"body.relation.one_of /survey/walls/0/floor/0",
		"body.value.pattern /survey/walls/0/id",
		"body.value.pattern /survey/walls/0/length",
		"body.relation.required /survey/walls/0/studs/first",
		"body.value.null /survey/walls/1/ceiling/0/up",
		"body.member.duplicate /survey/walls/1/ceiling/1/up",
		"body.relation.excluded /survey/walls/1/floor/0/above_floor",
		"body.member.unknown /system/Fit_Gap",
		"body.member.missing /system/fit_gap",
		"body.value.not_allowed /units",
	}
	_, refusal := decoder(t).Decode([]byte(bad))
	got := codes(refusal.Faults)
	if !slices.Equal(got, want) {
		t.Errorf("got\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
	_, again := decoder(t).Decode([]byte(bad))
	if !reflect.DeepEqual(again.Faults, refusal.Faults) {
		t.Error("the same body is refused in another way the second time")
	}
}

func TestWhatFollowsFromAnErrorIsNotListed(t *testing.T) {
	r := &Refusal{Faults: []api.Fault{{Code: "a", Pointer: "/x/1"}}, holes: []hole{{"/y/0/length", true}, {"/y/2/says", false}}}
	r.Add([]api.Fault{
		{Code: "b", Pointer: "/x/1/at"},     // below an error
		{Code: "c", Pointer: "/y/0/floor"},  // beside a hole
		{Code: "d", Pointer: "/y"},          // about what holds the hole
		{Code: "e", Pointer: "/x/10"},       // of its own
		{Code: "f", Pointer: "/x/2"},        // of its own
		{Code: "g", Pointer: "/y/1/length"}, // of its own
		{Code: "h", Pointer: "/y/2/length"}, // beside a hole that nothing needs
	})
	want := []string{"a /x/1", "f /x/2", "e /x/10", "g /y/1/length", "h /y/2/length"}
	if got := codes(r.Faults); !slices.Equal(got, want) {
		t.Errorf("got %v, want %v", got, want)
	}
}

// Errors repeat nothing of the body but the names in pointers, and no Go names.
func TestErrorsDoNotEchoTheBody(t *testing.T) {
	const secret = "Zq7secret"
	d := decoder(t)
	for _, c := range changes {
		data := strings.ReplaceAll(string(c.apply(t)), "ghost", secret)
		data = strings.Replace(data, `"fit_gap": 2`, `"fit_gap": "`+secret+`"`, 1)
		_, refusal := d.Decode([]byte(data))
		for _, f := range refusal.Faults {
			text, err := json.Marshal(f)
			if err != nil {
				t.Fatal(err)
			}
			for _, word := range []string{secret, "api.", "Request", "Go ", "json:", "struct", "unmarshal", "InlineSystem", "AirflowUnit"} {
				if strings.Contains(string(text), word) {
					t.Errorf("%s: %s holds %q", c.name, text, word)
				}
			}
		}
	}
}

func TestLikelyNamesAreSuggested(t *testing.T) {
	_, refusal := decoder(t).Decode([]byte(strings.Replace(string(body(t, "full.json")), `"joins_next"`, `"joinsNext"`, 1)))
	if got := refusal.Faults[0].Params["did_you_mean"]; got != "joins_next" {
		t.Errorf("suggested %q", got)
	}
}

// Every pattern of a request has words of its own, so that nobody is shown a regular expression.
func TestEveryPatternHasWords(t *testing.T) {
	var contract any
	if err := json.Unmarshal(openapi.JSON, &contract); err != nil {
		t.Fatal(err)
	}
	eachMember(contract, "pattern", func(value any) {
		pattern, ok := value.(string)
		if _, known := patternForms[pattern]; ok && !known {
			t.Errorf("no words for %s", pattern)
		}
	})
}

func eachMember(tree any, name string, visit func(any)) {
	switch at := tree.(type) {
	case map[string]any:
		for key, value := range at {
			if key == name {
				visit(value)
			}
			eachMember(value, name, visit)
		}
	case []any:
		for _, value := range at {
			eachMember(value, name, visit)
		}
	}
}

func TestHostileBodiesAreRefusedWithFewErrors(t *testing.T) {
	d := decoder(t)
	const size = 1 << 20
	for name, text := range map[string]string{
		"a list of numbers":       `{"survey":{"walls":[` + strings.Repeat("1,", size/2) + `1]}}`,
		"a list of objects":       `{"survey":{"walls":[` + strings.Repeat("{},", size/3) + `{}]}}`,
		"one unknown name":        `{` + strings.Repeat(`"x":1,`, size/6) + `"y":1}`,
		"long names":              `{"` + strings.Repeat("x", size/2) + `":1}`,
		"many exponents":          `{"survey":{"built":1e999999,"lasers":[` + strings.Repeat("1e999999,", size/9) + `1]}}`,
		"many choices":            `{"choices":{` + strings.Repeat(`"a b":1,`, size/8) + `"c":1}}`,
		"a long text":             `{"units":"` + strings.Repeat("m", size) + `"}`,
		"a long number":           `{"survey":{"built":` + strings.Repeat("1", size) + `}}`,
		"a long length":           `{"tape":"` + strings.Repeat("1", size) + ` mm"}`,
		"points that say nothing": manyPoints(),
		"escapes in a pointer":    `{"choices":{"` + strings.Repeat("~/", 90) + `":1}}`,
	} {
		_, refusal := d.Decode([]byte(text))
		if refusal == nil {
			t.Errorf("%s: accepted", name)
			continue
		}
		answer, err := json.Marshal(refusal.Faults)
		if err != nil || len(refusal.Faults) > 2*enoughFaults || len(answer) > size {
			t.Errorf("%s: %d errors in %d bytes, %v", name, len(refusal.Faults), len(answer), err)
		}
	}
}

func manyPoints() string {
	points := `[` + strings.Repeat(`{"at":1},`, 999) + `{"at":1}]`
	wall := `{"id":"w","length":1,"floor":` + points + `,"ceiling":` + points + `}`
	return `{"units":"mm","system":"s","survey":{"walls":[` + strings.Repeat(wall+",", 49) + wall + `]}}`
}

func TestWhatOnlyTheContractTakesIsRefusedAllTheSame(t *testing.T) {
	d, err := New([]byte(`{"components": {"schemas": {"Request": {"type": "object", "properties": {"later": {"type": "number"}}}}}}`))
	if err != nil {
		t.Fatal(err)
	}
	if _, refusal := d.Decode([]byte(`{"later": 1}`)); refusal == nil || codes(refusal.Faults)[0] != CodeUnreadable+" " {
		t.Errorf("%v", refusal)
	}
	if _, err := New([]byte(`{`)); err == nil {
		t.Error("a contract that is no JSON was taken")
	}
}
