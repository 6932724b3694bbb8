package stock

import "slices"

// gatherSteps bounds the search for a longer offcut.
const gatherSteps = 5_000_000

// gather makes one offcut of a plan longer at the cost of the others, by moving and swapping pieces. It keeps the bars,
// unless one comes out empty or short enough for a shorter stock.
func gather(t *task, plan []*pattern, work *budget) []*pattern {
	best := plan
	for i := range plan {
		if i > 0 && plan[i] == plan[i-1] {
			continue
		}
		relieved := relieve(t, plan, i, work)
		if t.prices(relieved) < t.prices(plan) {
			return gather(t, relieved, work)
		}
		if t.longestOffcut(relieved) > t.longestOffcut(best) {
			best = relieved
		}
	}
	return best
}

// longestOffcut of a plan.
func (t *task) longestOffcut(plan []*pattern) int64 {
	var longest int64
	for _, p := range plan {
		longest = max(longest, t.offcut(p))
	}
	return longest
}

// relieve takes as much as it can off bar i, the largest gain first.
func relieve(t *task, plan []*pattern, i int, work *budget) []*pattern {
	out := slices.Clone(plan)
	for out[i].width > 0 {
		best := exchange{}
		for j := range out {
			if j != i {
				best = better(best, t.exchangeFrom(out, i, j, work))
			}
		}
		if best.gain == 0 || work.spent() {
			return out
		}
		out[i] = t.swapped(out[i], best.give, best.get)
		out[best.bar] = t.swapped(out[best.bar], best.get, best.give)
	}
	return slices.Delete(out, i, i+1)
}

// exchange gives a piece of kind give to a bar and gets one of kind get for it, or nothing when get is -1.
type exchange struct {
	bar, give, get int
	gain           int64
}

// better is the exchange that gains more; the first of equals.
func better(a, b exchange) exchange {
	if b.gain > a.gain {
		return b
	}
	return a
}

// exchangeFrom is the best exchange of bar i with bar j.
func (t *task) exchangeFrom(plan []*pattern, i, j int, work *budget) exchange {
	var best exchange
	room := t.sizes[plan[j].size].room - plan[j].width
	for _, give := range plan[i].takes {
		w := t.widths[give.kind]
		if w <= room {
			best = better(best, exchange{j, give.kind, -1, w})
		}
		for _, get := range plan[j].takes {
			if gain := w - t.widths[get.kind]; gain > 0 && gain <= room {
				best = better(best, exchange{j, give.kind, get.kind, gain})
			}
		}
		work.spend(len(plan[j].takes))
	}
	return best
}

// swapped is the pattern with one piece out and one in; -1 is no piece.
func (t *task) swapped(p *pattern, out, in int) *pattern {
	var takes []take
	for _, each := range p.takes {
		if each.kind == out {
			each.count--
		}
		if in >= 0 && in <= each.kind {
			if in == each.kind {
				each.count++
			} else {
				takes = append(takes, take{in, 1})
			}
			in = -1
		}
		if each.count > 0 {
			takes = append(takes, each)
		}
	}
	if in >= 0 {
		takes = append(takes, take{in, 1})
	}
	return t.cutting(takes)
}
