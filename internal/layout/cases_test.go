package layout

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"railhead/internal/cabinet"
	"railhead/internal/length"
)

// told writes an answer's cabinets: kind, wall, from and width, height, and c in corners.
func told(a *Answer) string {
	var out []string
	for i := range a.Cabinets {
		c := &a.Cabinets[i]
		one := fmt.Sprintf("%.1s%d %s+%s h%s", c.Kind, c.Wall, c.From.MM(), c.Width().MM(), c.Height.MM())
		if c.Corner != nil {
			one += " " + c.Corner.Shape.String()
		}
		out = append(out, one)
	}
	slices.Sort(out)
	return strings.Join(out, ", ")
}

// Worked by hand from the weights of the test's rooms: 0.40 a litre, 0.15 a millimetre
// of counter, 40 a cabinet, 30 a side that shows, 5 a filler and 0.10 a millimetre of
// it or of an open stretch, 15 a change of height.
func TestRoomsWorkedByHand(t *testing.T) {
	base := func(r *Room) { r.Filling.Kinds = []cabinet.Kind{cabinet.Base} }
	wall := func(r *Room) { r.Filling.Kinds = []cabinet.Kind{cabinet.Wall} }
	corners := func(c ...cabinet.CornerSize) func(*Room) {
		return func(r *Room) { r.Kitchen.System.Base.Corners = c }
	}
	for _, c := range []struct {
		name    string
		room    *Room
		changes []func(*Room)
		want    string
		worth   string
	}{
		// 3 × 355.2 l = 426.24; 2400 mm of counter = 360; less 3 × 40 and two ends that show, 60.
		{"a wall that widths fill", room(2400 * mm), []func(*Room){base}, "b0 0+800 h740, b0 1600+800 h740, b0 800+800 h740", "606.24"},
		// 1065.6 l = 426.24; counter 600 + (900 + 300) + 600 = 2400, 360; less 120 and 60.
		{"a corner with an l-shaped cabinet", room(1500*mm, 1500*mm), []func(*Room){base, corners(cabinet.CornerSize{Shape: cabinet.CornerL, Width: 900 * mm, OtherWidth: 900 * mm})},
			"b0 0+600 h740, b0 600+900 h740 l, b1 900+600 h740", "606.24"},
		// A blind cabinet of 1000 in the corner, 500 left beside it: 400, and 100 open. Around the
		// corner 660 are kept: 840 are left, 800 and 40 open. 2200 mm: 976.8 l = 390.72; counter 330;
		// less 120, 60, 14 and the corner's filler of 60, 11.
		{"a blind corner", room(1500*mm, 1500*mm), []func(*Room){base, corners(cabinet.CornerSize{Shape: cabinet.CornerBlind, Width: 1000 * mm})},
			"b0 100+400 h740, b0 500+1000 h740 blind, b1 660+800 h740", "515.72"},
		// Both rows end 660 before the corner: 840 each, 800 and 40 open or in the filler, which costs as much.
		// 710.4 l = 284.16; 240; less 80, 60, two fillers of 60, 22, and 8.
		{"a dead corner, where the system has nothing for it", room(1500*mm, 1500*mm), []func(*Room){base}, "b0 0+800 h740, b1 660+800 h740", "354.16"},
		// 900 high before the soffit, and 660 from where one of 800 reaches under it: 259.2 + 380.16 l = 255.744; less
		// 3 × 40, 60 and 15.
		{"mixed heights under a lowered part", room(2400*mm).hang(0, 1200*mm, 2400*mm, 350*mm, 2130*mm), []func(*Room){wall}, "w0 0+800 h900, w0 1600+800 h660, w0 800+800 h660", "60.744"},
	} {
		t.Run(c.name, func(t *testing.T) {
			for _, change := range c.changes {
				change(c.room)
			}
			got, _, proven := new(Solver).Best(c.room, 1)
			if len(got) != 1 || !proven {
				t.Fatalf("%d answers, proven %v", len(got), proven)
			}
			if s := told(&got[0]); s != c.want || got[0].Worth.Decimal() != c.worth {
				t.Errorf("%s, worth %s (%v); want %s, worth %s", s, got[0].Worth.Decimal(), got[0].Parts, c.want, c.worth)
			}
		})
	}
}

// A base row with room to spare is slid until the joint above it has an edge below
// (found by filling such walls in every way there is).
func TestABaseCabinetIsSlidUnderAJoint(t *testing.T) {
	r := room(1200 * mm)
	r.Filling.Kinds = []cabinet.Kind{cabinet.Wall, cabinet.Base}
	r.Kitchen.System.Wall.Widths, r.Kitchen.System.Base.Widths = sizes(300, 900), sizes(800)
	r.Kitchen.System.Wall.Heights = sizes(660)
	got, _, _ := new(Solver).Best(r, 1)
	want := "b0 100+800 h740, w0 0+900 h660, w0 900+300 h660"
	mirrored := "b0 300+800 h740, w0 0+300 h660, w0 300+900 h660"
	if s := told(&got[0]); s != want && s != mirrored {
		t.Errorf("%s; want %s, or in the mirror", s, want)
	}
	for _, p := range got[0].Parts {
		if p.Name == LineMisses {
			t.Errorf("a joint meets no edge: %+v", got[0].Parts)
		}
	}
}

// Where no more may be looked for, what was found is answered and is not called proven.
func TestEffortEnds(t *testing.T) {
	r := room(4000*mm, 4000*mm, 4000*mm)
	whole := &Solver{}
	best, _, _ := whole.Best(r, 1)
	some := &Solver{Effort: whole.Spent / 4}
	got, _, proven := some.Best(r, 1)
	if len(got) != 1 || proven || got[0].Worth > best[0].Worth || some.Spent > 3*some.Effort {
		t.Errorf("%d answers, proven %v, spent %d of %d", len(got), proven, some.Spent, some.Effort)
	}
	none := &Solver{Stop: func() bool { return true }}
	if got, _, proven := none.Best(r, 1); len(got) > 0 || proven {
		t.Errorf("told to stop at once, it answers %d", len(got))
	}
}

// A return wall too short for a row of its own stays empty, and the row before it runs
// on into the corner: it is worth no less than if the return were left out, but for what
// stays open beside its fronts.
func TestARowRunsOnBehindAShortReturn(t *testing.T) {
	for _, back := range []length.Length{300 * mm, 700 * mm, 1100 * mm, 1200 * mm} {
		r := room(2440*mm, back)
		r.Filling.Kinds, r.Kitchen.System.Base.Widths = []cabinet.Kind{cabinet.Base}, sizes(600)
		got, _, _ := new(Solver).Best(r, 1)
		if len(got[0].Cabinets) != 4 || slices.ContainsFunc(got[0].Cabinets, func(c cabinet.Placed) bool { return c.Wall != 0 }) {
			t.Errorf("a return of %s: %s", back, told(&got[0]))
		}
	}
}
