package combine

import "math"

// sharpen makes a problem easier that was not solved at once: it brings the bound
// down, and leaves out the ways that no combination as good as the one known can
// have.
func (s *search) sharpen() {
	if !s.known {
		return
	}
	s.bound.prepare(&s.task, thoroughWork)
	for range 3 {
		before := s.gap()
		s.lower()
		s.pass(1)
		s.improve()
		if !s.drop() {
			return
		}
		if s.gap() > before-before/32 {
			return
		}
	}
}

// gap is how much more the best combination might be worth than the one known.
func (s *search) gap() int64 {
	return s.bound.value[0] + s.bonus + s.base + s.lines.most(s.lines.start()) + s.bound.slack - s.floor
}

// lower looks for shares that bring the bound down, and leaves it at the lowest.
func (s *search) lower() {
	lowest, scale := s.gap(), 1.0
	s.share = append(s.share[:0], s.bound.share...)
	for range 12 {
		if !s.bound.ascend(&s.task, s.gap(), scale) {
			break
		}
		s.bound.prepare(&s.task, thoroughWork)
		if gap := s.gap(); gap < lowest {
			lowest = gap
			copy(s.share, s.bound.share)
		} else {
			scale *= 0.6
		}
	}
	copy(s.bound.share, s.share)
	s.bound.prepare(&s.task, thoroughWork)
}

// drop leaves out the ways with which nothing comes to what is known; false where
// there are none.
func (s *search) drop() bool {
	gap, to := s.gap(), 0
	s.moved = s.moved[:0]
	for k := range s.stages {
		st := &s.stages[k]
		from := to
		for i := st.from; i < st.to; i++ {
			s.moved = append(s.moved, int32(to))
			onPath := s.path != nil && s.path[st.thing] == s.ways[i].pick
			if onPath || s.bound.loss(k, i) <= gap {
				s.ways[to] = s.ways[i]
				to++
			}
		}
		st.from, st.to = from, to
	}
	if to == len(s.ways) {
		return false
	}
	s.ways = s.ways[:to]
	for k, w := range s.best {
		s.best[k] = s.moved[w]
	}
	s.settle()
	s.bound.prepare(&s.task, thoroughWork)
	return true
}

// loss is the least that way i of stage k falls short of the best way.
func (b *bound) loss(k, i int) int64 {
	least, later := int64(math.MaxInt64), b.after(k)
	for _, set := range b.reached.before(k) {
		least = min(least, b.value[k<<b.bits+set]-b.worth(&b.ways[i], set, later))
	}
	return least
}
