package combine

import "math/bits"

const certain = 1_000_000_000 // belief.Certain

// miss is the chance that nobody has called yet, left, once there is one more
// who does not call with the chance unmoved. It goes to the nearest billionth,
// half up: rounded so, two chances never move further apart than they stood,
// which rounding half to even does not promise.
func miss(left, unmoved int64) int64 {
	switch unmoved {
	case certain:
		return left
	case 0:
		return 0
	}
	return int64((uint64(left)*uint64(unmoved) + certain/2) / certain)
}

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

// small is an amount whose product with a chance fits an int64.
const small = 1 << 33

// partDown is an amount, not negative, times a chance: rounded down.
func partDown(amount, chance int64) int64 {
	if amount < small {
		return int64(uint64(amount) * uint64(chance) / certain)
	}
	q, _ := divide(amount, chance)
	return q
}

// partAbove is no less than two sums may lie apart that are an amount times two
// chances, both rounded, where the chances lie chance apart.
func partAbove(amount, chance int64) int64 {
	if amount == 0 || chance == 0 {
		return 0
	}
	return partDown(amount, chance) + 1
}

// divide is amount times chance over certain, and the rest.
func divide(amount, chance int64) (q, rest int64) {
	hi, lo := bits.Mul64(uint64(amount), uint64(chance))
	a, b := bits.Div64(hi, lo, certain)
	return int64(a), int64(b)
}
