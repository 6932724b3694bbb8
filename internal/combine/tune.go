package combine

// The shares that a bound counts change how close it is, and nothing else: it is
// true with any, so floats that find good ones decide nothing.

// tune finds shares by looking at each thing by itself, as if every trade came
// anyway: a share grows where the labour of the best ways comes to more than the
// minimum, and shrinks where it comes to less.
func (b *bound) tune(t *task) {
	b.share = b.share[:0]
	for range t.trades {
		b.share = append(b.share, certain/2)
	}
	b.labour = append(b.labour[:0], b.share...)
	for step := certain / 2.0; step > certain/64; step *= 0.8 {
		clear(b.labour)
		for k := range t.stages {
			b.addBest(t, t.waysOf(k))
		}
		for n, tr := range t.trades {
			over := float64(b.labour[n]-tr.minimum) / float64(max(tr.minimum, b.labour[n], 1))
			b.shift(n, step*over)
		}
	}
}

// shift moves a share, within its range.
func (b *bound) shift(n int, by float64) {
	b.share[n] = max(0, min(certain, b.share[n]+int64(max(-certain, min(certain, by)))))
}

// addBest adds the labour of the best of some ways.
func (b *bound) addBest(t *task, ways []way) {
	best, most := &ways[0], int64(impossible)
	for i := range ways {
		v := ways[i].worth
		for _, c := range t.callsOf(&ways[i]) {
			v -= partDown(c.labour, b.share[c.trade])
		}
		if v > most {
			best, most = &ways[i], v
		}
	}
	for _, c := range t.callsOf(best) {
		b.labour[c.trade] += c.labour
	}
}
