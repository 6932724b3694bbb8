package stock

import "math"

// ledger is the exact table for small demands: for everything that can be left to cut, the least price of cutting it.
// A state is a demand written as one number, each kind a digit; the full demand is the last state.
type ledger struct {
	t      *task
	kinds  []int
	stride []int
	width  []int64 // of a state
	bar    []int64 // price of the one bar that holds the state, or none
	best   []int64 // price of the state
	first  []int   // the state that is cut from the first bar of the best
	counts []int   // digits of the state in hand
}

const none = math.MaxInt64

// entries is how many pairs of state and bar a table has to look at, at most; limit is returned for more.
func entries(demand []int, limit int) int {
	n := 1
	for _, q := range demand {
		if q > limit {
			return limit
		}
		if n *= (q + 1) * (q + 2) / 2; n >= limit {
			return limit
		}
	}
	return n
}

// tabulate fills the ledger of a demand.
func tabulate(t *task, demand []int) *ledger {
	l := &ledger{t: t}
	states := 1
	for k := len(demand) - 1; k >= 0; k-- {
		if demand[k] > 0 {
			l.kinds = append(l.kinds, k)
			l.stride = append(l.stride, states)
			states *= demand[k] + 1
		}
	}
	l.counts = make([]int, len(l.kinds))
	l.width, l.bar = make([]int64, states), make([]int64, states)
	l.best, l.first = make([]int64, states), make([]int, states)
	for state := 1; state < states; state++ {
		l.count(demand)
		l.measure(state)
		l.best[state] = none
		l.share(state, l.top(), 0)
	}
	return l
}

// count moves the digits on by one.
func (l *ledger) count(demand []int) {
	for i, k := range l.kinds {
		if l.counts[i]++; l.counts[i] <= demand[k] {
			return
		}
		l.counts[i] = 0
	}
}

// top is the digit of the longest piece in the state. The first bar is the one that holds it, which keeps the order of
// the bars out of the table.
func (l *ledger) top() int {
	i := len(l.counts) - 1
	for l.counts[i] == 0 {
		i--
	}
	return i
}

// measure finds the width of a state and the bar it would need.
func (l *ledger) measure(state int) {
	i := l.top()
	l.width[state] = l.width[state-l.stride[i]] + l.t.widths[l.kinds[i]]
	l.bar[state] = none
	if s := l.t.fit(l.width[state]); s < len(l.t.sizes) {
		l.bar[state] = l.t.sizes[s].price
	}
}

// share tries every first bar that takes a piece of the top kind; bar is what it holds so far, i the next digit.
func (l *ledger) share(state, i, bar int) {
	if i < 0 {
		if price := l.bar[bar] + l.best[state-bar]; price < l.best[state] {
			l.best[state], l.first[state] = price, bar
		}
		return
	}
	count := 0
	if bar == 0 {
		count = 1
	}
	for ; count <= l.counts[i]; count++ {
		next := bar + count*l.stride[i]
		if l.bar[next] == none {
			return
		}
		l.share(state, i-1, next)
	}
}

// plan reads the bars of a state.
func (l *ledger) plan(state int) []*pattern {
	var bars []*pattern
	for ; state > 0; state -= l.first[state] {
		bars = append(bars, l.pattern(l.first[state]))
	}
	return bars
}

// pattern writes a state as a pattern.
func (l *ledger) pattern(state int) *pattern {
	var takes []take
	for i := len(l.kinds) - 1; i >= 0; i-- {
		if n := state / l.stride[i]; n > 0 {
			takes = append(takes, take{l.kinds[i], n})
			state -= n * l.stride[i]
		}
	}
	return l.t.cutting(takes)
}

// roomiest is the best plan of the whole demand with the longest offcut that any best plan leaves.
func (l *ledger) roomiest() []*pattern {
	all := len(l.best) - 1
	keep, on, left := 0, 0, int64(-1)
	for state := 1; state <= all; state++ {
		for s := l.t.fit(l.width[state]); s < len(l.t.sizes); s++ {
			room := l.t.sizes[s].room - l.width[state]
			if room > left && l.t.sizes[s].price+l.best[all-state] == l.best[all] {
				keep, on, left = state, s, room
			}
		}
	}
	bar := l.pattern(keep)
	bar.size = on
	return append(l.plan(all-keep), bar)
}
