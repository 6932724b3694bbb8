package takeoff

import (
	"math/big"
	"math/bits"

	"railhead/internal/length"
	"railhead/internal/money"
)

// fraction is an exact rational number in lowest terms: two machine words as long
// as these are long enough, which the figures of a kitchen hardly ever outgrow,
// else wide. The denominator 0 stands for 1, so that the zero value is 0.
type fraction struct {
	num, den int64
	wide     *big.Rat
}

func integer(n int64) fraction { return fraction{num: n} }

// part is n / d; d is above 0.
func quotient(n, d int64) fraction {
	if n == 0 {
		return fraction{}
	}
	if common := divisor(n, d); common > 1 {
		n, d = n/common, d/common
	}
	return fraction{num: n, den: d}
}

// metres is a length in metres.
func metres(l length.Exact) fraction {
	if num, den, ok := l.Fraction(); ok {
		if den, ok = product(den, int64(length.Metre)); ok {
			return quotient(num, den)
		}
	}
	return fromRat(l.Rat()).over(integer(int64(length.Metre)))
}

// nanometres is the length of so many metres.
func (f fraction) nanometres() length.Exact {
	f = f.times(integer(int64(length.Metre)))
	if f.wide != nil {
		return length.FromRat(f.wide)
	}
	return length.Fraction(f.num, f.below())
}

// fromRat is a rational number in its one form.
func fromRat(r *big.Rat) fraction {
	if r.Num().IsInt64() && r.Denom().IsInt64() {
		return fraction{num: r.Num().Int64(), den: r.Denom().Int64()}
	}
	return fraction{wide: r}
}

// rat is f; the caller owns it.
func (f fraction) rat() *big.Rat {
	if f.wide != nil {
		return new(big.Rat).Set(f.wide)
	}
	return big.NewRat(f.num, f.below())
}

func (f fraction) below() int64 { return max(1, f.den) }

func (f fraction) sign() int {
	switch {
	case f.wide != nil:
		return f.wide.Sign()
	case f.num < 0:
		return -1
	default:
		return int(min(1, f.num))
	}
}

func (f fraction) times(g fraction) fraction {
	if f.wide == nil && g.wide == nil {
		if out, ok := productOf(f, g); ok {
			return out
		}
	}
	return fromRat(new(big.Rat).Mul(f.rat(), g.rat()))
}

// over is f / g; g is not 0.
func (f fraction) over(g fraction) fraction {
	if g.wide == nil && g.num != -g.num { // not the one number that has no negative
		if g.num < 0 {
			return f.times(fraction{num: -g.below(), den: -g.num})
		}
		return f.times(fraction{num: g.below(), den: g.num})
	}
	return fromRat(new(big.Rat).Quo(f.rat(), g.rat()))
}

func (f fraction) plus(g fraction) fraction {
	if f.wide == nil && g.wide == nil {
		if out, ok := sumOf(f, g); ok {
			return out
		}
	}
	return fromRat(new(big.Rat).Add(f.rat(), g.rat()))
}

func (f fraction) minus(g fraction) fraction {
	if g.wide == nil && g.num > -1<<63 {
		return f.plus(fraction{num: -g.num, den: g.den})
	}
	return f.plus(g.times(integer(-1)))
}

// exceeds reports whether f is above g.
func (f fraction) exceeds(g fraction) bool { return f.minus(g).sign() > 0 }

// up is the least whole number that is not below f.
func (f fraction) up() fraction {
	if f.wide == nil {
		q, rest := f.num/f.below(), f.num%f.below()
		if rest > 0 {
			q++
		}
		return integer(q)
	}
	q, rest := new(big.Int).DivMod(f.wide.Num(), f.wide.Denom(), new(big.Int))
	if rest.Sign() > 0 {
		q.Add(q, big.NewInt(1))
	}
	return fromRat(new(big.Rat).SetInt(q))
}

// quantity is f to the nearest thousandth, half to even; the end of the range
// where it is beyond that.
func (f fraction) quantity() money.Quantity {
	if n, ok := product(f.num, int64(money.One)); ok && f.wide == nil {
		return nearest(n, f.below())
	}
	if q, ok := money.QuantityFromRat(f.rat()); ok {
		return q
	}
	return money.Quantity(money.Most)
}

// nearest is n / d to the nearest whole number, half to even, within the range.
func nearest(n, d int64) money.Quantity {
	q, rest := n/d, n%d
	if rest < 0 {
		q, rest = q-1, rest+d
	}
	if left := d - rest; rest > left || rest == left && q&1 == 1 {
		q++
	}
	if q > int64(money.Most) || q < -int64(money.Most) {
		return money.Quantity(money.Most)
	}
	return money.Quantity(q)
}

// productOf divides across before it multiplies, so that nothing is left to
// divide afterwards; false where a word is too short.
func productOf(f, g fraction) (fraction, bool) {
	if f.num == 0 || g.num == 0 {
		return fraction{}, true
	}
	a, b := divisor(f.num, g.below()), divisor(g.num, f.below())
	num, ok := product(f.num/a, g.num/b)
	den, fits := product(f.below()/b, g.below()/a)
	return fraction{num: num, den: den}, ok && fits
}

// sumOf adds over the least common denominator; false where a word is too short.
func sumOf(f, g fraction) (fraction, bool) {
	common := divisor(f.below(), g.below())
	left, ok := product(f.num, g.below()/common)
	right, fits := product(g.num, f.below()/common)
	sum := left + right
	if !ok || !fits || (left^sum)&(right^sum) < 0 {
		return fraction{}, false
	}
	den, ok := product(f.below()/common, g.below())
	if !ok {
		return fraction{}, false
	}
	return quotient(sum, den), true
}

// product is a * b; false where a word is too short.
func product(a, b int64) (int64, bool) {
	hi, lo := bits.Mul64(size(a), size(b))
	if hi != 0 || lo > 1<<63-1 {
		return 0, false
	}
	if (a < 0) != (b < 0) {
		return -int64(lo), true
	}
	return int64(lo), true
}

func size(n int64) uint64 {
	if n < 0 {
		return -uint64(n)
	}
	return uint64(n)
}

// divisor is the greatest common divisor of two numbers that are not 0.
func divisor(n, d int64) int64 {
	a, b := size(n), size(d)
	shift := bits.TrailingZeros64(a | b)
	a >>= bits.TrailingZeros64(a)
	for b != 0 && a != 1 {
		b >>= bits.TrailingZeros64(b)
		if a > b {
			a, b = b, a
		}
		b -= a
	}
	return int64(a << shift)
}
