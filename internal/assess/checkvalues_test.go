package assess

import (
	"testing"

	"railhead/api"
)

// The check values of this file are facts of the trade: common practice, no
// source. They hold for a system of inch cabinets hung on a rail that is sent
// along; nothing of it is built in.
const inchSystem = `{"units": "in", "legs": 4.5, "leg_travel": {"up": 1, "down": 1},
	"wall": {"heights": [15, 20, 30, 40], "widths": [12, 15, 18, 24, 30, 36], "depths": [15], "underside": 54.5},
	"tall": {"heights": [80, 90], "widths": [15, 18, 24, 30], "depths": [24]},
	"base": {"heights": [30], "widths": [12, 15, 18, 24, 30, 36], "depths": [24], "counter": 1.5},
	"rail": {"drop": "2 5/16 in", "profile": 1.25, "stock": [84], "kerf": 0.125, "hanger_down": 0.25, "lift": 0.25, "end_inset": 2, "longest_span": 24},
	"fit_gap": "1/16 in", "side_clearance": 0.125}`

func inchRoom(ceiling string) string {
	return `{"units": "in", "survey": {"tolerance": "1/64 in", "walls": [{"id": "w", "length": 120, "floor": [{"at": 0, "height": 0}], "ceiling": [{"at": 0, "height": ` + ceiling + `}]}]},
		"system": ` + inchSystem + `,
		"plan": {"cabinets": [
			{"id": "wall30", "kind": "wall", "wall": "w", "from": 0, "width": 30, "height": 30},
			{"id": "tall80", "kind": "tall", "wall": "w", "from": 30, "width": 30, "height": 80}]}}`
}

func TestTallCabinetOnItsLegsTopsOutWithTheWallRow(t *testing.T) {
	a := answer(t, inchRoom(`96`))
	for _, id := range []string{"wall30", "tall80"} {
		if top := fitOf(t, a, id).Top; top.Tape != "84 1/2 in" || top.TapeOff != "" {
			t.Errorf("%s ends at %+v, want 84 1/2 in", id, top)
		}
	}
}

func TestRailLowerEdgeOfTheRow(t *testing.T) {
	a := answer(t, inchRoom(`96`))
	if len(a.Rails) != 1 {
		t.Fatalf("%d rails, want one for the wall and the tall cabinet", len(a.Rails))
	}
	if got := a.Rails[0].LowerEdge; got.Tape != "82 3/16 in" || got.TapeOff != "" {
		t.Errorf("lower edge at %+v, want 82 3/16 in", got)
	}
}

func TestCutLineAboveTheRailForATightFit(t *testing.T) {
	body := merged(t, inchRoom(`96`), `{"survey": {"walls": [{"id": "w", "length": 120, "floor": [{"at": 0, "height": 0}], "ceiling": [{"at": 0, "height": 96}],
		"overheads": [{"id": "s", "kind": "soffit", "from": 0, "to": 120, "depth": 13, "structure": "framed", "underside": [{"at": 0, "height": 84}]}]}]},
		"choices": {"s": "trim"}}`)
	a := answer(t, body)
	if len(a.Trims) != 1 || a.Trims[0].AboveRail == nil {
		t.Fatalf("trims %+v, want one with a mark above the rail", a.Trims)
	}
	if got := a.Trims[0].AboveRail.Tape; got != "2 3/8 in" {
		t.Errorf("cut line %s above the rail, want 2 3/8 in (2 5/8 in is wrong)", got)
	}
}

func TestLeastCeilingForTheTallerRow(t *testing.T) {
	for _, c := range []struct{ name, ceiling, verdict, margin string }{
		{"squeezed in", `94.5`, "snug", "0 in"},
		{"a sixteenth lower", `"94 7/16 in"`, "blocked", "-1/16 in"},
		{"a sixteenth higher", `"94 9/16 in"`, "fits", "1/16 in"},
	} {
		t.Run(c.name, func(t *testing.T) {
			a := answer(t, inchRoom(c.ceiling))
			row := rowOf(t, a, "94 1/2 in")
			if row.WallHeight == nil || row.WallHeight.Tape != "40 in" || row.TallHeight == nil || row.TallHeight.Tape != "90 in" {
				t.Errorf("row of %v and %v, want 40 in wall and 90 in tall cabinets", row.WallHeight, row.TallHeight)
			}
			if row.CeilingNeeded.Tape != "94 1/2 in" || row.CeilingForFits.Tape != "94 9/16 in" {
				t.Errorf("needs %s and %s", row.CeilingNeeded.Tape, row.CeilingForFits.Tape)
			}
			if row.Kept.Verdict != c.verdict || row.Kept.Margin.Tape != c.margin {
				t.Errorf("%s with %s, want %s with %s", row.Kept.Verdict, row.Kept.Margin.Tape, c.verdict, c.margin)
			}
		})
	}
}

func rowOf(t testing.TB, a *api.Assessment, top string) api.Row {
	t.Helper()
	for _, r := range a.Rows {
		if r.Top.Tape == top {
			return r
		}
	}
	t.Fatalf("no row that ends at %s", top)
	return api.Row{}
}
