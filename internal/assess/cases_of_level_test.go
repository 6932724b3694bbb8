package assess

import (
	"context"
	"testing"
)

func TestTheDatumIsUnderFloorStandingFootprintsOnly(t *testing.T) {
	floor := `{"survey": {"walls": [{"id": "w", "length": 3600, "ceiling": [{"at": 0, "up": 1300}],
		"floor": [{"at": 0, "down": 1200}, {"at": 1800, "down": 1230}, {"at": 3600, "down": 1206}]}]}}`
	for _, c := range []struct{ name, cabinets, by, at, laser string }{
		{"under the tall cabinet", `[{"id": "t", "kind": "tall", "wall": "w", "from": 1800, "width": 600, "height": 2000}]`, "floor_standing", "2400", "1222"},
		{"wall cabinets alone: the wall's highest floor", `[{"id": "a", "kind": "wall", "wall": "w", "from": 1800, "width": 600, "height": 660}]`, "planned_walls", "0", "1200"},
		{"nothing planned", `[]`, "all_walls", "0", "1200"},
		{"the higher of two footprints", `[{"id": "t", "kind": "tall", "wall": "w", "from": 1800, "width": 600, "height": 2000}, {"id": "b", "kind": "base", "wall": "w", "from": 600, "width": 600, "height": 740}]`, "floor_standing", "600", "1210"},
	} {
		t.Run(c.name, func(t *testing.T) {
			d := answer(t, merged(t, plain, floor, `{"plan": {"cabinets": `+c.cabinets+`}}`)).Datum
			if d.By != c.by || string(d.At.MM) != c.at || d.LaserAbove == nil || string(d.LaserAbove.MM) != c.laser {
				t.Errorf("datum by %s at %s, laser %+v above; want by %s at %s, %s", d.By, d.At.MM, d.LaserAbove, c.by, c.at, c.laser)
			}
		})
	}
}

func TestTiesOfTheDatum(t *testing.T) {
	two := `{"survey": {"walls": [
		{"id": "w", "length": 3600, "joins_next": true, "floor": [{"at": 0, "down": 1200}, {"at": 900, "down": 1190}, {"at": 2700, "down": 1190}, {"at": 3600, "down": 1200}], "ceiling": [{"at": 0, "up": 1300}]},
		{"id": "v", "length": 2000, "floor": [{"at": 0, "down": 1200}, {"at": 1000, "down": 1190}], "ceiling": [{"at": 0, "up": 1300}]}]}, "plan": {"cabinets": []}}`
	d := answer(t, merged(t, plain, two)).Datum
	if d.Wall != "w" || string(d.At.MM) != "900" {
		t.Errorf("datum on %s at %s, want the first wall's smallest station, 900", d.Wall, d.At.MM)
	}
}

func TestRunsThatDoNotJoinHaveTheirOwnDatum(t *testing.T) {
	two := `{"survey": {"walls": [
		{"id": "w", "length": 3600, "floor": [{"at": 0, "down": 1200}], "ceiling": [{"at": 0, "up": 1300}]},
		{"id": "v", "length": 2000, "floor": [{"at": 0, "down": 1180}], "ceiling": [{"at": 0, "up": 1300}]%s}]},
		"plan": {"cabinets": [{"id": "a", "kind": "wall", "wall": "w", "from": 0, "width": 600, "height": 660}, {"id": "b", "kind": "wall", "wall": "v", "from": 0, "width": 600, "height": 660}]}}`
	apart := answer(t, merged(t, plain, format(two, "")))
	if len(apart.Datums) != 2 {
		t.Fatalf("%d datums, want 2", len(apart.Datums))
	}
	if a, b := fitOf(t, apart, "a"), fitOf(t, apart, "b"); string(a.Margin.MM) != "380" || string(b.Margin.MM) != "360" {
		t.Errorf("margins %s and %s, want 380 and 360", a.Margin.MM, b.Margin.MM)
	}
	tied := answer(t, merged(t, plain, format(two, `, "level_with": "w"`)))
	if len(tied.Datums) != 1 {
		t.Fatalf("%d datums, want 1 for walls that are levelled together", len(tied.Datums))
	}
	if a, b := fitOf(t, tied, "a"), fitOf(t, tied, "b"); string(a.Margin.MM) != "360" || string(b.Margin.MM) != "360" {
		t.Errorf("margins %s and %s, want 360 for both over the higher floor", a.Margin.MM, b.Margin.MM)
	}
}

func TestAFloorChangeMovesTheDatum(t *testing.T) {
	body := merged(t, plain, `{"survey": {"walls": [{"id": "w", "length": 3600, "floor": [{"at": 0, "down": 1200}], "ceiling": [{"at": 0, "up": 1300}]}]}}`)
	for _, c := range []struct{ name, plan, margin, laser string }{
		{"none", `{}`, "380", "1200"},
		{"a new floor under the cabinets", `{"floor_change": 15}`, "365", "1185"},
		{"a new floor up to the plinth", `{"floor_change": 15, "floor_under_cabinets": false}`, "380", "1200"},
		{"the old floor comes out", `{"floor_change": -20}`, "400", "1220"},
		{"a new ceiling board", `{"ceiling_change": -12.5}`, "367.5", "1200"},
	} {
		t.Run(c.name, func(t *testing.T) {
			a := answer(t, merged(t, body, `{"plan": `+c.plan+`}`))
			if got := fitOf(t, a, "a").Margin.MM; string(got) != c.margin || string(a.Datum.LaserAbove.MM) != c.laser {
				t.Errorf("margin %s, laser %s above; want %s, %s", got, a.Datum.LaserAbove.MM, c.margin, c.laser)
			}
		})
	}
}

func TestAFloorChangeDoesNotMoveWhatWasTapedFromTheOldFloor(t *testing.T) {
	body := merged(t, plain, `{"survey": {"walls": [{"id": "w", "length": 3600, "floor": [{"at": 0, "down": 1200}], "ceiling": [{"at": 0, "above_floor": 2500}]}]},
		"plan": {"floor_change": 15}}`)
	if got := fitOf(t, answer(t, body), "a").Margin.MM; string(got) != "365" {
		t.Errorf("margin %s, want 2500 − 15 − 2120 = 365", got)
	}
}

func TestTwoLaserSetUps(t *testing.T) {
	walls := `"walls": [
		{"id": "w", "length": 3600, "laser": "A", "joins_next": true, "floor": [{"at": 0, "down": 1200}], "ceiling": [{"at": 0, "up": 1300}]},
		{"id": "v", "length": 2000, "laser": "B", "floor": [{"at": 0, "down": 1150}], "ceiling": [{"at": 0, "up": 1350}]}]`
	tied := merged(t, plain, `{"survey": {"lasers": [{"id": "A", "above": 0}, {"id": "B", "above": -45}], `+walls+`},
		"plan": {"cabinets": [{"id": "b", "kind": "base", "wall": "v", "from": 600, "width": 600, "height": 740}]}}`)
	d := answer(t, tied).Datum
	// Line B lies 45 under line A: the floor on v is at −1195 from A.
	if d.Wall != "v" || string(d.LaserAbove.MM) != "1150" {
		t.Errorf("datum on %s, its line %s above; want v, 1150", d.Wall, d.LaserAbove.MM)
	}
	untied := merged(t, plain, `{"survey": {"lasers": [{"id": "A", "above": 0}, {"id": "B"}], `+walls+`}}`)
	_, faults := Assess(context.Background(), request(t, untied), All)
	if len(faults) != 1 || faults[0].Code != "survey.laser.untied" || faults[0].Pointer != "/survey/lasers/1/above" {
		t.Errorf("faults %+v, want one of survey.laser.untied at /survey/lasers/1/above", faults)
	}
}

func TestATapeOnlySurveyIsNotLevelled(t *testing.T) {
	a := answer(t, plain)
	if !has(codes(a.Findings), "survey.floor.not_levelled") {
		t.Errorf("findings %v, want survey.floor.not_levelled", codes(a.Findings))
	}
}

func TestABenchMarkAnchorsEveryMark(t *testing.T) {
	body := merged(t, plain, `{"survey": {"bench": {"wall": "w", "at": 40, "level": {"down": 203}}, "walls": [{"id": "w", "length": 3600,
		"floor": [{"at": 0, "down": 1200}], "ceiling": [{"at": 0, "up": 1300}],
		"overheads": [{"id": "s", "kind": "soffit", "from": 0, "to": 3600, "depth": 330, "structure": "framed", "underside": [{"at": 0, "up": 890}]}]}]}}`)
	a := answer(t, body)
	// The mark is 203 under the line and 997 over the floor; the rail's lower edge
	// is 2056 and the cut line 2122 above the floor.
	if a.Datum.BenchAbove == nil || string(a.Datum.BenchAbove.MM) != "997" {
		t.Errorf("bench mark %+v above the datum, want 997", a.Datum.BenchAbove)
	}
	if got := a.Rails[0].FromBench; got == nil || string(got.MM) != "1059" {
		t.Errorf("rail %+v from the bench mark, want 1059", got)
	}
	if got := a.Trims[0].FromBench; got == nil || string(got.MM) != "1125" {
		t.Errorf("cut %+v from the bench mark, want 1125", got)
	}
}
