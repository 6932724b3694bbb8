package decide

import (
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// ceilingHeight: what is in the way pulls towards the least work that clears it;
// a taller row that fits pulls towards taking down, one that does not makes
// taking down a waste, because the gap has to be closed again (common practice,
// no source).
func (m *matter) ceilingHeight(want kitchen.Option) []Reason {
	var out []Reason
	if m.inTheWay() {
		out = append(out, m.overlapReason(want))
	}
	out = append(out, m.tallerReason())
	if m.taller.row != nil && m.taller.assumed {
		out = append(out, Reason{
			Factor: CeilingHeight, Leans: LeansNone, Code: becauseNotBehind, Evidence: m.unseenBehind(),
		})
	}
	return out
}

// overlapReason tells the largest overlap.
func (m *matter) overlapReason(want kitchen.Option) Reason {
	r := Reason{Factor: CeilingHeight, Leans: leanOf(want), Code: becauseInTheWay}
	var most length.Exact
	var above, below []string
	for _, o := range m.overlaps {
		most = length.Larger(most, o.limit.Margin.Neg())
		above, below = append(above, o.overhead.Pointer), append(below, o.cabinet.Pointer)
	}
	r.Evidence = distinctText(above, below)
	r.Params = []finding.Param{finding.Size("overlap", finding.Up(most))}
	return r
}

func (m *matter) tallerReason() Reason {
	t, r := m.taller, Reason{Factor: CeilingHeight, Leans: LeansKeep}
	switch {
	case len(m.under) == 0:
		r.Leans, r.Code, r.Evidence = LeansNone, becauseNoneUnder, m.pointers()
	case t.row == nil:
		r.Code, r.Evidence = becauseNoTaller, []string{"/system"}
	case t.fits:
		r.Leans, r.Code, r.Params, r.Evidence = LeansTakeDown, becauseTaller, t.params(), []string{t.by}
	default:
		r.Code, r.Params, r.Evidence = becauseTooShort, t.params(), []string{t.by}
	}
	return r
}

// unseenBehind are the parts behind which nobody has seen the ceiling.
func (m *matter) unseenBehind() []string {
	var out []string
	for _, p := range m.group.Parts {
		if p.Behind.CeilingLevel == nil && p.Behind.Ceiling != survey.Yes {
			out = append(out, p.Pointer+"/behind")
		}
	}
	return out
}

// pointers are the group's parts.
func (m *matter) pointers() []string {
	var out []string
	for _, p := range m.group.Parts {
		out = append(out, p.Pointer)
	}
	return out
}
