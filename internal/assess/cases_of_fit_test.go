package assess

import (
	"testing"

	"railhead/api"
)

// The cases of this file are the ones that are easy to get wrong. Their numbers
// follow from the invented rail-hung system of [plain]: 660 wall cabinets end at
// 2120, the fit gap is 2, the lift 10 of which the hanger takes 8.

func wantFit(t *testing.T, f api.Fit, verdict, cure, margin string) {
	t.Helper()
	if f.Verdict != verdict || f.Cure != cure || string(f.Margin.MM) != margin {
		t.Errorf("%s: %s, cure %s, margin %s; want %s, %s, %s", f.Cabinet, f.Verdict, f.Cure, f.Margin.MM, verdict, cure, margin)
	}
}

func TestClearanceDecidesTheVerdict(t *testing.T) {
	for _, c := range []struct{ name, underside, structure, verdict, cure, margin string }{
		{"well clear", "2200", "framed", "fits", "none", "80"},
		{"just the fit gap", "2122", "framed", "fits", "none", "2"},
		{"a tenth less than the fit gap", "2121.9", "framed", "snug", "none", "1.9"},
		{"touching", "2120", "framed", "snug", "none", "0"},
		{"overlapping what may be cut", "2119.9", "framed", "needs_trim", "trim", "-0.1"},
		{"overlapping what may not be cut", "2119.9", "bearing", "blocked", "none", "-0.1"},
		{"overlapping what nobody knows", "2119.9", "unknown", "needs_trim", "ask", "-0.1"},
	} {
		t.Run(c.name, func(t *testing.T) {
			body := merged(t, plain, soffit(`"structure": "`+c.structure+`", "underside": [{"at": 0, "height": `+c.underside+`}]`))
			wantFit(t, fitOf(t, answer(t, body), "a"), c.verdict, c.cure, c.margin)
		})
	}
}

func TestTheWorstObstacleRulesWhileTheSmallestClearanceIsTheMargin(t *testing.T) {
	body := merged(t, plain, wall(`"overheads": [
		{"id": "s", "kind": "soffit", "from": 0, "to": 900, "depth": 330, "structure": "framed", "underside": [{"at": 0, "height": 2050}]},
		{"id": "b", "kind": "beam", "from": 900, "to": 3600, "depth": 330, "structure": "bearing", "underside": [{"at": 900, "height": 2110}]}]`))
	f := fitOf(t, answer(t, body), "a")
	wantFit(t, f, "blocked", "none", "-70")
	if f.LimitedBy != "/survey/walls/0/overheads/1" {
		t.Errorf("limited by %s, want the beam, which cannot be cut", f.LimitedBy)
	}
}

func TestASnugCabinetNeverCallsForACut(t *testing.T) {
	a := answer(t, merged(t, plain, soffit(`"underside": [{"at": 0, "height": 2121}]`)))
	wantFit(t, fitOf(t, a, "a"), "snug", "none", "1")
	if len(a.Trims) != 0 || a.Applied["s"].Option != "keep" || a.Summary.Verdict != "go" {
		t.Errorf("trims %d, applied %s, summary %s; want none, keep, go", len(a.Trims), a.Applied["s"].Option, a.Summary.Verdict)
	}
}

func TestHeadroomIsTheLargerOfFitGapAndLift(t *testing.T) {
	for _, c := range []struct{ name, hangerDown, cutLine, because string }{
		{"the hanger takes most of the lift", "8", "2122", "fit_gap"},
		{"the hanger takes half of the lift", "5", "2125", "lift"},
		{"the hanger takes nothing", "0", "2130", "lift"},
	} {
		t.Run(c.name, func(t *testing.T) {
			body := merged(t, plain, soffit(`"underside": [{"at": 0, "height": 2090}]`), `{"system": {"rail": {"hanger_down": `+c.hangerDown+`}}}`)
			a := answer(t, body)
			if len(a.Trims) != 1 || string(a.Trims[0].CutLine.MM) != c.cutLine || a.Trims[0].BecauseOf != c.because {
				t.Errorf("trims %+v, want a cut at %s because of %s", a.Trims, c.cutLine, c.because)
			}
		})
	}
}

func TestAsFoundAgainstAfterTheChoices(t *testing.T) {
	body := merged(t, plain, soffit(`"underside": [{"at": 0, "height": 2090}]`))
	for _, c := range []struct{ name, choices, option, by, after, summary string }{
		{"nobody chose", `{}`, "trim", "advice", "fits", "go_after_trim"},
		{"trim chosen", `{"choices": {"s": "trim"}}`, "trim", "choice", "fits", "go_after_trim"},
		{"keep chosen", `{"choices": {"s": "keep"}}`, "keep", "choice", "blocked", "blocked"},
		{"taken down", `{"choices": {"s": "remove_open"}}`, "remove_open", "choice", "fits", "go_after_opening"},
	} {
		t.Run(c.name, func(t *testing.T) {
			a := answer(t, merged(t, body, c.choices))
			f := fitOf(t, a, "a")
			if f.Verdict != "needs_trim" {
				t.Errorf("as found %s, want needs_trim whatever was chosen", f.Verdict)
			}
			if got := a.Applied["s"]; got.Option != c.option || got.By != c.by || f.After.Verdict != c.after || a.Summary.Verdict != c.summary {
				t.Errorf("applied %+v, after %s, summary %s; want %s by %s, %s, %s", got, f.After.Verdict, a.Summary.Verdict, c.option, c.by, c.after, c.summary)
			}
		})
	}
}

func TestLoweringTheRowIsOfferedBeforeAnyCut(t *testing.T) {
	body := merged(t, plain, soffit(`"underside": [{"at": 0, "height": 2105}]`))
	for _, c := range []struct{ name, patch, cure, by string }{
		{"the counter may not sink", `{}`, "trim", ""},
		{"legs and counter allow it", `{"plan": {"least_counter": 860}}`, "lower_row", "17"},
		{"the counter allows too little", `{"plan": {"least_counter": 884}}`, "trim", ""},
		{"the legs allow too little", `{"plan": {"least_counter": 860}, "system": {"leg_travel": {"down": 16}}}`, "trim", ""},
		{"the row is already lowered", `{"plan": {"least_counter": 840, "row_shift": -10, "counter": 890}}`, "lower_row", "7"},
	} {
		t.Run(c.name, func(t *testing.T) {
			f := fitOf(t, answer(t, merged(t, body, c.patch)), "a")
			if f.Cure != c.cure {
				t.Fatalf("cure %s, want %s", f.Cure, c.cure)
			}
			if c.by != "" && (f.LowerRowBy == nil || string(f.LowerRowBy.MM) != c.by) {
				t.Errorf("lowered by %+v, want %s", f.LowerRowBy, c.by)
			}
		})
	}
}

func TestProfileExtremes(t *testing.T) {
	for _, c := range []struct{ name, underside, margin, at string }{
		{"a dip between two survey points of the span's ends", `[{"at": 0, "height": 2200}, {"at": 900, "height": 2110}, {"at": 3600, "height": 2200}]`, "-10", "900"},
		{"falling to the right: the span's right end", `[{"at": 0, "height": 2180}, {"at": 3600, "height": 2108}]`, "36", "1200"},
		{"rising to the right: the span's left end", `[{"at": 0, "height": 2108}, {"at": 3600, "height": 2180}]`, "0", "600"},
		{"a step inside the span", `[{"at": 0, "height": 2200}, {"at": 800, "height": 2200}, {"at": 800, "height": 2100}, {"at": 3600, "height": 2100}]`, "-20", "800"},
		{"a step down at the span's right end", `[{"at": 0, "height": 2200}, {"at": 1200, "height": 2200}, {"at": 1200, "height": 2000}, {"at": 3600, "height": 2000}]`, "80", "600"},
		{"a step up at the span's left end", `[{"at": 0, "height": 2000}, {"at": 600, "height": 2000}, {"at": 600, "height": 2150}, {"at": 3600, "height": 2150}]`, "30", "600"},
		{"level beyond the outer points", `[{"at": 1500, "height": 2130}, {"at": 3600, "height": 2000}]`, "10", "600"},
	} {
		t.Run(c.name, func(t *testing.T) {
			f := fitOf(t, answer(t, merged(t, plain, soffit(`"underside": `+c.underside))), "a")
			var tight api.Limit
			for _, l := range f.Limits {
				if l.By == "/survey/walls/0/overheads/0" {
					tight = l
				}
			}
			if string(f.Margin.MM) != c.margin || string(tight.At.MM) != c.at {
				t.Errorf("margin %s at %s, want %s at %s", f.Margin.MM, tight.At.MM, c.margin, c.at)
			}
		})
	}
}

func TestReadingsTapedFromTheFloorRightThere(t *testing.T) {
	body := merged(t, plain, `{"survey": {"walls": [{"id": "w", "length": 3600,
		"floor": [{"at": 0, "down": 1200}, {"at": 3600, "down": 1236}],
		"ceiling": [{"at": 0, "above_floor": 2500}, {"at": 3600, "above_floor": 2500}]}]}}`)
	f := fitOf(t, answer(t, body), "a")
	// No cabinet stands on the floor: the datum is the wall's highest floor, at 0.
	// The ceiling follows the floor down by 12 at 1200: 2488 above the datum.
	if string(f.Margin.MM) != "368" {
		t.Errorf("margin %s, want 2488 − 2120 = 368", f.Margin.MM)
	}
}

func TestOneReadingThatServesBothSidesCancels(t *testing.T) {
	taped := merged(t, plain, `{"survey": {"tolerance": 3, "walls": [{"id": "w", "length": 3600,
		"floor": [{"at": 0, "down": 1200, "tolerance": 50}], "ceiling": [{"at": 0, "above_floor": 2500}]}]}}`)
	// The ceiling was taped from the very floor that is the datum: its laser
	// reading, however poor, cancels. u = 3/√3, U = 2u (JCGM 100:2008, 4.3.7, 6.2).
	if got := fitOf(t, answer(t, taped), "a").Uncertainty.MM; got != "3.464102" {
		t.Errorf("uncertainty %s, want 2·3/√3 rounded up = 3.464102", got)
	}
	shot := merged(t, taped, `{"survey": {"walls": [{"id": "w", "length": 3600,
		"floor": [{"at": 0, "down": 1200, "tolerance": 3}], "ceiling": [{"at": 0, "up": 1300}]}]}}`)
	if got := fitOf(t, answer(t, shot), "a").Uncertainty.MM; got != "4.898980" && got != "4.89898" {
		t.Errorf("uncertainty %s, want 2·√(3²+3²)/√3 rounded up = 4.89898", got)
	}
}

func TestMeasureAgainWhenTheDoubtCouldChangeTheVerdict(t *testing.T) {
	for _, c := range []struct {
		name, ceiling, tolerance string
		again                    bool
		worst                    string
	}{
		{"far from any limit", "2300", "1", false, "fits"},
		{"snug within the doubt", "2123", "1", true, "snug"},
		{"blocked within the doubt", "2121", "2", true, "blocked"},
		{"blocked, but perhaps not", "2119", "2", true, "blocked"},
		{"surely blocked", "2110", "2", false, "blocked"},
	} {
		t.Run(c.name, func(t *testing.T) {
			body := merged(t, plain, `{"survey": {"tolerance": `+c.tolerance+`, "walls": [{"id": "w", "length": 3600,
				"floor": [{"at": 0, "height": 0}], "ceiling": [{"at": 0, "height": `+c.ceiling+`}]}]}}`)
			f := fitOf(t, answer(t, body), "a")
			if f.MeasureAgain != c.again || f.WorstVerdict != c.worst {
				t.Errorf("again %v, worst %s; want %v, %s", f.MeasureAgain, f.WorstVerdict, c.again, c.worst)
			}
			if c.again && f.MeasureWhat == "" {
				t.Error("does not say which reading to repeat")
			}
		})
	}
}

func TestAnEdgeWithinTheSidewaysTolerance(t *testing.T) {
	for _, c := range []struct {
		name, from string
		again      bool
	}{
		{"the beam begins a hair past the cabinet", "1201", true},
		{"the beam begins well past the cabinet", "1210", false},
		{"the beam begins a hair before the cabinet's end", "1199", true},
		{"the beam is well over the cabinet", "1100", false},
	} {
		t.Run(c.name, func(t *testing.T) {
			body := merged(t, plain, `{"survey": {"tolerance": 2}}`)
			body = merged(t, body, wall(`"overheads": [{"id": "b", "kind": "beam", "from": `+c.from+`, "to": 3600, "depth": 330, "structure": "bearing", "underside": [{"at": 1300, "height": 1900}]}]`))
			if f := fitOf(t, answer(t, body), "a"); f.MeasureAgain != c.again {
				t.Errorf("measure again %v, want %v", f.MeasureAgain, c.again)
			}
		})
	}
}

func TestLegsThatStandHighOverAGivenDatumLeaveLessToLower(t *testing.T) {
	// The tall cabinet's floor lies 25 over the given datum: of the 30 by which its
	// legs wind in, 5 are left. The soffit's underside is 2115 over the datum, so the
	// row would have to go down 7.
	for _, c := range []struct{ name, datum, underside, cure string }{
		{"the datum is set 25 under the floor", "1225", "890", "trim"},
		{"the datum is the floor", "1200", "915", "lower_row"},
	} {
		t.Run(c.name, func(t *testing.T) {
			body := merged(t, plain, `{"survey": {"walls": [{"id": "w", "length": 3600, "floor": [{"at": 0, "down": 1200}], "ceiling": [{"at": 0, "up": 1300}],
				"overheads": [{"id": "s", "kind": "soffit", "from": 0, "to": 3600, "depth": 330, "structure": "framed", "underside": [{"at": 0, "up": `+c.underside+`}]}]}]},
				"plan": {"least_counter": 800, "datums": [{"wall": "w", "at": 0, "level": {"down": `+c.datum+`}}], "cabinets": [
					{"id": "a", "kind": "wall", "wall": "w", "from": 600, "width": 600, "height": 660},
					{"id": "t", "kind": "tall", "wall": "w", "from": 1200, "width": 600, "height": 2000}]}}`)
			wantFit(t, fitOf(t, answer(t, body), "a"), "needs_trim", c.cure, "-5")
		})
	}
}

func TestAMeasuredThicknessAddsItsDoubt(t *testing.T) {
	body := merged(t, plain, `{"survey": {"tolerance": 3, "walls": [{"id": "w", "length": 3600, "floor": [{"at": 0, "down": 1200}], "ceiling": [{"at": 0, "up": 1300}],
		"overheads": [{"id": "g", "kind": "closed_gap", "from": 0, "to": 3600, "depth": 330, "structure": "framed", "thickness": 300, "carried_by": "ceiling"}]}]}}`)
	// Three readings: the ceiling, the thickness, the floor. 2·√(3·3²/3) = 6 (JCGM 100:2008, 4.3.7, 5.1.2, 6.2).
	if got := fitOf(t, answer(t, body), "a").Uncertainty.MM; got != "6" {
		t.Errorf("uncertainty %s, want 6", got)
	}
}
