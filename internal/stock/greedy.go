package stock

import (
	"math/bits"
	"slices"
)

// greedy is the cheapest of the quick plans; there is always one.
func greedy(t *task, demand []int, work *budget) []*pattern {
	var best []*pattern
	for s := len(t.sizes) - 1; s >= 0; s-- {
		plan := firstFit(t, demand, s, work)
		if best == nil || t.prices(plan) < t.prices(best) {
			best = plan
		}
		if work.spent() {
			return best
		}
	}
	if plan := fillBars(t, demand, work); t.prices(plan) < t.prices(best) {
		best = plan
	}
	return best
}

// firstFit puts the longest pieces first, each into the first bar with room for it. A new bar is of size s, or of the
// shortest that holds the piece.
func firstFit(t *task, demand []int, s int, work *budget) []*pattern {
	var held [][]take
	var room []int64
	for k, w := range t.widths {
		from := 0
		for range demand[k] {
			i := from
			for i < len(room) && room[i] < w {
				i++
			}
			work.spend(i - from + 1)
			from = i // what had no room for this kind has none for the next of it
			if i == len(room) {
				room = append(room, t.sizes[max(s, t.fit(w))].room)
				held = append(held, nil)
			}
			room[i] -= w
			held[i] = addTake(held[i], k)
		}
	}
	plan := make([]*pattern, len(held))
	for i, takes := range held {
		plan[i] = t.cutting(takes)
	}
	return plan
}

// addTake adds one piece of the last kind so far or of a later one.
func addTake(takes []take, kind int) []take {
	if last := len(takes) - 1; last >= 0 && takes[last].kind == kind {
		takes[last].count++
		return takes
	}
	return append(takes, take{kind, 1})
}

// fillSteps is how long one bar is pondered.
const fillSteps = 2000

// filler packs one bar as full as it can within its steps, the longest piece left being set.
type filler struct {
	t      *task
	demand []int
	takes  []take
	best   []take
	left   int64
	work   budget
}

// fillBars makes one bar after the other, each as full as can be, of the size that wastes the least for its price.
func fillBars(t *task, demand []int, work *budget) []*pattern {
	var plan []*pattern
	rest := slices.Clone(demand)
	for longest := 0; ; {
		for longest < len(rest) && rest[longest] == 0 {
			longest++
		}
		if longest == len(rest) {
			return plan
		}
		p := fillBest(t, rest, longest, work)
		for p.within(rest) { // the same again while it can be had
			p.from(rest, 1)
			plan = append(plan, p)
		}
	}
}

// fillBest compares the sizes for one bar.
func fillBest(t *task, rest []int, longest int, work *budget) *pattern {
	var best []take
	var waste, price int64
	for s := len(t.sizes) - 1; s >= t.fit(t.widths[longest]); s-- {
		f := &filler{t: t, demand: rest, left: t.sizes[s].room + 1, work: budget{fillSteps}}
		f.takes = append(f.takes, take{longest, 1})
		f.fill(longest, 1, t.sizes[s].room-t.widths[longest])
		work.spend(fillSteps - int(f.work.left))
		if best == nil || lessProduct(f.left, price, waste, t.sizes[s].price) {
			best, waste, price = f.best, f.left, t.sizes[s].price
		}
		if work.spent() {
			break
		}
	}
	return t.cutting(best)
}

// fill tries the kinds from k on; used is how many of kind k the bar holds already.
func (f *filler) fill(k, used int, room int64) {
	if room < f.left {
		f.left, f.best = room, merged(f.takes)
	}
	for ; k < len(f.demand) && f.left > 0 && f.work.spend(1); k, used = k+1, 0 {
		w := f.t.widths[k]
		for n := int(min(int64(f.demand[k]-used), room/w)); n > 0 && f.left > 0 && !f.work.spent(); n-- {
			f.takes = append(f.takes, take{k, n})
			f.fill(k+1, 0, room-int64(n)*w)
			f.takes = f.takes[:len(f.takes)-1]
		}
	}
}

// merged copies takes and joins the two of the same kind that a fill may start with.
func merged(takes []take) []take {
	var out []take
	for _, each := range takes {
		if last := len(out) - 1; last >= 0 && out[last].kind == each.kind {
			out[last].count += each.count
			continue
		}
		out = append(out, each)
	}
	return out
}

// lessProduct says a×b < c×d without overflow, for lengths and prices that are not negative.
func lessProduct(a, b, c, d int64) bool {
	hi1, lo1 := bits.Mul64(uint64(a), uint64(b))
	hi2, lo2 := bits.Mul64(uint64(c), uint64(d))
	return hi1 < hi2 || hi1 == hi2 && lo1 < lo2
}
