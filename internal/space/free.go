package space

import (
	"slices"

	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

// Free are the stretches in which every cabinet at some heights is free of all that
// is beside, above and before it, soft boxes and limits included, with what it
// spares left open above it; from left to right. A cabinet lies in none of them
// where it is not free.
//
// They leave out one place that is free: where the ceiling around a corner is
// lower than before an overhead that hides it from narrow cabinets only, none may
// touch that corner.
func (r *Row) Free(at Levels) []survey.Span {
	var bars []survey.Span
	for _, b := range r.bars(at) {
		bars = append(bars, survey.Span{From: b.from, To: b.to})
	}
	return survey.Without([]survey.Span{{To: r.Length}}, bars)
}

// bars are the stretches whose inside no cabinet at some heights may share.
func (r *Row) bars(at Levels) []stretch {
	feet := r.feet(at)
	var out []stretch
	for i := range r.Boxes {
		if b := &r.Boxes[i]; b.meets(feet, at.Top) {
			out = append(out, b.bar(r.Length))
		}
	}
	for i := range r.Limits {
		out = append(out, r.low(&r.Limits[i], at.Top)...)
	}
	return out
}

// low are the stretches over which a limit is too low for a top.
func (r *Row) low(l *Limit, top length.Length) []stretch {
	need := l.spare.Exact().Plus(top)
	if l.From == -length.Max { // it has one height
		if l.Height(r.k, l.From, l.To).Less(need) {
			return []stretch{l.bar(r.Length)}
		}
		return nil
	}
	if l.cut != nil && !l.raised(r.k, *l.cut).Less(need) {
		return nil
	}
	var out []stretch
	stations := slices.Concat([]length.Length{l.From}, l.profile.Breaks(l.From, l.To), []length.Length{l.To})
	for i := 1; i < len(stations); i++ {
		x0, x1 := stations[i-1], stations[i]
		y0, y1 := l.raised(r.k, l.profile.At(x0, level.Right)), l.raised(r.k, l.profile.At(x1, level.Left))
		if s, some := below(x0, y0, x1, y1, need); some {
			out = append(out, s)
		}
	}
	return out
}

// below is the part of a straight piece of profile that is below a level, widened
// to whole nanometres: no cabinet ends between two.
func below(x0 length.Length, y0 length.Exact, x1 length.Length, y1, level length.Exact) (stretch, bool) {
	switch left, right := y0.Less(level), y1.Less(level); {
	case left && right:
		return stretch{x0, x1}, true
	case left:
		return stretch{x0, length.Crossing(x0, y0, x1, y1, level).Ceil()}, true
	case right:
		return stretch{length.Crossing(x0, y0, x1, y1, level).Floor(), x1}, true
	default:
		return stretch{}, false
	}
}

// Stretch is a part of the wall over which the first so many of some levels may
// stand.
type Stretch struct {
	survey.Span
	Levels int
}

// Stretches cuts the wall where what may stand over it changes, for levels in
// order from those that ask for the least. A cabinet at the n-th of them is free
// where every stretch that it shares has at least n.
func (r *Row) Stretches(levels []Levels) []Stretch {
	bars := make([][]stretch, len(levels))
	cuts := []length.Length{0, r.Length}
	for n, at := range levels {
		bars[n] = r.bars(at)
		for _, b := range bars[n] {
			for _, x := range []length.Length{b.from, b.to} {
				if x > 0 && x < r.Length {
					cuts = append(cuts, x)
				}
			}
		}
	}
	slices.Sort(cuts)
	cuts = slices.Compact(cuts)
	var out []Stretch
	for i := 1; i < len(cuts); i++ {
		s := Stretch{survey.Span{From: cuts[i-1], To: cuts[i]}, 0}
		for s.Levels < len(levels) && !barred(bars[s.Levels], s.Span) {
			s.Levels++
		}
		if last := len(out) - 1; last >= 0 && out[last].Levels == s.Levels {
			out[last].To = s.To
			continue
		}
		out = append(out, s)
	}
	return out
}

func barred(bars []stretch, s survey.Span) bool {
	return slices.ContainsFunc(bars, func(b stretch) bool { return b.from < s.To && s.From < b.to })
}

// Heights are the levels of cabinets of some heights in their row, and Stretches
// of them.
func (r *Row) Heights(heights []length.Length) []Stretch {
	levels := make([]Levels, len(heights))
	for i, h := range heights {
		levels[i] = r.Levels(h)
	}
	return r.Stretches(levels)
}

// Bar is the first thing that keeps a cabinet at some heights off some of a stretch;
// false where nothing does.
func (r *Row) Bar(from, to length.Length, at Levels) (by string, barred bool) {
	feet := r.feet(at)
	for i := range r.Boxes {
		if b := &r.Boxes[i]; b.meets(feet, at.Top) && overlaps(b.bar(r.Length), from, to) {
			return b.By, true
		}
	}
	for i := range r.Limits {
		for _, low := range r.low(&r.Limits[i], at.Top) {
			if overlaps(low, from, to) {
				return r.Limits[i].By, true
			}
		}
	}
	return "", false
}

func overlaps(s stretch, from, to length.Length) bool { return s.from < to && from < s.to }
