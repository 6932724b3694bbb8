package decide

import (
	"slices"
	"testing"

	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

func codesOf(o Option) []string {
	var out []string
	for _, g := range o.Gates {
		out = append(out, g.Code)
	}
	return out
}

// optionOf is one option of the room's first group.
func optionOf(k *kitchen.Kitchen, o kitchen.Option) Option {
	return of(decided(k).Overheads[0].Options, o)
}

// What stands in front of each option. That bearing, solid and beam parts are
// never cut, and that a duct box stays with its hood, is common practice, no
// source.
func TestGates(t *testing.T) {
	free := under(2122)
	cases := []struct {
		name     string
		ceiling  int
		option   kitchen.Option
		possible bool
		gates    []string
		edits    []func(*kitchen.Kitchen)
	}{
		{"a plain framed soffit may be trimmed", 2500, kitchen.Trim, true, nil, nil},
		{"keeping needs nobody's leave", 2500, kitchen.Keep, true, nil, []func(*kitchen.Kitchen){on(unknown)}},
		{"nothing hangs lower than the cabinets need", 2500, kitchen.Trim, false, []string{gateNothingToTake}, []func(*kitchen.Kitchen){free}},
		{"a snug cabinet leaves something to take, if chosen", 2500, kitchen.Trim, true, nil, []func(*kitchen.Kitchen){under(2121)}},
		{"a cut up to the ceiling", 2122, kitchen.Trim, false, []string{gateReachesCeiling}, nil},
		{"a stub too thin to build", 2171, kitchen.Trim, false, []string{gateStubTooThin}, nil},
		{"nothing to open", 2500, kitchen.OpenPart, false, []string{gateNothingToTake}, []func(*kitchen.Kitchen){free}},
		{"a part that the planner chose may be opened", 2500, kitchen.OpenPart, true, nil, []func(*kitchen.Kitchen){free, chosePart}},
		{"too little left beside the opening", 2500, kitchen.OpenPart, false, []string{gateRestTooShort}, []func(*kitchen.Kitchen){over(0, 700)}},
		{"no cabinet to exchange for a taller one", 2500, kitchen.RemoveTaller, false, []string{gateNoCabinets}, []func(*kitchen.Kitchen){noCabinets}},
		{"already the tallest row", 3000, kitchen.RemoveTaller, false, []string{gateNoTallerRow}, []func(*kitchen.Kitchen){tallestRow}},
		{"the taller row is too high for the ceiling", 2359, kitchen.RemoveTaller, false, []string{gateCeilingShort}, nil},
		{"a lower overhead beside it keeps the taller row out", 2500, kitchen.RemoveTaller, false, []string{gateCeilingShort}, []func(*kitchen.Kitchen){lowBeam}},
		{"the ceiling seen behind it is lower", 2500, kitchen.RemoveTaller, false, []string{gateCeilingShort}, []func(*kitchen.Kitchen){behind(2350)}},
		{"the ceiling seen behind it is higher", 2300, kitchen.RemoveTaller, true, nil, []func(*kitchen.Kitchen){behind(2360)}},
		{"bearing: not cut", 2500, kitchen.Trim, false, []string{gateBearing}, []func(*kitchen.Kitchen){on(cannot(survey.Soffit, survey.Bearing))}},
		{"bearing: down only with an engineer", 2500, kitchen.RemoveOpen, false, []string{gateBearing}, []func(*kitchen.Kitchen){on(cannot(survey.Soffit, survey.Bearing))}},
		{"solid", 2500, kitchen.OpenPart, false, []string{gateSolid}, []func(*kitchen.Kitchen){on(cannot(survey.Soffit, survey.Solid))}},
		{"beam", 2500, kitchen.Trim, false, []string{gateBeam}, []func(*kitchen.Kitchen){on(cannot(survey.Beam, survey.Framed))}},
		{"a beam that the survey says may be cut is boxed air", 2500, kitchen.Trim, true, nil, []func(*kitchen.Kitchen){on(func(o *survey.Overhead) { o.Kind = survey.Beam })}},
		{"unknown structure is a question", 2500, kitchen.RemoveClose, true, []string{gateUnknown}, []func(*kitchen.Kitchen){on(unknown)}},
		{"asked to ask", 2500, kitchen.Trim, true, []string{gateAskFirst}, []func(*kitchen.Kitchen){on(func(o *survey.Overhead) { o.MayCut = survey.CutAsk })}},
		{"gas inside", 2500, kitchen.RemoveClose, false, []string{gateGas}, []func(*kitchen.Kitchen){on(gasLine)}},
		{"sprinkler line inside", 2500, kitchen.OpenPart, false, []string{gateSprinkler}, []func(*kitchen.Kitchen){holding(survey.Sprinkler, 2400, survey.MovableEasily)}},
		{"an immovable stack over the cut is in the way of taking it down", 2500, kitchen.RemoveOpen, false, []string{gateImmovable}, []func(*kitchen.Kitchen){holding(survey.PipeRun, 2300, survey.NotMovable)}},
		{"the same stack is in the way of opening the part it runs in", 2500, kitchen.OpenPart, false, []string{gateImmovable}, []func(*kitchen.Kitchen){holding(survey.PipeRun, 2300, survey.NotMovable)}},
		{"but not of opening a part beside it", 2500, kitchen.OpenPart, true, nil, []func(*kitchen.Kitchen){holding(survey.PipeRun, 2300, survey.NotMovable), choseBeside}},
		{"an immovable pipe beside the cut is left alone", 2500, kitchen.Trim, true, nil, []func(*kitchen.Kitchen){holding(survey.PipeRun, 2110, survey.NotMovable), cabinetAt(304)}},
		{"a pipe at the end of the cut is in its way", 2500, kitchen.Trim, false, []string{gateImmovable}, []func(*kitchen.Kitchen){holding(survey.PipeRun, 2110, survey.NotMovable), cabinetAt(303)}},
		{"a pipe from where the cut ends is in its way", 2500, kitchen.Trim, false, []string{gateImmovable}, []func(*kitchen.Kitchen){holding(survey.PipeRun, 2110, survey.NotMovable), narrow(97)}},
		{"a pipe from beyond the cut is not", 2500, kitchen.Trim, true, nil, []func(*kitchen.Kitchen){holding(survey.PipeRun, 2110, survey.NotMovable), narrow(96)}},
		{"what the old cabinets carry cannot stay", 2500, kitchen.Keep, false, []string{gateGoesAnyhow}, []func(*kitchen.Kitchen){on(carried)}},
		{"nor is there anything to trim", 2500, kitchen.Trim, false, []string{gateNothingToTake}, []func(*kitchen.Kitchen){on(carried)}},
		{"a local rule presumes asbestos to its own year", 2500, kitchen.Trim, true, []string{gateAsbestosLocal}, []func(*kitchen.Kitchen){built(1993), on(textured), local(survey.Local{AsbestosTo: 1993})}},
		{"a local rule ends with its year", 2500, kitchen.Trim, true, nil, []func(*kitchen.Kitchen){built(1994), on(textured), local(survey.Local{AsbestosTo: 1993})}},
		{"a local rule on paint lets a small cut pass", 2500, kitchen.Trim, true, nil, []func(*kitchen.Kitchen){built(1961), on(paintedYes), local(survey.Local{LeadBefore: 1962, LeadArea: 213})}},
		{"0.603 x (0.33 + 0.022) = 0.212256 m2 is beyond 0.212", 2500, kitchen.Trim, true, []string{gateLeadLocal}, []func(*kitchen.Kitchen){built(1961), on(paintedYes), local(survey.Local{LeadBefore: 1962, LeadArea: 212})}},
		{"taking painted parts down is never minor, by a local rule too", 2500, kitchen.RemoveOpen, true, []string{gateLeadLocal}, []func(*kitchen.Kitchen){built(1961), on(paintedYes), local(survey.Local{LeadBefore: 1962, LeadArea: 9000})}},
		{"the hood stays: so does its box", 2500, kitchen.Move, false, []string{gateHoodStays}, []func(*kitchen.Kitchen){on(ductBox), hood(false)}},
		{"the hood stays: its box is not taken down", 2500, kitchen.RemoveOpen, false, []string{gateHoodStays}, []func(*kitchen.Kitchen){on(ductBox), hood(false)}},
		{"the hood moves: so may its box", 2500, kitchen.Move, true, nil, []func(*kitchen.Kitchen){on(ductBox), hood(true)}},
		{"nobody knows what the box serves", 2500, kitchen.Move, true, []string{gateDuctServes}, []func(*kitchen.Kitchen){on(ductBox)}},
		{"a box that was opened and is empty serves nothing", 2500, kitchen.Move, true, nil, []func(*kitchen.Kitchen){on(func(o *survey.Overhead) { o.Kind = survey.DuctBox }), empty}},
		{"one whose duct is described is not empty", 2500, kitchen.Move, true, []string{gateDuctServes}, []func(*kitchen.Kitchen){on(ductBox), empty}},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			got := optionOf(room(c.ceiling, c.edits...), c.option)
			if got.Possible != c.possible || !slices.Equal(codesOf(got), c.gates) {
				t.Errorf("possible %v behind %v; want %v behind %v", got.Possible, codesOf(got), c.possible, c.gates)
			}
		})
	}
}

func chosePart(k *kitchen.Kitchen) {
	k.Choices["s"] = kitchen.Choice{Option: kitchen.OpenPart, Spans: []survey.WallSpan{{From: 0, To: mm(800)}}}
}

func choseBeside(k *kitchen.Kitchen) {
	k.Choices["s"] = kitchen.Choice{Option: kitchen.OpenPart, Spans: []survey.WallSpan{{From: mm(301), To: mm(800)}}}
}

func cabinetAt(from int) func(*kitchen.Kitchen) {
	return func(k *kitchen.Kitchen) { k.Plan.Cabinets[0] = wallCabinet("a", 0, from, 600, 660) }
}

func narrow(width int) func(*kitchen.Kitchen) {
	return func(k *kitchen.Kitchen) { k.Plan.Cabinets[0] = wallCabinet("a", 0, 0, width, 660) }
}

func tallestRow(k *kitchen.Kitchen) { k.Plan.Cabinets[0] = wallCabinet("a", 0, 0, 600, 900) }

// lowBeam crosses the cabinet in front of the soffit.
// local is a rule on old materials that the request gives.
func local(l survey.Local) func(*kitchen.Kitchen) {
	return func(k *kitchen.Kitchen) { k.Room.Local = l }
}

func paintedYes(o *survey.Overhead) { o.Painted = survey.Yes }

func lowBeam(k *kitchen.Kitchen) {
	b := soffit("b", 0, 0, 3600, 2200)
	b.Kind, b.Structure, b.MayCut = survey.Beam, survey.Solid, survey.CutNo
	b.Out, b.Depth = mm(330), mm(200)
	k.Room.Walls[0].Overheads = append(k.Room.Walls[0].Overheads, b)
}

func behind(ceiling int) func(*kitchen.Kitchen) {
	return on(func(o *survey.Overhead) {
		seen := at(ceiling)
		o.Behind = survey.Behind{Ceiling: survey.Yes, CeilingLevel: &seen}
	})
}

func carried(o *survey.Overhead) { o.Kind, o.Carrier = survey.ClosedGap, survey.CarriedByOldCabinets }

// An engineer can have a bearing part taken down, but nobody trims it.
func TestOnlyTheEngineerTakesDownWhatBears(t *testing.T) {
	for _, o := range []kitchen.Option{kitchen.Trim, kitchen.OpenPart, kitchen.RemoveClose, kitchen.RemoveOpen} {
		for _, edit := range []func(*survey.Overhead){
			cannot(survey.Soffit, survey.Bearing), cannot(survey.Soffit, survey.Solid), cannot(survey.Beam, survey.Solid),
		} {
			gates := optionOf(room(2500, on(edit)), o).Gates
			if last := gates[len(gates)-1]; last.Licensed != o.TakesDown() {
				t.Errorf("%v: %s open to the engineer: %v", o, last.Code, last.Licensed)
			}
		}
	}
}

// A gate points at what it is about.
func TestAsbestosGatePointsAtTheSurface(t *testing.T) {
	for want, edit := range map[string]func(*survey.Overhead){
		"/survey/walls/0/overheads/0/textured": textured,
		"/survey/walls/0/overheads/0/finish":   func(o *survey.Overhead) { o.Finish = "plaster" },
	} {
		if got := optionOf(room(2500, built(1980), on(edit)), kitchen.Trim).Gates[0].Pointer; got != want {
			t.Errorf("points at %s, want %s", got, want)
		}
	}
}

// The duct box is the only thing that can be moved elsewhere.
func TestOnlyADuctBoxMoves(t *testing.T) {
	if o := optionOf(room(2500), kitchen.Move); len(decided(room(2500)).Overheads[0].Options) != 6 || o.Possible {
		t.Error("a soffit can be moved")
	}
	if n := len(decided(room(2500, on(ductBox))).Overheads[0].Options); n != 7 {
		t.Errorf("a duct box has %d options, want 7", n)
	}
}

// 40 CFR 745.83 (F, seen in the published guidance on minor repair): housing
// built before 1978; up to 6 ft² in a room is minor repair, the whole area of
// what is removed counts, and demolition of painted surfaces never is. 29 CFR
// 1926.1101 (F): surfacing material in buildings of 1980 or older.
func TestHealthGates(t *testing.T) {
	us, none, unsaid := code(survey.CodeUSIRC), code(survey.CodeNone), code(survey.CodeUnspecified)
	painted := on(func(o *survey.Overhead) { o.Painted = survey.Yes })
	maybe := on(func(o *survey.Overhead) { o.Painted = survey.Unknown })
	plaster := on(func(o *survey.Overhead) { o.Finish = "plaster" })
	cleared := func(k *kitchen.Kitchen) { k.Room.Cleared = survey.Cleared{Asbestos: true, Lead: true} }
	cases := []struct {
		name  string
		o     kitchen.Option
		gates []string
		edits []func(*kitchen.Kitchen)
	}{
		{"1977, painted, long cut", kitchen.Trim, []string{gateLeadArea}, []func(*kitchen.Kitchen){us, built(1977), painted, longRun}},
		{"1978, painted, long cut", kitchen.Trim, nil, []func(*kitchen.Kitchen){us, built(1978), painted, longRun}},
		{"1977, perhaps painted", kitchen.Trim, []string{gateLeadArea}, []func(*kitchen.Kitchen){us, built(1977), maybe, longRun}},
		{"1977, not painted", kitchen.Trim, nil, []func(*kitchen.Kitchen){us, built(1977), longRun}},
		{"1977, tested", kitchen.Trim, nil, []func(*kitchen.Kitchen){us, built(1977), painted, longRun, cleared}},
		{"1977, a cut within minor repair", kitchen.Trim, nil, []func(*kitchen.Kitchen){us, built(1977), painted}},
		{"1977, as small, taken down", kitchen.RemoveOpen, []string{gateLeadDemolition}, []func(*kitchen.Kitchen){us, built(1977), painted, over(0, 600)}},
		{"1977, code set unsaid: a US year as a warning", kitchen.Trim, []string{gateLeadCode}, []func(*kitchen.Kitchen){unsaid, built(1977), painted}},
		{"1978, code set unsaid", kitchen.Trim, nil, []func(*kitchen.Kitchen){unsaid, built(1978), painted, longRun}},
		{"1977, no code set known here", kitchen.Trim, nil, []func(*kitchen.Kitchen){none, built(1977), painted, longRun}},
		{"year unknown, painted: the year first", kitchen.Trim, []string{gateLeadYear}, []func(*kitchen.Kitchen){us, built(0), painted, longRun}},
		{"1980, textured", kitchen.Trim, []string{gateAsbestos}, []func(*kitchen.Kitchen){us, built(1980), on(textured)}},
		{"1981, textured", kitchen.Trim, nil, []func(*kitchen.Kitchen){us, built(1981), on(textured)}},
		{"1980, plaster", kitchen.RemoveClose, []string{gateAsbestos}, []func(*kitchen.Kitchen){us, built(1980), plaster}},
		{"1980, plain wallboard is not on the presumed list", kitchen.Trim, nil, []func(*kitchen.Kitchen){us, built(1980)}},
		{"1980, textured, tested", kitchen.Trim, nil, []func(*kitchen.Kitchen){us, built(1980), on(textured), cleared}},
		{"year unknown, textured", kitchen.Trim, []string{gateAsbestosYear}, []func(*kitchen.Kitchen){us, built(0), on(textured)}},
		{"1980, textured, code set unsaid", kitchen.Trim, []string{gateAsbestosCode}, []func(*kitchen.Kitchen){unsaid, built(1980), on(textured)}},
		{"1980, textured, no code set known here", kitchen.Trim, nil, []func(*kitchen.Kitchen){none, built(1980), on(textured)}},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			got := optionOf(room(2500, c.edits...), c.o)
			if !got.Possible || !slices.Equal(codesOf(got), c.gates) {
				t.Errorf("possible %v behind %v; want possible behind %v", got.Possible, codesOf(got), c.gates)
			}
		})
	}
}

// longRun fills the wall with cabinets, so that the cut is far over 6 ft².
func longRun(k *kitchen.Kitchen) {
	for from := 600; from < 3600; from += 600 {
		k.Plan.Cabinets = append(k.Plan.Cabinets, wallCabinet("w"+count(from), 0, from, 600, 660))
	}
}

// A cut that takes exactly 24 in × 36 in of paint is 6 ft² and still minor; an
// inch more is not (C: 864 in² and 888 in²).
func TestSixSquareFeetOfASoffit(t *testing.T) {
	take := func(run length.Length) *kitchen.Kitchen {
		return room(2500, built(1977), func(k *kitchen.Kitchen) {
			o := first(k)
			o.Painted = survey.Yes
			o.To = run // cut from end to end, between walls
			o.Depth = 24*length.Inch - mm(22)
			k.Plan.Cabinets[0].To = run
		})
	}
	for name, c := range map[string]struct {
		run   length.Length
		gated bool
	}{
		"24 in by 36 in": {36 * length.Inch, false},
		"24 in by 37 in": {37 * length.Inch, true},
	} {
		t.Run(name, func(t *testing.T) {
			if got := len(optionOf(take(c.run), kitchen.Trim).Gates) > 0; got != c.gated {
				t.Errorf("gated %v, want %v", got, c.gated)
			}
		})
	}
}

// Everything disturbed in one room is one job (40 CFR 745.83): two cuts that are
// minor each are not minor together.
func TestTwoSmallCutsInOneRoom(t *testing.T) {
	k := room(2500, built(1977), func(k *kitchen.Kitchen) {
		a, b := soffit("s", 0, 0, 1200, 2100), soffit("s2", 0, 1800, 3000, 2100)
		a.Painted, b.Painted = survey.Yes, survey.Yes
		k.Room.Walls[0].Overheads = []survey.Overhead{a, b}
		k.Plan.Cabinets = []cabinet.Placed{wallCabinet("a", 0, 0, 1000, 660), wallCabinet("b", 0, 1900, 1000, 660)}
	})
	if got := codesOf(optionOf(k, kitchen.Trim)); !slices.Equal(got, []string{gateLeadArea}) {
		t.Errorf("gates %v", got)
	}
}

func TestSwaps(t *testing.T) {
	type swap struct {
		id          string
		height, top int
	}
	tall := func(k *kitchen.Kitchen) {
		k.Plan.Cabinets = append(k.Plan.Cabinets, tallCabinet("t", 0, 3000, 600, 2000))
	}
	short := func(k *kitchen.Kitchen) {
		k.Plan.Cabinets = append(k.Plan.Cabinets, wallCabinet("b", 0, 600, 600, 500))
	}
	noTall := func(k *kitchen.Kitchen) { k.System.Tall.Heights = nil }
	cases := []struct {
		name   string
		option kitchen.Option
		edits  []func(*kitchen.Kitchen)
		want   []swap
	}{
		{"wall and tall cabinets go up together", kitchen.RemoveTaller, []func(*kitchen.Kitchen){tall}, []swap{{"a", 900, 2360}, {"t", 2240, 2360}}},
		{"a row without a tall height is no row for a tall cabinet", kitchen.RemoveTaller, []func(*kitchen.Kitchen){tall, noTall}, nil},
		{"a cabinet below the row stays", kitchen.RemoveTaller, []func(*kitchen.Kitchen){short}, []swap{{"a", 900, 2360}}},
		{"kept: each cabinet in the way gets the tallest that stands clear", kitchen.Keep, []func(*kitchen.Kitchen){tall, short}, []swap{{"a", 500, 1960}, {"t", 1840, 1960}}},
		{"kept: the next lower one may be squeezed in", kitchen.Keep, []func(*kitchen.Kitchen){under(1960)}, []swap{{"a", 500, 1960}}},
		{"kept: no height of the system helps", kitchen.Keep, []func(*kitchen.Kitchen){under(1700)}, nil},
		{"kept: nothing in the way", kitchen.Keep, []func(*kitchen.Kitchen){under(2120)}, nil},
		{"trimmed: the plan stays", kitchen.Trim, []func(*kitchen.Kitchen){tall}, nil},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			var got []swap
			for _, s := range optionOf(room(2500, c.edits...), c.option).Swaps {
				got = append(got, swap{s.Cabinet.ID, int(s.Height / length.Millimetre), int(s.Top / length.Millimetre)})
			}
			if !slices.Equal(got, c.want) {
				t.Errorf("swaps %v, want %v", got, c.want)
			}
		})
	}
}

// Of several rows that would fit the tallest is worth the work: it leaves the
// least gap.
func TestTheTallestRowThatFits(t *testing.T) {
	short := func(k *kitchen.Kitchen) { k.Plan.Cabinets[0] = wallCabinet("a", 0, 0, 600, 340) }
	for ceiling, want := range map[int]length.Length{2500: mm(900), 2359: mm(660), 2119: mm(500)} {
		k := room(ceiling, short, under(1850))
		if got := optionOf(k, kitchen.RemoveTaller).Swaps; len(got) != 1 || got[0].Height != want {
			t.Errorf("ceiling %d: %v, want %v", ceiling, got, want)
		}
	}
}
