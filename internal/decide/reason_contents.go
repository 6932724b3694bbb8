package decide

import (
	"railhead/internal/finding"
	"railhead/internal/hazard"
	"railhead/internal/survey"
)

// contents: what is inside decides first. A probe hole shows it; rerouted wires
// need new board before a rail can hang (common practice, no source).
func (m *matter) contents() []Reason {
	out := m.seen()
	if r := m.unseen(); r != nil {
		out = append(out, *r)
	}
	out = append(out, m.hood()...)
	if len(out) == 0 {
		out = append(out, Reason{Factor: Contents, Leans: LeansTakeDown, Code: becauseEmpty, Evidence: m.insides(everyPart)})
	}
	return out
}

// seen sorts what was seen inside by what it means for the work.
func (m *matter) seen() []Reason {
	by := map[string]*Reason{}
	for _, p := range m.group.Parts {
		for i := range p.Inside.Services {
			s := &p.Inside.Services[i]
			code := meaning(s)
			if by[code] == nil {
				by[code] = &Reason{Factor: Contents, Leans: LeansKeep, Code: code}
			}
			by[code].Evidence = append(by[code].Evidence, s.Pointer)
		}
	}
	var out []Reason
	for _, code := range []string{becauseLicensed, becauseImmovable, becausePipes, becauseWires} {
		if r := by[code]; r != nil {
			r.Params = []finding.Param{finding.Word("count", count(len(r.Evidence)))}
			out = append(out, *r)
		}
	}
	return out
}

// meaning is what a service means for the work.
func meaning(s *survey.Service) string {
	switch {
	case s.Kind == survey.Gas || s.Kind == survey.Sprinkler:
		return becauseLicensed
	case s.Kind == survey.StructureInside || s.Movable == survey.NotMovable:
		return becauseImmovable
	case isWire(s):
		return becauseWires
	default:
		return becausePipes
	}
}

// unseen says how much of the group nobody has looked into; nil where all of it
// was seen.
func (m *matter) unseen() *Reason {
	blind := m.insides(func(p *survey.Overhead) bool { return !hazard.SeenAll(p) })
	if len(blind) == 0 {
		return nil
	}
	r := Reason{Factor: Contents, Leans: LeansKeep, Code: becauseUnseen, Evidence: append(blind, m.hints()...)}
	if anyOf(m.group.Parts, func(p *survey.Overhead) bool { return p.Inside.Looked != survey.NotLooked }) {
		r.Leans, r.Code = LeansNone, becausePartSeen
	}
	return &r
}

// hints are the pointers to signs of what may be inside.
func (m *matter) hints() []string {
	var out []string
	for _, p := range m.group.Parts {
		if len(p.Inside.Hints) > 0 && !hazard.SeenAll(p) {
			out = append(out, p.Inside.Pointer+"/hints")
		}
	}
	return out
}

func everyPart(*survey.Overhead) bool { return true }

// insides are the pointers to what is known of some parts' contents.
func (m *matter) insides(which func(*survey.Overhead) bool) []string {
	var out []string
	for _, p := range m.group.Parts {
		if which(p) {
			out = append(out, p.Inside.Pointer)
		}
	}
	return out
}

// hood: a duct box stays if the hood stays where it is (common practice, no source).
func (m *matter) hood() []Reason {
	var out []Reason
	for _, p := range m.group.Parts {
		h := m.hoodOf(p)
		if h == nil || p.Kind != survey.DuctBox {
			continue
		}
		r := Reason{Factor: Contents, Leans: LeansKeep, Code: becauseHoodStays, Evidence: []string{m.k.Plan.Cooking.Pointer + "/hood"}}
		if h.Moves {
			r.Leans, r.Code = LeansTakeDown, becauseHoodMoves
		}
		out = append(out, r)
	}
	return out
}
