package decide

import (
	"slices"

	"railhead/internal/estimate"
	"railhead/internal/kitchen"
	"railhead/internal/money"
)

// stay is keeping a group, where that competes and calls for no trade: what it then
// nets hangs on nothing that is done elsewhere.
type stay struct {
	competes  bool
	net, gain money.Amount
}

// stayOf is keeping a group whose options that compete are given.
func (r *reckoning) stayOf(g int, allowed []int, v *values) stay {
	keep := &r.measured[g][0]
	cost := r.rates.Sum(keep.Items)
	if !slices.Contains(allowed, 0) || cost.Needs != [estimate.Trades]bool{} {
		return stay{}
	}
	gain := v.worth(keep.gained)
	return stay{true, gain.Minus(cost.Bought), gain}
}

// needless reports whether an option nets no more than keeping the group even before
// it costs anything, whatever is done elsewhere, so that nobody need measure it: of
// equals the first is advised. It bears on shared cabinets as keeping does, and not
// even one line for all tops would make up for it. What it gains is at most the
// largest of its own gain and of those of what it may turn into: staying, and a gap
// that is closed; chances round toward neither beyond them.
func (r *reckoning) needless(g, i int, s stay, v *values) bool {
	m := &r.measured[g][i]
	if !s.competes || !slices.Equal(m.effects, r.measured[g][0].effects) || len(r.joints) > 0 && v.EvenLine.Amount > 0 {
		return false // where tops are shared each line is tried by itself
	}
	r.gain(g, i)
	most := max(s.gain, v.worth(m.gained))
	if r.options[g][i].Option == kitchen.RemoveTaller {
		closed := r.place(g, kitchen.RemoveClose)
		r.gain(g, closed)
		most = max(most, v.worth(r.measured[g][closed].gained))
	}
	return s.net.Minus(max(0, v.EvenLine.Amount)) >= most
}
