package decide

import (
	"railhead/internal/finding"
	"railhead/internal/hazard"
	"railhead/internal/kitchen"
	"railhead/internal/survey"
)

// serviceGates are what runs inside: gas and sprinkler lines anywhere in the
// group, and in the way of the work what cannot be moved or might not.
func (m *matter) serviceGates(o kitchen.Option) []Gate {
	var out []Gate
	for _, p := range m.group.Parts {
		for i := range p.Inside.Services {
			if g, ok := m.serviceGate(o, p, &p.Inside.Services[i]); ok {
				out = append(out, g)
			}
		}
		if hazard.ShowsSprinklerHead(p) {
			out = append(out, Gate{Code: gateSprinkler, Pointer: p.Inside.Pointer + "/hints", Forbids: true, Licensed: true})
		}
	}
	return out
}

func (m *matter) serviceGate(o kitchen.Option, p *survey.Overhead, s *survey.Service) (Gate, bool) {
	kind := []finding.Param{finding.Word("kind", s.Kind.String())}
	switch {
	case s.Kind == survey.Gas:
		return Gate{Code: gateGas, Pointer: s.Pointer, Forbids: true, Licensed: true}, true
	case s.Kind == survey.Sprinkler:
		return Gate{Code: gateSprinkler, Pointer: s.Pointer, Forbids: true, Licensed: true}, true
	case !m.reached(o, p, s):
		return Gate{}, false
	case s.Kind == survey.StructureInside:
		return Gate{Code: gateInside, Pointer: s.Pointer, Forbids: true, Licensed: true}, true
	case s.Movable == survey.NotMovable:
		return Gate{Code: gateImmovable, Pointer: s.Pointer, Params: kind, Forbids: true}, true
	case s.Movable == survey.MovableUnknown && !isWire(s):
		return Gate{Code: gateMovable, Pointer: s.Pointer + "/movable", Params: kind}, true
	}
	return Gate{}, false
}

// isWire: wires and cables can be rerouted as a rule.
func isWire(s *survey.Service) bool { return s.Kind == survey.Wire || s.Kind == survey.Cable }

// reached reports whether an option's work comes to a service: a trim to what
// hangs nearer to the cut than its clearance, an opening to all within its
// stretch, and taking down to everything.
func (m *matter) reached(o kitchen.Option, p *survey.Overhead, s *survey.Service) bool {
	if o.TakesDown() {
		return true
	}
	if o == kitchen.OpenPart && m.chosenSpans() {
		return anyOf(m.k.Choices[m.group.ID].Spans, func(w survey.WallSpan) bool {
			return w.Wall == p.Wall && s.From <= w.To && s.To >= w.From
		})
	}
	return anyOf(m.cuts, func(c cut) bool {
		if c.overhead != p || s.From > c.to || s.To < c.from {
			return false
		}
		return o == kitchen.OpenPart || m.height(p, s.Underside.Value).Minus(s.Clearance).CmpLength(c.line) < 0
	})
}
