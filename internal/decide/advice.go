package decide

import (
	"railhead/internal/hazard"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// advise ranks a group's options by the rules below and says what holds until
// a gate in front of the best one is open: the group stays.
func (m *matter) advise(options []Option) Advised {
	want := m.wanted(options)
	if want == kitchen.Keep || m.goesAnyhow() {
		return Advised{Group: m.group.ID, Option: want, Gated: len(of(options, want).Gates) > 0, Once: want}
	}
	if len(of(options, want).Gates) > 0 {
		return Advised{Group: m.group.ID, Option: kitchen.Keep, Gated: true, Once: want}
	}
	return Advised{Group: m.group.ID, Option: want, Once: want}
}

// wanted is what would be advised if every gate that can be opened were open.
// The first rule that applies decides:
//
//  1. It goes with the old cabinets anyway: closed again over a narrow gap, else
//     left open.
//  2. Nothing is in the way: it stays, unless it is known to be empty, the
//     taller row fits, the client puts a worth on going to the ceiling and no
//     gate is in front: then it comes down for the taller row.
//  3. It may not be cut: it stays.
//  4. The cut can be built: trim.
//  5. The rest is worth keeping: open the part over the cabinets.
//  6. The taller row fits and going to the ceiling is wanted: it comes down for
//     the taller row.
//  7. Else it comes down: closed again over a narrow gap, else left open.
//
// A rule whose option is shut is passed over for the next one; one that the
// licensed trade could open is taken only when no other is left. Where all are
// shut it stays.
//
// The order is common practice, no source: the least work first, since saving
// the expense is a valid reason by itself.
func (m *matter) wanted(options []Option) kitchen.Option {
	switch {
	case m.goesAnyhow():
		return m.closeOrLeave()
	case !m.inTheWay():
		if m.takesDownForHeight(options) {
			return kitchen.RemoveTaller
		}
		return kitchen.Keep
	case m.mayNotCut():
		return kitchen.Keep
	}
	rank := m.ranked()
	for _, o := range rank {
		if of(options, o).Possible {
			return o
		}
	}
	for _, o := range rank {
		if licensed(of(options, o).Gates) {
			return o
		}
	}
	return kitchen.Keep
}

// ranked are rules 4 to 7.
func (m *matter) ranked() []kitchen.Option {
	out := []kitchen.Option{kitchen.Trim, kitchen.OpenPart}
	if m.k.Prices.Worth.ToCeiling.Amount > 0 {
		out = append(out, kitchen.RemoveTaller)
	}
	return append(out, m.closeOrLeave())
}

// takesDownForHeight is the exception of rule 2.
func (m *matter) takesDownForHeight(options []Option) bool {
	best := of(options, kitchen.RemoveTaller)
	return m.k.Prices.Worth.ToCeiling.Amount > 0 && all(m.group.Parts, seenEmpty) && best.Possible && len(best.Gates) == 0
}

// mayNotCut: one part that may not be cut rules for its whole group.
func (m *matter) mayNotCut() bool {
	return anyOf(m.group.Parts, func(o *survey.Overhead) bool { return o.MayCut == survey.CutNo })
}

// narrowGap is the height below which an open gap over cabinets only gathers
// dust, because no arm can clean it (common practice, no source).
const narrowGap = 300 * length.Millimetre

// closeOrLeave closes a narrow gap above the row again and leaves a high one
// open; over no cabinets there is nothing to close down to.
func (m *matter) closeOrLeave() kitchen.Option {
	row := m.presentRow()
	if len(row) == 0 {
		return kitchen.RemoveOpen
	}
	for _, r := range row {
		if have, _, _ := m.roomWithout(r); have.Minus(r.Cabinet.Top).CmpLength(narrowGap) >= 0 {
			return kitchen.RemoveOpen
		}
	}
	return kitchen.RemoveClose
}

// of finds an option in a group's list.
func of(options []Option, o kitchen.Option) Option {
	for _, have := range options {
		if have.Option == o {
			return have
		}
	}
	return Option{Option: o}
}

// licensed reports whether everything that forbids an option is for the licensed
// trade to open.
func licensed(gates []Gate) bool {
	return all(gates, func(g Gate) bool { return !g.Forbids || g.Licensed })
}

// seenEmpty reports whether somebody looked into the whole of an overhead and
// found nothing.
func seenEmpty(o *survey.Overhead) bool { return len(o.Inside.Services) == 0 && hazard.SeenAll(o) }
