package belief

import (
	"math/big"
	"slices"
)

// FromRats is a belief with the states in the given proportions, as Of. A part
// below zero counts for zero.
func FromRats(parts []*big.Rat) Belief {
	whole := new(big.Rat)
	for _, part := range parts {
		whole.Add(whole, counting(part))
	}
	if whole.Sign() == 0 {
		return Of(make([]Chance, len(parts))...)
	}
	b, rests, left := make(Belief, len(parts)), make([]*big.Rat, len(parts)), Certain
	for i, part := range parts {
		quota := new(big.Rat).Quo(counting(part), whole)
		quota.Mul(quota, new(big.Rat).SetInt64(int64(Certain)))
		floor := new(big.Int).Quo(quota.Num(), quota.Denom())
		b[i], rests[i] = Chance(floor.Int64()), quota.Sub(quota, new(big.Rat).SetInt(floor))
		left -= b[i]
	}
	for _, i := range largestFirst(rests)[:left] {
		b[i]++
	}
	return b
}

func counting(part *big.Rat) *big.Rat {
	if part.Sign() < 0 {
		return new(big.Rat)
	}
	return part
}

// largestFirst is the indices of rests from the largest on, the first of equals
// first.
func largestFirst(rests []*big.Rat) []int {
	order := make([]int, len(rests))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return rests[b].Cmp(rests[a]) })
	return order
}
