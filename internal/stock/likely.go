package stock

import (
	"cmp"
	"math"
	"slices"
)

// whole is how far below a whole number an amount still counts as one.
const whole = 1e-5

// likely is the whole bars of the program's solution and after them the one most nearly whole, as far as the demand goes.
func (lp *master) likely(demand []int) []*pattern {
	var order []int
	for i, j := range lp.basis {
		if lp.cols[j].pattern != nil && lp.x[i] > whole {
			order = append(order, i)
		}
	}
	slices.SortStableFunc(order, lp.compare)
	left := slices.Clone(demand)
	var next []*pattern
	for _, i := range order {
		p := lp.cols[lp.basis[i]].pattern
		for range int(lp.x[i] + whole) {
			if p.within(left) {
				p.from(left, 1)
				next = append(next, p)
			}
		}
	}
	for _, i := range order {
		if p := lp.cols[lp.basis[i]].pattern; lp.part(i) > 0 && p.within(left) {
			return append(next, p)
		}
	}
	return next
}

// part is how much of a bar there is over the whole ones, in hundred-thousandths so that a rounding decides nothing.
func (lp *master) part(i int) int {
	return int((lp.x[i] - math.Floor(lp.x[i]+whole)) / whole)
}

// compare puts the larger part first, then the fuller bar.
func (lp *master) compare(a, b int) int {
	pa, pb := lp.cols[lp.basis[a]].pattern, lp.cols[lp.basis[b]].pattern
	return cmp.Or(cmp.Compare(lp.part(b), lp.part(a)), cmp.Compare(pb.width, pa.width))
}
