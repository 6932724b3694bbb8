package contents

import (
	"reflect"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"railhead/api"
	"railhead/internal/belief"
	"railhead/internal/rules"
	"railhead/internal/survey"
)

// Every hint of the wire moves the odds.
func TestEveryHintCounts(t *testing.T) {
	field, _ := reflect.TypeFor[api.Inside]().FieldByName("Hints")
	names := strings.Split(field.Tag.Get("enum"), ",")
	if len(names) != len(hints) {
		t.Errorf("%d hints on the wire, %d count", len(names), len(hints))
	}
	plain, _ := one(t, corner(over("s", 0, 0, 3000)))
	for _, name := range names {
		if odds, _ := one(t, corner(over("s", 0, 0, 3000, hinted(name)))); Text(odds.Now) == Text(plain.Now) {
			t.Errorf("%s moves nothing", name)
		}
	}
}

// Every assumption is in the catalogue as what it is, tells its value, and says
// what replaces it.
func TestAssumptionsSayWhatReplacesThem(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := anyKitchen(t)
		lookInto(t, k)
		findIn(t, k)
		c := Clusters(k)[0]
		odds := Of(k, c)
		for _, a := range odds.Assumptions(c) {
			rule, ok := rules.Of(a.Code)
			if !ok || rule.Status != rules.FromMemory && rule.Status != rules.CommonPractice {
				t.Fatalf("%s: %+v", a.Code, rule)
			}
			if !strings.Contains(rule.Says, "{value}") || a.Value.Name != "value" || a.Value.Length == nil && a.Value.Text == "" {
				t.Fatalf("%s tells no value: %q, %+v", a.Code, rule.Says, a.Value)
			}
			if a.Override == "" {
				t.Fatalf("nothing replaces %s", a.Code)
			}
		}
		for _, s := range odds.Steps {
			if _, ok := rules.Of(s.Code); !ok {
				t.Fatalf("step %s has no entry", s.Code)
			}
		}
	})
}

func TestWhatReplacesWhat(t *testing.T) {
	k := corner(over("s", 0, 0, 3000, hinted("bath_above"), looked(survey.ProbeHole, 0, 600), found(survey.Wire)))
	k.Room.Built = 0
	odds, c := one(t, k)
	var got []string
	for _, a := range odds.Assumptions(c) {
		got = append(got, strings.TrimPrefix(a.Code, "assume.")+" "+strings.TrimPrefix(a.Override, "/survey/walls/0/overheads/s"))
	}
	want := []string{
		"contents.kind_soffit /inside/priors", "contents.age_unknown /survey/built", "contents.hint_bath_above /inside/priors",
		"contents.seen_few_wires /inside/seen", "behind.soffit /behind/ceiling",
	}
	if strings.Join(got, "\n") != strings.Join(want, "\n") {
		t.Errorf("got\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
}

// The words of the catalogue tell the limits that the tables use.
func TestWordsTellTheLimits(t *testing.T) {
	metres := func(l interface{ MM() string }) string { return l.MM() }
	for code, limit := range map[string]string{
		bathNear.code: metres(bathWithin), bathFar.code: metres(bathBeyond), hoodNear.code: metres(hoodWithin), panelNear.code: metres(panelWithin),
	} {
		rule, _ := rules.Of(code)
		told := map[string]string{"600": "0.6 m", "1500": "1.5 m", "4000": "4 m"}[limit]
		if told == "" || !strings.Contains(rule.Says, told) {
			t.Errorf("%s says %q, the limit is %s", code, rule.Says, limit)
		}
	}
	for _, r := range []row{ageOld, ageMiddle} {
		if rule, _ := rules.Of(r.code); !strings.Contains(rule.Says, "1950") {
			t.Errorf("%s does not tell its year: %s", r.code, rule.Says)
		}
	}
	if rule, _ := rules.Of(ageLate.code); !strings.Contains(rule.Says, "1990") {
		t.Errorf("%s does not tell its year: %s", ageLate.code, rule.Says)
	}
}

func TestWhatIsBehind(t *testing.T) {
	for _, c := range []struct {
		name    string
		ceiling survey.Tri
		missing belief.Chance
		assumed bool
	}{
		{"the board goes on", survey.Yes, 0, false},
		{"there is none", survey.No, belief.Certain, false},
		{"nobody has seen it", survey.Unknown, belief.Certain / 2, true},
	} {
		o := over("s", 0, 0, 3000, func(o *survey.Overhead) { o.Behind.Ceiling = c.ceiling })
		if missing, assumed := BehindMissing(&o); missing != c.missing || assumed != c.assumed {
			t.Errorf("%s: missing with %d, assumed %v", c.name, missing, assumed)
		}
	}
}

// The tables are odds, and every factor counts.
func TestTablesAreSound(t *testing.T) {
	rows := append([]row{framedBeam}, kindRows[:]...)
	for _, r := range rows {
		var whole Factor
		for _, f := range r.factors {
			whole += f
		}
		if whole != Same {
			t.Errorf("%s adds up to %s", r.code, whole.Text())
		}
	}
	for _, h := range hints {
		for s, f := range h.factors {
			if f <= 0 {
				t.Errorf("%s rules %s out: nothing is ruled out unseen", h.code, State(s))
			}
		}
	}
}
