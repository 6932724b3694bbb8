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
	askRest, askMovable, askDuct, askBuilt, askTexture, askPaint, askCodeSet,
}

// questions are what is unknown about the groups whose treatment is open: those
// in some cabinet's way, and those whose removal would let a taller row in.
func questions(all []*matter) []finding.Question {
	var out []finding.Question
	for _, m := range all {
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

func ask(code, pointer string, p *survey.Overhead) finding.Question {
	return finding.Question{Code: code, Pointer: pointer, Params: []finding.Param{finding.Word("overhead", p.ID)}}
}

func (m *matter) questions() []finding.Question {
	var out []finding.Question
	for _, p := range m.group.Parts {
		if p.GoesWithOldCabinets() {
			continue
		}
		out = append(out, m.aboutContents(p)...)
		out = append(out, m.aboutHealth(p)...)
	}
	return out
}

// aboutContents asks for what a probe did not show.
func (m *matter) aboutContents(p *survey.Overhead) []finding.Question {
	var out []finding.Question
	if p.Inside.Looked != survey.NotLooked && !hazard.SeenAll(p) {
		out = append(out, ask(askRest, p.Inside.Pointer+"/seen", p))
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
