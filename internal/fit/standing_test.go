package fit

import (
	"slices"
	"testing"

	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// Tilting up, a carcass on its back: root of H² + D². The first two as printed
// by calculatorultra.com (ceiling height clearance, 4 ft × 3 ft → 5 ft) and
// itemfits.com (formulas, 36 × 80 in → 87.7) (F); the others computed from the
// published formula (C). No code prints a tall cabinet; it is geometry.
func TestTiltsUpOnItsBack(t *testing.T) {
	for _, c := range []struct{ high, deep, diagonal, half string }{
		{"48", "36", "60", "0"},
		{"80", "36", "87.7", "0.05"},
		{"84", "24", "87.361", "0.0005"},
		{"90", "24", "93.145", "0.0005"},
		{"93", "24", "96.047", "0.0005"},
		{"96", "24", "98.955", "0.0005"},
		{"96", "12.5", "96.810", "0.0005"},
	} {
		low, high := inch(t, c.diagonal)-inch(t, c.half), inch(t, c.diagonal)+inch(t, c.half)
		if got := stood(t, inch(t, c.high), inch(t, c.deep), high); got.Verdict != WithLegs || got.Need < low || got.Need > high {
			t.Errorf("%s × %s under %s: %s, needs %s in", c.high, c.deep, high, got.Verdict, got.Need.Inches())
		}
		if got := stood(t, inch(t, c.high), inch(t, c.deep), low-1); got.Verdict == WithLegs {
			t.Errorf("%s × %s gets up under %s", c.high, c.deep, low-1)
		}
	}
}

// Highest carcass under a 96 in ceiling: 94.657 for 16 in, 92.952 for 24 in deep
// (computed from the published formula, C; the depths are those of
// thewoodwhisperer.com, ceiling height clearance and the Pythagorean theorem).
func TestHighestCarcassUnderEightFeet(t *testing.T) {
	for deep, high := range map[string]string{"16": "94.657", "24": "92.952"} {
		if got := stood(t, inch(t, high)-inch(t, "0.001"), inch(t, deep), inch(t, "96")); got.Verdict != WithLegs {
			t.Errorf("%s × %s in: %s", high, deep, got.Verdict)
		}
		if got := stood(t, inch(t, high)+inch(t, "0.001"), inch(t, deep), inch(t, "96")); got.Verdict == WithLegs {
			t.Errorf("a little more than %s × %s in gets up", high, deep)
		}
	}
}

// stood stands a legless carcass up, twice as wide as it is deep.
func stood(t *testing.T, high, deep, ceiling length.Length) *Standing {
	t.Helper()
	k := room(6000 * mm)
	k.System.Legs, k.System.LegTravel = 0, nil
	k.Room.Walls[0].Ceiling = flat(ceiling)
	c := add(k, cabinet.Tall, 0, 0, 2*deep, func(c *cabinet.Placed) {
		c.Depth, c.Height, c.Underside, c.Top = deep, high, 0, high
	})
	got, _ := standing(k, c)
	return got
}

// A 2000 carcass, 400 wide and 600 deep, on legs of 120 that wind in to 90:
// √(2120² + 600²) = 2203.27, √(2120² + 400²) = 2157.40, √(2000² + 400²) = 2039.61;
// it must stand on its shortest legs in the end, 2090, which the need of a tilt does
// not include (geometry, C).
func TestWaysToStandUp(t *testing.T) {
	for _, c := range []struct {
		name    string
		ceiling length.Length
		change  func(*cabinet.Placed)
		want    StandingVerdict
		need    string // of a whole millimetre or cut off to a hundredth
	}{
		{"as it is, with its legs", 2204 * mm, nil, WithLegs, "2203.27"},
		{"passes on its side only", 2203 * mm, nil, OnSide, "2157.4"},
		{"passes with the legs off only", 2157 * mm, nil, LegsAfter, "2039.6"},
		{"legs off, and then just stands", 2090 * mm, nil, LegsAfter, "2039.6"},
		{"does not stand", 2090*mm - 1, nil, StandBlocked, "2090"},
		{"a deep and wide one has to be built upright", 2100 * mm, func(c *cabinet.Placed) { c.To, c.Depth = c.From+700*mm, 700*mm }, Upright, "2090"},
		{"planned upright although it could be tilted", 2500 * mm, func(c *cabinet.Placed) { c.Upright = true }, Upright, "2090"},
	} {
		k := room(3000 * mm)
		k.Room.Walls[0].Ceiling = flat(c.ceiling)
		if c.change == nil {
			c.change = func(*cabinet.Placed) {}
		}
		a := add(k, cabinet.Tall, 0, 600*mm, 400*mm, c.change)
		got, found := standing(k, a)
		need := got.Need.RoundTo(mm/100, length.Down).MM()
		if got.Verdict != c.want || need != c.need || !got.Have.Equal(c.ceiling.Exact()) {
			t.Errorf("%s: %s, needs %s of %s", c.name, got.Verdict, need, got.Have)
		}
		stops := slices.Contains(toldAll(found), "fit.standing.blocked stop need 2090 have 2089.999999")
		if stops != (c.want == StandBlocked) {
			t.Errorf("%s: %q", c.name, toldAll(found))
		}
	}
}

// The room's height is least where ceiling and floor come nearest, which may be
// at a break of either: here 2400 − 30 at 1000.
func TestRoomHeightBetweenSurveyPoints(t *testing.T) {
	k := room(3000 * mm)
	k.Room.Walls[0].Ceiling = line(t, 0, 2450*mm, 2000*mm, 2350*mm, 2000*mm, 2500*mm)
	k.Room.Walls[0].RoomFloor = line(t, 0, 0, 1000*mm, 30*mm, 1500*mm, -40*mm)
	got, _ := standing(k, add(k, cabinet.Tall, 0, 0, 600*mm))
	if !got.Have.Equal((2370 * mm).Exact()) {
		t.Errorf("the room is %s high, want 2370 mm", got.Have)
	}
}

// A soffit over the place is not in the way of tilting, a ceiling lowered over
// the whole place is.
func TestTiltsUnderTheRoomsCeiling(t *testing.T) {
	for depth, want := range map[length.Length]length.Length{330 * mm: 2500 * mm, 2599 * mm: 2500 * mm, 2600 * mm: 2300 * mm} {
		k := room(3000 * mm)
		hang(k, 0, 0, 3000*mm, 0, depth, 2300*mm, func(o *survey.Overhead) { o.Kind = survey.LoweredCeiling })
		if got, _ := standing(k, add(k, cabinet.Tall, 0, 0, 600*mm)); !got.Have.Equal(want.Exact()) {
			t.Errorf("lowered %s deep: %s", depth, got.Have)
		}
	}
}

// A ceiling lowered beside the carcass is not over it.
func TestTiltsUpBesideALoweredCeiling(t *testing.T) {
	k := room(3000 * mm)
	hang(k, 0, 600*mm, 3000*mm, 0, 2600*mm, 2300*mm, func(o *survey.Overhead) { o.Kind = survey.LoweredCeiling })
	hang(k, 0, 0, 300*mm, 0, 2600*mm, 2300*mm, func(o *survey.Overhead) { o.Kind = survey.LoweredCeiling })
	if got, _ := standing(k, add(k, cabinet.Tall, 0, 300*mm, 300*mm)); !got.Have.Equal((2500 * mm).Exact()) {
		t.Errorf("%s", got.Have)
	}
}

// A 2000 carcass with its legs wound in to 90 needs 2090 from the floor.
func TestSlidesIn(t *testing.T) {
	for _, c := range []struct {
		name  string
		given func(*kitchen.Kitchen)
		want  []string
	}{
		{"under a kept soffit with its gap", func(k *kitchen.Kitchen) {
			hang(k, 0, 0, 3000*mm, 0, 600*mm, 2092*mm)
		}, nil},
		{"under a soffit with nothing to spare", func(k *kitchen.Kitchen) {
			hang(k, 0, 0, 3000*mm, 0, 600*mm, 2090*mm)
		}, []string{"fit.standing.slide_in_tight caution need 2090 have 2090"}},
		{"not under a lower soffit that stays", func(k *kitchen.Kitchen) {
			hang(k, 0, 0, 3000*mm, 0, 600*mm, 2089*mm, fixed)
		}, []string{"fit.standing.slide_in stop need 2090 have 2089"}},
		{"not under a lower soffit, which may be cut", func(k *kitchen.Kitchen) {
			hang(k, 0, 0, 3000*mm, 0, 600*mm, 2089*mm)
		}, []string{"fit.standing.slide_in caution need 2090 have 2089"}},
		{"the floor falls away under the soffit", func(k *kitchen.Kitchen) {
			hang(k, 0, 0, 3000*mm, 0, 600*mm, 2085*mm)
			k.Room.Walls[0].Floor = flat(-7 * mm)
		}, nil},
		{"not past a low beam in front", func(k *kitchen.Kitchen) {
			hang(k, 0, 0, 3000*mm, 700*mm, 200*mm, 2050*mm, fixed)
		}, []string{"fit.standing.slide_in stop need 2090 have 2050"}},
		{"legs that do not wind in", func(k *kitchen.Kitchen) {
			hang(k, 0, 0, 3000*mm, 0, 600*mm, 2121*mm)
			k.System.LegTravel = nil
		}, []string{"fit.standing.slide_in_tight caution need 2120 have 2121"}},
	} {
		k := room(3000 * mm)
		c.given(k)
		_, found := standing(k, add(k, cabinet.Tall, 0, 600*mm, 600*mm))
		if got := toldAll(found); !slices.Equal(got, c.want) {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
}

// Legs of 120 wind from 90 to 140; the datum is the floor's highest point.
func TestLegs(t *testing.T) {
	for _, c := range []struct {
		name  string
		given func(*testing.T, *kitchen.Kitchen)
		want  []string
	}{
		{"level floor", func(*testing.T, *kitchen.Kitchen) {}, nil},
		{"the floor falls by what the legs wind out", func(t *testing.T, k *kitchen.Kitchen) {
			k.Room.Walls[0].Floor = line(t, 600*mm, 0, 1200*mm, -20*mm)
		}, nil},
		{"the floor falls by 1 more", func(t *testing.T, k *kitchen.Kitchen) {
			k.Room.Walls[0].Floor = line(t, 600*mm, 0, 1200*mm, -21*mm)
		}, []string{"fit.legs.too_short stop need 141 have 140"}},
		{"it falls further on only", func(t *testing.T, k *kitchen.Kitchen) {
			k.Room.Walls[0].Floor = line(t, 0, 0, 1200*mm, 0, 1800*mm, -50*mm)
		}, nil},
		{"the row is planned too low for the shortest leg", func(t *testing.T, k *kitchen.Kitchen) {
			k.Plan.Cabinets[0].Underside = 89 * mm
		}, []string{"fit.legs.too_long stop need 90 have 89"}},
		{"the row at the shortest leg exactly", func(t *testing.T, k *kitchen.Kitchen) {
			k.Plan.Cabinets[0].Underside = 90 * mm
		}, nil},
		{"a step under the cabinet", func(t *testing.T, k *kitchen.Kitchen) {
			k.Room.Walls[0].Floor = line(t, 0, 0, 900*mm, 0, 900*mm, -12*mm)
		}, []string{"fit.legs.step caution"}},
		{"a step at the cabinet's edge", func(t *testing.T, k *kitchen.Kitchen) {
			k.Room.Walls[0].Floor = line(t, 0, 0, 1200*mm, 0, 1200*mm, -12*mm)
		}, nil},
		{"nobody stated how far the legs wind", func(t *testing.T, k *kitchen.Kitchen) {
			k.Room.Walls[0].Floor = flat(-50 * mm)
			k.System.LegTravel = nil
		}, nil},
	} {
		k := room(3000 * mm)
		add(k, cabinet.Base, 0, 600*mm, 600*mm)
		c.given(t, k)
		if got := toldAll(legs(k, &k.Plan.Cabinets[0])); !slices.Equal(got, c.want) {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
}
