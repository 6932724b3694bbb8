package combine

import "math/bits"

const certain = 1_000_000_000 // a chance of one, as belief.Certain

// miss is the chance that none has called yet, left, once there is one more that
// does not call with the chance unmoved. It goes to the nearest billionth, half
// up: rounded so, two chances never move further apart than they stood, which
// rounding half to even does not promise.
func miss(left, unmoved int64) int64 {
	switch {
	case unmoved == certain:
		return left
	case unmoved == 0:
		return 0
	}
	return int64((uint64(left)*uint64(unmoved) + certain/2) / certain)
}

// small is an amount so small that its product with a chance fits an int64.
const small = 1 << 33

// part is an amount, not negative, times a chance: rounded half to even.
func part(amount, chance int64) int64 {
	if amount == 0 || chance == certain {
		return amount
	}
	q, rest := divide(amount, chance)
	if 2*rest > certain || 2*rest == certain && q&1 == 1 {
		q++
	}
	return q
}

// partDown is an amount, not negative, times a chance: rounded down.
func partDown(amount, chance int64) int64 {
	if amount < small {
		return int64(uint64(amount) * uint64(chance) / certain)
	}
	q, _ := divide(amount, chance)
	return q
}

// divide is amount times chance over certain, and the rest.
func divide(amount, chance int64) (q, rest int64) {
	hi, lo := bits.Mul64(uint64(amount), uint64(chance))
	a, b := bits.Div64(hi, lo, certain)
	return int64(a), int64(b)
}

// partAbove is more than an amount times a chance can come to between two
// rounded sums: nothing where either is nothing.
func partAbove(amount, chance int64) int64 {
	if amount == 0 || chance == 0 {
		return 0
	}
	return partDown(amount, chance) + 1
}
