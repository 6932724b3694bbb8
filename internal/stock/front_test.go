package stock

import (
	"testing"

	"pgregory.net/rapid"
)

// A front, however thinned, promises at least what fits, and nothing below what fits can be had for less width.
func TestFrontPromisesWhatFits(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		room := rapid.Int64Range(1, 200).Draw(t, "room")
		f, all := front{{}}, []point{{}}
		for range rapid.IntRange(0, 8).Draw(t, "pieces") {
			w := rapid.Int64Range(1, 100).Draw(t, "width")
			v := rapid.Int64Range(0, 100).Draw(t, "value")
			f = f.with(w, v, room)
			for _, p := range all {
				all = append(all, point{p.width + w, p.value + v})
			}
		}
		for r := range room + 1 {
			var want int64
			for _, p := range all {
				if p.width <= r {
					want = max(want, p.value)
				}
			}
			if got := f.at(r); got != want {
				t.Fatalf("room %d: %d, want %d", r, got, want)
			}
		}
	})
}

func TestThinFrontPromisesNoLess(t *testing.T) {
	var f front
	for i := range int64(3*frontPoints + 7) {
		f = append(f, point{2 * i, 3 * i})
	}
	thin := f.thin()
	if len(thin) > frontPoints+1 {
		t.Errorf("%d points", len(thin))
	}
	for room := range int64(7 * frontPoints) {
		if thin.at(room) < f.at(room) {
			t.Fatalf("room %d: %d, less than %d", room, thin.at(room), f.at(room))
		}
	}
	if thin.at(-1) != hopeless {
		t.Error("something fits in no room")
	}
}

// A line too steep for a machine word rules nothing out instead of overflowing.
func TestSteepLine(t *testing.T) {
	if _, ok := (line{value: 1 << 51, per: 1}).share(100_000_000_000); ok {
		t.Error("reckoned")
	}
	if got := (line{base: 5, value: 7, per: 2}).at(3); got != 15 {
		t.Errorf("%d, want 5 + 21/2 rounded down", got)
	}
}
