package takeoff

import (
	"slices"
	"testing"

	"railhead/internal/contents"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

// threeMetres is a soffit 3 m long, 330 mm deep and 300 mm high, from wall to wall
// under a ceiling at 2400 mm; board of 12.5 mm, members of 38 mm, nobody looked in.
func threeMetres() *kitchen.Kitchen {
	return cook([]survey.Wall{wall(3000, 2400, soffit(0, 3000, flat(2100)))})
}

// Taken down and left open, worked by hand (own arithmetic; sizes of the table as
// in table.go):
//
//	board off   underside 3 × 0.33 = 0.99, face 3 × 0.30 = 0.90             1.89 m2
//	framing     3 members × 3 = 9; hangers 3/0.4 = 7.5, 8 spaces, 9 hangers,
//	            each 0.33 + 0.30 = 0.63: 5.67                              14.67 m
//	patch       ceiling 0.99 and a band of 0.15 along the old edge 0.45,
//	            wall behind 0.90, walls at both ends 2 × 0.33 × 0.30 = 0.198 2.538 m2
//	paint       ceiling 0.99 and 0.30 beyond the old edge 0.90, walls 1.098 2.988 m2
//	debris      board 1.89 × 0.0125 = 0.023625 m3, × 2.5 = 59.0625 l;
//	            framing 14.67 × 0.038 × 0.038 = 0.02118348 m3, × 3 = 63.55044 l
//	                                                          122.61294 → 122.613 l
//	mass        0.023625 × 685 = 16.183125 kg; 0.02118348 × 500 = 10.59174 kg
//	                                                          26.774865 → 26.775 kg
func TestSoffitTakenDown(t *testing.T) {
	got := take(threeMetres(), kitchen.RemoveOpen)
	want(t, got.Items, map[Work]string{
		BoardOff: "1.89", FrameOff: "14.67", Patch: "2.538", Paint: "2.988", Waste: "122.613", WasteMass: "26.775",
	})
	if f := got.Items[0]; f.Formula != "length*depth + length*height" || f.Pointer != "/survey/walls/0/overheads/0" ||
		!slices.Equal(f.Inputs, []Input{{"length", "3", "m"}, {"depth", "0.33", "m"}, {"height", "0.3", "m"}}) {
		t.Errorf("board off is told as %+v", f)
	}
	if f := got.Items[1]; f.Formula != "members*length + (ceil(length/spacing) + 1)*(depth + mean_height)" {
		t.Errorf("framing is told as %q", f.Formula)
	}
}

// What nobody has seen of the same soffit: 2 wires over 3 m, 5 wires, one pipe; the
// wall boarded 3 × 0.30 behind wires; all 1.89 m2 closed again around what cannot
// be moved. The ceiling behind may be missing over 0.99 m2.
func TestSoffitTakenDownWithUnseenContents(t *testing.T) {
	got := take(threeMetres(), kitchen.RemoveOpen)
	want(t, got.Found[contents.Empty], nil)
	want(t, got.Found[contents.FewWires], map[Work]string{RerouteWire: "6", BackingBoard: "0.9"})
	want(t, got.Found[contents.ManyWires], map[Work]string{RerouteWire: "15", BackingBoard: "0.9"})
	want(t, got.Found[contents.PipeOrDuct], map[Work]string{ReroutePipe: "3"})
	want(t, got.Found[contents.Immovable], map[Work]string{CloseAgain: "1.89"})
	want(t, got.Behind, map[Work]string{CeilingBoard: "0.99"})
	if got.Reach != 1_000_000_000 {
		t.Errorf("reach %d", got.Reach)
	}
}

// Two of the three metres were looked into: 1 m is unseen, and 1.89 × 1/3 = 0.63 m2
// would be opened there for nothing.
func TestOnlyTheUnseenRestIsReckonedWith(t *testing.T) {
	k := threeMetres()
	in := &k.Room.Walls[0].Overheads[0].Inside
	in.Looked, in.Seen = survey.ProbeHole, []survey.Span{{From: 0, To: 1200 * mm}, {From: 1000 * mm, To: 2000 * mm}}
	got := take(k, kitchen.RemoveOpen)
	want(t, got.Found[contents.FewWires], map[Work]string{RerouteWire: "2", BackingBoard: "0.3"})
	want(t, got.Found[contents.Immovable], map[Work]string{CloseAgain: "0.63"})

	in.Looked, in.Seen = survey.Opened, nil
	for state, items := range take(k, kitchen.RemoveOpen).Found {
		want(t, items, nil)
		if len(items) > 0 {
			t.Errorf("%s: all of it was seen", contents.State(state))
		}
	}
}

func TestWhatIsKnownOfBehind(t *testing.T) {
	seen := fixed(2400)
	for _, c := range []struct {
		name    string
		behind  survey.Behind
		certain string // ceiling boarded for sure
		maybe   string
		patch   string
	}{
		{"nothing", survey.Behind{}, "", "0.99", "2.538"},
		{"the ceiling goes on", survey.Behind{Ceiling: survey.Yes}, "", "", "2.538"},
		{"somebody read the ceiling's level there", survey.Behind{CeilingLevel: &seen}, "", "", "2.538"},
		{"no board on the joists", survey.Behind{Ceiling: survey.No}, "0.99", "", "2.538"},
		{"the wall is finished", survey.Behind{Wall: survey.Yes}, "", "0.99", "1.44"}, // 0.45 + 0.99
		{"the wall is bare", survey.Behind{Wall: survey.No}, "", "0.99", "2.538"},
	} {
		t.Run(c.name, func(t *testing.T) {
			k := threeMetres()
			k.Room.Walls[0].Overheads[0].Behind = c.behind
			got := take(k, kitchen.RemoveOpen)
			if sums(got.Items)[CeilingBoard] != c.certain || sums(got.Behind)[CeilingBoard] != c.maybe || sums(got.Items)[Patch] != c.patch {
				t.Errorf("certain %v, perhaps %v", sums(got.Items), sums(got.Behind))
			}
			if sums(got.Items)[Paint] != "2.988" {
				t.Error("walls and ceiling are painted in any case")
			}
		})
	}
}

// A free end adds its face, 0.33 × 0.30 = 0.099, to the board, has no wall at it,
// and the wall is painted on to its next corner: 0.5 × 0.30.
func TestFreeEndAndNextCorner(t *testing.T) {
	o := soffit(0, 3000, flat(2100))
	o.Right = survey.EndOpen
	got := take(cook([]survey.Wall{wall(3500, 2400, o)}), kitchen.RemoveOpen)
	have := sums(got.Items)
	// patch 0.99 + 0.45 + 0.90 + 0.099; paint 0.99 + 0.90 + 0.90 + 0.099 + 0.15
	if have[BoardOff] != "1.989" || have[Patch] != "2.439" || have[Paint] != "3.039" {
		t.Errorf("have %v", have)
	}
	// Something else hangs from 3.2 m on: the corner is there.
	other := soffit(3200, 3500, flat(2100))
	other.ID, other.Group = "other", "other"
	got = take(cook([]survey.Wall{wall(3500, 2400, o, other)}), kitchen.RemoveOpen)
	if have := sums(got.Items); have[Paint] != "2.949" { // 0.2 × 0.30 instead of 0.15
		t.Errorf("paint %v", have[Paint])
	}
}

// An underside that falls from 2150 to 2050 under a ceiling that steps from 2400 to
// 2450 at 1.2 m, 3 m long: heights 0.25 → 0.29 over 1.2 m (0.324 m2), then
// 0.34 → 0.40 over 1.8 m (0.666 m2).
func TestSlopesAndStepsByTrapezoids(t *testing.T) {
	w := wall(3000, 2400, soffit(0, 3000, profile(0, 2150, 3000, 2050)))
	w.Ceiling = profile(0, 2400, 1200, 2400, 1200, 2450, 3000, 2450)
	got := take(cook([]survey.Wall{w}), kitchen.RemoveOpen)
	board := got.Items[0]
	if board.Quantity != 1980 || board.Formula != "length*depth + length_2*(height + height_2)/2 + length_3*(height_3 + height_4)/2" {
		t.Errorf("board off %s by %q", board.Quantity.Decimal(), board.Formula)
	}
	for _, i := range got.Items {
		reworked(t, i)
	}
	// Points surveyed on the straight lines change nothing.
	w.Overheads[0].Underside = profile(0, 2150, 600, 2130, 1500, 2100, 3000, 2050)
	if again := take(cook([]survey.Wall{w}), kitchen.RemoveOpen).Items[0]; again.Formula != board.Formula {
		t.Errorf("with points on the lines: %q", again.Formula)
	}
}

// An underside that rises through the ceiling hangs only up to there: 0.30 m high at
// the left, level with the ceiling at 1.5 m of 3.
func TestOnlyWhatHangsIsMeasured(t *testing.T) {
	got := take(cook([]survey.Wall{wall(3000, 2400, soffit(0, 3000, profile(0, 2100, 3000, 2700)))}), kitchen.RemoveOpen)
	if have := sums(got.Items)[BoardOff]; have != "0.72" { // 1.5 × 0.33 + 1.5 × 0.30 / 2
		t.Errorf("board off %s", have)
	}
}

func TestKeepingTakesNoWork(t *testing.T) {
	got := take(threeMetres(), kitchen.Keep)
	if len(got.Items)+len(got.Behind) > 0 || got.Reach != 0 {
		t.Errorf("got %+v", got)
	}
	for _, found := range got.Found {
		if len(found) > 0 {
			t.Errorf("found %+v", found)
		}
	}
}

// A gap closed on top of the old cabinets goes with them: no stripping out, but the
// ceiling and the walls are made good.
func TestGapThatGoesWithTheOldCabinets(t *testing.T) {
	k := threeMetres()
	o := &k.Room.Walls[0].Overheads[0]
	o.Kind, o.Carrier = survey.ClosedGap, survey.CarriedByOldCabinets
	want(t, take(k, kitchen.RemoveOpen).Items, map[Work]string{Patch: "2.538", Paint: "2.988"})
	want(t, take(k, kitchen.Trim).Items, nil)
}

// Solid masonry of 3 × 0.33 × 0.30 = 0.297 m3: 445.5 l loose, 594 kg; its plaster
// of 15 mm on 1.89 m2 is 0.02835 m3: 70.875 l, 45.36 kg. No framing.
func TestSolidBody(t *testing.T) {
	k := threeMetres()
	o := &k.Room.Walls[0].Overheads[0]
	o.Structure, o.Finish, o.Make.Lining = survey.Solid, "plaster", 15*mm
	have := sums(take(k, kitchen.RemoveOpen).Items)
	if have[Waste] != "516.375" || have[WasteMass] != "639.36" || have[FrameOff] != "" {
		t.Errorf("have %v", have)
	}
}

func TestBareFramingHasNoBoard(t *testing.T) {
	k := threeMetres()
	k.Room.Walls[0].Overheads[0].Finish = "none"
	have := sums(take(k, kitchen.RemoveOpen).Items)
	if have[BoardOff] != "" || have[FrameOff] != "14.67" || have[Waste] != "63.55" {
		t.Errorf("have %v", have)
	}
}

// Framing at 16 in (406.4 mm) is as many hangers over 3 m, at 600 mm it is 6.
func TestSpacingOfTheFraming(t *testing.T) {
	for spacing, frame := range map[int]string{0: "14.67", 406: "14.67", 600: "12.78", 3000: "10.26", 9000: "10.26"} {
		k := threeMetres()
		k.Room.Walls[0].Overheads[0].Make.Spacing = length.Length(spacing) * mm
		if have := sums(take(k, kitchen.RemoveOpen).Items)[FrameOff]; have != frame {
			t.Errorf("at %d: %s m, want %s", spacing, have, frame)
		}
	}
}

// A beam that hangs off the wall has a back as well; no wall is behind it.
func TestOverheadOffTheWall(t *testing.T) {
	k := threeMetres()
	k.Room.Walls[0].Overheads[0].Out = 100 * mm
	have := sums(take(k, kitchen.RemoveOpen).Items)
	// board 0.99 + 2 × 0.90; patch 0.99 + 3 × (0.15 + 0.10) + ends 0.198;
	// paint 0.99 + 3 × (0.30 + 0.10) + 0.198
	if have[BoardOff] != "2.79" || have[Patch] != "1.938" || have[Paint] != "2.388" {
		t.Errorf("have %v", have)
	}
}

// A datum that is not the survey's zero changes no quantity.
func TestQuantitiesDoNotHangOnTheDatum(t *testing.T) {
	k := threeMetres()
	k.Datums[0].Level = level.Fixed((37 * mm).Exact())
	want(t, take(k, kitchen.RemoveOpen).Items, map[Work]string{
		BoardOff: "1.89", FrameOff: "14.67", Patch: "2.538", Paint: "2.988", Waste: "122.613", WasteMass: "26.775",
	})
}

// A wall 0.10 m in front of the soffit leaves no more of the ceiling to fill and to
// paint beyond the edge than that.
func TestNoBlendBeyondTheFacingWall(t *testing.T) {
	k := threeMetres()
	k.Room.Walls[0].Facing = &survey.Facing{Distance: 430 * mm}
	have := sums(take(k, kitchen.RemoveOpen).Items)
	// patch 0.99 + 3 × 0.10 + 0.90 + 0.198; paint the same
	if have[Patch] != "2.388" || have[Paint] != "2.388" || have[BoardOff] != "1.89" {
		t.Errorf("have %v", have)
	}
}
