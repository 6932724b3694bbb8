package money

import "math/bits"

// Mean is what values come to on average where each counts for its weight out of
// the whole, which is the weights' sum. It rounds once, at the end. Weights are
// not negative, and the whole is not beyond 10^18.
func Mean[W ~int64](values []Amount, weights []W, whole W) Amount {
	var gains, losses sum
	for i, value := range values {
		if value < 0 {
			losses.add(value, int64(weights[i]))
		} else {
			gains.add(value, int64(weights[i]))
		}
	}
	if whole <= 0 {
		return 0
	}
	if gains.less(losses) {
		return -Amount(losses.minus(gains).over(uint64(whole)))
	}
	return Amount(gains.minus(losses).over(uint64(whole)))
}

// sum is a sum of products, without sign, of 128 bits.
type sum struct{ hi, lo uint64 }

func (s *sum) add(value Amount, weight int64) {
	hi, lo := bits.Mul64(size(int64(value)), size(weight))
	var carry uint64
	s.lo, carry = bits.Add64(s.lo, lo, 0)
	s.hi += hi + carry
}

func (s sum) less(t sum) bool { return s.hi < t.hi || s.hi == t.hi && s.lo < t.lo }

func (s sum) minus(t sum) sum {
	lo, borrow := bits.Sub64(s.lo, t.lo, 0)
	return sum{s.hi - t.hi - borrow, lo}
}

func (s sum) over(whole uint64) int64 { return quotient(s.hi, s.lo, whole) }
