package cabinet

import (
	"slices"
	"strings"
	"testing"

	"railhead/internal/length"
)

func TestHeadroomIsFitGapOrLift(t *testing.T) {
	rail := func(lift, low int) *Rail { return &Rail{Lift: mm(lift), HangerDown: mm(low)} }
	for _, c := range []struct {
		name   string
		s      System
		k      Kind
		need   int
		byLift bool
	}{
		{"the hanger lets it hang low enough", System{FitGap: mm(2), Rail: rail(10, 8)}, Wall, 2, false},
		{"the lift takes more than the fit gap", System{FitGap: mm(2), Rail: rail(10, 4)}, Wall, 6, true},
		{"the hanger hangs lower than the lift", System{FitGap: mm(2), Rail: rail(5, 8)}, Wall, 2, false},
		{"a tall cabinet is not lifted", System{FitGap: mm(2), Rail: rail(20, 0)}, Tall, 2, false},
		{"no rail, no lift", System{FitGap: mm(3)}, Wall, 3, false},
	} {
		need, byLift := c.s.Headroom(c.k)
		if need != mm(c.need) || byLift != c.byLift {
			t.Errorf("%s: %s, by lift %v; want %d, %v", c.name, need, byLift, c.need, c.byLift)
		}
	}
}

func TestBuiltInSystemsAreWhole(t *testing.T) {
	all := BuiltIns()
	if !slices.IsSortedFunc(all, func(a, b BuiltInSystem) int { return strings.Compare(a.ID, b.ID) }) {
		t.Error("built-in systems are listed in order of id")
	}
	for _, b := range all {
		if b.Says == "" || b.Source == "" || b.System.ID != b.ID {
			t.Errorf("%s lacks words, a source or its id", b.ID)
		}
		if found, ok := BuiltIn(b.ID); !ok || found.ID != b.ID {
			t.Errorf("%s is not found by its id", b.ID)
		}
		for _, k := range []Kind{Wall, Tall, Base} {
			s := b.System.Sizes(k)
			for _, list := range [][]length.Length{s.Heights, s.Widths, s.Depths} {
				if len(list) == 0 || list[0] <= 0 || !slices.IsSorted(list) || len(slices.Compact(slices.Clone(list))) != len(list) {
					t.Errorf("%s: a list of %s sizes is empty, out of order or repeats itself: %v", b.ID, k, list)
				}
			}
		}
	}
	if _, ok := BuiltIn("nobody's"); ok {
		t.Error("an unknown id was found")
	}
}

// Corner cabinets are sold as wide along one wall as along the other, blind ones by their own wall; base ones have legs of
// 900 mm, or of 33 and 36 in, wall ones of 600 and 650 mm or of 24 in (common practice, no source). A leg is longer than
// the other one is deep.
func TestBuiltInCornersHaveTwoLegs(t *testing.T) {
	for _, b := range BuiltIns() {
		for _, k := range []Kind{Wall, Tall, Base} {
			s, seen := b.System.Sizes(k), map[CornerSize]bool{}
			for i, c := range s.Corners {
				legs := c.Shape == CornerBlind && c.OtherWidth == 0 || c.Shape != CornerBlind && c.OtherWidth == c.Width
				if !legs || c.Width <= s.Depths[0] || seen[c] {
					t.Errorf("%s: %s corner %d is no corner cabinet, or stands twice: %+v", b.ID, k, i, c)
				}
				seen[c] = true
			}
		}
		if n := len(b.System.Base.Corners) * len(b.System.Wall.Corners); n == 0 || len(b.System.Tall.Corners) > 0 {
			t.Errorf("%s: corner cabinets are of base and wall rows", b.ID)
		}
	}
	metric, _ := BuiltIn("frameless-metric")
	inch, _ := BuiltIn("face-frame-inch")
	for name, c := range map[string]struct {
		list []CornerSize
		want CornerSize
	}{
		"900 base l":     {metric.System.Base.Corners, CornerSize{CornerL, mm(900), mm(900)}},
		"600 wall diag.": {metric.System.Wall.Corners, CornerSize{CornerDiagonal, mm(600), mm(600)}},
		"36 in base l":   {inch.System.Base.Corners, CornerSize{CornerL, 36 * length.Inch, 36 * length.Inch}},
		"42 in blind":    {inch.System.Base.Corners, CornerSize{CornerBlind, 42 * length.Inch, 0}},
		"24 in diagonal": {inch.System.Wall.Corners, CornerSize{CornerDiagonal, 24 * length.Inch, 24 * length.Inch}},
	} {
		if !slices.Contains(c.list, c.want) {
			t.Errorf("%s: not in %+v", name, c.list)
		}
	}
}

// The invented system: the 660 row tops out at 2120 = 120 + 2000, the 900 row at 2360 (the trade model's own example).
func TestDemoRailRows(t *testing.T) {
	b, _ := BuiltIn("demo-rail")
	s := b.System
	for _, c := range []struct{ wall, tall, top int }{{500, 1840, 1960}, {660, 2000, 2120}, {900, 2240, 2360}} {
		if s.WallUnderside+mm(c.wall) != mm(c.top) || s.Legs+mm(c.tall) != mm(c.top) {
			t.Errorf("%d and %d do not both end at %d", c.wall, c.tall, c.top)
		}
		if !slices.Contains(s.Wall.Heights, mm(c.wall)) || !slices.Contains(s.Tall.Heights, mm(c.tall)) {
			t.Errorf("%d or %d is not made", c.wall, c.tall)
		}
	}
	if edge := mm(2120) - s.Rail.Drop; edge != mm(2056) {
		t.Errorf("rail lower edge at %s, want 2056", edge)
	}
}

// Inch sizes stack: 36 counter + 18 + 30 = 84, and with 42 the row ends at 96 (computed from common trade sizes; counter
// to wall cabinet 15 to 18 in from a state extension service's guidelines, status F).
func TestFaceFrameSizesStack(t *testing.T) {
	b, _ := BuiltIn("face-frame-inch")
	s, in := b.System, length.Inch
	counter := s.Legs + s.Base.Heights[0] + s.Counter
	if counter != 36*in || s.WallUnderside-counter != 18*in {
		t.Errorf("counter at %s, wall cabinets at %s; want 36 in and 18 in above it", counter, s.WallUnderside)
	}
	for i, wall := range []length.Length{30 * in, 36 * in, 42 * in} {
		top := s.WallUnderside + wall
		if top != s.Legs+s.Tall.Heights[i] || !slices.Contains(s.Wall.Heights, wall) {
			t.Errorf("wall cabinets of %s end at %s, tall ones at %s", wall, top, s.Legs+s.Tall.Heights[i])
		}
	}
	if top := s.WallUnderside + 42*in; top.MM() != "2438.4" {
		t.Errorf("the 42 in row ends at %s, want 96 in = 2438.4 mm", top)
	}
}

// EN 1116 (from memory): base cabinets of 820, 870 or 920 mm with a plinth of 100 mm or more, wall cabinets at most 400 mm
// deep. Metric data sheet of kitchen sizes (status F): widths 300 to 1200, wall depths 300 to 350, wall heights 400 to 700,
// base depth 600.
func TestFramelessSizesFollowTheStandard(t *testing.T) {
	b, _ := BuiltIn("frameless-metric")
	s := b.System
	for i, want := range []int{820, 870, 920} {
		if got := s.Legs + s.Base.Heights[i]; got != mm(want) {
			t.Errorf("base cabinet %d is %s high with its plinth, want %d", i, got, want)
		}
	}
	if s.Legs-s.LegTravel.Down < mm(100) {
		t.Error("the plinth gets lower than 100")
	}
	if !slices.Equal(s.Base.Widths, sizes(mm(1), 300, 400, 500, 600, 800, 1000, 1200)) {
		t.Errorf("widths %v", s.Base.Widths)
	}
	heights := s.Wall.Heights
	if heights[0] != mm(400) || heights[len(heights)-1] != mm(700) || s.Base.Depths[0] != mm(600) {
		t.Errorf("wall heights %v, base depth %v", heights, s.Base.Depths)
	}
	if d := s.Wall.Depths[0]; d < mm(300) || d > mm(350) {
		t.Errorf("wall depth %s", d)
	}
	for i, tall := range s.Tall.Heights {
		if top := s.WallUnderside + heights[len(heights)-2+i]; top != s.Legs+tall {
			t.Errorf("tall cabinets of %s end at %s, the row at %s", tall, s.Legs+tall, top)
		}
	}
}
