package stock

import (
	"cmp"
	"math/bits"
	"slices"
)

// losses lists the bars that a better plan can be made of. With what the linear program says each piece is worth, no
// bar holds more than it costs; what it costs more is its loss. The losses of a plan add up to what it costs above the
// bound, so a better plan than the best so far is made of bars with small losses only. Often all of these can be
// listed.
type losses struct {
	s      *search
	values []int64
	worth  int64     // of the whole demand
	stride []uint64  // of each kind in the number of a state
	bars   [][]lossy // by their longest kind, least loss first
}

// lossy is a bar with its loss.
type lossy struct {
	pattern *pattern
	value   int64
	loss    int64
	state   uint64 // what it takes off the number of a state
	kinds   uint64 // a bit for each kind
}

// maxBars is how many bars are listed at most.
const maxBars = 100_000

// list finds the bars; false if they are too many, or the states to be numbered.
func (s *search) list(values []int64) (*losses, bool) {
	t := s.t
	l := &losses{s: s, values: values, worth: total(values, t.demand), bars: make([][]lossy, len(t.demand))}
	if !l.number() {
		return nil, false
	}
	kinds, _ := rowsOf(t.demand)
	sack := &knapsack{t: t, demand: t.demand, kinds: kinds, values: values, work: s.work}
	for _, z := range t.sizes {
		sack.least = append(sack.least, t.worth(z)-l.spare()-1)
	}
	sack.prepare()
	n := 0
	for size := 0; size < len(t.sizes) && n < maxBars; size++ {
		found := sack.all(size, maxBars-n)
		n += len(found)
		for _, bar := range found {
			l.add(bar, size)
		}
	}
	for _, bars := range l.bars {
		slices.SortStableFunc(bars, func(a, b lossy) int { return cmp.Compare(a.loss, b.loss) })
	}
	return l, n < maxBars && !s.work.spent()
}

// number finds the strides that make what is left one number, each kind a digit; false if it does not fit a machine
// word. So there are fewer than 64 kinds.
func (l *losses) number() bool {
	states := uint64(1)
	for _, n := range l.s.t.demand {
		l.stride = append(l.stride, states)
		hi, lo := bits.Mul64(states, uint64(n)+1)
		if hi > 0 {
			return false
		}
		states = lo
	}
	return true
}

// spare is what a better plan may lose in all.
func (l *losses) spare() int64 {
	return l.s.t.worth(size{price: l.s.reach.down(l.s.price - 1)}) - l.worth
}

// add lists a bar, unless it is to be had in a shorter size.
func (l *losses) add(bar valued, size int) {
	p := l.s.t.cutting(bar.takes)
	if p.size != size {
		return
	}
	entry := lossy{pattern: p, value: bar.value, loss: l.s.t.worth(l.s.t.sizes[size]) - bar.value}
	for _, each := range bar.takes {
		entry.state += l.stride[each.kind] * uint64(each.count)
		entry.kinds |= 1 << each.kind
	}
	longest := bar.takes[0].kind
	l.bars[longest] = append(l.bars[longest], entry)
}
