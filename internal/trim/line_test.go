package trim

import (
	"testing"

	"railhead/internal/cabinet"
	"railhead/internal/fit"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// The cut is 2 3/8 in above the rail's lower edge for a tight fit, with the rail
// drop of 2 5/16 in; 2 5/8 in is wrong (common practice, no source).
func TestCutLineOfInchCabinets(t *testing.T) {
	s := &cabinet.System{FitGap: in / 16, Rail: &cabinet.Rail{Drop: 2*in + 5*in/16}}
	high := 54*in + in/2
	k := cook(room(wall(120*in, 96*in, soffit(0, 120*in, profile(0, 84*in)))), s,
		cabinet.Placed{Kind: cabinet.Wall, To: 60 * in, Depth: 15 * in, Height: 30 * in, Underside: high, Top: high + 30*in},
		cabinet.Placed{Kind: cabinet.Tall, From: 60 * in, To: 120 * in, Depth: 24 * in, Height: 80 * in, Underside: 4*in + in/2, Top: 84*in + in/2},
	)
	tr := one(t, trimmed(k))
	if *tr.RailEdge != 82*in+3*in/16 {
		t.Errorf("rail's lower edge %v, want 82 3/16 in", *tr.RailEdge)
	}
	above := tr.CutLine - *tr.RailEdge
	if above != 2*in+3*in/8 || above == 2*in+5*in/8 {
		t.Errorf("cut line %v above the rail, want 2 3/8 in", above)
	}
	if !tr.Needed || tr.ByLift || tr.ID != "s1#1" || len(tr.Cabinets) != 2 {
		t.Errorf("trim %+v", tr)
	}
}

// The demo system: the row of 660 tops out at 2120, rail 2056, cut 2122, 66
// above the rail (worked example of the trade model).
func TestCutLineOfTheDemoSystem(t *testing.T) {
	k := cook(room(wall(3600*mm, 2500*mm, soffit(0, 3600*mm, profile(0, 2100*mm)))), demo(), hung(0, 600*mm, 2120*mm))
	tr := one(t, trimmed(k))
	if *tr.RailEdge != 2056*mm || tr.CutLine != 2122*mm || tr.From != 0 || tr.To != 603*mm {
		t.Errorf("rail %v, cut %v from %v to %v", *tr.RailEdge, tr.CutLine, tr.From, tr.To)
	}
	if !has(tr, "trim.fireblock.restore") || tr.Most.CmpLength(22*mm) != 0 {
		t.Errorf("most %v, findings %v", tr.Most, codes(tr))
	}
}

// A raised datum raises every line in the survey's frame, none above the datum.
func TestCutLineIsAboveTheDatum(t *testing.T) {
	w := wall(3600*mm, 2508*mm, soffit(0, 3600*mm, profile(0, 2108*mm)))
	w.Floor = profile(0, 8*mm, 3600*mm, 0)
	k := cook(room(w), demo(), hung(0, 600*mm, 2120*mm))
	tr := one(t, trimmed(k))
	if s := tr.Stations[0]; tr.CutLine != 2122*mm || s.Underside.CmpLength(2100*mm) != 0 || s.AboveFloor.CmpLength(2122*mm) != 0 {
		t.Errorf("cut %v, station %+v", tr.CutLine, s)
	}
	// At 603 mm the floor has fallen by 8 · 603/3600 = 1.34 mm.
	if s := tr.Stations[1]; s.AboveFloor.CmpLength(2123*mm+340_000) != 0 {
		t.Errorf("above the floor there %v, want 2123.34 mm", s.AboveFloor)
	}
}

func TestHeadroomIsTheLargerOfFitGapAndLift(t *testing.T) {
	for name, c := range map[string]struct {
		gap, lift, down length.Length
		kind            cabinet.Kind
		want            length.Length
		byLift          bool
	}{
		"fit gap larger":             {5 * mm, 12 * mm, 8 * mm, cabinet.Wall, 2125 * mm, false},
		"equal":                      {4 * mm, 12 * mm, 8 * mm, cabinet.Wall, 2124 * mm, false},
		"lift larger":                {2 * mm, 30 * mm, 8 * mm, cabinet.Wall, 2142 * mm, true},
		"tall cabinet is not lifted": {2 * mm, 30 * mm, 8 * mm, cabinet.Tall, 2122 * mm, false},
	} {
		s := demo()
		s.FitGap, s.Rail.Lift, s.Rail.HangerDown = c.gap, c.lift, c.down
		cab := hung(0, 600*mm, 2120*mm)
		cab.Kind = c.kind
		tr := one(t, trimmed(cook(room(wall(3600*mm, 2500*mm, soffit(0, 3600*mm, profile(0, 2100*mm)))), s, cab)))
		if tr.CutLine != c.want || tr.ByLift != c.byLift {
			t.Errorf("%s: cut %v by lift %v, want %v %v", name, tr.CutLine, tr.ByLift, c.want, c.byLift)
		}
	}
}

// Where a lifted cabinet and one that is only slid in give the same line, the
// fit gap is reason enough.
func TestSameLineFromFitGapAndLift(t *testing.T) {
	s := demo()
	s.Rail.Lift = 30 * mm // 22 mm of headroom over a wall cabinet, 2 mm over a tall one
	lifted, slid := hung(0, 600*mm, 2120*mm), hung(600*mm, 1200*mm, 2140*mm)
	slid.Kind = cabinet.Tall
	for name, cabinets := range map[string][]cabinet.Placed{"lifted first": {lifted, slid}, "slid in first": {slid, lifted}} {
		tr := one(t, trimmed(cook(room(wall(3600*mm, 2500*mm, soffit(0, 3600*mm, profile(0, 2100*mm)))), s, cabinets...)))
		if tr.CutLine != 2142*mm || tr.ByLift {
			t.Errorf("%s: cut %v by lift %v", name, tr.CutLine, tr.ByLift)
		}
	}
}

func TestNoRailNoRailEdge(t *testing.T) {
	s := demo()
	s.Rail = nil
	tr := one(t, trimmed(cook(room(wall(3600*mm, 2500*mm, soffit(0, 3600*mm, profile(0, 2100*mm)))), s, hung(0, 600*mm, 2120*mm))))
	if tr.RailEdge != nil || tr.CutLine != 2122*mm {
		t.Errorf("rail %v, cut %v", tr.RailEdge, tr.CutLine)
	}
}

// A snug cabinet never calls for a cut; who chooses one gets the headroom.
func TestSnugNeverCallsForACut(t *testing.T) {
	snug := room(wall(3600*mm, 2500*mm, soffit(0, 3600*mm, profile(0, 2121*mm))))
	k := cook(snug, demo(), hung(0, 600*mm, 2120*mm))
	if got := Plan(k, fit.Check(k), advised(kitchen.Trim)); len(got) != 0 {
		t.Errorf("advised: %+v, want no cut", got)
	}
	tr := one(t, trimmed(k))
	if tr.Needed || tr.Work != LiningOnly || tr.Most.CmpLength(1*mm) != 0 {
		t.Errorf("chosen: needed %v, %v, %v", tr.Needed, tr.Work, tr.Most)
	}
	if got := Plan(k, fit.Check(k), advised(kitchen.Keep)); got == nil || len(got) != 0 {
		t.Errorf("kept: %v, want an empty list", got)
	}
}

func TestChosenTrimWithNothingToTake(t *testing.T) {
	k := cook(room(wall(3600*mm, 2500*mm, soffit(0, 3600*mm, profile(0, 2122*mm)))), demo(), hung(0, 600*mm, 2120*mm))
	tr := one(t, trimmed(k))
	if tr.Needed || tr.Work != None || tr.Most.Sign() != 0 || len(tr.Steps) != 0 || !has(tr, "trim.nothing.to_take") {
		t.Errorf("trim %+v", tr)
	}
	if got := Plan(k, fit.Check(k), advised(kitchen.Trim)); len(got) != 0 {
		t.Errorf("advised: %+v, want no cut", got)
	}
}

func TestClosedGapCarriedByOldCabinetsIsNeverCut(t *testing.T) {
	gap := soffit(0, 3600*mm, profile(0, 2000*mm))
	gap.Kind, gap.Carrier = survey.ClosedGap, survey.CarriedByOldCabinets
	k := cook(room(wall(3600*mm, 2500*mm, gap)), demo(), hung(0, 600*mm, 2120*mm))
	if got := trimmed(k); len(got) != 0 {
		t.Errorf("trims %+v", got)
	}
	if sky := Sky(k, chosen(kitchen.Trim), nil); len(sky.Hung) != 0 || len(sky.Gone) != 1 {
		t.Errorf("sky %+v, want it gone", sky)
	}
}

func TestWork(t *testing.T) {
	cases := map[string]struct {
		under length.Length // the cut line is 2122, the ceiling 2500
		least length.Length
		want  Work
		frame bool
	}{
		"strip thinner than the lining":     {2115 * mm, 50 * mm, LiningOnly, false},
		"strip as thick as the lining":      {2109*mm + mm/2, 50 * mm, LiningOnly, false},
		"strip into the bottom member":      {2109*mm + mm/2 - 1, 50 * mm, RelocateBottomMember, true},
		"lining and bottom member just":     {2071*mm + mm/2, 50 * mm, RelocateBottomMember, true},
		"more than lining and member":       {2071*mm + mm/2 - 1, 50 * mm, Reframe, true},
		"stub just as high as can be built": {2000 * mm, 378 * mm, Reframe, true},
		"stub that nobody can fix":          {2000 * mm, 378*mm + 1, TakeDown, false},
	}
	for name, c := range cases {
		s := soffit(0, 3600*mm, profile(0, c.under))
		s.Make.LeastStub, s.Make.NewBottom = c.least, 12*mm
		tr := one(t, trimmed(cook(room(wall(3600*mm, 2500*mm, s)), demo(), hung(0, 600*mm, 2120*mm))))
		if tr.Work != c.want || (tr.FrameLine != nil) != c.frame {
			t.Errorf("%s: %v, frame line %v, want %v", name, tr.Work, tr.FrameLine, c.want)
		}
		if c.frame && *tr.FrameLine != 2134*mm {
			t.Errorf("%s: frame line %v, want cut line and new bottom, 2134 mm", name, *tr.FrameLine)
		}
		if has(tr, "trim.new_bottom.no_room") != (c.want == LiningOnly) {
			t.Errorf("%s: findings %v", name, codes(tr))
		}
	}
}

// A strip thicker than the overhead takes all of it, up to the ceiling.
func TestStripThickerThanTheOverhead(t *testing.T) {
	s := soffit(0, 3600*mm, profile(0, 2060*mm))
	s.Make.LeastStub = 0
	k := cook(room(wall(3600*mm, 2110*mm, s)), demo(), hung(0, 600*mm, 2120*mm))
	tr := one(t, trimmed(k))
	if tr.Work != TakeDown || tr.Most.CmpLength(50*mm) != 0 || !has(tr, "trim.cut.removal") {
		t.Errorf("%v takes %v, %v", tr.Work, tr.Most, codes(tr))
	}
	if got := tr.Stations[0].OpenAbove; got.CmpLength(-10*mm) != 0 {
		t.Errorf("open above %v: the ceiling is 10 mm too low", got)
	}
	o := &k.Room.Walls[0].Overheads[0]
	if !NeedsTakeDown(k, o, 0, 600*mm, 2110*mm) || NeedsTakeDown(k, o, 0, 600*mm, 2109*mm) {
		t.Error("a cut at the ceiling is a removal, one below it is not")
	}
}

// What somebody saw behind the overhead rules the stub, not the room's ceiling.
func TestStubUnderTheCeilingBehind(t *testing.T) {
	s := soffit(0, 3600*mm, profile(0, 2100*mm))
	behind := fixed(2150 * mm)
	s.Behind.CeilingLevel = &behind
	tr := one(t, trimmed(cook(room(wall(3600*mm, 2500*mm, s)), demo(), hung(0, 600*mm, 2120*mm))))
	if tr.Work != TakeDown || tr.Most.CmpLength(50*mm) != 0 {
		t.Errorf("%v takes %v, want 50 mm up to the ceiling behind", tr.Work, tr.Most)
	}
}
