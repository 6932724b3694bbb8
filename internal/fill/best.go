package fill

import (
	"math"
	"slices"
)

// impossible is the gain of what leads nowhere.
const impossible = math.MinInt64

// best is the most that is still to be gained from each state, and the list of cabinets with which.
type best struct {
	*graph
	*memory
}

// memory is what a search needs room for. It can be used again, for one search at a time.
type memory struct {
	lists lists
	gain  []int64
	list  []int32
	moved []move
}

// clear makes room for the states of a search.
func (m *memory) clear(states, lists int) {
	m.gain = slices.Grow(m.gain[:0], states)[:states]
	m.list = slices.Grow(m.list[:0], states)[:states]
	for x := range m.gain {
		m.gain[x] = impossible
	}
	m.lists.clear(lists)
}

func (t *task) best(m *memory) *best {
	b := &best{t.graph(), m}
	b.clear(int(b.end)+1, int(t.steps)*len(t.heights)+len(t.fixed)+64)
	b.gain[b.end], b.list[b.end] = 0, 0
	stays := len(b.fixed) - 1
	for q := t.steps; q >= 0; q-- {
		if b.segment[q] == none {
			continue // a cabinet that stays and ends here leads nowhere, and so does all that is left of it
		}
		b.settlePlace(q)
		for ; stays >= 0 && (b.fixed[stays].clash || b.fixed[stays].to == q); stays-- {
			b.settleIf(!b.fixed[stays].clash, b.stayed+int32(stays))
		}
		if i := b.segment[q]; q == b.segments[i].from {
			b.settleBegin(i)
		}
	}
	return b
}

// settlePlace settles the states of place q, those first that others there lead to.
func (b *best) settlePlace(q int32) {
	for h := range b.heightN {
		b.settleStart(q, h)
	}
	b.settleBy(b.fresh(q), b.fromFresh(b.moved[:0], q))
	for h := range b.heightN + 1 {
		b.settleBy(b.filler(q, h), b.fromFiller(b.moved[:0], q, h))
	}
	b.settleBy(b.open(q, 0), b.fromOpen(b.moved[:0], q, 0))
	b.settleBy(b.open(q, 1), b.fromOpen(b.moved[:0], q, 1))
	for h := range b.heightN {
		if b.mayEnd(q, h) {
			b.settleBy(b.after(q, h), b.fromAfter(b.moved[:0], q, h))
		}
	}
}

// settleStart is settleBy for the moves of fromStart, which are most of all. They are in the order that settles ties, so
// that of equals the first is the best; only before a pair there are more.
func (b *best) settleStart(q, h int32) {
	if i := b.segment[q]; int(i) < len(b.gaps) && b.gaps[i].paired {
		b.settleBy(b.start(q, h), b.fromStart(b.moved[:0], q, h))
		return
	}
	most, which := int64(impossible), int32(none)
	room, after := b.room[h][q]-q, b.gain[b.after(q, h):]
	for _, s := range b.byClass[b.class[h][0]:b.class[h][1]] {
		one := &b.sizes[s]
		if one.width > room {
			continue
		}
		if then := after[one.width]; then != impossible && one.gain+then > most {
			most, which = one.gain+then, s
		}
	}
	if which != none {
		x := b.start(q, h)
		b.gain[x] = most
		b.list[x] = b.lists.put(which, b.list[b.after(q+b.sizes[which].width, h)])
	}
}

// settleBegin settles the states about the beginning of segment i.
func (b *best) settleBegin(i int32) {
	if i > 0 && b.gaps[i-1].whole {
		return
	}
	b.settle(b.begin + i)
	if i == 0 || !b.gaps[i-1].paired {
		return
	}
	for s := range int32(len(b.sizes)) + 1 {
		b.settle(b.pairState(b.match, i-1, s))
	}
	for s := range int32(len(b.sizes)) {
		b.settle(b.pairState(b.across, i-1, s))
	}
}

func (b *best) settleIf(is bool, x int32) {
	if is {
		b.settle(x)
	}
}

// settle finds the best way from a state all whose moves lead to settled ones.
func (b *best) settle(x int32) { b.settleBy(x, b.moves(b.moved[:0], x)) }

func (b *best) settleBy(x int32, moves []move) {
	if cap(moves) > cap(b.moved) {
		b.moved = moves
	}
	if i := b.choose(moves); i != none {
		b.gain[x] = moves[i].gain + b.gain[moves[i].to]
		b.list[x] = b.lists.put(moves[i].sign, b.list[moves[i].to])
	}
}

// choose is the best of some moves, the first of equals, or none that leads to the end.
func (b *best) choose(moves []move) int {
	most, which := int64(impossible), none
	for i := range moves {
		m := &moves[i]
		then := b.gain[m.to]
		if then == impossible {
			continue
		}
		gain := m.gain + then
		if gain > most || gain == most && b.before(m, &moves[which]) {
			most, which = gain, i
		}
	}
	return which
}

// before says whether one move leads to a list that comes before the other's.
func (b *best) before(m, n *move) bool {
	return b.lists.less(m.sign, b.list[m.to], n.sign, b.list[n.to])
}
