package length

import (
	"math/big"
	"testing"

	"pgregory.net/rapid"
)

// Diagonals, printed to the places given; the exact one lies within half of the last place.
func TestPublishedDiagonals(t *testing.T) {
	for _, c := range []struct{ source, a, b, diagonal, half string }{
		{"calculatorultra.com ceiling height clearance (F)", "4 ft", "3 ft", "5 ft", "0 in"},
		{"itemfits.com formulas (F)", "36 in", "80 in", "87.7 in", "0.05 in"},
		{"root of H² + D² (C)", "84 in", "24 in", "87.361 in", "0.0005 in"},
		{"root of H² + D² (C)", "90 in", "24 in", "93.145 in", "0.0005 in"},
		{"root of H² + D² (C)", "93 in", "24 in", "96.047 in", "0.0005 in"},
		{"root of H² + D² (C)", "96 in", "24 in", "98.955 in", "0.0005 in"},
		{"root of H² + D² (C)", "96 in", "12.5 in", "96.810 in", "0.0005 in"},
		{"root of H² + D² (C)", "2000 mm", "560 mm", "2076.921 mm", "0.0005 mm"},
		{"root of H² + D² (C)", "2100 mm", "600 mm", "2184.033 mm", "0.0005 mm"},
		{"root of H² + D² (C)", "2200 mm", "600 mm", "2280.351 mm", "0.0005 mm"},
	} {
		got := Hypot(must(t, c.a), must(t, c.b))
		if off := (got - must(t, c.diagonal)).Abs(); off > must(t, c.half) {
			t.Errorf("%s: %s by %s has a diagonal of %s in, want %s", c.source, c.a, c.b, got.Inches(), c.diagonal)
		}
	}
}

// sqrt(96² - D²), the tallest that stands up under 96 in (C, published to three places).
func TestTallestThatStandsUpUnderEightFeet(t *testing.T) {
	for _, c := range []struct{ depth, fits, not string }{
		{"16 in", "94.657 in", "94.658 in"},
		{"24 in", "92.951 in", "92.953 in"},
	} {
		room := (96 * Inch).Exact()
		if !HypotFits(must(t, c.fits), must(t, c.depth), room) || HypotFits(must(t, c.not), must(t, c.depth), room) {
			t.Errorf("%s deep: %s must fit and %s not", c.depth, c.fits, c.not)
		}
	}
}

func TestDiagonalExactlyAsLongAsTheRoom(t *testing.T) {
	room := (5 * Foot).Exact()
	hair := FromRat(rat(1, 1_000_000_007))
	for name, c := range map[string]struct {
		room Exact
		want bool
	}{
		"just so":              {room, true},
		"a hair too little":    {room.Sub(hair), false},
		"a hair too much":      {room.Add(hair), true},
		"no room":              {Exact{}, false},
		"less than no room":    {room.Neg(), false},
		"a whole nm too tight": {room.Minus(1), false},
	} {
		if got := HypotFits(3*Foot, -4*Foot, c.room); got != c.want {
			t.Errorf("%s: %t", name, got)
		}
	}
	if !HypotFits(0, 0, Exact{}) {
		t.Error("nothing does not fit into nothing")
	}
}

func TestHypotIsTheSmallestThatCovers(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := Length(rapid.Int64().Draw(t, "a")), lengths().Draw(t, "b")
		sum := new(big.Rat).Add(new(big.Rat).Mul(nm(a), nm(a)), new(big.Rat).Mul(nm(b), nm(b)))
		c := Hypot(a, b)
		if c == maxWhole { // the diagonal of the largest int64 does not fit one
			return
		}
		if square(c.Exact()).Cmp(sum) < 0 || c > 0 && square((c-1).Exact()).Cmp(sum) >= 0 {
			t.Fatalf("Hypot(%d, %d) = %d", a, b, c)
		}
		near := FromRat(rat(rapid.Int64Range(-3, 3).Draw(t, "num"), rapid.Int64Range(1, 3).Draw(t, "den"))).Plus(c)
		for _, room := range []Exact{near, exacts().Draw(t, "room")} {
			want := room.Sign() >= 0 && square(room).Cmp(sum) >= 0
			if got := HypotFits(a, b, room); got != want {
				t.Fatalf("HypotFits(%d, %d, %v) = %t", a, b, room, got)
			}
		}
	})
}

func square(e Exact) *big.Rat { return new(big.Rat).Mul(e.Rat(), e.Rat()) }

func TestHypotOfTheLargestStopsAtTheEnd(t *testing.T) {
	if got := Hypot(minWhole, minWhole); got != maxWhole {
		t.Errorf("got %d", got)
	}
}
