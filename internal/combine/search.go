package combine

import "math"

// search goes through the stages with the labels that may still become the best.
type search struct {
	task
	bound   bound
	path    []int // what the answer must differ from, if anything
	known   bool  // a combination is
	floor   int64 // what it is worth
	best    []int32
	effort  int // labels that may be grown; 0: any number
	spent   int
	stride  int // of states
	here    crop
	next    crop
	nodes   []node
	perhaps []perhaps
	sums    []int64
	states  []uint16
	moved   []int32
	share   []int64
}

// Widths of the passes of the search: the second one ends most searches. A search
// that is not over after as many labels as easy is made easier.
const (
	narrow = 64
	wider  = 8
	easy   = 4096
)

// solve finds the best combination; it reports whether it is certain that there
// is no better one.
func (s *search) solve() bool {
	s.known, s.spent = false, 0
	s.bound.tune(&s.task)
	s.bound.prepare(&s.task, quickWork)
	if s.pass(1) {
		return true
	}
	s.improve()
	sharp := false
	for width := narrow; !s.tired(); width *= wider {
		if s.pass(width) {
			return true
		}
		if !sharp && s.spent > easy {
			s.sharpen()
			sharp, width = true, narrow/wider
		}
	}
	return false
}

func (s *search) tired() bool { return s.effort > 0 && s.spent >= s.effort }

// pass searches with no more labels than width at a stage. It reports whether
// none was left out that might matter.
func (s *search) pass(width int) bool {
	s.root()
	left := int64(math.MinInt64)
	for k := range s.stages {
		if s.tired() {
			return false
		}
		s.grow(k)
		left = max(left, s.sift(k, width))
		s.here, s.next = s.next, s.here
	}
	s.take()
	return left == math.MinInt64 || s.known && left < s.floor
}

// take takes the best label that has done everything, if there is one: whatever
// may come to as much as what is known was kept, so it is no worse, and of equals
// the first.
func (s *search) take() {
	for i := range s.here.labels {
		l := &s.here.labels[i]
		if l.path {
			continue
		}
		s.known, s.floor, s.best = true, l.worth, s.best[:0]
		for range s.stages {
			s.best = append(s.best, 0)
		}
		for k, at := len(s.stages)-1, l.node; k >= 0; k-- {
			s.best[k], at = s.nodes[at].way, s.nodes[at].parent
		}
		return
	}
}
