package length

import "math/bits"

// Interpolate is the height at x on the straight line from (x0, y0) to (x1, y1); x0 and x1 must differ. Beyond the two
// points the line goes on. Where x0 equals x1 there is no line, and the answer is y0.
func Interpolate(x0 Length, y0 Exact, x1 Length, y1 Exact, x Length) Exact {
	if x0 == x1 {
		return y0
	}
	return y0.Add(scale(y1.Sub(y0), between(x0, x), between(x0, x1)))
}

// Crossing is the x at which the line from (x0, y0) to (x1, y1) reaches y; y0 and y1 must differ. Where they are equal
// the line is level, and the answer is x0.
func Crossing(x0 Length, y0 Exact, x1 Length, y1 Exact, y Exact) Exact {
	rise := y1.Sub(y0)
	if rise.Sign() == 0 {
		return x0.Exact()
	}
	return scale(between(x0, x1), y.Sub(y0), rise).Plus(x0)
}

// between is the way from a to b.
func between(a, b Length) Exact { return b.Exact().Minus(a) }

// Scale is e * part / of; where of is 0 it is e.
func (e Exact) Scale(part, of Exact) Exact {
	if of.Sign() == 0 {
		return e
	}
	return scale(e, part, of)
}

// scale is e * part / of; of is not 0.
func scale(e, part, of Exact) Exact {
	if e.wide == nil {
		if p, q, ok := share(part, of); ok {
			if scaled, ok := scaleWords(e, p, q); ok {
				return scaled.negIf((part.Sign() < 0) != (of.Sign() < 0))
			}
		}
	}
	r := e.Rat()
	return FromRat(r.Mul(r, part.Rat()).Quo(r, of.Rat()))
}

// share is the size of part / of as a fraction of words.
func share(part, of Exact) (p, q uint64, ok bool) {
	if part.fitsWord() && of.fitsWord() {
		return part.whole.size(), of.whole.size(), true
	}
	a, b, ok := part.Fraction()
	c, d, fits := of.Fraction()
	if !ok || !fits || a == 0 {
		return 0, 1, ok && fits
	}
	over, p := bits.Mul64(Length(a).size(), uint64(d))
	above, q := bits.Mul64(Length(c).size(), uint64(b))
	return p, q, over == 0 && above == 0
}

// scaleWords is e * part / of if machine words are long enough: whole number and fraction are scaled one after the
// other, each over a 128-bit product.
func scaleWords(e Exact, part, of uint64) (Exact, bool) {
	whole, ok := mulDiv(e.whole.size(), part, of)
	if !ok {
		return Exact{}, false
	}
	whole = whole.negIf(e.whole < 0)
	if e.num == 0 {
		return whole, true
	}
	over, den := bits.Mul64(e.den, of)
	if over != 0 {
		return Exact{}, false
	}
	frac, ok := mulDiv(e.num, part, den)
	return whole.Add(frac), ok
}

// mulDiv is a * b / c, if its whole part fits.
func mulDiv(a, b, c uint64) (Exact, bool) {
	hi, lo := bits.Mul64(a, b)
	if hi >= c {
		return Exact{}, false
	}
	quo, rem := bits.Div64(hi, lo, c)
	return fraction(Length(quo), rem, c), quo <= uint64(maxWhole)
}

func (e Exact) negIf(negative bool) Exact {
	if negative {
		return e.Neg()
	}
	return e
}
