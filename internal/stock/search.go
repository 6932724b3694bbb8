package stock

import "slices"

// search is branch and price. At each step the linear program names a pattern; the plans that cut it now come first,
// and after them those that never cut it again. Both together are all plans, so when the search comes to its end the
// best plan it met is the best there is.
type search struct {
	t         *task
	effort    effort
	work      *budget
	reach     reach
	pool      []pooled
	inPool    map[string]bool // only asked, never listed: its order cannot show
	forbidden map[string]bool // the same
	chosen    []*pattern      // the bars cut on the way to where the search is
	best      []*pattern
	price     int64 // of the best
	open      bool  // something was left unsearched
}

type pooled struct {
	pattern *pattern
	key     string
}

// newSearch starts from the quick plans.
func newSearch(t *task, e effort) *search {
	s := &search{t: t, effort: e, work: &budget{e.steps}}
	s.inPool, s.forbidden = map[string]bool{}, map[string]bool{}
	s.best = greedy(t, t.demand, s.work)
	s.price = t.prices(s.best)
	s.reach = reachable(t.sizes, s.price)
	for _, p := range s.best {
		s.remember(nil, p.takes)
	}
	return s
}

// explore looks through all plans that go on from what is chosen. The bound is of the demand; next is what to cut
// first, if that is known.
func (s *search) explore(demand []int, paid, bound int64, next []*pattern) {
	if s.finish(demand, paid) {
		return
	}
	var ruledOut []string
	for paid+bound < s.price {
		if len(next) == 0 {
			found, done := s.relax(demand, s.price-paid, true)
			bound, next = max(bound, found.bound), found.next
			if paid+bound >= s.price {
				break
			}
			if !done || len(next) == 0 {
				s.open = true
				break
			}
		}
		s.branch(demand, paid, bound, next)
		id := key(next[0].takes)
		s.forbidden[id] = true
		ruledOut = append(ruledOut, id)
		next = nil
	}
	for _, id := range ruledOut {
		delete(s.forbidden, id)
	}
}

// branch cuts the first of next and goes on.
func (s *search) branch(demand []int, paid, bound int64, next []*pattern) {
	p := next[0]
	price := s.t.price(p)
	p.from(demand, 1)
	s.chosen = append(s.chosen, p)
	s.explore(demand, paid+price, bound-price, next[1:])
	s.chosen = s.chosen[:len(s.chosen)-1]
	p.from(demand, -1)
}

// finish settles what needs no search: nothing left, a hopeless rest, no budget, or a rest for the table.
func (s *search) finish(demand []int, paid int64) bool {
	switch {
	case total(s.t.widths, demand) == 0:
		s.offer(nil, paid)
	case paid+s.reach.up(s.t.widthBound(demand)) >= s.price:
	case s.work.spent():
		s.open = true
	default:
		return s.lookUp(demand, paid)
	}
	return true
}

// lookUp settles a small rest with the exact table.
func (s *search) lookUp(demand []int, paid int64) bool {
	n := entries(demand, s.effort.rest)
	if n >= s.effort.rest {
		return false
	}
	s.work.spend(16 * n)
	l := tabulate(s.t, demand)
	all := len(l.best) - 1
	if paid+l.best[all] < s.price {
		s.offer(l.plan(all), paid+l.best[all])
	}
	return true
}

// offer notes a plan if it is the best so far.
func (s *search) offer(more []*pattern, price int64) {
	if price < s.price {
		s.best, s.price = slices.Concat(s.chosen, more), price
	}
}
