package combine

import (
	"cmp"
	"slices"
)

// trade is a trade that charges something beside its labour.
type trade struct {
	of               int // in the problem
	callOut, minimum int64
	first, last      int  // the stages between which somebody may call for it
	perhaps          bool // somebody may call with a chance
}

// liveTrade is a trade at a stage, with what may still be added to it.
type liveTrade struct {
	trade  int
	labour int64 // at most
	// keep is no more than what a chance left may still be multiplied by, and steps
	// how many roundings that may take.
	keep, steps int64
}

// readTrades keeps the trades that charge something, the dearest first.
func (t *task) readTrades() {
	t.trades, t.number = t.trades[:0], t.number[:0]
	for i, tr := range t.p.Trades {
		t.number = append(t.number, -1)
		callOut, minimum := charge(tr.CallOut, t.most), charge(tr.Minimum, t.most)
		if callOut+minimum > 0 {
			t.trades = append(t.trades, trade{of: i, callOut: callOut, minimum: minimum})
		}
	}
	slices.SortStableFunc(t.trades, func(a, b trade) int {
		return cmp.Compare(b.callOut+b.minimum, a.callOut+a.minimum)
	})
	for n, tr := range t.trades {
		t.number[tr.of] = n
	}
}

// settleTrades finds where each trade is called, and what may still be added to
// it after each stage.
func (t *task) settleTrades() {
	for n := range t.trades {
		t.trades[n].first, t.trades[n].last, t.trades[n].perhaps = len(t.stages), -1, false
	}
	for k := range t.stages {
		for _, w := range t.waysOf(k) {
			for _, c := range t.callsOf(&w) {
				tr := &t.trades[c.trade]
				tr.first, tr.last = min(tr.first, k), k
				tr.perhaps = tr.perhaps || c.unmoved > 0 && c.unmoved < certain
			}
		}
	}
	for n := range t.trades {
		t.settleTrade(n)
	}
}

// settleTrade goes back from the last stage that may call for a trade to the
// first.
func (t *task) settleTrade(n int) {
	tr := &t.trades[n]
	rest := liveTrade{trade: n, keep: certain}
	for k := tr.last; k >= tr.first; k-- {
		st := &t.stages[k]
		if k == tr.last {
			st.closing = append(st.closing, n)
		} else {
			st.live = append(st.live, rest)
			st.save += partDown(tr.callOut, rest.keep)
		}
		rest.take(t, k)
	}
}

// take adds what stage k may add.
func (l *liveTrade) take(t *task, k int) {
	var labour, steps int64
	keep := int64(certain)
	for _, w := range t.waysOf(k) {
		for _, c := range t.callsOf(&w) {
			if c.trade != l.trade {
				continue
			}
			labour, keep = max(labour, c.labour), min(keep, c.unmoved)
			if c.unmoved > 0 && c.unmoved < certain {
				steps = 1
			}
		}
	}
	l.labour, l.keep, l.steps = l.labour+labour, partDown(l.keep, keep), l.steps+steps
}

// rounding is the most that rounding may take from what trades cost: half a unit
// from each of two amounts, and half a billionth of them at each stage.
func (t *task) rounding() int64 {
	trades, amounts := int64(0), int64(0)
	for n := range t.trades {
		if tr := &t.trades[n]; tr.perhaps {
			trades++
			amounts += tr.callOut + tr.minimum
		}
	}
	if trades == 0 {
		return 0
	}
	return trades + partAbove(amounts, int64(len(t.stages)))
}

// charge is what a trade costs with the chance left that nobody called it.
func (t *trade) charge(left, labour int64) int64 {
	return part(t.callOut, certain-left) + max(labour, part(t.minimum, certain-left))
}

// worse is the most that a trade may come to cost more where the chance that it
// is not called stands at left and the labour so far, than where it stands at
// other and otherLabour, whatever is added to both. Rounding keeps chances as
// close as they stand (see miss), and amounts within one.
func (t *trade) worse(left, labour, other, otherLabour int64) int64 {
	more := labour - otherLabour
	if other <= left {
		return max(0, more)
	}
	top := min(partAbove(t.minimum, other-left), max(0, t.minimum-otherLabour))
	return partAbove(t.callOut, other-left) + max(more, top)
}

// saves is the least that a trade comes to cost less where the chance that it is
// not called stands at left than where it stands at the smaller other.
func (t *trade) saves(l *liveTrade, left, other int64) int64 {
	if other >= left || l.keep == 0 {
		return 0
	}
	if apart := partDown(left-other, l.keep) - l.steps; apart > 0 {
		return max(0, partDown(t.callOut, apart)-1)
	}
	return 0
}
