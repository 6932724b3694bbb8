package money

import (
	"cmp"
	"math/bits"
	"slices"
)

// Apportion splits a total in whole parts in proportion to weights. By the method
// of the largest remainder: each gets the whole part of its quota, and what is
// left goes to the largest fractions, the first of equals first. Weights below
// zero count for zero; where all do, the parts are as equal as can be.
func Apportion[T, W ~int64](total T, weights []W) []T {
	weights, whole := weigh(weights)
	parts, rests := make([]T, len(weights)), make([]uint64, len(weights))
	left := size(int64(total))
	for i, w := range weights {
		hi, lo := bits.Mul64(size(int64(total)), uint64(w))
		quota, rest := bits.Div64(hi, lo, whole) // below 2^64: no weight is beyond the whole
		parts[i], rests[i] = T(quota), rest
		left -= quota
	}
	give(parts, rests, left)
	if total < 0 {
		for i := range parts {
			parts[i] = -parts[i]
		}
	}
	return parts
}

// weigh is the weights that count, and their sum. Weights too heavy to be added
// up lose their last digits.
func weigh[W ~int64](weights []W) (counting []W, whole uint64) {
	counting = make([]W, len(weights))
	var over, carry uint64
	for i, w := range weights {
		counting[i] = max(w, 0)
		whole, carry = bits.Add64(whole, uint64(counting[i]), 0)
		over += carry
	}
	switch {
	case over > 0:
		for i := range counting {
			counting[i] >>= bits.Len(uint(len(counting)))
		}
		return weigh(counting)
	case whole == 0:
		for i := range counting {
			counting[i] = 1
		}
		whole = uint64(len(counting))
	}
	return counting, whole
}

// give adds one to as many parts as are left over, the largest rest first.
func give[T ~int64](parts []T, rests []uint64, left uint64) {
	if left == 0 || len(parts) == 0 {
		return
	}
	for _, i := range largestFirst(rests)[:left] {
		parts[i]++
	}
}

// largestFirst is the indices of rests from the largest on, the first of equals
// first.
func largestFirst(rests []uint64) []int {
	order := make([]int, len(rests))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(rests[b], rests[a]) })
	return order
}

// SplitTo rounds parts to a currency's smallest coin so that they add up to their
// rounded sum. Each is less than a coin off; what is left goes to the largest
// fractions of a coin, the first of equals first.
func SplitTo(c Currency, parts []Amount) []Amount {
	coin := c.Coin()
	coins, rests := make([]Amount, len(parts)), make([]uint64, len(parts))
	var odd Amount // whether the coins are odd together
	var rest uint64
	for i, part := range parts {
		over := (part%coin + coin) % coin
		coins[i], rests[i] = (part-over)/coin, uint64(over)
		odd ^= coins[i] & 1
		rest += uint64(over)
	}
	left, half := rest/uint64(coin), 2*(rest%uint64(coin))
	if half > uint64(coin) || half == uint64(coin) && (left+uint64(odd))%2 == 1 {
		left++ // the sum is rounded half to even
	}
	give(coins, rests, left)
	for i := range coins {
		coins[i] *= coin
	}
	return coins
}
