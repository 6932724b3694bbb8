package combine

import "math/bits"

// reached is, for each stage, the sets of trades that may have been called before
// it and may be again. More sets than that do no harm.
type reached struct {
	sets []int // of all stages
	from []int // where the sets before each stage start
	open []int // the trades that may have been called before the end of each stage and may be again
	seen []int
}

func (r *reached) before(k int) []int { return r.sets[r.from[k]:r.from[k+1]] }

func (r *reached) find(t *task, b *bound) {
	r.sets, r.from, r.open = append(r.sets[:0], 0), append(r.from[:0], 0, 1), r.open[:0]
	if len(r.seen) < 1<<b.bits {
		r.seen = make([]int, 1<<b.bits)
	}
	clear(r.seen)
	for k := range t.stages {
		open := 0
		for _, l := range t.stages[k].live {
			if l.trade < b.bits {
				open |= 1 << l.trade
			}
		}
		r.open = append(r.open, open)
		r.step(k, b.ways[t.stages[k].from:t.stages[k].to])
		r.from = append(r.from, len(r.sets))
	}
}

// step lists the sets after stage k.
func (r *reached) step(k int, ways []boundWay) {
	before := r.before(k)
	if k > 0 && len(before) == 1<<bits.OnesCount(uint(r.open[k-1])) { // all that could be
		r.mark(k, 0, r.open[k])
		return
	}
	for i := range ways {
		if again(ways, i) {
			continue
		}
		for _, set := range before {
			r.mark(k, set|ways[i].sure, ways[i].may)
		}
		if len(r.sets)-r.from[k+1] == 1<<bits.OnesCount(uint(r.open[k])) {
			return
		}
	}
}

// again reports whether a way before way i calls for the same trades.
func again(ways []boundWay, i int) bool {
	for a := range ways[:i] {
		if ways[a].sure == ways[i].sure && ways[a].may == ways[i].may {
			return true
		}
	}
	return false
}

// mark lists a set with any of some more trades.
func (r *reached) mark(k, set, may int) {
	set, may = set&r.open[k], may&r.open[k]&^set
	for more := may; ; more = (more - 1) & may {
		if r.seen[set|more] != k+1 {
			r.seen[set|more] = k + 1
			r.sets = append(r.sets, set|more)
		}
		if more == 0 {
			return
		}
	}
}
