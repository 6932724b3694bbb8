package length

import (
	"cmp"
	"math/big"
	"math/bits"
)

// Hypot is the diagonal of a and b, the root of a² + b², rounded up to a whole nanometre: what a cabinet needs when it
// is stood up.
func Hypot(a, b Length) (ceil Length) {
	sum := squares(a, b)
	root := new(big.Int).Sqrt(sum)
	if new(big.Int).Mul(root, root).Cmp(sum) < 0 {
		root.Add(root, big.NewInt(1))
	}
	if !root.IsInt64() {
		return maxWhole
	}
	return Length(root.Int64())
}

// HypotFits says whether the diagonal of a and b is no longer than room.
func HypotFits(a, b Length, room Exact) bool {
	if room.Sign() < 0 {
		return false
	}
	if room.wide == nil {
		whole := room.whole.size()
		switch {
		case compareSquares(a, b, whole) <= 0:
			return true
		case compareSquares(a, b, whole+1) >= 0: // room is below whole + 1
			return false
		}
	}
	r := room.Rat()
	return new(big.Rat).SetInt(squares(a, b)).Cmp(r.Mul(r, r)) <= 0
}

// compareSquares compares a² + b² with c², all below 2^127.
func compareSquares(a, b Length, c uint64) int {
	hi1, lo1 := bits.Mul64(a.size(), a.size())
	hi2, lo2 := bits.Mul64(b.size(), b.size())
	hi3, lo3 := bits.Mul64(c, c)
	lo, carry := bits.Add64(lo1, lo2, 0)
	hi, _ := bits.Add64(hi1, hi2, carry)
	if hi != hi3 {
		return cmp.Compare(hi, hi3)
	}
	return cmp.Compare(lo, lo3)
}

// squares is a² + b².
func squares(a, b Length) *big.Int {
	x, y := big.NewInt(int64(a)), big.NewInt(int64(b))
	return x.Add(x.Mul(x, x), y.Mul(y, y))
}
