package resolve

import (
	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

// longGap is how far apart the stations of a profile may be before what lies between is unknown: DIN 18202 has its
// surfaces measured on a grid, and a straightedge of 2 m is the longest that is carried about (common practice, no
// source).
const longGap = 2 * length.Metre

// sparse mentions profiles with long gaps between stations where cabinets come: a sag that nobody measured is no part of
// the doubt.
func (b *body) sparse(w *wall) {
	under := b.spansOn(w, func(c *cabinet.Placed) bool { return c.Stands() })
	above := b.spansOn(w, func(c *cabinet.Placed) bool { return c.Kind != cabinet.Base })
	whole := survey.Span{From: 0, To: w.Length}
	if !b.room.Groups[w.Group].NotLevelled { // which says it already
		b.sparseOver(w.FoundFloor, whole, under, finishedFloor, w.Pointer+"/floor")
	}
	b.sparseOver(w.ceiling, whole, above, finishedCeiling, w.Pointer+"/ceiling")
	for i := range w.Overheads {
		o := &w.Overheads[i]
		if w.in.Overheads[i].Thickness.Given() {
			continue // it follows the ceiling's own stations
		}
		b.sparseOver(o.Underside, survey.Span{From: o.From, To: o.To}, above, finishedCeiling, o.Pointer+"/underside")
	}
}

// spansOn are the stretches of a wall that some of the planned cabinets take up.
func (b *body) spansOn(w *wall, which func(*cabinet.Placed) bool) (out []survey.WallSpan) {
	for i := range b.plan.Cabinets {
		c := &b.plan.Cabinets[i]
		if !which(c) {
			continue
		}
		for _, p := range c.Native(b.room) {
			if p.Wall == w.Index {
				out = append(out, p.Span())
			}
		}
	}
	return out
}

// sparseOver reports the longest of the long gaps of a profile that some span meets.
func (b *body) sparseOver(p level.Profile, over survey.Span, spans []survey.WallSpan, usual flatness, pointer string) {
	var worst survey.Span
	from := over.From
	for _, to := range append(p.Breaks(over.From, over.To), over.To) {
		if to-from > longGap && to-from > worst.To-worst.From && met(spans, from, to) {
			worst = survey.Span{From: from, To: to}
		}
		from = to
	}
	if gap := worst.To - worst.From; gap > 0 {
		b.caution("survey.profile.sparse", pointer, size("from", worst.From), size("to", worst.To), size("usual", usual.over(gap)))
		b.weigh(finding.Near(longGap.Exact()), finding.Near(gap.Exact()))
	}
}

func met(spans []survey.WallSpan, from, to length.Length) bool {
	for _, s := range spans {
		if s.From < to && from < s.To {
			return true
		}
	}
	return false
}

// steepness is how many times the ordinary fall makes a floor or a ceiling steep.
const steepness = 10

// steep mentions a floor or a ceiling that falls far more between two stations than is ordinary.
func (b *body) steep(w *wall) {
	b.steepProfile(w.FoundFloor, w.Pointer+"/floor")
	b.steepProfile(w.ceiling, w.Pointer+"/ceiling")
}

func (b *body) steepProfile(p level.Profile, pointer string) {
	points := p.Points()
	for i := 1; i < len(points); i++ {
		run := points[i].At - points[i-1].At
		if run == 0 {
			continue // a step
		}
		fall := points[i].Height.Value.Sub(points[i-1].Height.Value)
		if fall.Sign() < 0 {
			fall = fall.Neg()
		}
		if usual := angular(run); fall.CmpLength(steepness*usual) > 0 {
			b.note("survey.profile.steep", element(pointer, i), size("from", points[i-1].At), size("to", points[i].At), size("usual", usual))
			b.weigh(nil, finding.Up(fall))
			return
		}
	}
}
