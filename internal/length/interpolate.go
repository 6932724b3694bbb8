package length

import (
	"math/big"
	"math/bits"
)

// Interpolate is the height at x on the straight line from (x0, y0) to (x1, y1); x0 and x1 must differ. Beyond the two
// points the line goes on. Where x0 equals x1 there is no line, and the answer is y0.
func Interpolate(x0 Length, y0 Exact, x1 Length, y1 Exact, x Length) Exact {
	rise := y1.Sub(y0)
	if x == x0 || x0 == x1 || rise.Sign() == 0 {
		return y0
	}
	if x == x1 {
		return y1
	}
	along, run := int64(x)-int64(x0), int64(x1)-int64(x0)
	if within(x0, x1, x) {
		if part, ok := scaleWords(rise, along, run); ok {
			return y0.Add(part)
		}
	}
	return y0.Add(scaleWide(rise, between(x0, x), between(x0, x1)))
}

// Crossing is the x at which the line from (x0, y0) to (x1, y1) reaches y; y0 and y1 must differ. Where they are equal
// the line is level and never gets there, and the answer is x0.
func Crossing(x0 Length, y0 Exact, x1 Length, y1 Exact, y Exact) Exact {
	rise := y1.Sub(y0)
	if rise.Sign() == 0 {
		return x0.Exact()
	}
	part := y.Sub(y0)
	if along, ok := part.Whole(); ok && within(along) {
		if run, ok := rise.Whole(); ok && within(run) && within(x0, x1) {
			if out, ok := scaleWords((x1 - x0).Exact(), int64(along), int64(run)); ok {
				return out.Plus(x0)
			}
		}
	}
	share := new(big.Rat).Quo(part.Rat(), rise.Rat())
	return FromRat(share.Mul(share, between(x0, x1))).Plus(x0)
}

// within says that the lengths are such that the difference of any two fits an int64.
func within(ls ...Length) bool {
	for _, l := range ls {
		if l > maxWhole/2 || l < minWhole/2 {
			return false
		}
	}
	return true
}

// between is the way from a to b, whatever they are.
func between(a, b Length) *big.Rat { return b.Exact().Minus(a).Rat() }

// scaleWide is e * along / run.
func scaleWide(e Exact, along, run *big.Rat) Exact {
	r := e.Rat()
	return FromRat(r.Mul(r, along).Quo(r, run))
}

// scaleWords is e * along / run in machine words, if it can be done in them: the whole part and the fraction are scaled
// one after the other, each over a 128-bit product.
func scaleWords(e Exact, along, run int64) (Exact, bool) {
	if e.wide != nil {
		return Exact{}, false
	}
	negative := (along < 0) != (run < 0)
	up, down := Length(along).size(), Length(run).size()
	part, ok := mulDiv(e.whole.size(), up, down)
	if !ok {
		return Exact{}, false
	}
	if e.whole < 0 {
		part = part.Neg()
	}
	if e.num != 0 {
		hi, den := bits.Mul64(e.den, down)
		rest, ok := mulDiv(e.num, up, den)
		if hi != 0 || !ok {
			return Exact{}, false
		}
		part = part.Add(rest)
	}
	if negative {
		part = part.Neg()
	}
	return part, true
}

// mulDiv is a * b / c, if its whole part fits.
func mulDiv(a, b, c uint64) (Exact, bool) {
	hi, lo := bits.Mul64(a, b)
	if hi >= c {
		return Exact{}, false
	}
	quo, rem := bits.Div64(hi, lo, c)
	if quo > uint64(maxWhole) {
		return Exact{}, false
	}
	return fraction(Length(quo), rem, c), true
}
