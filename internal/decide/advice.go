package decide

import (
	"railhead/internal/hazard"
	"railhead/internal/kitchen"
	"railhead/internal/survey"
)

// advised is the advice for one group: what the room's best combination says as
// the gates stand, and once those that somebody can open are open.
//
// What is best only then is gated: until then the group stays. What goes with the
// old cabinets cannot stay; there the advice says what to do with it, and its gates
// stop the work.
func (r *reckoning) advised(g int, now, once plan) Advised {
	a := Advised{Group: r.ms[g].group.ID, Option: r.optionOf(now, g), Once: r.optionOf(once, g)}
	if r.ms[g].goesAnyhow() {
		a.Gated = len(of(r.options[g], a.Option).Gates) > 0
	} else {
		a.Gated = a.Option == kitchen.Keep && len(of(r.options[g], a.Once).Gates) > 0
	}
	return a
}

func (r *reckoning) optionOf(p plan, g int) kitchen.Option { return r.options[g][p.picks[g]].Option }

// leavesNarrowGap reports whether taking the group down would leave a gap over
// the row that is too narrow to clean; over no cabinets there is no gap.
func (m *matter) leavesNarrowGap() bool {
	row, narrow := m.presentRow(), m.k.Prices.Figures.Length(kitchen.NarrowGap)
	for _, r := range row {
		if low, _ := m.roomWithout(r, m.only()); low.value.Minus(r.Cabinet.Top).CmpLength(narrow) >= 0 {
			return false
		}
	}
	return len(row) > 0
}

// licensed reports whether everything that forbids an option is for the licensed
// trade to open.
func licensed(gates []Gate) bool {
	return all(gates, func(g Gate) bool { return !g.Forbids || g.Licensed })
}

// seenEmpty reports whether somebody looked into the whole of an overhead and
// found nothing; one whose duct is described holds that.
func seenEmpty(o *survey.Overhead) bool {
	return len(o.Inside.Services) == 0 && o.Duct == nil && hazard.SeenAll(o)
}

// mayNotCut: one part that may not be cut rules for its whole group.
func (m *matter) mayNotCut() bool {
	return anyOf(m.group.Parts, func(o *survey.Overhead) bool { return o.MayCut == survey.CutNo })
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
