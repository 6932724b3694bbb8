package length

import (
	"cmp"
	"math/big"
	"math/bits"
)

// Cmp is -1, 0 or +1 as e is below, equal to or above o.
func (e Exact) Cmp(o Exact) int {
	if e.wide != nil || o.wide != nil {
		return e.Rat().Cmp(o.Rat())
	}
	if e.whole != o.whole {
		return cmp.Compare(e.whole, o.whole)
	}
	return compareFractions(e.num, e.den, o.num, o.den)
}

// CmpLength is -1, 0 or +1 as e is below, equal to or above l.
func (e Exact) CmpLength(l Length) int { return e.Cmp(l.Exact()) }

// Sign is -1, 0 or +1 as e is negative, 0 or positive.
func (e Exact) Sign() int { return e.CmpLength(0) }

// Less says whether e is below o.
func (e Exact) Less(o Exact) bool { return e.Cmp(o) < 0 }

// Equal says whether e and o are the same length.
func (e Exact) Equal(o Exact) bool { return e.Cmp(o) == 0 }

// Smaller is the smaller of the two.
func Smaller(a, b Exact) Exact {
	if b.Less(a) {
		return b
	}
	return a
}

// Larger is the larger of the two.
func Larger(a, b Exact) Exact {
	if a.Less(b) {
		return b
	}
	return a
}

// compareFractions compares a/b with c/d by their 128-bit cross products; 0/0 stands for no fraction.
func compareFractions(a, b, c, d uint64) int {
	if a == 0 || c == 0 || b == d {
		return cmp.Compare(a, c)
	}
	hi1, lo1 := bits.Mul64(a, d)
	hi2, lo2 := bits.Mul64(c, b)
	if hi1 != hi2 {
		return cmp.Compare(hi1, hi2)
	}
	return cmp.Compare(lo1, lo2)
}

// cmpHalf compares e, which lies within [0, 1), with a half.
func (e Exact) cmpHalf() int {
	if e.wide != nil {
		return e.wide.Cmp(big.NewRat(1, 2))
	}
	return compareFractions(e.num, e.den, 1, 2)
}
