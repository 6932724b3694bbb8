package combine

// grow goes on from the labels of the last stage in all ways to do stage k.
func (s *search) grow(k int) {
	s.next.clear()
	for i := range s.here.labels {
		for w := s.stages[k].from; w < s.stages[k].to; w++ {
			s.goOn(k, &s.here.labels[i], w)
		}
	}
}

// goOn adds the label that goes on from another one with a way, unless it cannot
// become the best.
func (s *search) goOn(k int, from *label, w int) {
	s.spent++
	st, way, at := &s.stages[k], &s.ways[w], len(s.next.states)
	s.next.states = append(s.next.states, s.state(&s.here, from)...)
	state := s.next.states[at:]
	l := label{worth: from.worth + way.worth, line: s.lines.after(k, from.line.with(way.line)), parent: from.node, way: int32(w), state: at}
	l.path = from.path && way.pick == s.path[st.thing]
	s.call(st, &l, way, state)
	possible := s.join(st, &l, way, s.slots(state))
	if k == len(s.stages)-1 {
		s.end(&l)
	} else if possible {
		l.most = s.ceiling(k, &l, state)
	}
	if !possible || s.known && l.most < s.floor {
		s.next.states = s.next.states[:at]
		return
	}
	s.next.labels = append(s.next.labels, l)
}

// end settles a label that has done everything.
func (s *search) end(l *label) {
	if l.line == oneLine {
		l.worth += s.lines.worth
	}
	l.line, l.most = uneven, l.worth
}

// call adds what a way calls for, and pays what no longer depends on what comes.
func (s *search) call(st *stage, l *label, w *way, state []int64) {
	for _, c := range s.callsOf(w) {
		left, labour := &state[2*c.trade], &state[2*c.trade+1]
		*left = miss(*left, c.unmoved)
		*labour += c.labour
		if over := *labour - s.trades[c.trade].minimum; over > 0 {
			*labour -= over
			l.worth -= over
		}
	}
	for _, n := range st.closing {
		l.worth -= s.trades[n].charge(state[2*n], state[2*n+1])
		state[2*n], state[2*n+1] = certain, 0
	}
	for i := range st.live {
		rest := &st.live[i]
		tr, left, labour := &s.trades[rest.trade], state[2*rest.trade], &state[2*rest.trade+1]
		if *labour > 0 && rest.labour < tr.minimum && *labour+rest.labour <= part(tr.minimum, certain-left) {
			*labour = 0
		}
	}
}

// join adds what a way does to joints, and pays those that nothing bears on any
// more; false where one has become impossible.
func (s *search) join(st *stage, l *label, w *way, slots []int64) bool {
	for i := range st.open {
		slots[st.open[i].slot] = int64(st.open[i].none)
	}
	for _, e := range s.effectsOf(w) {
		slots[e.slot] = int64(both(uint16(slots[e.slot]), e.state))
	}
	for i := range st.shut {
		j := &st.shut[i]
		worth := j.worth[slots[j.slot]]
		if worth == impossible {
			return false
		}
		l.worth += worth
		slots[j.slot] = 0
	}
	for i := range st.bound {
		j := &st.bound[i]
		if j.worth[slots[j.slot]] == impossible {
			return false
		}
	}
	return true
}

// ceiling is the most that a label after stage k may come to.
func (s *search) ceiling(k int, l *label, state []int64) int64 {
	st, b, slots := &s.stages[k], &s.bound, s.slots(state)
	v := l.worth + st.bonus + s.lines.most(l.line) + b.slack
	for i := range st.bound {
		v += st.bound[i].worth[slots[st.bound[i].slot]]
	}
	set := 0
	s.perhaps = s.perhaps[:0]
	for i := range st.live {
		n := st.live[i].trade
		left, labour := state[2*n], state[2*n+1]
		v -= partDown(labour, b.share[n])
		switch {
		case left == certain:
		case n >= b.bits:
			v -= partDown(b.fixed[n], certain-left)
		case left == 0:
			set |= 1 << n
		default:
			s.perhaps = insert(s.perhaps, 0, perhaps{n, certain - left})
		}
	}
	return v - b.sum[set] + b.chain(set, s.perhaps, b.after(k))
}
