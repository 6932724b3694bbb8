package length

import (
	"math"
	"math/big"
	"math/bits"
)

// Exact is a length that need not be a whole number of nanometres: interpolated heights are rationals. It is an
// immutable value, its zero value is 0, and every value has one form only.
//
// The form is a whole number and a proper fraction in lowest terms, whole + num/den with 0 <= num < den, all in machine
// words; den is 0 when there is no fraction. Only where a word is too short (several readings with unrelated stations
// added up) does wide hold the value instead, and the other fields are 0. Compare with Equal, not with ==.
type Exact struct {
	whole    Length
	num, den uint64
	wide     *big.Rat
}

const (
	minWhole = Length(math.MinInt64)
	maxWhole = Length(math.MaxInt64)
)

// FromRat is the exact length of r nanometres.
func FromRat(r *big.Rat) Exact {
	if r.IsInt() && r.Num().IsInt64() {
		return Exact{whole: Length(r.Num().Int64())}
	}
	whole, num := new(big.Int).DivMod(r.Num(), r.Denom(), new(big.Int))
	if !whole.IsInt64() || !r.Denom().IsUint64() {
		return Exact{wide: new(big.Rat).Set(r)}
	}
	return Exact{whole: Length(whole.Int64()), num: num.Uint64(), den: r.Denom().Uint64()}
}

// Rat is e in nanometres; the caller owns it.
func (e Exact) Rat() *big.Rat {
	if e.wide != nil {
		return new(big.Rat).Set(e.wide)
	}
	r := new(big.Rat).SetInt64(int64(e.whole))
	if e.num == 0 {
		return r
	}
	frac := new(big.Rat).SetFrac(new(big.Int).SetUint64(e.num), new(big.Int).SetUint64(e.den))
	return r.Add(r, frac)
}

// Fraction is num / den nanometres; den is above 0.
func Fraction(num, den int64) Exact {
	q, rest := floorDiv(Length(num), Length(den))
	return fraction(q, uint64(rest), uint64(den))
}

// Fraction is e in nanometres as a fraction in lowest terms; false where two words are too short for it.
func (e Exact) Fraction() (num, den int64, ok bool) {
	if e.fitsWord() {
		return int64(e.whole), 1, true
	}
	hi, lo := bits.Mul64(e.whole.size(), e.den)
	if e.wide != nil || hi != 0 || lo > math.MaxInt64 || e.den > math.MaxInt64 {
		return 0, 0, false
	}
	num = int64(lo)
	if e.whole < 0 {
		num = -num
	}
	sum, ok := addWhole(Length(num), Length(e.num))
	return int64(sum), int64(e.den), ok
}

// Whole is e as a length, and whether it is one: a whole number of nanometres.
func (e Exact) Whole() (Length, bool) { return e.whole, e.fitsWord() }

// fitsWord says that e is its whole field and nothing more.
func (e Exact) fitsWord() bool { return e.wide == nil && e.num == 0 }

// String is for messages and test logs: nanometres as a rational.
func (e Exact) String() string { return e.Rat().RatString() + " nm" }

// fraction is whole + num/den brought to its one form; num < den.
func fraction(whole Length, num, den uint64) Exact {
	if num == 0 {
		return Exact{whole: whole}
	}
	g := gcd(num, den)
	return Exact{whole: whole, num: num / g, den: den / g}
}

// gcd is the greatest common divisor of two numbers that are not 0, by shifts, which are cheaper than divisions.
func gcd(a, b uint64) uint64 {
	shift := bits.TrailingZeros64(a | b)
	a >>= bits.TrailingZeros64(a)
	for b != 0 {
		b >>= bits.TrailingZeros64(b)
		if a > b {
			a, b = b, a
		}
		b -= a
	}
	return a << shift
}
