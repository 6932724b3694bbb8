package decide

import (
	"railhead/internal/cabinet"
	"railhead/internal/contents"
	"railhead/internal/estimate"
	"railhead/internal/kitchen"
	"railhead/internal/takeoff"
)

// linesOf are the lines of one option: the work that is certain, and an allowance
// for everything that may turn up.
func (r *reckoning) linesOf(g, i int) []estimate.Line {
	m, c := &r.measured[g][i], r.chances(r.now, g, i)
	group, cluster := r.ms[g].group.ID, r.ms[r.clusters[r.cluster[g]].Groups[0]].group.ID
	out := r.book.Price(group, m.Items)
	for s := contents.FewWires; s < contents.States; s++ {
		out = append(out, r.book.PriceAt(group, m.Found[s], estimate.Event{Of: cluster, State: s, Chance: c.found[s]})...)
	}
	out = append(out, r.book.PriceAt(group, m.Behind, estimate.Event{Of: "behind " + cluster, Chance: c.behind})...)
	return append(out, r.book.PriceAt(group, m.closing, estimate.Event{Of: "row " + group, Misfit: true, Chance: c.closing})...)
}

// lines are the lines of a combination for the room: group by group, then what the
// groups share.
func (r *reckoning) lines(picks []int) []estimate.Line {
	var out []estimate.Line
	for g, i := range picks {
		out = append(out, r.linesOf(g, i)...)
	}
	out = append(out, r.book.Price("", r.joined(picks))...)
	var calls [estimate.Trades]estimate.Call
	problem := r.problem(&r.priced, r.now, alone(picks))
	for t, c := range problem.Charges(make([]int, len(picks))) {
		calls[t] = estimate.Call{Chance: c.Chance, Labour: c.Labour}
	}
	return append(out, r.book.Shared(calls, out)...)
}

// joined is the work of exchanging the cabinets that stand under several groups.
func (r *reckoning) joined(picks []int) []takeoff.Item {
	var out []takeoff.Item
	for n := range r.joints {
		limit, wish := r.bearing(n, picks)
		s, swapped, possible := r.joints[n].swap(limit, wish)
		if !possible {
			s, swapped, _ = r.joints[n].swap(limit, false)
		}
		if swapped {
			out = append(out, r.exchange([]cabinet.Swap{s})...)
		}
	}
	return out
}

// money is one option in money; nil where it cannot be done.
func (r *reckoning) money(g, i int) *Money {
	if !r.measured[g][i].done {
		return nil
	}
	e, lines := r.expected(&r.priced, r.now, g, i), r.linesOf(g, i)
	gains := append(r.values.gains(r.measured[g][i].gained), r.priced.ways[g][i].risked(r.chances(r.now, g, i))...)
	return &Money{Gains: gains, Lines: lines, Cost: estimate.CostOf(lines), Gain: e.gain}
}

// applied is where the applied options stand in the groups' lists. What cannot stay
// goes, and nothing closes its gap; a taller row that another overhead keeps out is
// none, and the gap is closed again.
func (r *reckoning) applied(a kitchen.AppliedOptions) []int {
	out := make([]int, len(r.ms))
	for g, m := range r.ms {
		option := a[m.group.ID].Option
		switch {
		case m.goesAnyhow() && !option.TakesDown():
			option = kitchen.RemoveOpen
		case option == kitchen.RemoveTaller && anyOf(m.needs(option), func(n string) bool { return !a[n].Option.TakesDown() }):
			option = kitchen.RemoveClose
		}
		out[g] = max(0, r.place(g, option))
	}
	return out
}
