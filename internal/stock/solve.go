package stock

import "slices"

// result is a plan and the price that no plan can beat.
type result struct {
	bars  []*pattern
	bound int64
}

// solve finds the cheapest plan of a task, as far as the effort goes.
func solve(t *task, e effort) result {
	if entries(t.demand, e.whole) < e.whole {
		bars := tabulate(t, t.demand).roomiest()
		return result{bars, t.prices(bars)}
	}
	s := newSearch(t, e)
	bound := s.run()
	return result{gather(t, s.best, &budget{gatherSteps}), bound}
}

// run improves the plan until it is proven or the budget is spent, and returns the bound.
func (s *search) run() int64 {
	if s.reach.up(s.t.widthBound(s.t.demand)) >= s.price {
		return s.price
	}
	if len(s.t.widths) > s.effort.rows {
		return s.runLarge()
	}
	root, done := s.relax(s.t.demand, s.price, true)
	if !done {
		return min(root.bound, s.price)
	}
	explore := func() { s.explore(slices.Clone(s.t.demand), 0, root.bound, root.next) }
	if s.within(s.work.left/8, explore) || s.within(s.work.left/2, s.settleAll) || s.within(s.work.left, explore) {
		return s.price
	}
	return root.bound
}

// settleAll settles the whole problem with the best values there are.
func (s *search) settleAll() {
	found, done := s.relax(s.t.demand, s.price, false)
	if !done {
		s.open = true
		return
	}
	s.settle(found.values)
}

// runLarge does what can be done with more kinds than the linear program can bear: it improves the plan in parts, and
// finds the bound with neighbouring kinds counted as the shortest of them.
func (s *search) runLarge() int64 {
	s.within(s.work.left/2, s.rework)
	c := newSearch(s.t.coarse(s.effort.rows/2), s.effort)
	c.work = s.work
	found, _ := c.relax(c.t.demand, c.price, true)
	bound := max(found.bound, s.reach.up(s.t.widthBound(s.t.demand)))
	return min(bound, s.price)
}

// within runs a part of the search on a part of the budget and says whether it came to its end.
func (s *search) within(steps int64, part func()) bool {
	work := s.work
	s.work, s.open = &budget{steps}, false
	part()
	work.left -= steps - s.work.left
	s.work = work
	return !s.open
}
