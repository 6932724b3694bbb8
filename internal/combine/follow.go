package combine

import "math/bits"

// follow walks the best ways forward through the sets of trades called. It
// reckons the labour that each trade is expected to have on the way and the
// chance that it is called: with them the bound changes as the shares do.
func (b *bound) follow(t *task) {
	b.labour, b.called = append(b.labour[:0], b.share...), append(b.called[:0], b.share...)
	clear(b.labour)
	clear(b.called)
	b.mass = append(b.mass[:0], b.sum...)
	b.mass = append(b.mass, b.sum...)
	clear(b.mass)
	here, there := b.mass[:1<<b.bits], b.mass[1<<b.bits:]
	here[0] = certain
	for k := range t.stages {
		for _, set := range b.reached.before(k) {
			if here[set] > 0 {
				b.spread(t, k, set, here[set], there)
				here[set] = 0
			}
		}
		here, there = there, here
	}
}

// spread takes what chance a set has at stage k on to the sets after it.
func (b *bound) spread(t *task, k, set int, mass int64, there []int64) {
	i := b.bestWay(t, k, set)
	w, open := &b.ways[i], b.reached.open[k]
	for _, c := range t.callsOf(&t.ways[i]) {
		b.labour[c.trade] += partDown(c.labour, mass)
	}
	for fresh := uint(w.sure &^ set); fresh != 0; fresh &= fresh - 1 {
		b.called[bits.TrailingZeros(fresh)] += mass
	}
	set |= w.sure
	whole := mass
	for _, p := range b.perhaps[w.from:w.to] {
		next := set | 1<<p.trade
		if next == set {
			continue
		}
		on := partDown(whole, p.chance)
		there[set&open] += mass - on
		b.called[p.trade] += on
		set, mass = next, on
	}
	there[set&open] += mass
}

// bestWay is the way that makes the most of a set at stage k.
func (b *bound) bestWay(t *task, k, set int) int {
	best, most, later := 0, int64(impossible), b.after(k)
	for i := t.stages[k].from; i < t.stages[k].to; i++ {
		if v := b.worth(&b.ways[i], set, later); v > most {
			best, most = i, v
		}
	}
	return best
}

// ascend moves the shares to where the bound is lower: against its slope, as far
// as would bring it down by gap if it were straight (Polyak's step), times scale.
// It reports whether there is anywhere to go.
func (b *bound) ascend(t *task, gap int64, scale float64) bool {
	b.follow(t)
	b.slope = b.slope[:0]
	norm := 0.0
	for n, tr := range t.trades {
		slope := 0.0
		if n < b.bits {
			slope = float64(partDown(tr.minimum, min(certain, b.called[n])) - b.labour[n])
		}
		if slope > 0 && b.share[n] == 0 || slope < 0 && b.share[n] == certain {
			slope = 0
		}
		b.slope = append(b.slope, slope)
		norm += slope * slope
	}
	if norm == 0 {
		return false
	}
	for n, slope := range b.slope {
		b.shift(n, -certain*scale*float64(gap)*slope/norm)
	}
	return true
}
