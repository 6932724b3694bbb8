package decide

import (
	"strings"

	"railhead/internal/belief"
	"railhead/internal/contents"
	"railhead/internal/estimate"
	"railhead/internal/money"
	"railhead/internal/takeoff"
)

// The lists of an option's work, by what has to turn out so for them to come up.
const (
	listCertain = 0
	listFound   = 1 // one for each state of the contents
	listBehind  = listFound + int(contents.States)
	listClosing = listBehind + 1
	lists       = listClosing + 1
)

// lists are the work of an option.
func (m *measured) lists() [lists][]takeoff.Item {
	out := [lists][]takeoff.Item{listCertain: m.Items, listBehind: m.Behind, listClosing: m.closing}
	copy(out[listFound:], m.Found[:])
	return out
}

// kinds is a set of kinds of work, a bit for each.
type kinds uint32

var kindOf = func() map[takeoff.Work]kinds {
	out := map[takeoff.Work]kinds{}
	for i, w := range takeoff.Works() {
		out[w] = 1 << i
	}
	return out
}()

func kindsOf(items []takeoff.Item) (out kinds) {
	for i := range items {
		out |= kindOf[items[i].Work]
	}
	return out
}

// oneOfEach is one of each kind of work that any option has, or may turn out to
// have: rates rest on the kinds alone.
func (r *reckoning) oneOfEach() []takeoff.Item {
	var all kinds
	for g := range r.measured {
		for i := range r.measured[g] {
			chances := r.chances(r.now, g, i).byList()
			for l, items := range r.measured[g][i].lists() {
				if chances[l] > 0 {
					all |= kindsOf(items)
				}
			}
		}
	}
	var out []takeoff.Item
	for _, w := range takeoff.Works() {
		if all&kindOf[w] != 0 {
			out = append(out, takeoff.Item{Work: w, Quantity: money.One})
		}
	}
	return out
}

// byList is the chance that each list of work comes up.
func (c chances) byList() [lists]belief.Chance {
	out := [lists]belief.Chance{listCertain: belief.Certain, listBehind: c.behind, listClosing: c.closing}
	copy(out[listFound:], c.found[:])
	return out
}

// restingOn are the kinds of work in whose price a rate has a part.
func restingOn(code string) (out kinds) {
	for _, w := range takeoff.Works() {
		if estimate.Uses(code, w) {
			out |= kindOf[w]
		}
	}
	return out
}

// chargedBy is the trade that has a rate as a charge beside its labour.
func chargedBy(code string) estimate.Trade {
	for t := range estimate.Trades {
		if callOut, minimum := estimate.ChargeCodes(t); code == callOut || code == minimum {
			return t
		}
	}
	return estimate.NoTrade
}

// isWorth reports whether a rate is what something is worth to the client.
func isWorth(code string) bool { return strings.HasPrefix(code, "worth.") }
