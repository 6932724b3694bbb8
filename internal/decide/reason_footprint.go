package decide

import (
	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// stands is what the group stands over, along its walls.
type stands struct {
	whole, new, old, none length.Length // old: over old cabinets and no new one
	stray                 length.Length // over nothing, of a kind that looks lost there
	byNew, byOld          []string
	lowered               []string
}

// footprint: over new cabinets an overhead closes the gap above them; where only
// old ones stood, an unfinished wall shows once it is gone; over nothing it looks
// lost. A lowered ceiling may stay, with short and tall wall cabinets mixed
// (common practice, no source).
func (m *matter) footprint() []Reason {
	s := m.standsOver()
	whole := finding.Size("of", finding.Near(s.whole.Exact()))
	stretch := func(l length.Length) []finding.Param {
		return []finding.Param{finding.Size("over", finding.Near(l.Exact())), whole}
	}
	var out []Reason
	if s.new > 0 {
		out = append(out, Reason{Footprint, LeansKeep, becauseOverNew, stretch(s.new), distinctText(m.pointers(), s.byNew)})
	}
	if s.old > 0 {
		out = append(out, Reason{Footprint, LeansKeep, becauseOverOld, stretch(s.old), distinctText(m.pointers(), s.byOld)})
	}
	if s.none > 0 {
		out = append(out, Reason{Footprint, LeansTakeDown, becauseOverNone, stretch(s.none), m.pointers()})
	}
	if len(s.lowered) > 0 {
		out = append(out, Reason{Footprint, LeansKeep, becauseLowered, nil, s.lowered})
	}
	return out
}

func (m *matter) standsOver() *stands {
	if m.stands == nil {
		m.stands = m.footprintOver()
	}
	return m.stands
}

func (m *matter) footprintOver() *stands {
	s := &stands{}
	for _, p := range m.group.Parts {
		whole := []survey.Span{{From: p.From, To: p.To}}
		newSpans, newBy := m.newOver(p)
		oldSpans, oldBy := m.oldOver(p)
		s.whole += p.To - p.From
		s.new += total(survey.Union(newSpans))
		rest := survey.Without(whole, newSpans)
		none := total(survey.Without(whole, append(newSpans, oldSpans...)))
		s.none += none
		if isStray(p) {
			s.stray += none
		}
		s.old = s.whole - s.new - s.none
		s.byNew = append(s.byNew, newBy...)
		if len(rest) > 0 {
			s.byOld = append(s.byOld, oldBy...)
		}
		if p.Kind == survey.LoweredCeiling {
			s.lowered = append(s.lowered, p.Pointer)
		}
	}
	return s
}

// newOver are the stretches of an overhead over the plan's wall and tall cabinets.
func (m *matter) newOver(o *survey.Overhead) (spans []survey.Span, by []string) {
	area := cabinet.Under(o)
	for _, r := range m.under {
		for _, p := range r.Patches {
			if p.Overlaps(area) {
				spans = append(spans, survey.Span{From: max(p.From, o.From), To: min(p.To, o.To)})
				by = append(by, r.Cabinet.Pointer)
			}
		}
	}
	return spans, by
}

// oldOver are its stretches over the old kitchen's wall and tall cabinets.
func (m *matter) oldOver(o *survey.Overhead) (spans []survey.Span, by []string) {
	for _, c := range m.k.Plan.Old {
		if c.Kind == cabinet.Base || c.Wall != o.Wall || c.From >= o.To || c.To <= o.From {
			continue
		}
		spans = append(spans, survey.Span{From: max(c.From, o.From), To: min(c.To, o.To)})
		by = append(by, c.Pointer)
	}
	return spans, by
}
