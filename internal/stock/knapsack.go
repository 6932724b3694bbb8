package stock

import "slices"

// knapsack finds the bar worth most when each kind has a value. It goes through the kinds depth first and turns back
// where the front of the kinds to come cannot make up what is missing.
type knapsack struct {
	t         *task
	demand    []int
	kinds     []int // those in demand, longest first
	values    []int64
	least     []int64 // what a bar of each size must be worth more than to count
	fronts    []front // of kinds[i:]
	forbidden map[string]bool
	work      *budget
	counts    []int
	best      int64
	most      int // how many to list; 0 to look for the best only
	listed    []valued
	takes     []take
}

// prepare makes the fronts.
func (k *knapsack) prepare() {
	k.counts = make([]int, len(k.kinds))
	k.fronts = make([]front, len(k.kinds)+1)
	lines := k.lines()
	room := k.t.longest().room
	f := front{{}}
	k.fronts[len(k.kinds)] = f
	for i := len(k.kinds) - 1; i >= 0; i-- {
		w, v := k.t.widths[k.kinds[i]], k.values[i]
		for n := min(int64(k.demand[k.kinds[i]]), room/w); n > 0 && v > 0 && k.work.spend(16*len(f)); n-- {
			f = f.with(w, v, room)
		}
		f = f.keep(lines[i]).thin()
		k.fronts[i] = f
	}
}

// lines has for each kind the line that goes with the kinds before it.
func (k *knapsack) lines() []line {
	out := make([]line, len(k.kinds))
	best := line{per: 1}
	for i, kind := range k.kinds {
		out[i] = k.line(best)
		if w := k.t.widths[kind]; lessProduct(best.value, w, k.values[i], best.per) {
			best.value, best.per = k.values[i], w
		}
	}
	return out
}

// line puts the base under a line, as low as the size asks for that is the easiest to fill. A line too steep to reckon
// with rules nothing out.
func (k *knapsack) line(l line) line {
	l.base = none
	for s, z := range k.t.sizes {
		full, ok := l.share(z.room)
		if !ok {
			return line{base: hopeless, per: 1}
		}
		l.base = min(l.base, k.least[s]-full-1)
	}
	return l
}

// richest finds the pattern worth most in a bar of the size, if one is worth more than the least. Nothing found proves
// that there is none, unless the budget is spent.
func (k *knapsack) richest(size int) (takes []take, value int64) {
	k.best, k.takes = k.least[size], nil
	k.try(0, k.t.sizes[size].room, 0)
	return k.takes, k.best
}

// valued is a pattern and what it is worth.
type valued struct {
	takes []take
	value int64
}

// all lists the patterns worth more than the least in a bar of the size, up to some number.
func (k *knapsack) all(size, most int) []valued {
	k.most, k.listed = most, nil
	k.richest(size)
	return k.listed
}

// moreSteps is how long a further pattern is looked for.
const moreSteps = 100_000

// more finds further patterns above the least that have no kind in common with the first nor with each other. It looks
// for each only a while, so not finding one proves nothing.
func (k *knapsack) more(first []take, size int) [][]take {
	demand, work := k.demand, k.work
	k.demand = slices.Clone(demand)
	out := [][]take{first}
	for takes := first; takes != nil; {
		for _, each := range takes {
			k.demand[each.kind] = 0
		}
		k.work = &budget{min(moreSteps, work.left)}
		all := k.work.left
		if takes, _ = k.richest(size); takes != nil {
			out = append(out, takes)
		}
		work.left -= all - k.work.left
	}
	k.demand, k.work = demand, work
	return out
}

// try decides on kinds[i] and all after it.
func (k *knapsack) try(i int, room, value int64) {
	if value+k.fronts[i].at(room) <= k.best || !k.work.spend(24) {
		return
	}
	if i == len(k.kinds) {
		k.keep(value)
		return
	}
	w := k.t.widths[k.kinds[i]]
	for n := min(int64(k.demand[k.kinds[i]]), room/w); n >= 0; n-- {
		k.counts[i] = int(n)
		k.try(i+1, room-n*w, value+n*k.values[i])
	}
}

// keep notes the pattern in hand unless a branch has ruled it out.
func (k *knapsack) keep(value int64) {
	k.work.spend(200)
	var takes []take
	for i, n := range k.counts {
		if n > 0 {
			takes = append(takes, take{k.kinds[i], n})
		}
	}
	if len(takes) > 0 && k.most > 0 {
		k.listed = append(k.listed, valued{takes, value})
		if len(k.listed) == k.most {
			k.best = none
		}
		return
	}
	if len(takes) > 0 && !k.forbidden[key(takes)] {
		k.best, k.takes = value, takes
	}
}
