package money

import (
	"math/big"
	"testing"

	"pgregory.net/rapid"
)

var euro = Currency{"EUR", 2}

func amount(t testing.TB, text string) Amount {
	t.Helper()
	a, err := Parse(text, euro)
	if err != nil {
		t.Fatalf("%q: %v", text, err)
	}
	return a
}

// parts draws numbers of ordinary work as often as those anywhere in the range.
func parts() *rapid.Generator[int64] {
	return rapid.OneOf(rapid.Int64Range(-1e9, 1e9), rapid.Int64Range(-int64(Most), int64(Most)))
}

func drawAmount(t *rapid.T, label string) Amount     { return Amount(parts().Draw(t, label)) }
func drawQuantity(t *rapid.T, label string) Quantity { return Quantity(parts().Draw(t, label)) }

func drawCurrency(t *rapid.T) Currency {
	return rapid.SampledFrom([]Currency{{"JPY", 0}, euro, {"KWD", 3}, {"CLF", 4}}).Draw(t, "currency")
}

// exact is what a would be without the range's ends, in parts.
func exact(a Amount) *big.Rat { return big.NewRat(int64(a), 1) }

// isNearest reports whether got is the whole number nearest to want, half to even,
// or the end of the range where want is beyond it. It follows from the meaning of
// rounding, not from how it is done here.
func isNearest(got int64, want *big.Rat) bool {
	if most := new(big.Rat).SetInt64(int64(Most)); new(big.Rat).Abs(want).Cmp(most) > 0 {
		return got == int64(want.Sign())*int64(Most)
	}
	off := new(big.Rat).Sub(want, big.NewRat(got, 1))
	switch off.Abs(off).Cmp(big.NewRat(1, 2)) {
	case -1:
		return true
	case 0:
		return got%2 == 0
	}
	return false
}
