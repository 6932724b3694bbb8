package combine

import (
	"cmp"
	"math"
	"slices"
)

// search goes through the stages with the labels that may still become the best.
type search struct {
	task
	bound  bound
	stride int
	here   crop
	next   crop
	order  []int32
	kept   []int32
	nodes  []node
	fr     []perhaps

	path []int // the pick to differ from, if any

	known bool
	floor int64   // worth of best
	best  []int32 // ways by stage

	labels               int
	expands, comps, runs int
}

func (s *search) root() {
	s.stride = 2*len(s.trades) + len(s.busy)
	s.nodes = append(s.nodes[:0], node{-1, -1})
	s.here.labels = append(s.here.labels[:0], label{worth: s.base, line: s.lines.start(), path: s.path != nil})
	s.here.states = s.here.states[:0]
	for range s.trades {
		s.here.states = append(s.here.states, certain, 0)
	}
	for range s.busy {
		s.here.states = append(s.here.states, 0)
	}
}

// run searches with no more labels than width at a stage; it reports whether
// none was left out that might matter.
func (s *search) run(width int) bool {
	s.runs++
	s.root()
	left := int64(math.MinInt64)
	for k := range s.stages {
		s.grow(k)
		left = max(left, s.thinOut(k, width))
		s.here, s.next = s.next, s.here
	}
	s.finish()
	return left == math.MinInt64 || s.known && left < s.floor
}

func (s *search) grow(k int) {
	s.next.labels, s.next.states = s.next.labels[:0], s.next.states[:0]
	st := &s.stages[k]
	for i := range s.here.labels {
		for w := st.from; w < st.to; w++ {
			s.expand(k, &s.here.labels[i], w)
		}
	}
}

func (s *search) expand(k int, from *label, w int) {
	s.expands++
	st, way := &s.stages[k], &s.ways[w]
	at := len(s.next.states)
	s.next.states = append(s.next.states, s.here.state(from, s.stride)...)
	state := s.next.states[at:]
	l := label{worth: from.worth + way.worth, line: s.lines.after(k, from.line.with(way.line)), parent: int32(from.way), way: int32(w), state: at}
	l.path = from.path && way.pick == s.path[st.thing]
	s.call(st, &l, way, state)
	if !s.join(st, &l, way, state) {
		s.next.states = s.next.states[:at]
		return
	}
	if k == len(s.stages)-1 {
		if l.line == oneLine {
			l.worth += s.lines.worth
		}
		l.line = uneven
		l.most = l.worth
	} else {
		l.most = s.ceiling(k, &l, state)
	}
	if s.known && l.most < s.floor {
		s.next.states = s.next.states[:at]
		return
	}
	s.next.labels = append(s.next.labels, l)
}

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
		lt := &st.live[i]
		tr := &s.trades[lt.trade]
		if lt.labour >= tr.minimum {
			continue
		}
		if labour := &state[2*lt.trade+1]; *labour > 0 && *labour+lt.labour <= part(tr.minimum, certain-state[2*lt.trade]) {
			*labour = 0
		}
	}
}

func (s *search) join(st *stage, l *label, w *way, state []int64) bool {
	slots := state[2*len(s.trades):]
	for i := range st.open {
		slots[st.open[i].slot] = int64(st.open[i].none)
	}
	for _, e := range s.effects[w.effect:w.lastEnd] {
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
		if st.bound[i].worth[slots[st.bound[i].slot]] == impossible {
			return false
		}
	}
	return true
}

// ceiling is the most that a label after stage k may come to.
func (s *search) ceiling(k int, l *label, state []int64) int64 {
	st, b := &s.stages[k], &s.bound
	v := l.worth + st.bonus + s.lines.most(l.line) + b.slack
	slots := state[2*len(s.trades):]
	for i := range st.bound {
		v += st.bound[i].worth[slots[st.bound[i].slot]]
	}
	set := 0
	s.fr = s.fr[:0]
	for i := range st.live {
		n := st.live[i].trade
		left, labour := state[2*n], state[2*n+1]
		if labour != 0 {
			v -= partDown(labour, b.share[n])
		}
		switch {
		case left == certain:
		case n >= b.bits:
			v -= partDown(b.fixed[n], certain-left)
		case left == 0:
			v -= b.fixed[n]
			set |= 1 << n
		default:
			s.fr = insert(s.fr, 0, perhaps{n, certain - left})
		}
	}
	return v + b.chain(set, s.fr, after{b.value[(k+1)<<b.bits : (k+2)<<b.bits], b.open[k]})
}

// thinOut keeps the labels that no other one beats, and no more than width of
// them; it returns the most that one left out might come to.
func (s *search) thinOut(k, width int) int64 {
	c := &s.next
	s.labels += len(c.labels)
	s.order = s.order[:0]
	for i := range c.labels {
		s.order = append(s.order, int32(i))
	}
	slices.SortFunc(s.order, func(a, b int32) int {
		return cmp.Or(cmp.Compare(c.labels[b].most, c.labels[a].most), s.compare(k, &c.labels[a], &c.labels[b]))
	})
	s.kept = s.kept[:0]
	left := int64(math.MinInt64)
	for _, i := range s.order {
		l := &c.labels[i]
		if s.beaten(k, l) {
			continue
		}
		if len(s.kept) >= width && !l.path {
			left = max(left, l.most)
			if !l.path && s.path == nil {
				break
			}
			continue
		}
		s.kept = append(s.kept, i)
	}
	s.settleKept()
	return left
}

// settleKept makes the labels kept the labels of the stage, in order.
func (s *search) settleKept() {
	c := &s.next
	spare := s.here.labels[:0]
	for _, i := range s.kept {
		l := c.labels[i]
		s.nodes = append(s.nodes, node{l.parent, l.way})
		l.way = int32(len(s.nodes) - 1)
		spare = append(spare, l)
	}
	s.here.labels, c.labels = c.labels, spare
}

func (s *search) beaten(k int, l *label) bool {
	if l.path {
		return false
	}
	for _, i := range s.kept {
		if s.beats(k, &s.next.labels[i], l) {
			return true
		}
	}
	return false
}

func (s *search) beats(k int, a, b *label) bool {
	s.comps++
	if a.path {
		return false
	}
	st := &s.stages[k]
	spare := a.worth - b.worth
	if a.line != b.line {
		spare -= s.lines.lead(a.line, b.line)
	}
	if spare+st.save < 0 {
		return false
	}
	as, bs := s.next.state(a, s.stride), s.next.state(b, s.stride)
	if !slices.Equal(as[2*len(s.trades):], bs[2*len(s.trades):]) {
		return false
	}
	for i := range st.live {
		lt := &st.live[i]
		n := lt.trade
		if spare+st.save < 0 {
			return false
		}
		spare -= s.trades[n].worse(as[2*n], as[2*n+1], bs[2*n], bs[2*n+1])
		if d := as[2*n] - bs[2*n]; lt.keep > 0 && d > 0 {
			if d = partDown(d, lt.keep) - lt.steps; d > 0 {
				spare += max(0, partDown(s.trades[n].callOut, d)-1)
			}
		}
	}
	return spare > 0 || spare == 0 && s.compare(k, a, b) < 0
}

// compare is which of two labels after stage k comes first by things and ways.
func (s *search) compare(k int, a, b *label) int {
	first, sign := math.MaxInt, 0
	wa, wb, pa, pb := a.way, b.way, a.parent, b.parent
	for {
		if wa != wb {
			if thing := s.stages[k].thing; thing < first {
				first, sign = thing, cmp.Compare(wa, wb)
			}
		}
		if pa == pb {
			return sign
		}
		na, nb := s.nodes[pa], s.nodes[pb]
		wa, pa, wb, pb = na.way, na.parent, nb.way, nb.parent
		k--
	}
}

// finish takes the best of the last stage's labels.
func (s *search) finish() {
	for i := range s.here.labels {
		l := &s.here.labels[i]
		if l.path {
			continue
		}
		if s.known && l.worth < s.floor {
			return
		}
		if s.known && l.worth == s.floor && false {
			return
		}
		s.known, s.floor = true, l.worth
		s.best = append(s.best[:0], make([]int32, len(s.stages))...)
		at := l.way
		for k := len(s.stages) - 1; k >= 0; k-- {
			s.best[k] = s.nodes[at].way
			at = s.nodes[at].parent
		}
		return
	}
}
