package level

import (
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/length"
)

// What a profile says at a station, its mirror image says at the mirrored one, of the other side; a shifted one says it
// further along.
func TestTurnedProfiles(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := func(name string, low, high int) length.Length {
			return length.Length(rapid.IntRange(low, high).Draw(t, name))
		}
		var points []Point
		for x := n("first", -50, 50); len(points) < 6; x += n("run", 0, 40) {
			if last := len(points) - 1; last > 0 && points[last-1].At == x {
				break
			}
			points = append(points, Point{x, Fixed(n("height", 0, 100).Exact())})
		}
		p, fault := NewProfile(points)
		if fault != nil {
			t.Fatal(fault)
		}
		at, by, x := n("about", -100, 100), n("by", -100, 100), n("station", -100, 300)
		for _, s := range []Side{Left, Right} {
			if got, want := p.Mirrored(at).At(at-x, 1-s), p.At(x, s); !got.Equal(want) {
				t.Fatalf("mirrored about %d, at %d: %s, want %s", at, x, got, want)
			}
			if got, want := p.Shifted(by).At(x+by, s), p.At(x, s); !got.Equal(want) {
				t.Fatalf("shifted by %d, at %d: %s, want %s", by, x, got, want)
			}
		}
	})
}
