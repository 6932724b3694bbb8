package length

import (
	"math/big"
	"math/bits"
)

// Add is e + o.
func (e Exact) Add(o Exact) Exact {
	if e.wide == nil && o.wide == nil {
		if sum, ok := addWords(e, o); ok {
			return sum
		}
	}
	return FromRat(new(big.Rat).Add(e.Rat(), o.Rat()))
}

// Sub is e - o.
func (e Exact) Sub(o Exact) Exact { return e.Add(o.Neg()) }

// Neg is -e.
func (e Exact) Neg() Exact {
	switch {
	case e.wide != nil || e.whole == minWhole && e.num == 0:
		return FromRat(new(big.Rat).Neg(e.Rat()))
	case e.num == 0:
		return Exact{whole: -e.whole}
	default: // -(w + n/d) = (-w - 1) + (d - n)/d, and -w - 1 is ^w
		return Exact{whole: ^e.whole, num: e.den - e.num, den: e.den}
	}
}

// Plus is e + l.
func (e Exact) Plus(l Length) Exact {
	if sum, ok := addWhole(e.whole, l); ok && e.wide == nil {
		return Exact{whole: sum, num: e.num, den: e.den}
	}
	return e.Add(l.Exact())
}

// Minus is e - l.
func (e Exact) Minus(l Length) Exact {
	if l == minWhole {
		return e.Sub(l.Exact())
	}
	return e.Plus(-l)
}

// addWhole adds, and says whether the sum fits.
func addWhole(a, b Length) (Length, bool) {
	sum := a + b
	return sum, (a^sum)&(b^sum) >= 0
}

// addWords adds two lengths in machine words, if the common denominator and the whole part fit.
func addWords(e, o Exact) (Exact, bool) {
	whole, ok := addWhole(e.whole, o.whole)
	switch {
	case !ok:
		return Exact{}, false
	case o.num == 0:
		return Exact{whole: whole, num: e.num, den: e.den}, true
	case e.num == 0:
		return Exact{whole: whole, num: o.num, den: o.den}, true
	}
	num, den, carry, ok := addFractions(e, o)
	if !ok || carry && whole == maxWhole {
		return Exact{}, false
	}
	if carry {
		whole++
	}
	return fraction(whole, num, den), true
}

// addFractions adds two proper fractions over their least common denominator; carry is the whole that came of it.
func addFractions(e, o Exact) (num, den uint64, carry, ok bool) {
	g := gcd(e.den, o.den)
	hi, den := bits.Mul64(e.den/g, o.den)
	if hi != 0 {
		return 0, 0, false, false
	}
	sum, over := bits.Add64(e.num*(o.den/g), o.num*(e.den/g), 0) // both below den
	if over == 1 || sum >= den {
		return sum - den, den, true, true
	}
	return sum, den, false, true
}
