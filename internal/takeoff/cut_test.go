package takeoff

import (
	"testing"

	"railhead/internal/contents"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// The three-metre soffit over two wall cabinets of 600 in its middle, whose tops
// are at 2120: cut at 2122, from 1197 to 2403 (side clearance 3), strip 22 mm,
// which goes 12.5 through the lining and 9.5 into the bottom member.
//
//	board off  1.206 × 0.33 = 0.39798, 1.206 × 0.022 = 0.026532  0.424512 → 0.425 m2
//	cut        along the face 1.206, at two ends across the depth
//	           and up the strip 2 × (0.33 + 0.022)                        1.91 m
//	refit      the bottom member over                                    1.206 m
//	board on   two new faces 2 × 0.33 × 0.022 = 0.01452                  0.015 m2
//	patch      a band of 0.15 along 1.206 + 2 × 0.33 = 1.866   0.2799 → 0.28 m2
//	paint      what stays of the face, 3 × 0.30 − 1.206 × 0.022, and the
//	           two new faces                               0.887988 → 0.888 m2
//	debris     0.424512 × 0.0125 × 2.5                        13.266 l
//	mass       0.424512 × 0.0125 × 685                  3.634884 → 3.635 kg
func TestTrimIntoTheBottomMember(t *testing.T) {
	k := threeMetres()
	k = cook(k.Room.Walls, hung(0, 1200, 1800, 2120), hung(0, 1800, 2400, 2120))
	got := take(k, kitchen.Trim)
	want(t, got.Items, map[Work]string{
		BoardOff: "0.425", Cut: "1.91", FrameRefit: "1.206", BoardOn: "0.015", Patch: "0.28", Paint: "0.888",
		Waste: "13.266", WasteMass: "3.635",
	})
	// Contents anywhere over 300 mm are in the way of 22.
	if got.Reach != 73_333_333 {
		t.Errorf("reach %d, want 22/300", got.Reach)
	}
	want(t, got.Found[contents.FewWires], map[Work]string{RerouteWire: "2.412", BackingBoard: "0.362"})
	want(t, got.Behind, nil)
}

// Within the lining nothing of the frame is touched; a new bottom has no room.
func TestTrimWithinTheLining(t *testing.T) {
	o := soffit(0, 3000, flat(2110))
	o.Make.NewBottom = 10 * mm
	have := sums(take(cook([]survey.Wall{wall(3000, 2400, o)}, hung(0, 0, 3000, 2120)), kitchen.Trim).Items)
	// 3 × (0.33 + 0.012); cut 3; patch 3 × 0.15; paint 3 × (0.29 − 0.012)
	if have[BoardOff] != "1.026" || have[Cut] != "3" || have[Patch] != "0.45" || have[Paint] != "0.834" ||
		have[FrameRefit] != "" || have[Hangers] != "" || have[BoardOn] != "" {
		t.Errorf("have %v", have)
	}
}

// More than lining and member: the frame is shortened. Underside at 2020, strip 102;
// 3/0.4 → 8 spaces, 9 hangers, each shortened by 0.102: 0.918 m of debris. A free
// end at the right is cut too, and a new bottom goes on.
//
//	board off  3 × 0.33 + 3 × 0.102 + 0.33 × 0.102 = 0.99 + 0.306 + 0.03366  1.32966 → 1.33
//	cut        3 + 0.33                                                      3.33
//	patch      0.15 × 3.33                                         0.4995 → 0.5 (half to even)
//	paint      3 × 0.38 − 3 × 0.102 + 0.33 × (0.38 − 0.102) + bottom 0.99
//	           = 1.14 − 0.306 + 0.09174 + 0.99                          1.91574 → 1.916
//	backing    the rail's place, 2056 to 2088, was hidden: 3 × 0.30             0.9
//	debris     1.32966 × 0.0125 × 2.5 = 0.041551875 m3;
//	           0.918 × 0.001444 × 3 = 0.003976776 m3              45.528651 → 45.529 l
func TestReframing(t *testing.T) {
	o := soffit(0, 3000, flat(2020))
	o.Right, o.Make.NewBottom = survey.EndOpen, 10*mm
	got := take(cook([]survey.Wall{wall(3500, 2400, o)}, hung(0, 0, 3000, 2120)), kitchen.Trim)
	have := sums(got.Items)
	for w, q := range map[Work]string{
		BoardOff: "1.33", Cut: "3.33", FrameRefit: "3", Hangers: "9", BoardOn: "0.99", Patch: "0.5", Paint: "1.916",
		BackingBoard: "0.9", Waste: "45.529",
	} {
		if have[w] != q {
			t.Errorf("%s: %s, want %s", w, have[w], q)
		}
	}
	// The wall is boarded there already, wires or not.
	want(t, got.Found[contents.FewWires], map[Work]string{RerouteWire: "6"})
}

// The underside rises through the cut line, from 2100 at 0 to 2140 at 2.4 m: it
// crosses 2122 at 1.32 m, and only so far anything comes off.
func TestTrimThatRunsOut(t *testing.T) {
	o := soffit(0, 2400, profile(0, 2100, 2400, 2140))
	got := take(cook([]survey.Wall{wall(2400, 2400, o)}, hung(0, 0, 2400, 2120)), kitchen.Trim)
	have := sums(got.Items)
	// 1.32 × 0.33 + 1.32 × 0.022 / 2 = 0.4356 + 0.01452; cut 1.32
	if have[BoardOff] != "0.45" || have[Cut] != "1.32" || have[FrameRefit] != "1.32" {
		t.Errorf("have %v", have)
	}
	for _, i := range got.Items {
		reworked(t, i)
	}
}

// One cabinet's stretch of the three-metre soffit opened up to the ceiling, from 900
// to 1700: 0.80 × 0.33 + 0.80 × 0.30 = 0.504 m2 of board; framing 3 × 0.80 and, one
// every 0.40, 2 hangers of 0.63; new faces 2 × 0.099; plumb cuts 2 × 0.63; ceiling and
// wall over the cabinets show, 0.80 × 0.33 + 0.80 × 0.30, and the ceiling's edge,
// 0.80 × 0.15 filled and 0.80 × 0.30 painted.
func TestPartOpened(t *testing.T) {
	k := cook(threeMetres().Room.Walls, hung(0, 903, 1697, 2360))
	got := take(k, kitchen.OpenPart, survey.WallSpan{Wall: 0, From: 900 * mm, To: 1700 * mm})
	have := sums(got.Items)
	for w, q := range map[Work]string{
		BoardOff: "0.504", FrameOff: "3.66", BoardOn: "0.198", Cut: "1.26", Patch: "0.723", Paint: "0.942", Hangers: "", FrameRefit: "",
	} { // patch 0.504 + 0.12 + 2 × 0.33 × 0.15; paint 0.504 + 0.24 + 0.198
		if have[w] != q {
			t.Errorf("%s: %s, want %s", w, have[w], q)
		}
	}
	want(t, got.Behind, map[Work]string{CeilingBoard: "0.264"})
	want(t, got.Found[contents.PipeOrDuct], map[Work]string{ReroutePipe: "0.8"})
	want(t, got.Found[contents.Immovable], map[Work]string{CloseAgain: "0.504"})
	if got.Reach != 1_000_000_000 {
		t.Errorf("reach %d", got.Reach)
	}
}

// Opened in however many parts, no more framing comes off the three-metre soffit than
// it has, 3 × 3 + 9 × 0.63 = 14.67: common practice, no source. Where its hangers are
// nobody knows but at its two ends; a part opened between them has its length's share,
// one every 0.40. Five parts of 2.60 together have 3 × 2.60 + 6.5 × 0.63; with a hanger
// at either end of each they would have 15 of them, and 17.25 m.
func TestPartsOpenedHaveNoMoreFramingThanTheWhole(t *testing.T) {
	for _, c := range []struct {
		name   string
		opened []int // from and to, by turns
		frame  string
	}{
		{"all of it", []int{0, 3000}, "14.67"},
		{"one part", []int{1200, 1800}, "2.745"},                              // 3 × 0.60 + 1.5 × 0.63
		{"less than a space", []int{1200, 1500}, "1.372"},                     // 3 × 0.30 + 0.75 × 0.63 = 1.3725, half to even
		{"all but a stub in the middle", []int{0, 1400, 1600, 3000}, "12.81"}, // 3 × 2.80 + 7 × 0.63
		{"five parts", []int{0, 500, 600, 1100, 1200, 1700, 1800, 2300, 2400, 3000}, "11.895"},
	} {
		var spans []survey.WallSpan
		for i := 0; i < len(c.opened); i += 2 {
			spans = append(spans, survey.WallSpan{From: length.Length(c.opened[i]) * mm, To: length.Length(c.opened[i+1]) * mm})
		}
		items := take(threeMetres(), kitchen.OpenPart, spans...).Items
		if have := sums(items)[FrameOff]; have != c.frame {
			t.Errorf("%s: %s, want %s", c.name, have, c.frame)
		}
		for _, i := range items {
			reworked(t, i)
		}
	}
}

// Reframed from 1200 to 2400, 0.102 comes off the 3 hangers that hang there, one every
// 0.40, though the stretch is then carried by 4, one at each end: 0.306 × 0.001444 × 3
// = 0.001325592 m3 of wood, and (1.20 × 0.33 + 1.20 × 0.102) × 0.0125 × 2.5 = 0.0162 m3.
func TestReframingAPart(t *testing.T) {
	k := cook([]survey.Wall{wall(3000, 2400, soffit(0, 3000, flat(2020)))}, hung(0, 1203, 2397, 2120))
	have := sums(take(k, kitchen.Trim).Items)
	if have[Hangers] != "4" || have[FrameRefit] != "1.2" || have[Waste] != "17.526" {
		t.Errorf("have %v", have)
	}
}

// An unpainted soffit is not painted after the cut.
func TestUnpaintedStaysUnpainted(t *testing.T) {
	o := soffit(0, 3000, flat(2100))
	o.Painted = survey.No
	have := sums(take(cook([]survey.Wall{wall(3000, 2400, o)}, hung(0, 1200, 1800, 2120)), kitchen.Trim).Items)
	if have[Paint] != "" || have[Patch] == "" {
		t.Errorf("have %v", have)
	}
}

// A cut that leaves no stub takes the stretch down: it is measured like an opened part.
func TestCutThatTakesDown(t *testing.T) {
	o := soffit(0, 3000, flat(2100))
	have := sums(take(cook([]survey.Wall{wall(3000, 2150, o)}, hung(0, 0, 600, 2120)), kitchen.Trim).Items)
	// from 0 to 0.603, 0.05 high: 0.19899 + 0.03015; one new face 0.33 × 0.05
	if have[BoardOff] != "0.229" || have[BoardOn] != "0.016" || have[FrameRefit] != "" || have[FrameOff] == "" {
		t.Errorf("have %v", have)
	}
}
