package decide

import (
	"cmp"
	"slices"

	"railhead/internal/finding"
	"railhead/internal/hazard"
	"railhead/internal/survey"
)

// telling is the order of the questions, most telling first.
var telling = [...]string{
	askStructure, askMayCut, askContents, askMovable, askDuct, askCarrier, askBehind,
	askBuilt, askTexture, askPaint, askCodeSet,
}

// questions are what is unknown about the groups whose treatment is open: those
// in some cabinet's way, and those whose removal would let a taller row in.
func questions(all []*matter) []finding.Question {
	var out []finding.Question
	for _, m := range all {
		out = append(out, m.carrier()...)
		if m.inTheWay() || m.taller.fits {
			out = append(out, m.questions()...)
		}
	}
	out = unique(out)
	slices.SortStableFunc(out, func(a, b finding.Question) int {
		return cmp.Compare(slices.Index(telling[:], a.Code), slices.Index(telling[:], b.Code))
	})
	return out
}

func unique(in []finding.Question) []finding.Question {
	type key struct{ code, pointer string }
	seen := map[key]bool{}
	var out []finding.Question
	for _, q := range in {
		if k := (key{q.Code, q.Pointer}); !seen[k] {
			seen[k] = true
			out = append(out, q)
		}
	}
	return out
}

// carrier asks what holds a closed gap up: the old cabinets take with them what
// they carry.
func (m *matter) carrier() []finding.Question {
	var out []finding.Question
	for _, p := range m.group.Parts {
		if p.Kind == survey.ClosedGap && p.Carrier == survey.CarrierUnknown {
			out = append(out, ask(askCarrier, p.Pointer+"/carried_by", p))
		}
	}
	return out
}

func ask(code, pointer string, p *survey.Overhead) finding.Question {
	return finding.Question{Code: code, Pointer: pointer, Params: []finding.Param{finding.Word("overhead", p.ID)}}
}

func (m *matter) questions() []finding.Question {
	var out []finding.Question
	for _, p := range m.group.Parts {
		if p.GoesWithOldCabinets() {
			continue
		}
		out = append(out, m.aboutMake(p)...)
		out = append(out, m.aboutHealth(p)...)
	}
	return out
}

func (m *matter) aboutMake(p *survey.Overhead) []finding.Question {
	var out []finding.Question
	switch {
	case p.MayCut == survey.CutAsk && p.Structure == survey.StructureUnknown:
		out = append(out, ask(askStructure, p.Pointer+"/structure", p))
	case p.MayCut == survey.CutAsk:
		out = append(out, ask(askMayCut, p.Pointer+"/may_cut", p))
	}
	if !seenAll(p) {
		out = append(out, ask(askContents, p.Inside.Pointer, p))
	}
	for i := range p.Inside.Services {
		s := &p.Inside.Services[i]
		if s.Movable == survey.MovableUnknown && !isWire(s) && s.Kind != survey.Gas && s.Kind != survey.Sprinkler {
			out = append(out, ask(askMovable, s.Pointer+"/movable", p))
		}
	}
	if p.Kind == survey.DuctBox && m.hoodOf(p) == nil && !seenEmpty(p) {
		out = append(out, ask(askDuct, p.Pointer+"/duct", p))
	}
	if m.taller.fits && p.Behind.CeilingLevel == nil && p.Behind.Ceiling != survey.Yes {
		out = append(out, ask(askBehind, p.Pointer+"/behind", p))
	}
	return out
}

// aboutHealth asks for what the rules on asbestos and lead depend on.
func (m *matter) aboutHealth(p *survey.Overhead) []finding.Question {
	room := m.k.Room
	asbestos, lead := hazard.Asbestos(room, p), hazard.Lead(room, p)
	if asbestos == hazard.Unsuspected && lead == hazard.Unsuspected {
		return nil
	}
	var out []finding.Question
	if room.Built == 0 {
		out = append(out, finding.Question{Code: askBuilt, Pointer: "/survey/built"})
	}
	if asbestos == hazard.Possible && p.Textured == survey.Unknown && room.CodeSet != survey.CodeNone {
		out = append(out, ask(askTexture, p.Pointer+"/textured", p))
	}
	if lead != hazard.Unsuspected && p.Painted == survey.Unknown {
		out = append(out, ask(askPaint, p.Pointer+"/painted", p))
	}
	if room.CodeSet == survey.CodeUnspecified {
		out = append(out, finding.Question{Code: askCodeSet, Pointer: "/survey/code_set"})
	}
	return out
}
