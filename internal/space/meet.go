package space

import "railhead/internal/length"

// Meet says which cabinets meet a thing: those that begin no further right than
// MostFrom and end no further left than LeastTo. So one that merely touches a
// thing beside it is told from one that touches the side wall, where another
// ceiling begins to count.
type Meet struct{ MostFrom, LeastTo length.Length }

// over meets what shares some of a stretch's inside.
func over(from, to length.Length) Meet { return Meet{to - 1, from + 1} }

// Those that reach a station from the left or from the right, and everybody.
func reachingRight(at length.Length) Meet { return Meet{length.Max, at} }
func reachingLeft(at length.Length) Meet  { return Meet{at, -length.Max} }
func everywhere() Meet                    { return Meet{length.Max, -length.Max} }

// and is what both meet.
func (m Meet) and(o Meet) Meet {
	return Meet{min(m.MostFrom, o.MostFrom), max(m.LeastTo, o.LeastTo)}
}

// Of reports whether a cabinet over a stretch is one of them.
func (m Meet) Of(from, to length.Length) bool { return from <= m.MostFrom && to >= m.LeastTo }

// bar is a stretch whose inside no cabinet may share, so that none of those that
// meet the thing is placed. It bars no others but for a thing that only wide
// cabinets meet which also touch an end: there all that touch it are barred.
func (m Meet) bar(end length.Length) stretch {
	s := stretch{m.LeastTo - 1, m.MostFrom + 1}
	switch {
	case s.from < s.to:
		return s
	case m.LeastTo >= end:
		return stretch{m.LeastTo - 1, m.LeastTo}
	default:
		return stretch{m.MostFrom, m.MostFrom + 1}
	}
}

// stretch is a stretch of the wall.
type stretch struct{ from, to length.Length }
