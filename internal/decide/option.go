package decide

import (
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// options are every way to treat a group, from the least work to the most.
func (m *matter) options() []Option {
	kinds := []kitchen.Option{
		kitchen.Keep, kitchen.Trim, kitchen.OpenPart,
		kitchen.RemoveTaller, kitchen.RemoveClose, kitchen.RemoveOpen,
	}
	if all(m.group.Parts, isDuctBox) {
		kinds = append(kinds, kitchen.Move)
	}
	out := make([]Option, 0, len(kinds))
	for _, o := range kinds {
		gates := m.gates(o)
		out = append(out, Option{Option: o, Possible: open(gates), Gates: gates, Swaps: m.swaps(o), Needs: m.needs(o)})
	}
	return out
}

func isDuctBox(o *survey.Overhead) bool { return o.Kind == survey.DuctBox }

// open reports whether no gate forbids; more gates never open anything.
func open(gates []Gate) bool {
	return all(gates, func(g Gate) bool { return !g.Forbids })
}

// gates are what must be settled before an option may be taken, in a fixed
// order: what nothing can change first, then the trades, then the questions.
func (m *matter) gates(o kitchen.Option) []Gate {
	if o == kitchen.Keep {
		return m.keepGates()
	}
	return slices.Concat(
		m.workGates(o), m.hoodGates(o), m.structureGates(o), m.serviceGates(o), m.asbestosGates(), m.leadGates(o),
	)
}

// keepGates: what the old cabinets carry cannot stay without them.
func (m *matter) keepGates() []Gate {
	if !m.goesAnyhow() {
		return nil
	}
	return []Gate{{Code: gateGoesAnyhow, Pointer: m.group.Parts[0].Pointer + "/carried_by", Forbids: true}}
}

// swaps are the cabinets that an option exchanges: taller ones for what comes
// down, shorter ones under what stays.
func (m *matter) swaps(o kitchen.Option) []cabinet.Swap {
	switch o {
	case kitchen.RemoveTaller:
		if m.taller.mayFit() {
			return m.taller.swaps
		}
	case kitchen.Keep:
		return m.shorter()
	}
	return nil
}

// needs are the other groups that must come down with an option.
func (m *matter) needs(o kitchen.Option) []string {
	if o == kitchen.RemoveTaller && m.taller.mayFit() {
		return m.taller.needs
	}
	return nil
}

// shorter exchanges each cabinet in the way for the tallest of the system that
// stands clear under what is above it as found; none for a cabinet that no
// height of the system helps. Base cabinets carry the counter and stay.
func (m *matter) shorter() []cabinet.Swap {
	overlaps := map[*cabinet.Placed]bool{}
	for _, o := range m.overlaps {
		overlaps[o.cabinet] = true
	}
	var out []cabinet.Swap
	for _, r := range m.under {
		if !overlaps[r.Cabinet] {
			continue
		}
		room := r.Margin.Plus(r.Cabinet.Top)
		if h, ok := tallestWithin(m.k.System.Sizes(r.Cabinet.Kind).Heights, r.Cabinet, room); ok {
			out = append(out, cabinet.Swap{Cabinet: r.Cabinet, Height: h, Top: r.Cabinet.Underside + h})
		}
	}
	return out
}

// tallestWithin is the tallest height that ends at or under what is above the
// cabinet; less than its own, since that one overlaps.
func tallestWithin(heights []length.Length, c *cabinet.Placed, room length.Exact) (length.Length, bool) {
	best := length.Length(0)
	for _, h := range heights {
		if h > best && room.CmpLength(c.Underside+h) >= 0 {
			best = h
		}
	}
	return best, best > 0
}
