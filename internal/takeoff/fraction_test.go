package takeoff

import (
	"math"
	"math/big"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/length"
	"railhead/internal/money"
)

// fractions of every form: whole, of a few digits, of all bits, and too wide for
// machine words.
func fractions() *rapid.Generator[fraction] {
	return rapid.Custom(func(t *rapid.T) fraction {
		num := rapid.OneOf(
			rapid.Int64Range(-10_000, 10_000), rapid.Int64(),
			rapid.SampledFrom([]int64{math.MinInt64, math.MinInt64 + 1, math.MaxInt64}),
		).Draw(t, "num")
		den := rapid.OneOf(rapid.Int64Range(1, 10_000), rapid.Int64Range(1, math.MaxInt64)).Draw(t, "den")
		r := big.NewRat(num, den)
		if rapid.IntRange(0, 9).Draw(t, "wide") == 0 {
			r.Mul(r, r)
		}
		return fromRat(r)
	})
}

// The oracle is math/big, which has no shortcut. A fraction has one form only.
func TestFractionsFollowRationalArithmetic(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := fractions().Draw(t, "a"), fractions().Draw(t, "b")
		ra, rb := a.rat(), b.rat()
		check := func(name string, got fraction, want *big.Rat) {
			words := want.Num().IsInt64() && want.Denom().IsInt64()
			if got.rat().Cmp(want) != 0 || (got.wide == nil) != words || words && got.below() != want.Denom().Int64() {
				t.Fatalf("%s of %s and %s is %+v, want %s", name, ra, rb, got, want)
			}
		}
		check("product", a.times(b), new(big.Rat).Mul(ra, rb))
		check("sum", a.plus(b), new(big.Rat).Add(ra, rb))
		check("difference", a.minus(b), new(big.Rat).Sub(ra, rb))
		if rb.Sign() != 0 {
			check("quotient", a.over(b), new(big.Rat).Quo(ra, rb))
		}
		if a.sign() != ra.Sign() || a.exceeds(b) != (ra.Cmp(rb) > 0) {
			t.Fatalf("%s against %s: sign %d, exceeds %t", ra, rb, a.sign(), a.exceeds(b))
		}
		above := new(big.Int).Neg(new(big.Int).Div(new(big.Int).Neg(ra.Num()), ra.Denom()))
		check("next whole number", a.up(), new(big.Rat).SetInt(above))
		want, ok := money.QuantityFromRat(ra)
		if !ok {
			want = money.Quantity(money.Most)
		}
		if got := a.quantity(); got != want {
			t.Fatalf("%s in thousandths is %d, want %d", ra, got, want)
		}
	})
}

func TestFractionsOfLengths(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := fractions().Draw(t, "nm")
		l := length.FromRat(f.rat())
		if got := metres(l); got.rat().Cmp(new(big.Rat).Quo(f.rat(), big.NewRat(int64(length.Metre), 1))) != 0 {
			t.Fatalf("%s is %s m", l, got.rat())
		}
		if back := metres(l).nanometres(); !back.Equal(l) {
			t.Fatalf("%s there and back is %s", l, back)
		}
	})
}
