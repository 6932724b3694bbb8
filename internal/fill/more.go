package fill

import "slices"

// more finds the second best list from a state and those after it, when asked for. At each state only as many lists as
// are asked for are found, each from the lists of the states that its moves lead to; what another move has given already
// is passed over. Nothing is lost by that: what stands before a state makes as many different answers with any lists
// that differ.
type more struct {
	*best
	bags  *bags
	nodes map[int32]*ranking
	left  int // how many more ways are looked for
}

// usualEffort is how many ways a run may take to look for: about half a second's worth. It is only reached where
// thousands of ways are worth the same, such as one cabinet anywhere on a long wall.
const usualEffort = 1_000_000

func (b *best) more() *more {
	m := &more{best: b, nodes: map[int32]*ranking{}, left: usualEffort}
	if b.r.AnyOrder {
		m.bags = &bags{lists: &b.lists, cabinets: b.keeps()}
		m.bags.sorted.clear(0)
	}
	return m
}

// ranking is what is known of one state.
type ranking struct {
	found []way
	bags  []int32 // of the found ways
	next  []way   // of each move, the best way not found yet
	taken int     // which of next was found last and is to be replaced
}

// way is one way from a state: a move, and the rank of the way from where it leads.
type way struct {
	gain int64
	list int32
	bag  int32 // the cabinets of the list in any order, if that is asked for; else the list
	rank int32
	move move
}

// at is the way of a rank from a state; the best has rank 0.
func (m *more) at(x int32, rank int32) (way, bool) {
	if rank == 0 {
		return m.firstWay(x)
	}
	if x == m.end {
		return way{}, false
	}
	n := m.nodes[x]
	if n == nil {
		n = m.ranking(x)
		m.nodes[x] = n
	}
	for len(n.found) <= int(rank) {
		if !m.extend(n) {
			return way{}, false
		}
	}
	return n.found[rank], true
}

// firstWay is the best way from a state, by the move that settled it.
func (m *more) firstWay(x int32) (way, bool) {
	w := way{gain: m.gain[x], list: m.list[x]}
	m.moved = m.moves(m.moved[:0], x)
	if i := m.choose(m.moved); i != none {
		w.move = m.moved[i]
	}
	return w, w.gain != impossible
}

func (m *more) ranking(x int32) *ranking {
	m.moved = m.moves(m.moved[:0], x)
	n := &ranking{taken: none, next: make([]way, 0, len(m.moved))}
	for _, to := range m.moved {
		if then := m.gain[to.to]; then != impossible {
			n.next = append(n.next, m.way(to, then, m.list[to.to], 0))
		}
	}
	return n
}

// way is a move with a way of some rank behind it.
func (m *more) way(by move, gain int64, rest, rank int32) way {
	w := way{gain: by.gain + gain, list: m.lists.put(by.sign, rest), move: by, rank: rank}
	w.bag = w.list
	if m.bags != nil {
		w.bag = m.bags.of(w.list)
	}
	return w
}

// extend finds the next way.
func (m *more) extend(n *ranking) bool {
	for m.left > 0 {
		m.left--
		m.replace(n)
		n.taken = m.first(n.next)
		if n.taken == none || m.left <= 0 { // without effort left, something better may have been missed
			return false
		}
		if one := &n.next[n.taken]; !slices.Contains(n.bags, one.bag) {
			n.found, n.bags = append(n.found, *one), append(n.bags, one.bag)
			return true
		}
	}
	return false
}

// replace puts the next way of the same move in the place of the one taken last.
func (m *more) replace(n *ranking) {
	if n.taken == none {
		return
	}
	was := &n.next[n.taken]
	then, ok := m.at(was.move.to, was.rank+1)
	if ok {
		*was = m.way(was.move, then.gain, then.list, was.rank+1)
	} else {
		n.next = slices.Delete(n.next, n.taken, n.taken+1)
	}
}

// first is the best of some ways, the first of equals.
func (m *more) first(of []way) int {
	best := none
	for i := range of {
		if best == none || of[i].gain > of[best].gain ||
			of[i].gain == of[best].gain && m.lists.less(none, of[i].list, none, of[best].list) {
			best = i
		}
	}
	return best
}
