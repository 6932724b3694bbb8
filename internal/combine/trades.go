package combine

import (
	"cmp"
	"slices"
)

// trade is a trade that charges something beside its labour.
type trade struct {
	of               int // in the problem
	callOut, minimum int64
	first, last      int // the stages between which somebody may call for it
	labour           int64
	keep, steps      int64
}

// liveTrade is a trade at a stage, with what may still be added to it.
type liveTrade struct {
	trade  int
	labour int64 // at most
	// keep is the least that a chance left may still be multiplied by, and steps
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
			t.trades = append(t.trades, trade{of: i, callOut: callOut, minimum: minimum, first: -1, last: -1, keep: certain})
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
// it after each stage: the last stage first.
func (t *task) settleTrades() {
	for k := len(t.stages) - 1; k >= 0; k-- {
		for n := range t.trades {
			t.settleTrade(k, n)
		}
	}
	for n := range t.trades {
		for k := range t.trades[n].first { // nobody has called yet
			st := &t.stages[k]
			st.live = slices.DeleteFunc(st.live, func(l liveTrade) bool { return l.trade == n })
		}
	}
}

func (t *task) settleTrade(k, n int) {
	tr, st := &t.trades[n], &t.stages[k]
	if tr.last >= 0 {
		st.save += partDown(tr.callOut, tr.keep)
		st.live = append(st.live, liveTrade{n, tr.labour, tr.keep, tr.steps})
	}
	called, labour, keep, rounds := t.calling(k, n)
	if !called {
		return
	}
	if tr.last < 0 {
		tr.last = k
		st.closing = append(st.closing, n)
	}
	tr.first = k
	tr.labour += labour
	tr.keep = int64(uint64(tr.keep) * uint64(keep) / certain)
	if rounds {
		tr.steps++
	}
}

// calling is whether somebody may call for a trade at stage k, the most labour
// and the least chance left that it takes, and whether it may take rounding.
func (t *task) calling(k, n int) (called bool, labour, keep int64, rounds bool) {
	keep = certain
	ways := t.waysOf(k)
	for w := range ways {
		for _, c := range t.callsOf(&ways[w]) {
			if c.trade == n {
				called, labour, keep = true, max(labour, c.labour), min(keep, c.unmoved)
				rounds = rounds || c.unmoved > 0 && c.unmoved < certain
			}
		}
	}
	return called, labour, keep, rounds
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
