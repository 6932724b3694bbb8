package stock

import "slices"

// settler goes through all plans that can be made of listed bars, the longest piece left first.
type settler struct {
	*losses
	demand []int
	failed map[uint64]int64 // states met and what was paid there; only asked, never listed
}

// maxFailed is how many states are remembered at once.
const maxFailed = 1 << 18

// position is how far a plan has come.
type position struct {
	state   uint64 // number of what is left
	kinds   uint64 // bits of what is left
	longest int    // no kind before it is left
	value   int64  // of what is left
	lost    int64
	paid    int64
}

// settle goes through all plans that are better than the best so far. It leaves the search open when they are too many.
func (s *search) settle(values []int64) {
	bars, ok := s.list(values)
	if !ok {
		s.open = true
		return
	}
	at := position{value: bars.worth}
	for k, n := range s.t.demand {
		at.state += bars.stride[k] * uint64(n)
		at.kinds |= 1 << k
	}
	w := &settler{losses: bars, demand: slices.Clone(s.t.demand), failed: map[uint64]int64{}}
	w.cut(at)
}

// cut goes through the bars that hold the longest piece left.
func (w *settler) cut(at position) {
	s := w.s
	if at.kinds == 0 {
		s.offer(nil, at.paid)
		return
	}
	if w.hopeless(at) {
		return
	}
	for w.demand[at.longest] == 0 {
		at.longest++
	}
	price, spare := s.price, w.spare()
	for i := range w.bars[at.longest] {
		bar := &w.bars[at.longest][i]
		if price != s.price {
			price, spare = s.price, w.spare()
		}
		if at.lost+bar.loss > spare {
			break
		}
		s.work.spend(8)
		if bar.kinds&^at.kinds == 0 && bar.pattern.within(w.demand) {
			w.take(bar, at)
		}
	}
	w.remember(at)
}

// hopeless says that nothing better comes of a position: it was met before with no more paid, or bars for what is left,
// which come at certain prices only, are too dear.
func (w *settler) hopeless(at position) bool {
	if !w.s.work.spend(300) {
		w.s.open = true
		return true
	}
	if paid, met := w.failed[at.state]; met && paid <= at.paid {
		return true
	}
	return at.paid+w.s.reach.up(w.s.t.inBars(at.value)) >= w.s.price
}

// take cuts a bar and goes on.
func (w *settler) take(bar *lossy, at position) {
	s := w.s
	bar.pattern.from(w.demand, 1)
	s.chosen = append(s.chosen, bar.pattern)
	at.state -= bar.state
	at.value -= bar.value
	at.lost += bar.loss
	at.paid += s.t.price(bar.pattern)
	for _, each := range bar.pattern.takes {
		if w.demand[each.kind] == 0 {
			at.kinds &^= 1 << each.kind
		}
	}
	w.cut(at)
	s.chosen = s.chosen[:len(s.chosen)-1]
	bar.pattern.from(w.demand, -1)
}

// remember notes that the position leads nowhere. Of the many it may come to know it keeps the latest.
func (w *settler) remember(at position) {
	if len(w.failed) >= maxFailed {
		clear(w.failed)
	}
	w.failed[at.state] = at.paid
}
