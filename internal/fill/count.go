package fill

import "railhead/internal/money"

// counts is what there is of each thing that counts in an answer.
type counts struct {
	cabinets, fillers, fillerWidth, openWidth, changes, misses, pairs int

	sizesWorth, pairsWorth money.Amount
}

func (c *counts) size(worth money.Amount) {
	c.cabinets++
	c.sizesWorth += worth
}

func (c *counts) filler(wide int) {
	c.fillers++
	c.fillerWidth += wide
}

func (c *counts) open(wide int) { c.openWidth += wide }

func (c *counts) joint(onLine bool) {
	if !onLine {
		c.misses++
	}
}

func (c *counts) change() { c.changes++ }

func (c *counts) pair(worth int64) {
	c.pairs++
	c.pairsWorth += money.Amount(worth)
}

// parts adds up what an answer is worth.
func (c *counts) parts(t *tracer) {
	w := t.r.Weights
	cost := func(n int, each money.Amount) money.Amount { return -money.Amount(n) * each }
	for _, p := range []Part{
		{Sizes, c.cabinets, c.sizesWorth},
		{Cabinets, c.cabinets, cost(c.cabinets, w.Cabinet)},
		{Fillers, c.fillers, cost(c.fillers, w.Filler)},
		{FillerWidth, c.fillerWidth, cost(c.fillerWidth, w.FillerPerGrid)},
		{Panels, len(t.a.Panels), cost(len(t.a.Panels), w.Panel)},
		{OpenWidth, c.openWidth, cost(c.openWidth, w.OpenPerGrid)},
		{HeightChanges, c.changes, cost(c.changes, w.HeightChange)},
		{LineMisses, c.misses, cost(c.misses, w.LineMiss)},
		{Pairs, c.pairs, c.pairsWorth},
	} {
		if p.Worth != 0 {
			t.a.Parts = append(t.a.Parts, p)
			t.a.Worth += p.Worth
		}
	}
}
