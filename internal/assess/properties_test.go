package assess

import (
	"context"
	"encoding/json"
	"fmt"
	"maps"
	"slices"
	"sort"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"railhead/api"
)

func asked(t *rapid.T, body string, parts Part) *api.Assessment {
	var req api.Request
	if err := json.Unmarshal([]byte(body), &req); err != nil {
		t.Fatalf("%v in %s", err, body)
	}
	out, faults := Assess(context.Background(), &req, parts)
	if len(faults) > 0 {
		t.Fatalf("refused: %+v\n%s", faults, body)
	}
	return out
}

// shape is what properties of heights need: thresholds of the advice take longer than
// all the rest.
const shape = Fit | Rails | Trims

// essence is what an answer says of each cabinet, rail and cut, whichever way
// round the wall is seen and however its readings were taken.
func essence(a *api.Assessment) []string {
	var out []string
	say := func(format string, args ...any) { out = append(out, fmt.Sprintf(format, args...)) }
	for _, f := range a.Fit {
		say("%s %s cure %s by %s", f.Cabinet, f.Verdict, f.Cure, f.LimitedBy)
		say("%s top %s margin %s", f.Cabinet, f.Top.MM, f.Margin.MM)
		say("%s after %s %s by %s", f.Cabinet, f.After.Verdict, f.After.Margin.MM, f.After.LimitedBy)
		if f.Hanging != nil {
			say("%s hangs %s %s", f.Cabinet, f.Hanging.Verdict, f.Hanging.Have.MM)
		}
		if f.Standing != nil {
			say("%s stands %s %s %s", f.Cabinet, f.Standing.Verdict, f.Standing.Need.MM, f.Standing.Have.MM)
		}
		say("%s findings %v", f.Cabinet, codes(f.Findings))
	}
	for _, r := range a.Rails {
		say("rail %s lower edge %s before %v findings %v", r.RowTop.MM, r.LowerEdge.MM, r.BeforeCut, codes(r.Findings))
	}
	for _, c := range a.Trims {
		say("trim %s line %s work %s most %s needed %v for %d", c.Overhead, c.CutLine.MM, c.Work, c.MostRemoved.MM, c.Needed, len(c.Cabinets))
	}
	say("summary %s", a.Summary.Verdict)
	for _, r := range a.Rows {
		say("row %s kept %s %s removed %s %s", r.Top.MM, r.Kept.Margin.MM, r.Kept.Verdict, r.Removed.Margin.MM, r.Removed.Verdict)
	}
	for group, o := range a.Applied {
		say("%s is %s by %s", group, o.Option, o.By)
	}
	sort.Strings(out)
	return out
}

func codes(in []api.Finding) []string {
	out := []string{}
	for _, f := range in {
		out = append(out, f.Code)
	}
	sort.Strings(out)
	return out
}

func same(t *rapid.T, a, b []string) {
	if slices.Equal(a, b) {
		return
	}
	var lines []string
	for _, l := range a {
		if !slices.Contains(b, l) {
			lines = append(lines, "- "+l)
		}
	}
	for _, l := range b {
		if !slices.Contains(a, l) {
			lines = append(lines, "+ "+l)
		}
	}
	t.Fatalf("the answers differ:\n%s", strings.Join(lines, "\n"))
}

var inMM = writing{units: "mm"}

func TestMirroringTheWallMirrorsTheAnswer(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m := anyRoom(t)
		same(t, essence(asked(t, m.body(inMM), shape)), essence(asked(t, m.mirrored().body(inMM), shape)))
	})
}

func TestChangingUnitsChangesNoExactValue(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m := anyRoom(t)
		want := exactValues(t, asked(t, m.body(inMM), All))
		for _, u := range []string{"cm", "in"} {
			if got := exactValues(t, asked(t, m.body(writing{units: u}), All)); got != want {
				t.Fatalf("in %s:\n%s\nin mm:\n%s", u, got, want)
			}
		}
	})
}

// exactValues is an answer without what is written in the request's units.
func exactValues(t *rapid.T, a *api.Assessment) string {
	raw, err := json.Marshal(a)
	if err != nil {
		t.Fatal(err)
	}
	var tree any
	if err := json.Unmarshal(raw, &tree); err != nil {
		t.Fatal(err)
	}
	strip(tree)
	out, _ := json.MarshalIndent(tree, "", " ")
	return string(out)
}

func strip(v any) {
	switch v := v.(type) {
	case map[string]any:
		for _, name := range []string{"tape", "tape_off", "says", "because", "asks", "params", "value", "row_shift"} {
			delete(v, name)
		}
		for _, m := range v {
			strip(m)
		}
	case []any:
		for _, m := range v {
			strip(m)
		}
	}
}

func TestRaisingTheCeilingNeverWorsensAVerdict(t *testing.T) {
	rank := map[string]int{"fits": 0, "snug": 1, "needs_trim": 2, "blocked": 3}
	rapid.Check(t, func(t *rapid.T) {
		m := anyRoom(t)
		before := asked(t, m.body(inMM), shape)
		up := rapid.IntRange(1, 500).Draw(t, "raised by")
		m.ceiling = slices.Clone(m.ceiling)
		for i := range m.ceiling {
			m.ceiling[i].level += up
		}
		after := asked(t, m.body(inMM), shape)
		for i, f := range after.Fit {
			was := before.Fit[i]
			same := maps.Equal(before.Applied, after.Applied) // else other work is done, for its own reasons
			if rank[f.Verdict] > rank[was.Verdict] || rank[f.WorstVerdict] > rank[was.WorstVerdict] || same && rank[f.After.Verdict] > rank[was.After.Verdict] {
				t.Fatalf("%s was %s/%s/%s and is %s/%s/%s", f.Cabinet, was.Verdict, was.WorstVerdict, was.After.Verdict, f.Verdict, f.WorstVerdict, f.After.Verdict)
			}
		}
	})
}

func TestAddingACollinearPointChangesNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m := anyRoom(t)
		want := essence(asked(t, m.body(inMM), shape))
		m.floor, m.ceiling = withMidpoints(m.floor), withMidpoints(m.ceiling)
		for i := range m.overheads {
			m.overheads[i].underside = withMidpoints(m.overheads[i].underside)
		}
		same(t, want, essence(asked(t, m.body(inMM), shape)))
	})
}

// withMidpoints adds the middle of each stretch where it is a whole tenth.
func withMidpoints(in []spot) []spot {
	var out []spot
	for i, s := range in {
		if i > 0 {
			p := in[i-1]
			if s.at > p.at && (s.at+p.at)%2 == 0 && (s.level+p.level)%2 == 0 {
				out = append(out, spot{(s.at + p.at) / 2, (s.level + p.level) / 2})
			}
		}
		out = append(out, s)
	}
	return out
}

func TestMovingTheLaserLineChangesNoHeight(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m := anyRoom(t)
		want := essence(asked(t, m.body(inMM), shape))
		moved := writing{units: "mm", laser: rapid.IntRange(-9000, 9000).Draw(t, "moved by")}
		same(t, want, essence(asked(t, m.body(moved), shape)))
		same(t, want, essence(asked(t, m.body(writing{units: "mm", heights: true}), shape)))
	})
}

func TestEveryCutLineLiesAboveTheTopsItServes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := asked(t, anyRoom(t).body(inMM), shape)
		top := map[string]string{}
		for _, f := range a.Fit {
			top[f.Cabinet] = string(f.Top.MM)
		}
		for _, c := range a.Trims {
			for _, id := range c.Cabinets {
				if number(t, string(c.CutLine.MM)) < number(t, top[id]) {
					t.Fatalf("cut line %s under the top of %s at %s", c.CutLine.MM, id, top[id])
				}
			}
		}
	})
}

func number(t *rapid.T, text string) float64 {
	var out float64
	if err := json.Unmarshal([]byte(text), &out); err != nil {
		t.Fatal(err)
	}
	return out
}

func TestFocusedPathsGiveTheSameParts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		body := anyRoom(t).body(inMM)
		whole := asked(t, body, All)
		parts := asked(t, body, Fit)
		parts.Rails, parts.RailStock = asked(t, body, Rails).Rails, asked(t, body, Rails).RailStock
		parts.Trims = asked(t, body, Trims).Trims
		parts.Decisions = asked(t, body, Decisions).Decisions
		parts.Estimate = asked(t, body, Estimate).Estimate
		want, _ := json.Marshal(whole)
		got, _ := json.Marshal(parts)
		if string(want) != string(got) {
			t.Fatalf("whole:\n%s\nin parts:\n%s", want, got)
		}
	})
}
