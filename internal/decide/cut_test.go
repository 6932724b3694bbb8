package decide

import (
	"slices"
	"testing"

	"railhead/internal/cabinet"
	"railhead/internal/fit"
	"railhead/internal/hazard"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

func mattersOf(k *kitchen.Kitchen) []*matter {
	found := fit.Check(k)
	return matters(k, found, fit.Rows(k), fit.LowerRow(k, found))
}

// A cut runs over the cabinets in the way and their side clearance, at the top
// line and the headroom; pieces that are too short to hang between two cuts go
// with them, at the higher line.
func TestCuts(t *testing.T) {
	type stretch struct{ from, to, line int }
	cases := []struct {
		name     string
		cabinets []cabinet.Placed
		want     []stretch
	}{
		{"one cabinet in the middle", []cabinet.Placed{wallCabinet("a", 0, 1000, 600, 660)}, []stretch{{997, 1603, 2122}}},
		{"clipped at the ends of the overhead", []cabinet.Placed{wallCabinet("a", 0, 0, 3600, 660)}, []stretch{{0, 3600, 2122}}},
		{"neighbours are one cut", []cabinet.Placed{wallCabinet("a", 0, 600, 600, 660), wallCabinet("b", 0, 1200, 600, 660)}, []stretch{{597, 1803, 2122}}},
		{"a higher neighbour lifts the line", []cabinet.Placed{wallCabinet("a", 0, 600, 600, 900), wallCabinet("b", 0, 1200, 600, 660)}, []stretch{{597, 1803, 2362}}},
		{"a piece under the least run goes too", []cabinet.Placed{wallCabinet("a", 0, 0, 600, 660), wallCabinet("b", 0, 755, 600, 660)}, []stretch{{0, 1358, 2122}}},
		{"a piece of the least run stays", []cabinet.Placed{wallCabinet("a", 0, 0, 600, 660), wallCabinet("b", 0, 756, 600, 660)}, []stretch{{0, 603, 2122}, {753, 1359, 2122}}},
		{"in any order of the plan", []cabinet.Placed{wallCabinet("b", 0, 756, 600, 660), wallCabinet("a", 0, 0, 600, 660)}, []stretch{{0, 603, 2122}, {753, 1359, 2122}}},
		{"cabinets that stand clear are left out", []cabinet.Placed{wallCabinet("a", 0, 0, 600, 660), wallCabinet("b", 0, 2000, 600, 500)}, []stretch{{0, 603, 2122}}},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			k := room(2500, func(k *kitchen.Kitchen) { k.Plan.Cabinets = c.cabinets })
			var got []stretch
			for _, cut := range mattersOf(k)[0].cuts {
				got = append(got, stretch{inMM(cut.from), inMM(cut.to), inMM(cut.line)})
			}
			if !slices.Equal(got, c.want) {
				t.Errorf("cuts %v, want %v", got, c.want)
			}
		})
	}
}

func inMM(l length.Length) int { return int(l / length.Millimetre) }

// Under a sloping soffit the most that comes off and the least that stays are
// each taken where they are.
func TestStripAndStubUnderASlope(t *testing.T) {
	k := room(2500, func(k *kitchen.Kitchen) {
		slope, _ := level.NewProfile([]level.Point{{At: 0, Height: at(2100)}, {At: mm(3600), Height: at(2064)}})
		first(k).Underside = slope
		k.Plan.Cabinets = []cabinet.Placed{wallCabinet("a", 0, 3000, 600, 660)}
		ceiling, _ := level.NewProfile([]level.Point{{At: 0, Height: at(2500)}, {At: mm(3600), Height: at(2464)}})
		k.Room.Walls[0].Ceiling = ceiling
	})
	c := mattersOf(k)[0].cuts[0]
	if c.strip.CmpLength(mm(58)) != 0 || c.stub.CmpLength(mm(342)) != 0 {
		t.Errorf("strip %v, stub %v; want 58 mm off and 342 mm left at the right end", c.strip, c.stub)
	}
}

// The paint of a cut: its underside, the strip of its face and the strip of each
// free end that it reaches.
func TestPaintOfACut(t *testing.T) {
	face := hazard.AreaOf(mm(603), mm(330+22))
	end := hazard.AreaOf(mm(330), mm(22))
	painted := func(o *survey.Overhead) { o.Painted = survey.Yes }
	cases := map[string]struct {
		edit func(*survey.Overhead)
		want hazard.Area
	}{
		"between wall and rest":             {painted, face},
		"a free end is cut too":             {func(o *survey.Overhead) { painted(o); o.Left = survey.EndOpen }, face.Add(end)},
		"a free end that it does not reach": {func(o *survey.Overhead) { painted(o); o.Right = survey.EndOpen }, face},
		"both ends free": {func(o *survey.Overhead) {
			painted(o)
			o.Left, o.Right, o.To = survey.EndOpen, survey.EndOpen, mm(603)
		}, face.Add(end).Add(end)},
		"not painted": {func(*survey.Overhead) {}, hazard.Area{}},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			if got := mattersOf(room(2500, on(c.edit)))[0].ownPaint(); got.SquareFeet() != c.want.SquareFeet() {
				t.Errorf("%s ft², want %s ft²", got.SquareFeet(), c.want.SquareFeet())
			}
		})
	}
}

// A cut that is chosen for a snug cabinet adds to what the room's other cuts disturb.
func TestAChosenCutAddsToTheRoom(t *testing.T) {
	k := room(2500, built(1977), func(k *kitchen.Kitchen) {
		a, b := soffit("s", 0, 0, 1200, 2120), soffit("s2", 0, 1800, 3000, 2100)
		a.Painted, b.Painted = survey.Yes, survey.Yes
		k.Room.Walls[0].Overheads = []survey.Overhead{a, b}
		k.Plan.Cabinets = []cabinet.Placed{wallCabinet("a", 0, 0, 1000, 660), wallCabinet("b", 0, 1900, 1000, 660)}
	})
	ms := mattersOf(k)
	if ms[1].paint.BeyondMinorRepair() || !ms[0].paint.BeyondMinorRepair() {
		t.Errorf("the snug one's cut disturbs %s ft², the needed one's %s ft²", ms[0].paint.SquareFeet(), ms[1].paint.SquareFeet())
	}
}

func TestTallerRowIsRuledByItsTightestCabinet(t *testing.T) {
	slopes := func(k *kitchen.Kitchen) {
		k.Plan.Cabinets = append(k.Plan.Cabinets, wallCabinet("b", 0, 3000, 600, 660))
		ceiling, _ := level.NewProfile([]level.Point{{At: 0, Height: at(2400)}, {At: mm(3600), Height: at(2364)}})
		k.Room.Walls[0].Ceiling = ceiling
	}
	got := mattersOf(room(2500, slopes))[0].taller
	if got.have.CmpLength(mm(2364)) != 0 || got.need != mm(2360) || !got.fits {
		t.Errorf("have %v, need %v, fits %v", got.have, got.need, got.fits)
	}
}

// A cabinet that hangs lower than its row is not exchanged for its own height.
func TestALowCabinetIsNotExchangedForItsOwnHeight(t *testing.T) {
	low := func(k *kitchen.Kitchen) {
		a := &k.Plan.Cabinets[0]
		a.Underside, a.Top, a.OwnLevel = mm(1400), mm(2060), true
	}
	swaps := optionOf(room(2300, low, under(2070)), kitchen.RemoveTaller).Swaps
	if len(swaps) != 1 || swaps[0].Height != mm(900) || swaps[0].Top != mm(2300) {
		t.Errorf("swaps %+v", swaps)
	}
	if swaps := optionOf(room(2299, low, under(2070)), kitchen.RemoveTaller).Swaps; len(swaps) != 0 {
		t.Errorf("a millimetre less: swaps %+v", swaps)
	}
}

// What was seen behind the part on one wall says nothing of the ceiling on the
// wall around the corner.
func TestCeilingSeenBehindCountsOnItsOwnWall(t *testing.T) {
	k := room(2500, func(k *kitchen.Kitchen) {
		addWall(k, 2400, 2350)
		k.Room.Walls[0].Next, k.Room.Walls[1].Prev = 1, 0
		seen := at(2500)
		first(k).Behind = survey.Behind{Ceiling: survey.Yes, CeilingLevel: &seen}
		k.Plan.Cabinets = []cabinet.Placed{wallCabinet("a", 1, 0, 600, 660)}
	})
	if got := mattersOf(k)[0].taller; got.have.CmpLength(mm(2350)) != 0 || got.by != "/survey/walls/1/ceiling" {
		t.Errorf("have %v by %s", got.have, got.by)
	}
}
