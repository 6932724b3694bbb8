package assess

import (
	"fmt"
	"slices"
	"testing"
)

func format(text string, args ...any) string { return fmt.Sprintf(text, args...) }
func has(list []string, one string) bool     { return slices.Contains(list, one) }

func TestRemovingOneOverheadRevealsAnother(t *testing.T) {
	body := merged(t, plain, wall(`"overheads": [
		{"id": "s", "kind": "soffit", "from": 0, "to": 3600, "depth": 330, "structure": "framed", "underside": [{"at": 0, "height": 2050}]},
		{"id": "b", "kind": "beam", "from": 600, "to": 1200, "depth": 330, "structure": "bearing", "underside": [{"at": 600, "height": 2110}]}]`),
		`{"choices": {"s": "remove_open"}}`)
	f := fitOf(t, answer(t, body), "a")
	if f.After.Verdict != "blocked" || f.After.LimitedBy != "/survey/walls/0/overheads/1" || string(f.After.Margin.MM) != "-10" {
		t.Errorf("after %+v, want blocked by the beam behind, −10", f.After)
	}
}

func TestASoffitInTwoPartsAroundAnInsideCorner(t *testing.T) {
	body := merged(t, plain, `{"survey": {"walls": [
		{"id": "w", "length": 3600, "joins_next": true, "floor": [{"at": 0, "height": 0}], "ceiling": [{"at": 0, "height": 2500}], "overheads": [
			{"id": "s1", "part_of": "s", "kind": "soffit", "from": 0, "to": 3600, "depth": 330, "structure": "framed", "underside": [{"at": 0, "height": 2100}]}]},
		{"id": "v", "length": 2000, "floor": [{"at": 0, "height": 0}], "ceiling": [{"at": 0, "height": 2500}], "overheads": [
			{"id": "s2", "part_of": "s", "kind": "soffit", "from": 0, "to": 2000, "depth": 330, "structure": "framed", "underside": [{"at": 0, "height": 2090}]}]}]},
		"plan": {"cabinets": [
			{"id": "a", "kind": "wall", "wall": "w", "from": 3000, "width": 600, "height": 660},
			{"id": "b", "kind": "wall", "wall": "v", "from": 360, "width": 600, "height": 660}]}}`)
	a := answer(t, body)
	if len(a.Decisions.Overheads) != 1 || a.Decisions.Overheads[0].Overhead != "s" {
		t.Fatalf("decisions %+v, want one for both parts", a.Decisions.Overheads)
	}
	// Cabinet a stands in the corner: the part on the next wall hangs over it too,
	// ten lower.
	f := fitOf(t, a, "a")
	if string(f.Margin.MM) != "-30" || f.LimitedBy != "/survey/walls/1/overheads/0" {
		t.Errorf("margin %s by %s, want −30 by the part on the next wall", f.Margin.MM, f.LimitedBy)
	}
	if len(a.Trims) != 2 {
		t.Fatalf("%d trims, want one on each wall", len(a.Trims))
	}
	for _, c := range a.Trims {
		if string(c.CutLine.MM) != "2122" {
			t.Errorf("%s cut at %s, want one even line at 2122", c.ID, c.CutLine.MM)
		}
		for _, r := range c.Returns {
			if r.Meets == "open" || (c.Overhead == "s1" && string(r.At.MM) == "3600") || (c.Overhead == "s2" && string(r.At.MM) == "0") {
				t.Errorf("%s has a return %+v, want none in the corner", c.ID, r)
			}
		}
	}
}

func TestAClosedGapCarriedByTheOldCabinets(t *testing.T) {
	gap := func(carrier string) string {
		return merged(t, plain, wall(`"overheads": [{"id": "g", "kind": "closed_gap", "from": 0, "to": 3600, "depth": 330, "structure": "framed", "thickness": 450, "carried_by": "`+carrier+`"}]`))
	}
	a := answer(t, gap("old_cabinets"))
	wantFit(t, fitOf(t, a, "a"), "fits", "none", "380")
	if len(a.Trims) != 0 {
		t.Errorf("trims %+v, want none: it goes with the old cabinets", a.Trims)
	}
	wantFit(t, fitOf(t, answer(t, gap("ceiling")), "a"), "needs_trim", "trim", "-70")
}

func TestTheStripDecidesTheKindOfWork(t *testing.T) {
	for _, c := range []struct{ name, underside, ceiling, work, most, frame string }{
		{"thinner than the lining", "2112", "2500", "lining_only", "10", ""},
		{"just the lining", "2109.5", "2500", "lining_only", "12.5", ""},
		{"into the bottom member", "2109.4", "2500", "relocate_bottom_member", "12.6", "2122"},
		{"just through the bottom member", "2071.5", "2500", "relocate_bottom_member", "50.5", "2122"},
		{"more than the bottom member", "2071.4", "2500", "reframe", "50.6", "2122"},
		{"thicker than the overhead", "2100", "2122", "take_down", "22", ""},
		{"leaves a stub nobody can fix", "2050", "2160", "take_down", "", ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			body := merged(t, plain, `{"survey": {"walls": [{"id": "w", "length": 3600, "floor": [{"at": 0, "height": 0}], "ceiling": [{"at": 0, "height": `+c.ceiling+`}],
				"overheads": [{"id": "s", "kind": "soffit", "from": 0, "to": 3600, "depth": 330, "structure": "framed", "underside": [{"at": 0, "height": `+c.underside+`}],
				"make": {"lining": 12.5, "bottom_member": 38}}]}]}, "choices": {"s": "trim"}}`)
			a := answer(t, body)
			if len(a.Trims) != 1 {
				t.Fatalf("%d trims, want 1", len(a.Trims))
			}
			got := a.Trims[0]
			frame := ""
			if got.FrameLine != nil {
				frame = string(got.FrameLine.MM)
			}
			if got.Work != c.work || c.most != "" && string(got.MostRemoved.MM) != c.most || frame != c.frame {
				t.Errorf("%s, at most %s, frame line %q; want %s, %s, %q", got.Work, got.MostRemoved.MM, frame, c.work, c.most, c.frame)
			}
		})
	}
}

func TestAnOverheadDeeperThanTheCabinet(t *testing.T) {
	body := merged(t, plain, `{"plan": {"cabinets": [{"id": "a", "kind": "wall", "wall": "w", "from": 600, "width": 600, "height": 660, "door": {"opens": "left", "thickness": 20, "pull": 40}}]}}`)
	for _, c := range []struct {
		name, underside, depth string
		finding                bool
	}{
		{"the lip leaves the door its gap", "2130", "450", false},
		{"the lip is tight over the door", "2121", "450", true},
		{"no lip", "2121", "330", false},
	} {
		t.Run(c.name, func(t *testing.T) {
			over := wall(`"overheads": [{"id": "s", "kind": "soffit", "from": 0, "to": 3600, "depth": ` + c.depth + `, "structure": "framed", "underside": [{"at": 0, "height": ` + c.underside + `}]}]`)
			f := fitOf(t, answer(t, merged(t, body, over)), "a")
			if got := has(codes(f.Findings), "fit.door.under_lip"); got != c.finding {
				t.Errorf("findings %v, want the door under the lip: %v", codes(f.Findings), c.finding)
			}
		})
	}
}

func TestATallCarcassThatPassesOnItsSideOrWithTheLegsOff(t *testing.T) {
	body := merged(t, plain, `{"plan": {"cabinets": [{"id": "t", "kind": "tall", "wall": "w", "from": 0, "width": 400, "height": 2240, "depth": 600}]}}`)
	for _, c := range []struct{ name, ceiling, standing, need string }{
		// √(2360² + 600²) = 2435.077, √(2360² + 400²) = 2393.658, √(2240² + 400²) = 2275.434;
		// published-checks method: Pythagoras on the side panel.
		{"as it is, with legs", "2436", "with_legs", "2435.077"},
		{"on its side", "2400", "on_side", "2393.66"},
		{"legs on afterwards", "2365", "legs_after", "2275.4"},
	} {
		t.Run(c.name, func(t *testing.T) {
			b := merged(t, body, `{"survey": {"walls": [{"id": "w", "length": 3600, "floor": [{"at": 0, "height": 0}], "ceiling": [{"at": 0, "height": `+c.ceiling+`}]}]}}`)
			f := fitOf(t, answer(t, b), "t")
			if f.Standing == nil || f.Standing.Verdict != c.standing || len(f.Standing.Need.MM) < 6 || string(f.Standing.Need.MM)[:5] != c.need[:5] {
				t.Errorf("standing %+v, want %s needing %s", f.Standing, c.standing, c.need)
			}
		})
	}
}

func TestTheOrderOfSummaryVerdicts(t *testing.T) {
	two := `[{"id": "a", "kind": "wall", "wall": "w", "from": 0, "width": 600, "height": 660}, {"id": "b", "kind": "wall", "wall": "w", "from": 2400, "width": 600, "height": 660}]`
	over := func(id, kind, structure, from, to, underside string) string {
		return format(`{"id": %q, "kind": %q, "from": %s, "to": %s, "depth": 330, "structure": %q, "underside": [{"at": %s, "height": %s}], "inside": {"looked": "opened"}}`, id, kind, from, to, structure, from, underside)
	}
	for _, c := range []struct{ name, overheads, choices, summary string }{
		{"nothing in the way", ``, `{}`, "go"},
		{"a trim", over("s", "soffit", "framed", "0", "1200", "2090"), `{}`, "go_after_trim"},
		{"a trim and one taken down", over("s", "soffit", "framed", "0", "1200", "2090") + "," + over("r", "soffit", "framed", "2000", "3600", "2090"), `{"r": "remove_open"}`, "go_after_opening"},
		{"unknown structure and one taken down", over("s", "soffit", "unknown", "0", "1200", "2090") + "," + over("r", "soffit", "framed", "2000", "3600", "2090"), `{"r": "remove_open"}`, "answers_needed"},
		{"a bearing beam and unknown structure", over("s", "soffit", "unknown", "0", "1200", "2090") + "," + over("r", "beam", "bearing", "2000", "3600", "2090"), `{}`, "blocked"},
	} {
		t.Run(c.name, func(t *testing.T) {
			a := answer(t, merged(t, plain, wall(`"overheads": [`+c.overheads+`]`), `{"plan": {"cabinets": `+two+`}, "choices": `+c.choices+`}`))
			if a.Summary.Verdict != c.summary {
				t.Errorf("summary %s, want %s", a.Summary.Verdict, c.summary)
			}
		})
	}
}

func TestABeamOverTheOtherLegOfACornerCabinet(t *testing.T) {
	body := merged(t, plain, `{"survey": {"walls": [
		{"id": "w", "length": 3600, "joins_next": true, "floor": [{"at": 0, "height": 0}], "ceiling": [{"at": 0, "height": 2500}]},
		{"id": "v", "length": 2000, "floor": [{"at": 0, "height": 0}], "ceiling": [{"at": 0, "height": 2500}], "overheads": [
			{"id": "b", "kind": "beam", "from": 0, "to": 300, "out": 500, "depth": 200, "structure": "bearing", "underside": [{"at": 0, "height": 2100}]}]}]},
		"plan": {"cabinets": [{"id": "a", "kind": "wall", "wall": "w", "from": 2800, "width": 800, "height": 660, "corner": {"other_wall": "v", "other_width": 800, "shape": "l"}}]}}`)
	// The beam stands off wall v by 500, past the leg on v, over the leg on w.
	f := fitOf(t, answer(t, body), "a")
	if f.Verdict != "blocked" || string(f.Margin.MM) != "-20" || f.LimitedBy != "/survey/walls/1/overheads/0" {
		t.Errorf("%s, margin %s by %s; want blocked by the beam, −20", f.Verdict, f.Margin.MM, f.LimitedBy)
	}
}

func TestAnOverheadListedOnTheOppositeWall(t *testing.T) {
	side := func(id string, long int, more string) string {
		return format(`{"id": %q, "length": %d, "joins_next": true, "floor": [{"at": 0, "height": 0}], "ceiling": [{"at": 0, "height": 2500}]%s}`, id, long, more)
	}
	body := merged(t, plain, `{"survey": {"walls": [`+side("w", 3600, "")+","+side("x", 2000, "")+","+
		side("y", 3600, `, "overheads": [{"id": "l", "kind": "lowered_ceiling", "from": 0, "to": 3600, "depth": 2000, "structure": "framed", "underside": [{"at": 0, "height": 2100}]}]`)+","+side("z", 2000, "")+`]}}`)
	f := fitOf(t, answer(t, body), "a")
	if f.Verdict != "needs_trim" || string(f.Margin.MM) != "-20" || f.LimitedBy != "/survey/walls/2/overheads/0" {
		t.Errorf("%s, margin %s by %s; want needs_trim by the lowered ceiling across the room, −20", f.Verdict, f.Margin.MM, f.LimitedBy)
	}
}

func TestAnOverheadInFrontThatStopsTheCabinetFromBeingHung(t *testing.T) {
	body := merged(t, plain, wall(`"overheads": [{"id": "s", "kind": "soffit", "from": 0, "to": 3600, "out": 360, "depth": 200, "structure": "framed", "underside": [{"at": 0, "height": 2000}]}]`))
	a := answer(t, body)
	f := fitOf(t, a, "a")
	if f.After.Hanging.Verdict != "blocked" || !has(codes(f.After.Findings), "fit.hanging.blocked") || a.Summary.Verdict != "answers_needed" {
		t.Errorf("hangs %s, %v, summary %s; want blocked, said, and answers needed", f.After.Hanging.Verdict, codes(f.After.Findings), a.Summary.Verdict)
	}
}

func TestACutThatCuresNothingIsNotAdvised(t *testing.T) {
	for _, c := range []struct{ name, ceiling, behind string }{
		{"the ceiling is too low anyway", "2110", ``},
		{"the ceiling seen behind is too low", "2500", `, "behind": {"ceiling": "continues", "ceiling_level": {"height": 2110}}`},
	} {
		t.Run(c.name, func(t *testing.T) {
			body := merged(t, plain, `{"survey": {"walls": [{"id": "w", "length": 3600, "floor": [{"at": 0, "height": 0}], "ceiling": [{"at": 0, "height": `+c.ceiling+`}],
				"overheads": [{"id": "s", "kind": "soffit", "from": 0, "to": 3600, "depth": 330, "structure": "framed", "underside": [{"at": 0, "height": 2100}]`+c.behind+`}]}]}}`)
			a := answer(t, body)
			f := fitOf(t, a, "a")
			if f.Verdict != "blocked" || f.Cure != "none" || a.Applied["s"].Option != "keep" || len(a.Trims) != 0 {
				t.Errorf("%s, cure %s, applied %s, %d trims; want blocked, none, keep, none", f.Verdict, f.Cure, a.Applied["s"].Option, len(a.Trims))
			}
		})
	}
}

func TestServicesNearTheEndOfACut(t *testing.T) {
	for _, c := range []struct {
		name, from, up, clearance string
		conflict                  bool
	}{
		{"a pipe that starts beside the cut, within its clearance", "1204", "2122", "100", true},
		{"beside and above, within the diagonal", "1205", "2130", "10", true},
		{"beside and above, just beyond the diagonal", "1209", "2130", "10", false},
		{"well beside", "1400", "2122", "100", false},
	} {
		t.Run(c.name, func(t *testing.T) {
			body := merged(t, plain, soffit(`"underside": [{"at": 0, "height": 2090}], "inside": {"looked": "opened", "services": [
				{"kind": "pipe", "from": `+c.from+`, "to": 2000, "underside": {"height": `+c.up+`}, "clearance": `+c.clearance+`, "movable": "easily"}]}`))
			a := answer(t, body)
			if got := len(a.Trims) == 1 && len(a.Trims[0].Conflicts) == 1; got != c.conflict {
				t.Errorf("conflicts %+v, want %v (the cut ends at 1203)", a.Trims, c.conflict)
			}
		})
	}
}
