package stock

import (
	"math"
	"math/bits"
)

// relaxed is what the linear program tells about a demand.
type relaxed struct {
	values []int64    // of a piece of each kind, in whole units, such that no bar holds more than it is worth
	bound  int64      // so no plan is cheaper than this
	next   []*pattern // what to cut first, if the program is right
}

// relax solves the linear program by generating patterns. It stops when no pattern improves it or the bound reaches
// enough; if quick, also when the bound cannot rise any more, though the values still could. The second result is false
// when the budget ended before that.
func (s *search) relax(demand []int, enough int64, quick bool) (relaxed, bool) {
	kinds, rowOf := rowsOf(demand)
	unit := float64(s.t.longest().price)
	lp := newMaster(demand, kinds, float64(s.price)/unit, s.work)
	fresh := s.known(demand)
	out := relaxed{bound: s.reach.up(s.t.widthBound(demand))}
	for {
		for _, p := range fresh {
			lp.add(p, float64(s.t.price(p))/unit, rowOf)
		}
		lp.solve()
		if s.work.spent() {
			return out, false
		}
		fresh = s.generate(demand, kinds, lp.duals(), &out)
		if s.work.spent() {
			return out, false
		}
		limit := s.reach.up(int64(math.Ceil((lp.value() - 1e-6) * unit)))
		if len(fresh) == 0 || out.bound >= enough || quick && out.bound >= limit {
			out.next = lp.likely(demand)
			return out, true
		}
	}
}

// rowsOf gives a row to each kind in demand.
func rowsOf(demand []int) (kinds, rowOf []int) {
	rowOf = make([]int, len(demand))
	for k, n := range demand {
		if n > 0 {
			rowOf[k] = len(kinds)
			kinds = append(kinds, k)
		}
	}
	return kinds, rowOf
}

// known is the patterns found so far that may be used.
func (s *search) known(demand []int) []*pattern {
	var out []*pattern
	for _, each := range s.pool {
		if each.pattern.within(demand) && !s.forbidden[each.key] {
			out = append(out, each.pattern)
		}
	}
	s.work.spend(4 * len(s.pool))
	return out
}

// generate looks for bars of each size that hold more than they are worth. The values of the pieces, lowered until none
// does, make a bound; if it is the best so far it goes into the result with them. After A. A. Farley, "A note on
// bounding a class of linear programming problems, including cutting stock problems", Operations Research 38 (1990),
// from memory.
func (s *search) generate(demand, kinds []int, duals []float64, out *relaxed) (fresh []*pattern) {
	sack := &knapsack{t: s.t, demand: demand, kinds: kinds, forbidden: s.forbidden, work: s.work}
	for i := range kinds {
		sack.values = append(sack.values, wholeValue(duals[i]))
	}
	for _, z := range s.t.sizes {
		sack.least = append(sack.least, s.t.worth(z))
	}
	sack.prepare()
	over, under := int64(1), int64(1)
	for size, worth := range sack.least {
		takes, value := sack.richest(size)
		if takes == nil {
			continue
		}
		if lessProduct(over, worth, value, under) {
			over, under = value, worth
		}
		for _, each := range sack.more(takes, size) {
			fresh = s.remember(fresh, each)
		}
	}
	if s.work.spent() {
		return nil // a richer bar may have been missed, so the values may be too high
	}
	s.rate(demand, kinds, lowered(sack.values, over, under), out)
	return fresh
}

// lowered is the values times under/over, rounded down.
func lowered(values []int64, over, under int64) []int64 {
	out := make([]int64, len(values))
	for i, v := range values {
		hi, lo := bits.Mul64(uint64(v), uint64(under))
		q, _ := bits.Div64(hi, lo, uint64(over))
		out[i] = int64(q)
	}
	return out
}

// rate takes over values that make a better bound. What the whole demand is worth is what the bars for it must cost.
func (s *search) rate(demand, kinds []int, values []int64, out *relaxed) {
	byKind := make([]int64, len(demand))
	for i, k := range kinds {
		byKind[k] = values[i]
	}
	if total(byKind, demand) > total(out.values, demand) {
		out.values = byKind
		out.bound = max(out.bound, s.reach.up(s.t.inBars(total(byKind, demand))))
	}
}

// remember puts a pattern into the pool and, if it was not there, into the list.
func (s *search) remember(list []*pattern, takes []take) []*pattern {
	id := key(takes)
	if s.inPool[id] {
		return list
	}
	s.inPool[id] = true
	p := s.t.cutting(takes)
	s.pool = append(s.pool, pooled{p, id})
	return append(list, p)
}
