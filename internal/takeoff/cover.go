package takeoff

import (
	"railhead/internal/cabinet"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

// cover is a stretch of wall over which a cabinet's gap to the ceiling is closed.
type cover struct {
	survey.WallSpan
	cabinet *cabinet.Placed
	depth   length.Length
	gap     []run
}

// coversOf are the gaps over the cabinets under this part, as far as no part before
// it has them. Wall and tall cabinets count, at the tops that the option gives them.
func (s *sheet) coversOf() []cover {
	if !s.closes() {
		return nil
	}
	var out []cover
	for i := range s.k.Plan.Cabinets {
		c := &s.k.Plan.Cabinets[i]
		if c.Kind == cabinet.Base {
			continue
		}
		for _, p := range s.patches[i] {
			if !p.Native {
				continue
			}
			for _, span := range s.openOver(p) {
				at := survey.WallSpan{Wall: p.Wall, From: span.From, To: span.To}
				out = append(out, cover{at, c, p.Far, s.gapOver(p.Wall, span, s.topOf(c))})
			}
		}
	}
	for _, c := range out {
		s.closed = append(s.closed, c.WallSpan)
	}
	return out
}

// openOver are the stretches of a cabinet's floor area that are under this part and
// not counted yet.
func (s *sheet) openOver(p cabinet.Patch) []survey.Span {
	if p.Wall == s.o.Wall && !p.Overlaps(cabinet.Under(s.o)) {
		return nil
	}
	var under, counted []survey.Span
	for _, q := range on(s.k.Room, p.Wall, cabinet.Under(s.o)) {
		if p.Overlaps(q) {
			under = append(under, survey.Span{From: p.From, To: p.To}.Clip(survey.Span{From: q.From, To: q.To}))
		}
	}
	for _, c := range s.closed {
		if c.Wall == p.Wall {
			counted = append(counted, survey.Span{From: c.From, To: c.To})
		}
	}
	return survey.Without(survey.Union(under), counted)
}

func (s *sheet) topOf(c *cabinet.Placed) length.Length {
	for _, w := range s.job.Swaps {
		if w.Cabinet == c {
			return w.Top
		}
	}
	return c.Top
}

// gapOver is what is open between a top and the ceiling: the ceiling behind the
// overhead where somebody has seen it, else the wall's.
func (s *sheet) gapOver(wall int, span survey.Span, top length.Length) []run {
	ceiling := s.k.Room.Walls[wall].Ceiling
	if behind := s.o.Behind.CeilingLevel; behind != nil {
		ceiling = level.Level(*behind)
	}
	under := level.Fixed(s.k.DatumOf(wall).Level.Value.Plus(top))
	return heights(level.Level(under), ceiling, span)
}
