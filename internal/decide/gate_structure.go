package decide

import (
	"railhead/internal/kitchen"
	"railhead/internal/survey"
)

// structureGates: what bears, is solid or is a beam is never cut, and only an
// engineer can say how it is taken away; what nobody knows is asked.
func (m *matter) structureGates(o kitchen.Option) []Gate {
	var out []Gate
	for _, p := range m.group.Parts {
		if g, ok := structureGate(p, o.TakesDown()); ok && !p.GoesWithOldCabinets() {
			out = append(out, g)
		}
	}
	return out
}

func structureGate(p *survey.Overhead, takesDown bool) (Gate, bool) {
	structure := p.Pointer + "/structure"
	switch {
	case p.Structure == survey.Bearing && p.MayCut == survey.CutYes:
		// The request overrules the structure; that it bears stays to be confirmed.
		return Gate{Code: gateBearingConfirm, Pointer: structure, Licensed: true}, true
	case p.MayCut == survey.CutYes:
		return Gate{}, false
	case p.MayCut == survey.CutAsk && p.Structure == survey.StructureUnknown:
		return Gate{Code: gateUnknown, Pointer: structure}, true
	case p.MayCut == survey.CutAsk:
		return Gate{Code: gateAskFirst, Pointer: p.Pointer + "/may_cut"}, true
	case p.Structure == survey.Bearing:
		return Gate{Code: gateBearing, Pointer: structure, Forbids: true, Licensed: takesDown}, true
	case p.Kind == survey.Beam:
		return Gate{Code: gateBeam, Pointer: p.Pointer + "/kind", Forbids: true, Licensed: takesDown}, true
	case p.Structure == survey.Solid:
		return Gate{Code: gateSolid, Pointer: structure, Forbids: true, Licensed: takesDown}, true
	default:
		return Gate{Code: gateSaidNo, Pointer: p.Pointer + "/may_cut", Forbids: true}, true
	}
}
