package trim

import (
	"math/big"
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

func hangsOnRail(c *cabinet.Placed) bool { return c.Kind != cabinet.Base }

// stations are the ends of a cut, every break of the underside (and of the
// ceiling, where all of it comes down), and where the underside crosses the cut
// line. A surveyed point on the straight line between its neighbours is no break.
func (c *cut) stations(k *kitchen.Kitchen, line length.Length, down bool) []Station {
	under, top := c.over.Underside, k.Room.CeilingOver(c.over)
	at := append([]length.Length{c.From, c.To}, kinks(under, c.Span)...)
	if down {
		at = append(at, kinks(top, c.Span)...)
	}
	slices.Sort(at)
	at = slices.Compact(at)
	m := measurer{k, k.Room.Walls[c.over.Wall].Floor, c, line, down}
	out := make([]Station, 0, 2*len(at))
	for i := 1; i < len(at); i++ {
		left, right := m.at(at[i-1], level.Right), m.at(at[i], level.Left)
		out = appendNew(out, left)
		if x, ok := crossing(at[i-1], left, at[i], right, line); ok && !down {
			out = append(out, m.crossed(x))
		}
		out = append(out, right)
	}
	return out
}

// appendNew leaves out the right side of a station that is as its left side.
func appendNew(out []Station, s Station) []Station {
	if last := len(out) - 1; last >= 0 && out[last].same(s) {
		return out
	}
	return append(out, s)
}

func (s Station) same(o Station) bool {
	return s.At.Equal(o.At) && s.Underside.Equal(o.Underside) && s.Remove.Equal(o.Remove) &&
		s.OpenAbove.Equal(o.OpenAbove) && s.AboveFloor.Equal(o.AboveFloor)
}

// crossing is where the underside passes through the line between two stations.
func crossing(x0 length.Length, a Station, x1 length.Length, b Station, line length.Length) (length.Exact, bool) {
	if a.Underside.CmpLength(line)*b.Underside.CmpLength(line) >= 0 {
		return length.Exact{}, false
	}
	return length.Crossing(x0, a.Underside, x1, b.Underside, line.Exact()), true
}

// kinks are the stations inside a span where a profile steps or bends.
func kinks(p level.Profile, s survey.Span) []length.Length {
	var out []length.Length
	breaks := p.Breaks(s.From, s.To)
	before, value := s.From, p.At(s.From, level.Right)
	for i, x := range breaks {
		after := s.To
		if i+1 < len(breaks) {
			after = breaks[i+1]
		}
		left, right := p.At(x, level.Left), p.At(x, level.Right)
		straight := length.Interpolate(before, value, after, p.At(after, level.Left), x)
		if left.Equal(right) && left.Equal(straight) {
			continue
		}
		out = append(out, x)
		before, value = x, right
	}
	return out
}

// measurer takes the heights of one cut.
type measurer struct {
	k     *kitchen.Kitchen
	floor level.Profile
	c     *cut
	line  length.Length
	down  bool
}

func (m measurer) above(v length.Exact) length.Exact { return m.k.Above(m.c.over.Wall, v) }

func (m measurer) at(x length.Length, s level.Side) Station {
	under := m.above(m.c.over.Underside.At(x, s))
	to := length.Larger(under, m.line.Exact())
	if m.down {
		to = m.above(m.k.Room.CeilingOver(m.c.over).At(x, s))
	}
	return m.station(x.Exact(), under, to, m.floor.At(x, s))
}

// station is the cut at x: from the underside up to a level.
func (m measurer) station(x, under, to, floor length.Exact) Station {
	out := Station{At: x, Underside: under, Remove: to.Sub(under), AboveFloor: m.line.Exact().Sub(m.above(floor))}
	if len(m.c.cabinets) > 0 {
		out.OpenAbove = to.Minus(m.c.top)
	}
	return out
}

// crossed is the station where the underside passes through the line.
func (m measurer) crossed(x length.Exact) Station {
	return m.station(x, m.line.Exact(), m.line.Exact(), m.floorAt(x))
}

// floorAt is the floor where x need not be a whole nanometre; at a step it is
// the higher side. Between two nanometres no profile has a break.
func (m measurer) floorAt(x length.Exact) length.Exact {
	a := x.Floor()
	if _, whole := x.Whole(); whole {
		return length.Larger(m.floor.At(a, level.Left), m.floor.At(a, level.Right))
	}
	left, right := m.floor.At(a, level.Right), m.floor.At(a+1, level.Left)
	rise := new(big.Rat).Mul(right.Sub(left).Rat(), x.Minus(a).Rat())
	return left.Add(length.FromRat(rise))
}
