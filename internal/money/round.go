package money

import "math/bits"

// scale is n·part/whole, rounded once, half to even; nothing where the whole is
// nothing, and the end of the range where it would be beyond it.
func scale(n, part, whole int64) int64 {
	if whole == 0 || n == 0 {
		return 0
	}
	hi, lo := bits.Mul64(size(n), size(part))
	value := quotient(hi, lo, size(whole))
	if (n < 0) != (part < 0) != (whole < 0) {
		return -value
	}
	return value
}

// quotient is the 128 bits of hi and lo over a divisor, rounded half to even; at
// most the end of the range.
func quotient(hi, lo, by uint64) int64 {
	if hi >= by {
		return int64(Most)
	}
	q, rest := bits.Div64(hi, lo, by)
	if over := by - rest; rest > over || rest == over && q%2 == 1 {
		q++
	}
	return int64(min(q, uint64(Most)))
}

// size is n without its sign, also for the smallest of all.
func size(n int64) uint64 {
	if n < 0 {
		return -uint64(n)
	}
	return uint64(n)
}
