package money

import "math/big"

// FromRat is the amount nearest to a rational number of units, half to even;
// false where it is out of range.
func FromRat(r *big.Rat) (Amount, bool) {
	n, ok := nearest(new(big.Rat).Mul(r, big.NewRat(int64(Unit), 1)), int64(Most))
	return Amount(n), ok
}

// QuantityFromRat is the quantity nearest to a rational number of its unit, half
// to even; false where it is out of range.
func QuantityFromRat(r *big.Rat) (Quantity, bool) {
	n, ok := nearest(new(big.Rat).Mul(r, big.NewRat(int64(One), 1)), int64(Most))
	return Quantity(n), ok
}

// nearest is the whole number nearest to r, half to even; false beyond ±most.
func nearest(r *big.Rat, most int64) (int64, bool) {
	num, den := new(big.Int).Lsh(r.Num(), 1), new(big.Int).Lsh(r.Denom(), 1)
	q, rest := new(big.Int).DivMod(num.Add(num, r.Denom()), den, new(big.Int))
	if rest.Sign() == 0 && q.Bit(0) == 1 {
		q.Sub(q, big.NewInt(1)) // a tie went up to an odd number
	}
	if !q.IsInt64() || q.Int64() > most || q.Int64() < -most {
		return 0, false
	}
	return q.Int64(), true
}
