package decide

import (
	"slices"

	"railhead/internal/estimate"
	"railhead/internal/kitchen"
	"railhead/internal/money"
)

// billed is the work of an option, list by list, at the room's rates.
type billed [lists]struct {
	estimate.Bill
	kinds
}

// bills are the work of all options, by group and option.
func (r *reckoning) bills() [][]billed {
	out := make([][]billed, len(r.measured))
	for g := range r.measured {
		out[g] = make([]billed, len(r.measured[g]))
		for i := range r.measured[g] {
			for l, items := range r.measured[g][i].lists() {
				out[g][i][l].Bill, out[g][i][l].kinds = r.book.Bill(items), kindsOf(items)
			}
		}
	}
	return out
}

// restOn reports whether any of the work is of some kinds.
func (b *billed) restOn(on kinds) bool {
	for l := range b {
		if b[l].kinds&on != 0 {
			return true
		}
	}
	return false
}

// hanging is a sum that hangs on a rate, with what it is the sum of.
type hanging struct {
	way  *reckoned
	list int
	bill estimate.Bill
}

// atRate prices the room with one rate a single amount. Only what hangs on the rate
// is reckoned anew; what is returned holds until the next amount.
func (r *reckoning) atRate(code string, bills [][]billed) func(money.Amount) *priced {
	p, trial := r.priced, r.book.Trial(code)
	var sums []hanging
	p.ways, sums = r.hangingOn(code, bills)
	charged, worth, shared := chargedBy(code) != estimate.NoTrade, isWorth(code), r.exchangesRestOn(restingOn(code))
	if worth {
		p.ways = cloned(r.priced.ways)
	}
	return func(a money.Amount) *priced {
		p.book = trial(money.Spread{Low: a, Likely: a, High: a})
		for _, s := range sums {
			s.way.sums[s.list], s.way.known = s.bill.SumWith(p.book, code), false
		}
		if charged {
			p.charges = chargesOf(p.book)
		}
		if worth {
			r.value(&p, r.k.Prices.Worth)
		}
		if shared {
			p.shared = p.outcomesOf(r.exchanges)
		}
		return &p
	}
}

// atWorth prices the room with something of another worth to the client; what is
// returned holds until the next amount.
func (r *reckoning) atWorth(set func(*kitchen.Worth, money.Amount)) func(money.Amount) *priced {
	p := r.priced
	p.ways = cloned(r.priced.ways)
	return func(a money.Amount) *priced {
		w := r.k.Prices.Worth
		set(&w, a)
		r.value(&p, w)
		p.shared = p.outcomesOf(r.exchanges)
		return &p
	}
}

func cloned(ways [][]reckoned) [][]reckoned {
	out := make([][]reckoned, len(ways))
	for g := range ways {
		out[g] = slices.Clone(ways[g])
	}
	return out
}

// hangingOn are the sums that hang on a rate, and the options with a place of their
// own for each of them.
func (r *reckoning) hangingOn(code string, bills [][]billed) (ways [][]reckoned, sums []hanging) {
	ways = slices.Clone(r.priced.ways)
	on := restingOn(code)
	for g := range bills {
		own := false
		for i := range bills[g] {
			for l := range bills[g][i] {
				if bills[g][i][l].kinds&on == 0 {
					continue
				}
				if !own {
					ways[g], own = slices.Clone(ways[g]), true
				}
				sums = append(sums, hanging{&ways[g][i], l, bills[g][i][l].Bill})
			}
		}
	}
	return ways, sums
}

// exchangesRestOn reports whether exchanging a cabinet under several groups hangs
// on a rate.
func (r *reckoning) exchangesRestOn(on kinds) bool {
	for n := range r.exchanges {
		for wish := range r.exchanges[n] {
			for i := range r.exchanges[n][wish] {
				if kindsOf(r.exchanges[n][wish][i].items)&on != 0 {
					return true
				}
			}
		}
	}
	return false
}
