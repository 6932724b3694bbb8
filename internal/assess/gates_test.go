package assess

import (
	"slices"
	"strings"
	"testing"

	"railhead/api"
)

// priceless is the bare room, seen empty, with a client to whom going up to the
// ceiling is worth 100 000.
func priceless(t tester, edits map[string]any) *api.Assessment {
	t.Helper()
	all := map[string]any{"/money/to_ceiling_worth": "100000", s0 + "/inside": map[string]any{"looked": "opened"}}
	for pointer, value := range edits {
		all[pointer] = value
	}
	return assessed(t, bare(t, all), All)
}

func holds(kind, movable string) map[string]any {
	return map[string]any{"looked": "opened", "services": []any{map[string]any{
		"kind": kind, "from": 100, "to": 300, "underside": map[string]any{"height": 2300}, "movable": movable,
	}}}
}

// No price overrides what only the licensed trade can clear, nor what nobody can: it
// stays, and each way to take it down tells the gate and who may settle it. 29 CFR
// 1926.1101: surfacing in buildings of 1980 or older (F); 40 CFR 745.83: housing built
// before 1978, in which taking painted parts down is never minor repair (F). That gas,
// sprinklers and what bears are for their own trades is common practice, no source.
func TestNoPriceOverridesAGate(t *testing.T) {
	old := func(built int, more map[string]any) map[string]any {
		out := map[string]any{"/survey/built": built, "/survey/code_set": "us_irc"}
		for pointer, value := range more {
			out[pointer] = value
		}
		return out
	}
	for name, c := range map[string]struct {
		edits     map[string]any
		gate, who string
	}{
		"a gas line":                 {map[string]any{s0 + "/inside": holds("gas", "with_work")}, "gate.service.gas", "gas"},
		"a sprinkler line":           {map[string]any{s0 + "/inside": holds("sprinkler", "with_work")}, "gate.service.sprinkler", "sprinkler"},
		"a sprinkler head shows":     {map[string]any{s0 + "/inside/hints": []any{"sprinkler_head"}}, "gate.service.sprinkler", "sprinkler"},
		"it bears":                   {map[string]any{s0 + "/structure": "bearing"}, "gate.structure.bearing", "engineer"},
		"it bears, to be cut":        {map[string]any{s0 + "/structure": "bearing", s0 + "/may_cut": "yes"}, "gate.structure.bearing_confirm", "engineer"},
		"nobody knows if it bears":   {map[string]any{s0 + "/structure": "unknown"}, "gate.structure.unknown", "engineer"},
		"a joist runs through":       {map[string]any{s0 + "/inside": holds("structure", "no")}, "gate.structure.inside", "engineer"},
		"a stack that stays":         {map[string]any{s0 + "/inside": holds("pipe", "no")}, "gate.service.immovable", ""},
		"texture of 1980":            {old(1980, map[string]any{s0 + "/textured": "yes"}), "gate.asbestos.presumed", "asbestos"},
		"paint of 1977":              {old(1977, map[string]any{s0 + "/painted": "yes"}), "gate.lead.demolition", "lead"},
		"a local rule on paint":      {old(1990, map[string]any{s0 + "/painted": "yes", "/survey/local_rules": map[string]any{"lead_before": 1992}}), "gate.lead.local_rule", "lead"},
		"a local rule on asbestos":   {old(1990, map[string]any{s0 + "/textured": "yes", "/survey/local_rules": map[string]any{"asbestos_to": 1993}}), "gate.asbestos.local_rule", "asbestos"},
		"the survey says not to cut": {map[string]any{s0 + "/may_cut": "no"}, "gate.cut.said_no", ""},
	} {
		t.Run(name, func(t *testing.T) {
			a := priceless(t, c.edits)
			if a.Decisions.Room.Advice["s"] != "keep" || a.Applied["s"].Option != "keep" || a.Estimate.Total.Mean != "0.00" {
				t.Fatalf("advised %v, applied %v for %s", a.Decisions.Room.Advice, a.Applied, a.Estimate.Total.Mean)
			}
			for _, o := range a.Decisions.Overheads[0].Options {
				if o.Option == "keep" || o.Option == "trim" || o.Option == "open_part" {
					continue
				}
				at := slices.IndexFunc(o.Gates, func(g api.Gate) bool { return g.Code == c.gate })
				if at < 0 || !strings.Contains(o.Gates[at].Who, c.who) || c.who != "" && o.Gates[at].Who == "" {
					t.Errorf("%s: gates %+v, want %s for %q", o.Option, o.Gates, c.gate, c.who)
				}
			}
			for _, f := range a.Decisions.Room.Flips {
				if strings.HasPrefix(f.Pointer, "/money/") {
					t.Errorf("a price flips it: %+v", f)
				}
			}
		})
	}
}

// Without any of that, and once it was tested and cleared, the same wish is granted.
func TestWithoutAGateThePriceCounts(t *testing.T) {
	for name, edits := range map[string]map[string]any{
		"nothing in the way":      nil,
		"paint of 1978":           {"/survey/built": 1978, "/survey/code_set": "us_irc", s0 + "/painted": "yes"},
		"texture of 1981":         {"/survey/built": 1981, "/survey/code_set": "us_irc", s0 + "/textured": "yes"},
		"paint of 1977, cleared":  {"/survey/built": 1977, "/survey/code_set": "us_irc", s0 + "/painted": "yes", "/survey/cleared": map[string]any{"lead": true}},
		"texture of 1970, tested": {"/survey/built": 1970, "/survey/code_set": "us_irc", s0 + "/textured": "yes", "/survey/cleared": map[string]any{"asbestos": true, "lead": true}},
		"wires":                   {s0 + "/inside": holds("cable", "easily")},
	} {
		if got := priceless(t, edits).Decisions.Room.Advice["s"]; got != "remove_taller" {
			t.Errorf("%s: advised %s", name, got)
		}
	}
}

// 40 CFR 745.83 (F): up to 6 ft² in a room is minor repair. A cut of 22 mm into a
// painted soffit takes its underside and a strip of its face: with 24 in - 22 mm of
// depth, 24 in × 36 in = 6.000 ft² are not over, and 24 in × 37 in = 6.167 ft² are (C).
// Taking it down never is minor, whatever it is worth.
func TestSixSquareFeetAtAnyPrice(t *testing.T) {
	for name, c := range map[string]struct {
		long, advice, by string
		gates            []string
	}{
		"24 in by 36 in": {"36 in", "trim", "advice", nil},
		"24 in by 37 in": {"37 in", "keep", "default", []string{"gate.lead.beyond_minor"}},
	} {
		t.Run(name, func(t *testing.T) {
			a := priceless(t, map[string]any{
				"/survey/built": 1977, "/survey/code_set": "us_irc", s0 + "/painted": "yes", "/survey/walls/0/length": c.long, s0 + "/to": c.long,
				s0 + "/depth": "587.6 mm", s0 + "/underside": []any{map[string]any{"at": 0, "height": 2100}},
				"/plan/cabinets": []any{map[string]any{"id": "a", "kind": "wall", "wall": "w", "from": 0, "width": c.long, "height": 660}},
			})
			if got := a.Applied["s"]; got.Option != c.advice || got.By != c.by {
				t.Errorf("applied %+v", got)
			}
			for _, o := range a.Decisions.Overheads[0].Options {
				var gates []string
				for _, g := range o.Gates {
					gates = append(gates, g.Code)
				}
				if o.Option == "trim" && !slices.Equal(gates, c.gates) || o.Option == "remove_taller" && !slices.Contains(gates, "gate.lead.demolition") {
					t.Errorf("%s: %v", o.Option, gates)
				}
			}
		})
	}
}
