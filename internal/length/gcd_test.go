package length

import (
	"testing"

	"pgregory.net/rapid"
)

// An inch is 25.4 mm (international yard and pound agreement, 1959), so 2 in and 5 mm
// share 0.2 mm.
func TestTheLongestCommonPart(t *testing.T) {
	for _, c := range []struct{ a, b, want Length }{
		{600 * Millimetre, 450 * Millimetre, 150 * Millimetre},
		{2 * Inch, 5 * Millimetre, Millimetre / 5},
		{0, 300 * Millimetre, 300 * Millimetre},
		{300 * Millimetre, 0, 300 * Millimetre},
		{-600 * Millimetre, 450 * Millimetre, 150 * Millimetre},
		{0, 0, 0},
	} {
		if got := GCD(c.a, c.b); got != c.want {
			t.Errorf("%s and %s share %s, want %s", c.a, c.b, got, c.want)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		a, b, k := Length(rapid.Int64Range(1, 1e6).Draw(t, "a")), Length(rapid.Int64Range(1, 1e6).Draw(t, "b")), Length(rapid.Int64Range(1, 1e4).Draw(t, "k"))
		g := GCD(a, b)
		if a%g != 0 || b%g != 0 || GCD(a/g, b/g) != 1 || GCD(k*a, k*b) != k*g {
			t.Fatalf("%d and %d: %d", a, b, g)
		}
	})
}
