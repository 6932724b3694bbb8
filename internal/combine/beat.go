package combine

import (
	"cmp"
	"math"
	"slices"
)

// rivals is with how many of the best labels of its stage a label is compared,
// and with how many of those that came last before it, among which are all that
// look the same: enough that few are kept in vain, and few enough that keeping
// many takes no time that grows with their square.
const rivals = 256

// sift keeps the labels of stage k that no other one beats, and no more than width
// of them beside what the answer must differ from, the most promising first. It returns the most that one left out might
// come to.
func (s *search) sift(k, width int) int64 {
	c := &s.next
	slices.SortFunc(c.labels, func(a, b label) int { return s.promise(k, &a, &b) })
	kept, left := c.labels[:0], int64(math.MinInt64)
	if len(c.labels) > 0 && c.labels[0].path {
		width++
	}
	for i := range c.labels {
		l := c.labels[i]
		if s.beaten(k, kept, &l) {
			continue
		}
		if len(kept) >= width {
			left = l.most
			break
		}
		s.nodes = append(s.nodes, node{l.parent, l.way})
		l.node = int32(len(s.nodes) - 1)
		kept = append(kept, l)
	}
	c.labels = kept
	return left
}

// promise is the order in which labels are kept: what the answer must differ from
// goes along in any case. Labels that look the same come one after the other, the
// first by things and ways before the rest.
func (s *search) promise(k int, a, b *label) int {
	switch {
	case a.path != b.path:
		if a.path {
			return -1
		}
		return 1
	case a.most != b.most:
		return cmp.Compare(b.most, a.most)
	case a.worth != b.worth:
		return cmp.Compare(b.worth, a.worth)
	case a.line != b.line:
		return cmp.Compare(a.line, b.line)
	}
	return cmp.Or(slices.Compare(s.state(&s.next, a), s.state(&s.next, b)), s.first(k, a, b))
}

// beaten reports whether one of the labels kept beats another one.
func (s *search) beaten(k int, kept []label, l *label) bool {
	if l.path {
		return false
	}
	for i := range kept[:min(len(kept), rivals)] {
		if s.beats(k, &kept[i], l) {
			return true
		}
	}
	for i := len(kept) - 1; i >= max(rivals, len(kept)-rivals); i-- {
		if s.beats(k, &kept[i], l) {
			return true
		}
	}
	return false
}

// beats reports whether label a comes to more than b however the rest is done, or
// to as much and comes first.
func (s *search) beats(k int, a, b *label) bool {
	st := &s.stages[k]
	spare := a.worth - b.worth + st.save
	if spare < 0 || a.path {
		return false
	}
	as, bs := s.state(&s.next, a), s.state(&s.next, b)
	if !slices.Equal(s.slots(as), s.slots(bs)) {
		return false
	}
	spare -= s.lines.lead(a.line, b.line)
	for i := range st.live {
		if spare < 0 {
			return false
		}
		rest := &st.live[i]
		n := rest.trade
		tr, left, other := &s.trades[n], as[2*n], bs[2*n]
		spare += tr.saves(rest, left, other) - tr.worse(left, as[2*n+1], other, bs[2*n+1])
	}
	spare -= st.save
	return spare > 0 || spare == 0 && s.first(k, a, b) < 0
}
