package combine

import (
	"cmp"
	"math"
)

// label is a choice of ways for the things taken so far.
type label struct {
	worth  int64 // less what is paid for good
	most   int64 // that it may still come to
	line   line
	path   bool  // it is what the answer must differ from, so far
	parent int32 // the node that it goes on from
	way    int32 // the way that it goes on with
	node   int32 // its own, once it is kept
	state  int   // where its state starts
}

// crop is the labels of a stage. The state of a label is, for each trade, the
// chance left that nobody called it and the labour so far, and then the state of
// the joint in each slot. What no longer matters is always the same, so that
// labels with the same future look the same: a trade that nobody calls for any
// more is paid, labour beyond the minimum is paid, and labour is forgotten that
// can never come to the minimum.
type crop struct {
	labels []label
	states []int64
}

func (c *crop) clear() { c.labels, c.states = c.labels[:0], c.states[:0] }

// node is a label that was kept: how to tell its ways.
type node struct{ parent, way int32 }

// first is which of two labels of the same stage comes first by the order of
// things and ways: by the first thing that they do in different ways.
func (s *search) first(k int, a, b *label) int {
	at, sign := math.MaxInt, 0
	wayA, wayB, nodeA, nodeB := a.way, b.way, a.parent, b.parent
	for ; ; k-- {
		if thing := s.stages[k].thing; wayA != wayB && thing < at {
			at, sign = thing, cmp.Compare(wayA, wayB)
		}
		if nodeA == nodeB {
			return sign
		}
		wayA, nodeA = s.nodes[nodeA].way, s.nodes[nodeA].parent
		wayB, nodeB = s.nodes[nodeB].way, s.nodes[nodeB].parent
	}
}

// root is the label before anything is done.
func (s *search) root() {
	s.nodes = append(s.nodes[:0], node{-1, -1})
	s.here.clear()
	s.here.labels = append(s.here.labels, label{worth: s.base, line: s.lines.start(), path: s.path != nil})
	for range s.trades {
		s.here.states = append(s.here.states, certain, 0)
	}
	for range s.busy {
		s.here.states = append(s.here.states, 0)
	}
	s.stride = len(s.here.states)
}

func (s *search) state(c *crop, l *label) []int64 { return c.states[l.state : l.state+s.stride] }

// slots is the part of a state that is about joints.
func (s *search) slots(state []int64) []int64 { return state[2*len(s.trades):] }
