package takeoff

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// lShape is a soffit around the corner of two walls of 3 m and 2 m, 330 deep and 300
// high. The second part begins at the corner or in front of the first.
func lShape(from int) *kitchen.Kitchen {
	a, b := soffit(0, 3000, flat(2100)), soffit(from, 2000, flat(2100))
	a.ID, b.ID = "a", "b"
	a.Right, b.Left = survey.EndCorner, survey.EndCorner
	return cook(corner(wall(3000, 2400, a), wall(2000, 2400, b)))
}

// Seen from below 3 × 0.33 + 1.67 × 0.33 = 1.5411; the faces end in the inside
// corner, 2.67 × 0.30 + 1.67 × 0.30 = 1.302: board off 2.8431.
//
//	patch  ceiling 1.5411, edge 4.34 × 0.15 = 0.651, walls 3 × 0.30 + 2 × 0.30 = 1.5,
//	       walls at the two outer ends 0.198                              3.8901
//	paint  1.5411 + 4.34 × 0.30 = 1.302, walls 1.698                      4.5411
func TestAroundAnInsideCorner(t *testing.T) {
	for name, from := range map[string]int{"both parts fill the corner": 0, "the second begins before the first": 330} {
		wantNear(t, name, take(lShape(from), kitchen.RemoveOpen).Items, map[Work]float64{BoardOff: 2.8431, Patch: 3.8901, Paint: 4.5411})
	}
}

// The corner's square is framed once and carried out once. Framing by the trade
// model's hangers every 400: 3 × 3 + 9 × (0.33 + 0.30) = 14.67, and 3 × 1.67 +
// 6 × 0.63 = 8.79: 23.46 m; debris 2.8431 × 0.0125 × 2.5 m3 of board and
// 23.46 × 0.038 × 0.038 × 3 m3 of wood, 190.476 l, of 24.344 + 16.938 kg. Solid, it
// is 1.5411 × 0.30 × 1.5 m3, 693.495 l, of 924.66 kg and 2.8431 m2 of board.
func TestFramingOfACornerCountsOnce(t *testing.T) {
	for _, from := range []int{0, 330} {
		k := lShape(from)
		wantNear(t, "framed", take(k, kitchen.RemoveOpen).Items, map[Work]float64{FrameOff: 23.46, Waste: 190.476, WasteMass: 41.282})
		for w := range k.Room.Walls {
			k.Room.Walls[w].Overheads[0].Structure = survey.Solid
		}
		wantNear(t, "solid", take(k, kitchen.RemoveOpen).Items, map[Work]float64{FrameOff: 0, Waste: 693.495 + 88.847, WasteMass: 924.66 + 24.344})
	}
}

// Parts of the same soffit opened: what is in the corner's square is the first part's,
// 0.30 high, whichever is opened there: common practice, no source. Between ends a part
// has a hanger every 0.40:
//
//	only the second   square 3 × 0.33 + 0.825 × 0.63 = 1.50975, own 3 × 1.67 + 6 × 0.63
//	                  = 8.79                                              10.29975
//	and 0.90 of the   3 × 0.90 + 2.25 × 0.63 = 4.1175; of the square 0.10 is left to
//	first, 0.23 of    the second, 3 × 0.10 + 0.25 × 0.63 = 0.4575, and its own 8.79
//	the square                                                            13.365
//	and all of the    3 × 2.67 + 6.675 × 0.63 = 12.21525, and 10.29975
//	first before it                                                       22.515
//	and all of it                                                         23.46
func TestPartsOpenedInACorner(t *testing.T) {
	second := survey.WallSpan{Wall: 1, To: 2000 * mm}
	for _, c := range []struct {
		name     string
		from, to int // of the first that is opened
		frame    float64
	}{
		{"only the second", 0, 0, 10.29975},
		{"some of the first, into the corner", 2000, 2900, 13.365},
		{"the first up to the corner", 0, 2670, 22.515},
		{"all of both", 0, 3000, 23.46},
	} {
		k := lShape(0)
		first := survey.WallSpan{From: length.Length(c.from) * mm, To: length.Length(c.to) * mm}
		wantNear(t, c.name, take(k, kitchen.OpenPart, first, second).Items, map[Work]float64{FrameOff: c.frame})
	}
}

// A solid corner told with two undersides is as high as its first part, whichever comes
// down there. Only the second opened, 0.40 high: 1.67 × 0.33 × 0.40 = 0.22044 m3, and in
// the square 0.33 × 0.33 × 0.30 = 0.03267, loose × 1.5: 379.665 l. Both removed: 3 × 0.33
// × 0.30 = 0.297 and 0.22044, 776.16 l.
func TestCornerToldWithTwoUndersides(t *testing.T) {
	k := lShape(0)
	for w := range k.Room.Walls {
		o := &k.Room.Walls[w].Overheads[0]
		o.Structure, o.Finish = survey.Solid, "none"
	}
	k.Room.Walls[1].Overheads[0].Underside = flat(2000)
	wantNear(t, "only the second", take(k, kitchen.OpenPart, survey.WallSpan{Wall: 1, To: 2000 * mm}).Items, map[Work]float64{Waste: 379.665})
	wantNear(t, "both", take(k, kitchen.RemoveOpen).Items, map[Work]float64{Waste: 776.16})
}

// However a soffit around a corner is told, with its second part from the corner or
// from the first's face on, the same work is measured; only the second wall's own
// place in the corner is boarded for the rail where that part says that it is there.
func TestHoweverACornerIsTold(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		o := rapid.SampledFrom([]kitchen.Option{kitchen.Trim, kitchen.RemoveOpen, kitchen.RemoveClose}).Draw(t, "option")
		structure := rapid.SampledFrom([]survey.Structure{survey.Framed, survey.Solid}).Draw(t, "structure")
		under, edge := drawn(t, "underside", 2000, 2130), drawn(t, "from", 400, 1200)
		told := func(from int) []Item {
			k := lShape(from)
			for w := range k.Room.Walls {
				o := &k.Room.Walls[w].Overheads[0]
				o.Structure, o.Underside = structure, flat(under)
			}
			k = cook(k.Room.Walls, hung(0, 0, 3000, 2120), hung(1, edge, 2000, 2120))
			return take(k, o).Items
		}
		works := slices.DeleteFunc(Works(), func(w Work) bool { return w == BackingBoard })
		same(t, o.String(), told(0), told(330), works)
	})
}

// wantNear compares quantities of two parts, of which each rounds by itself.
func wantNear(t *testing.T, name string, items []Item, want map[Work]float64) {
	t.Helper()
	q := quantities(items)
	for _, w := range Works() {
		if v, named := want[w]; named {
			if err := near(q[w], v, 0.001); err != nil {
				t.Errorf("%s: %s %v", name, w, err)
			}
		}
	}
	for _, i := range items {
		reworked(t, i)
	}
}

// Cabinets in the corner: along the first wall up to 2640, and on the second, whose
// 360 fill the corner: their flank closes the first panel's end.
func TestPanelsAroundACorner(t *testing.T) {
	k := lShape(0)
	k = cook(k.Room.Walls, hung(0, 0, 2640, 2120), hung(1, 0, 2000, 2120))
	// 2.64 × 0.28 + 2 × 0.28; nothing of ceiling and walls is left to be seen but
	// the old edge, 2.67 + 1.67 long
	wantNear(t, "panels", take(k, kitchen.RemoveClose).Items, map[Work]float64{ClosingPanel: 1.2992, Filler: 4.64, Patch: 0.651, Paint: 1.302})
}

// A corner cabinet reaches under both parts and is closed over on both walls.
func TestCornerCabinetUnderBothParts(t *testing.T) {
	c := hung(0, 2400, 3000, 2120)
	c.Corner = &cabinet.Corner{OtherWall: 1, OtherWidth: 600 * mm, AtRight: true}
	k := cook(lShape(0).Room.Walls, c)
	// 0.60 on each wall, and both free ends: (1.20 + 2 × 0.36) × 0.28 = 0.5376
	wantNear(t, "panels", take(k, kitchen.RemoveClose).Items, map[Work]float64{Filler: 1.2, ClosingPanel: 0.5376})
}

// A ceiling lowered from wall to wall has no face, and nothing to blend into: one
// sheet each, 4 ft wide. Sheets of 4 by 8, 9, 10 and 12 ft are 32, 36, 40 and 48
// square feet; 1/2 in board weighs some 57 lb to the sheet of 4 by 8 and 5/8 in 74
// (published checks, section 14, status F, from a trade page). The pound is
// 0.45359237 kg, the foot 0.3048 m.
func TestSheetsOfBoard(t *testing.T) {
	for _, c := range []struct {
		name   string
		feet   int
		thick  length.Length
		square int // feet
		pounds int
		within int // in thousandths of the weight
	}{
		{"4 by 8, half inch", 8, length.Inch / 2, 32, 57, 1},
		{"4 by 8, five eighths", 8, length.Inch * 5 / 8, 32, 74, 40},
		{"4 by 9", 9, length.Inch / 2, 36, 64, 3},
		{"4 by 10", 10, length.Inch / 2, 40, 71, 5},
		{"4 by 12", 12, length.Inch / 2, 48, 86, 7},
	} {
		t.Run(c.name, func(t *testing.T) {
			long := length.Length(c.feet) * length.Foot
			o := soffit(0, 0, flat(2100))
			o.Kind, o.To, o.Depth = survey.LoweredCeiling, long, 4*length.Foot
			o.Make = survey.Make{Lining: c.thick} // no framing: board alone
			w := wall(0, 2400, o)
			w.Length, w.Facing = long, &survey.Facing{Distance: 4 * length.Foot}
			got := take(cook([]survey.Wall{w}), kitchen.RemoveOpen)
			q := quantities(got.Items)
			area := float64(c.square) * 0.3048 * 0.3048
			if near(q[BoardOff], area, 0.0005) != nil || near(q[CeilingBoard], 0, 0) != nil {
				t.Errorf("board off %v, want %v", q[BoardOff], area)
			}
			mass := float64(c.pounds) * 0.45359237
			if err := near(q[WasteMass], mass, mass*float64(c.within)/1000); err != nil {
				t.Errorf("mass: %v", err)
			}
			// Loose, between 400 and 500 lb to the cubic yard (a US study of 1995 and a
			// table of 1994, both seen in copies).
			yard := 0.9144 * 0.9144 * 0.9144
			if loose := q[WasteMass] / q[Waste] * 1000 * yard / 0.45359237; loose < 400 || loose > 500 {
				t.Errorf("loose %v lb to the cubic yard", loose)
			}
		})
	}
}
