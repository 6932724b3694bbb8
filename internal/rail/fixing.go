package rail

import (
	"cmp"
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// What holds where a system does not say, and the limits below which its words
// cannot be meant (all common practice, no source).
const (
	UsualInset = 50 * length.Millimetre  // first screw from a rail's end
	UsualSpan  = 610 * length.Millimetre // between screws: one to each stud at 24 in
	LeastSpan  = 40 * length.Millimetre  // closer screws split a stud
	LeastEdge  = 20 * length.Millimetre  // a screw nearer to the end tears out
	StudReach  = 10 * length.Millimetre  // off a stud's centre, and still well inside it
)

// limits are how far apart screws may be.
type limits struct{ inset, span length.Length }

func limitsOf(r *cabinet.Rail) limits {
	out := limits{r.EndInset, r.LongestSpan}
	if out.inset <= 0 {
		out.inset = UsualInset
	}
	if out.span <= 0 {
		out.span = UsualSpan
	}
	out.span = max(out.span, LeastSpan)
	return out
}

// hasStuds reports whether there are studs and somebody found them.
func hasStuds(w *survey.Wall) bool {
	return w.StudsKnown && w.Backing != survey.Masonry && w.Backing != survey.Board
}

// fixings are the screws of one piece: on every stud that crosses it, and
// blocking where studs are too far apart or too far from an end; evenly spaced
// where there are no studs to aim at.
func (l limits) fixings(p Piece, wall *survey.Wall) []Fixing {
	if !hasStuds(wall) {
		first, last := l.ends(p)
		return l.between(first, last, evenInto(wall))
	}
	out := l.closeEnds(p, l.onStuds(p, wall.Studs))
	for i := len(out) - 1; i > 0; i-- {
		more := l.between(out[i-1].At, out[i].At, Blocking)
		if len(more) > 2 {
			out = slices.Insert(out, i, more[1:len(more)-1]...)
		}
	}
	return out
}

// evenInto is what a screw meets that aims at no stud.
func evenInto(w *survey.Wall) Into {
	switch w.Backing {
	case survey.Masonry:
		return Masonry
	case survey.Board:
		return BoardOnly
	default:
		return Unknown
	}
}

// ends are the stations of the two end screws: as far in as they may be, but in
// a short piece no further than a quarter of it, so that two stay apart.
func (l limits) ends(p Piece) (first, last length.Length) {
	in := min(l.inset, p.Length()/4)
	return p.From + in, p.To - in
}

// between are screws at both stations and evenly between them.
func (l limits) between(first, last length.Length, into Into) []Fixing {
	if first >= last {
		return []Fixing{{first, into}}
	}
	n := (last - first + l.span - 1) / l.span
	var out []Fixing
	for i := length.Length(0); i <= n; i++ {
		out = append(out, Fixing{share(first, last, i, n), into})
	}
	return out
}

// onStuds are screws into the studs that cross a piece. A stud that lies a
// little beyond an end's inset takes the screw off its centre.
func (l limits) onStuds(p Piece, studs []length.Length) []Fixing {
	edge := min(LeastEdge, l.inset)
	var out []Fixing
	for _, s := range studs {
		if s < p.From+edge || s > p.To-edge {
			continue
		}
		isFirst, isLast := len(out) == 0, !anyWithin(studs, s+1, p.To-edge)
		out = append(out, Fixing{l.offCentre(p, s, isFirst, isLast), Stud})
	}
	return out
}

// offCentre is where the screw into a stud goes: at the inset of the end that
// the stud is just beyond, if it is the first or the last across the piece. The
// only stud of a short piece may be just beyond both insets; it serves the nearer
// one, and keeps its centre where both are as near.
func (l limits) offCentre(p Piece, s length.Length, isFirst, isLast bool) length.Length {
	first, last := p.From+l.inset, p.To-l.inset
	toFirst := isFirst && s > first && s-first <= StudReach
	toLast := isLast && s < last && last-s <= StudReach
	switch {
	case toFirst && toLast && s-first == last-s:
		return s
	case toFirst && (!toLast || s-first < last-s):
		return first
	case toLast:
		return last
	default:
		return s
	}
}

func anyWithin(studs []length.Length, from, to length.Length) bool {
	return slices.ContainsFunc(studs, func(s length.Length) bool { return from <= s && s <= to })
}

// closeEnds adds blocking where an end has no screw within its inset, and where
// a piece would hang on one screw.
func (l limits) closeEnds(p Piece, out []Fixing) []Fixing {
	first, last := l.ends(p)
	noFirst := len(out) == 0 || out[0].At-p.From > l.inset
	noLast := len(out) == 0 || p.To-out[len(out)-1].At > l.inset
	one := len(out) == 1 && !noFirst && !noLast
	if noFirst || one {
		out = append(out, Fixing{first, Blocking})
	}
	if noLast || one {
		out = append(out, Fixing{last, Blocking})
	}
	slices.SortStableFunc(out, func(a, b Fixing) int { return cmp.Compare(a.At, b.At) })
	return slices.CompactFunc(out, func(a, b Fixing) bool { return a.At == b.At })
}
