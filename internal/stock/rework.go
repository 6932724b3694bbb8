package stock

import (
	"cmp"
	"slices"
)

// How many kinds are cut anew at once: at first, and more each time that nothing came of it.
const (
	reworkKinds = 100
	reworkMore  = 50
)

// rework improves the plan of a problem too large to search as a whole: what the most wasteful bars hold is cut anew,
// again and again while that helps.
func (s *search) rework() {
	for kinds := reworkKinds; kinds <= s.effort.rows && !s.work.spent(); {
		slices.SortStableFunc(s.best, func(a, b *pattern) int {
			return cmp.Compare(s.t.sizes[b.size].room-b.width, s.t.sizes[a.size].room-a.width)
		})
		n, demand := s.worst(kinds)
		if !s.anew(n, demand) {
			kinds += reworkMore
		}
	}
}

// worst is how many bars hold so many kinds, the most wasteful first, and all that they hold.
func (s *search) worst(kinds int) (n int, demand []int) {
	demand = make([]int, len(s.t.demand))
	for n < len(s.best) && kinds > 0 {
		for _, each := range s.best[n].takes {
			if demand[each.kind] == 0 {
				kinds--
			}
			demand[each.kind] += each.count
		}
		n++
	}
	return n, demand
}

// anew cuts what the first n bars hold with a part of the budget, and says whether it came out cheaper.
func (s *search) anew(n int, demand []int) bool {
	part, kinds := s.t.part(demand)
	e := s.effort
	e.steps, e.rows = s.work.left/4, len(kinds)
	p := newSearch(part, e)
	p.run()
	s.work.spend(int(e.steps - p.work.left))
	was := s.t.prices(s.best[:n])
	if p.price >= was {
		return false
	}
	s.best = slices.Concat(back(p.best, kinds), s.best[n:])
	s.price += p.price - was
	return true
}

// part is the task of some of the demand; kinds says which kinds of the whole its kinds are.
func (t *task) part(demand []int) (part *task, kinds []int) {
	kinds, _ = rowsOf(demand)
	p := *t
	p.widths, p.demand = nil, nil
	for _, k := range kinds {
		p.widths = append(p.widths, t.widths[k])
		p.demand = append(p.demand, demand[k])
	}
	return &p, kinds
}

// back is the patterns of a part as patterns of the whole.
func back(plan []*pattern, kinds []int) []*pattern {
	out := make([]*pattern, len(plan))
	for i, p := range plan {
		whole := *p
		whole.takes = slices.Clone(p.takes)
		for j := range whole.takes {
			whole.takes[j].kind = kinds[p.takes[j].kind]
		}
		out[i] = &whole
	}
	return out
}
