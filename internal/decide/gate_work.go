package decide

import (
	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/survey"
)

// workGates are what the work itself cannot do, whoever does it.
func (m *matter) workGates(o kitchen.Option) []Gate {
	switch o {
	case kitchen.Trim:
		return m.trimGates()
	case kitchen.OpenPart:
		return m.openGates()
	case kitchen.RemoveTaller:
		return m.rowGates()
	case kitchen.RemoveClose:
		return m.closeGates()
	default:
		return nil
	}
}

// trimGates: there must be something to take, and what stays must be buildable.
func (m *matter) trimGates() []Gate {
	if len(m.cuts) == 0 || m.goesAnyhow() {
		return []Gate{{Code: gateNothingToTake, Pointer: m.group.Parts[0].Pointer, Forbids: true}}
	}
	var out []Gate
	for _, c := range m.cuts {
		params := []finding.Param{
			finding.Size("strip", finding.Up(c.strip)), finding.Size("stub", finding.Down(c.stub)),
			finding.Size("least", finding.Up(c.overhead.Make.LeastStub.Exact())),
		}
		switch {
		case c.reachesCeiling():
			out = append(out, Gate{Code: gateReachesCeiling, Pointer: c.overhead.Pointer, Params: params, Forbids: true})
		case c.tooThin():
			out = append(out, Gate{Code: gateStubTooThin, Pointer: c.overhead.Pointer, Params: params, Forbids: true})
		}
	}
	return distinct(out)
}

// openGates: a part is opened over the cabinets in the way, or where the choice
// says; the rest must be long enough to stay.
func (m *matter) openGates() []Gate {
	first := m.group.Parts[0]
	switch {
	case m.chosenSpans():
		return nil
	case len(m.cuts) == 0 || m.goesAnyhow():
		return []Gate{{Code: gateNothingToTake, Pointer: first.Pointer, Forbids: true}}
	case !m.restStay:
		least := finding.Size("least", finding.Up(first.Make.LeastRun.Exact()))
		return []Gate{{Code: gateRestTooShort, Pointer: first.Pointer, Params: []finding.Param{least}, Forbids: true}}
	}
	return nil
}

func (m *matter) chosenSpans() bool {
	c, ok := m.k.Choices[m.group.ID]
	return ok && c.Option == kitchen.OpenPart && len(c.Spans) > 0
}

// rowGates: taking something down for height is a waste where the taller row
// does not fit, because the same gap has to be closed again (common practice,
// no source).
func (m *matter) rowGates() []Gate {
	t := m.taller
	switch {
	case len(m.under) == 0:
		return []Gate{{Code: gateNoCabinets, Pointer: m.group.Parts[0].Pointer, Forbids: true}}
	case t.row == nil:
		return []Gate{{Code: gateNoTallerRow, Pointer: "/system", Forbids: true}}
	case !t.fits && t.chance > 0:
		return []Gate{{Code: gateCeilingDoubt, Pointer: m.k.Room.Readings[t.doubt().Largest].Pointer, Params: t.params()}}
	case !t.fits:
		return []Gate{{Code: gateCeilingShort, Pointer: t.by, Params: t.params(), Forbids: true}}
	}
	return nil
}

// closeGates: over no cabinets there is nothing to close down to.
func (m *matter) closeGates() []Gate {
	if len(m.under) > 0 {
		return nil
	}
	return []Gate{{Code: gateNoCabinets, Pointer: m.group.Parts[0].Pointer, Forbids: true}}
}

// params are the row, the ceiling it needs and what there is.
func (t taller) params() []finding.Param {
	return []finding.Param{
		finding.Size("row", finding.Near(t.row.Top.Exact())),
		finding.Size("need", finding.Up(t.need.Exact())),
		finding.Size("have", finding.Down(t.have)),
		finding.Size("margin", finding.Down(t.have.Minus(t.need))),
	}
}

// hoodGates: a duct box stays if the hood stays where it is (common practice, no
// source). A box that no planned hood uses may serve something else.
func (m *matter) hoodGates(o kitchen.Option) []Gate {
	if !o.TakesDown() && o != kitchen.OpenPart {
		return nil
	}
	var out []Gate
	for _, p := range m.group.Parts {
		if p.Kind != survey.DuctBox {
			continue
		}
		switch hood := m.hoodOf(p); {
		case hood == nil && !seenEmpty(p):
			out = append(out, Gate{Code: gateDuctServes, Pointer: p.Pointer + "/duct"})
		case hood != nil && !hood.Moves:
			out = append(out, Gate{Code: gateHoodStays, Pointer: m.k.Plan.Cooking.Pointer + "/hood", Forbids: true})
		}
	}
	return distinct(out)
}

// hoodOf is the planned hood whose duct runs in a duct box; nil where none does.
func (m *matter) hoodOf(o *survey.Overhead) *cabinet.Hood {
	c := m.k.Plan.Cooking
	if c == nil || c.Hood == nil || c.Hood.DuctBox != o.ID {
		return nil
	}
	return c.Hood
}

// distinct drops gates that stand there already, by code and pointer.
func distinct(in []Gate) []Gate {
	var out []Gate
	for _, g := range in {
		if !anyOf(out, func(h Gate) bool { return h.Code == g.Code && h.Pointer == g.Pointer }) {
			out = append(out, g)
		}
	}
	return out
}
