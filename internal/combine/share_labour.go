package combine

// tune finds shares of the trades' labour that make the bound close: a share
// grows where the labour of the best ways comes to more than the minimum, and
// shrinks where it comes to less. Any shares make a bound. Trades of sunk are
// called anyway.
func (b *bound) tune(t *task, sunk []bool) {
	b.share = b.share[:0]
	for range t.trades {
		b.share = append(b.share, certain/2)
	}
	step := int64(certain / 2)
	for range 16 {
		b.labour = append(b.labour[:0], make([]int64, len(t.trades))...)
		for k := range t.stages {
			b.addBest(t, t.waysOf(k), sunk)
		}
		for n, tr := range t.trades {
			if sunk != nil && !sunk[n] {
				continue
			}
			short, whole := tr.minimum-b.labour[n], max(tr.minimum, b.labour[n], 1)
			move := int64(float64(step) * float64(short) / float64(whole))
			b.share[n] = max(0, min(certain, b.share[n]-move))
		}
		step = step * 4 / 5
	}
}

// addBest adds the labour of the best of some ways.
func (b *bound) addBest(t *task, ways []way, sunk []bool) {
	best, most := 0, int64(impossible)
	for i := range ways {
		v := ways[i].worth
		for _, c := range t.callsOf(&ways[i]) {
			v -= partDown(c.labour, b.share[c.trade])
			if sunk != nil && !sunk[c.trade] {
				tr := &t.trades[c.trade]
				v -= partDown(tr.callOut+partDown(tr.minimum, certain-b.share[c.trade]), certain-c.unmoved)
			}
		}
		if v > most {
			best, most = i, v
		}
	}
	for _, c := range t.callsOf(&ways[best]) {
		b.labour[c.trade] += c.labour
	}
}
