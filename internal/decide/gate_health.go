package decide

import (
	"strconv"

	"railhead/internal/finding"
	"railhead/internal/hazard"
	"railhead/internal/kitchen"
	"railhead/internal/survey"
)

// asbestosGates: a textured or plastered surface in an old enough house is
// tested before anyone opens it.
func (m *matter) asbestosGates() []Gate {
	var out []Gate
	for _, p := range m.group.Parts {
		if hazard.Asbestos(m.k.Room, p) != hazard.Presumed {
			continue
		}
		g := Gate{Code: gateAsbestos, Pointer: p.Pointer + "/finish", Params: m.year(), Licensed: true}
		if p.Textured == survey.Yes {
			g.Pointer = p.Pointer + "/textured"
		}
		switch {
		case m.k.Room.Local.AsbestosTo > 0:
			g.Code = gateAsbestosLocal
		case m.k.Room.Built == 0:
			g.Code, g.Params = gateAsbestosYear, nil
		case m.k.Room.CodeSet == survey.CodeUnspecified:
			g.Code = gateAsbestosCode
		}
		out = append(out, g)
	}
	return out
}

// leadGates: work on paint from before 1978 is for a certified firm, but for a
// cut of no more than 6 ft² in the room; taking painted parts down never counts
// as minor (40 CFR 745.83). Where nobody named the code set, the exclusion is
// not relied on, and only paint that was seen shuts the gate: no country's rule
// is assumed. A local rule that the request gives stands in place of all that.
func (m *matter) leadGates(o kitchen.Option) []Gate {
	var out []Gate
	for _, p := range m.group.Parts {
		if m.mayBeLead(p) && (o != kitchen.Trim || m.paint.BeyondMinorRepair()) {
			out = append(out, Gate{Code: gateLeadYear, Pointer: "/survey/built", Licensed: true})
		}
		if hazard.Lead(m.k.Room, p) != hazard.Presumed {
			continue
		}
		g := Gate{Pointer: p.Pointer + "/painted", Licensed: true}
		g.Params = append(m.year(), finding.Word("area", m.paint.SquareFeet()))
		switch unspecified, local := m.k.Room.CodeSet == survey.CodeUnspecified, m.k.Room.Local; {
		case local.LeadBefore > 0:
			if o == kitchen.Trim && !m.paint.Beyond(local.LeadArea) {
				continue
			}
			g.Code = gateLeadLocal
		case unspecified && p.Painted != survey.Yes:
			continue
		case unspecified:
			g.Code = gateLeadCode
		case o != kitchen.Trim:
			g.Code = gateLeadDemolition
		case m.paint.BeyondMinorRepair():
			g.Code = gateLeadArea
		default:
			continue
		}
		out = append(out, g)
	}
	return out
}

// mayBeLead reports whether paint that was seen, in a house of which nobody knows
// the year, would count as lead paint if it were old enough.
func (m *matter) mayBeLead(p *survey.Overhead) bool {
	r := m.k.Room
	return r.CodeSet == survey.CodeUSIRC && r.Built == 0 && p.Painted == survey.Yes && !r.Cleared.Lead && r.Local.LeadBefore == 0
}

func (m *matter) year() []finding.Param {
	return []finding.Param{finding.Word("built", strconv.Itoa(m.k.Room.Built))}
}
