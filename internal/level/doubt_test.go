package level

import (
	"math/big"
	"testing"

	"railhead/internal/length"
)

func even(n int) []Reading {
	out := make([]Reading, n)
	for i := range out {
		out[i].HalfWidth = 2 * mm
	}
	return out
}

func TestAReadingOnBothSidesCancels(t *testing.T) {
	floor := Read(0, 0)
	ceiling := floor.Add(Read(1, at(2400))) // taped from the floor right there
	d := DoubtOf(ceiling.Sub(floor).Terms, even(2))
	if want := DoubtOf(Read(1, 0).Terms, even(2)); d != want {
		t.Errorf("doubt of the room's height is %+v, want the tape's alone, %+v", d, want)
	}
}

func TestALaserLineMovedMovesNothing(t *testing.T) {
	line := Read(0, at(1000))
	top, bottom := line.Add(Read(1, at(1300))), line.Sub(Read(2, at(1200)))
	gap := top.Sub(bottom)
	if gap.Value.CmpLength(at(2500)) != 0 {
		t.Errorf("from bottom to top %s, want 2500 mm", gap.Value)
	}
	d := DoubtOf(gap.Terms, even(3)) // 2·√(2·2²/3) mm = 3.265986… mm
	if d.Expanded != 3_265_987 {
		t.Errorf("U = %d nm, want 3 265 987: two readings, and none of the line", d.Expanded)
	}
}

func TestInterpolationWeighsItsReadings(t *testing.T) {
	p := path(t, 0, 2000, 1000, 2000)
	d := DoubtOf(p.HeightAt(at(250), Left).Terms, []Reading{{HalfWidth: 4 * mm}, {HalfWidth: 4 * mm}})
	// 2·√((0.75² + 0.25²)·4²/3) mm = 3.651483… mm
	if d.Expanded != 3_651_484 || d.Largest != 0 {
		t.Errorf("U = %d, largest %d; want 3 651 484 and the nearer reading, 0", d.Expanded, d.Largest)
	}
}

func TestTheReadingToRepeatHasTheLargestShare(t *testing.T) {
	terms := []Term{{0, big.NewRat(1, 1)}, {1, big.NewRat(1, 2)}, {2, big.NewRat(-1, 4)}}
	readings := []Reading{{HalfWidth: 1 * mm}, {HalfWidth: 3 * mm}, {HalfWidth: 5 * mm}}
	if d := DoubtOf(terms, readings); d.Largest != 1 {
		t.Errorf("largest share has reading %d, want 1: half of 3 mm is more than 1 mm and than a quarter of 5 mm", d.Largest)
	}
	if d := DoubtOf(terms, []Reading{{HalfWidth: 1 * mm}, {HalfWidth: 2 * mm}, {HalfWidth: 4 * mm}}); d.Largest != 0 {
		t.Errorf("of equal shares the first reading is repeated, got %d", d.Largest)
	}
}

func TestNoReadingNoDoubt(t *testing.T) {
	if d := DoubtOf(nil, nil); d.Expanded != 0 || d.Largest != -1 {
		t.Errorf("got %+v", d)
	}
	sure := []Reading{{HalfWidth: 0}}
	if d := DoubtOf(Read(0, at(5)).Terms, sure); d.Expanded != 0 || d.Largest != -1 {
		t.Errorf("a reading without doubt: got %+v", d)
	}
}

func TestDoubtRoundsUp(t *testing.T) {
	for half := length.Length(1); half < 200; half++ {
		u := DoubtOf(Read(0, 0).Terms, []Reading{{HalfWidth: half}}).Expanded
		// u is the least whole number with 3u² ≥ 4a².
		if 3*u*u < 4*half*half || 3*(u-1)*(u-1) >= 4*half*half {
			t.Errorf("half-width %d nm: U = %d nm", half, u)
		}
	}
}
