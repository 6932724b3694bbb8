package fit

import (
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

// doubted is the range of verdicts within the readings' doubt.
type doubted struct{ best, worst Verdict }

// weighed is an obstacle above a cabinet with its clearance and the range of its
// verdict when that moves within ± U.
//
// The verdict at margin − U and at margin + U bound the verdicts between them,
// since a larger clearance is never worse.
type weighed struct {
	obstacle
	limit Limit
	doubt doubted
}

func (s stage) weigh(c *cabinet.Placed, patches []cabinet.Patch) []weighed {
	over := s.over(patches)
	out := make([]weighed, len(over))
	for i, o := range over {
		out[i] = weighed{o, s.limit(o, c.Top), s.doubtOf(o, c.Top)}
	}
	return out
}

// doubt is the range of a cabinet's verdict.
func doubt(above []weighed, beside []Limit) doubted {
	out := sure(beside)
	for _, o := range above {
		out = out.and(o.doubt)
	}
	return out
}

// sure is the range of what no doubt of a height moves.
func sure(beside []Limit) doubted {
	out := doubted{Fits, Fits}
	for _, l := range beside {
		out = out.and(doubted{l.Verdict, l.Verdict})
	}
	return out
}

// toRepeat is the reading with the largest share in the doubt of the obstacle
// whose verdict is in doubt, else of the tightest one; −1 for none.
func (s stage) toRepeat(above []weighed, tight Limit) level.ReadingID {
	for _, o := range above {
		if o.doubt.best != o.doubt.worst {
			tight = o.limit
			break
		}
	}
	return level.DoubtOf(tight.terms(), s.k.Room.Readings).Largest
}

// edges widens the range by the overheads whose edges lie within the sideways
// tolerance of the cabinet's, and names the edge that matters most; empty for none.
func (s stage) edges(c *cabinet.Placed, above []weighed, beside []Limit) (doubted, string) {
	d := doubt(above, beside)
	wide, edge, without := d, "", sure(beside)
	for _, o := range above {
		if o.overhead != nil && s.edgeWithin(o.overhead, c) {
			edge = s.edgeOf(o.overhead, c)
			continue
		}
		without = without.and(o.doubt)
	}
	wide.best = min(wide.best, without.best)
	for _, o := range s.grazing(c) {
		if worst := s.doubtOf(o, c.Top).worst; worst > wide.worst {
			wide.worst, edge = worst, s.edgeOf(o.overhead, c)
		}
	}
	if wide == d {
		return d, ""
	}
	return wide, edge
}

// edgeOf is the member that holds the edge of an overhead nearest to a cabinet.
func (s stage) edgeOf(o *survey.Overhead, c *cabinet.Placed) string {
	for _, p := range c.Native(s.k.Room) {
		if p.Wall == o.Wall && (o.To-p.From).Abs() < (p.To-o.From).Abs() {
			return o.Pointer + "/to"
		}
	}
	return o.Pointer + "/from"
}

func (d doubted) and(o doubted) doubted { return doubted{max(d.best, o.best), max(d.worst, o.worst)} }

// doubtOf is one obstacle's range, over every place where it can be lowest.
func (s stage) doubtOf(o obstacle, top length.Length) doubted {
	room := s.k.Room
	var low, high *length.Exact
	for _, spot := range o.profile.Spots(o.from, o.to) {
		margin := s.k.Above(o.wall, spot.Value).Minus(top)
		u := length.Length(0)
		if margin.CmpLength(s.k.System.FitGap+BeyondDoubt(room)) < 0 {
			u = level.DoubtOf(s.terms(o, spot), room.Readings).Expanded
		}
		low, high = lower(low, margin.Minus(u)), lower(high, margin.Plus(u))
	}
	return doubted{best: s.verdict(o, *high), worst: s.verdict(o, *low)}
}

func lower(a *length.Exact, b length.Exact) *length.Exact {
	if a == nil || b.Less(*a) {
		return &b
	}
	return a
}

// BeyondDoubt is more than any U can be: a clearance is made of two heights,
// each with weights that add up to at most 4 (a reading, the floor it was taped
// from, that floor's laser line, the survey's zero), and 2/√3 · 8 < 10.
func BeyondDoubt(room *survey.Room) length.Length {
	var widest length.Length
	for _, r := range room.Readings {
		widest = max(widest, r.HalfWidth)
	}
	return 10 * widest
}

// edgeWithin reports whether an overhead overlaps a cabinet's span by no more
// than the sideways tolerance, so that it may not be above it at all.
func (s stage) edgeWithin(o *survey.Overhead, c *cabinet.Placed) bool {
	tol := s.k.Room.Tolerance
	for _, p := range c.Native(s.k.Room) {
		if p.Wall == o.Wall && min(p.To, o.To)-max(p.From, o.From) > tol {
			return false
		}
		if p.Wall != o.Wall {
			return false
		}
	}
	return true
}

// grazing lists the overheads that clear a cabinet's floor area by less than the
// sideways tolerance, on its own wall or around a corner, with the span they
// would then be above.
func (s stage) grazing(c *cabinet.Placed) []obstacle {
	tol := s.k.Room.Tolerance
	patches := c.Patches(s.k.Room)
	var out []obstacle
	for _, p := range patches {
		wide := cabinet.Patch{Wall: p.Wall, From: p.From - tol, To: p.To + tol, Near: p.Near - tol, Far: p.Far + tol}
		for _, o := range s.hung(wide) {
			if !slices.ContainsFunc(s.hung(p), func(over obstacle) bool { return over.overhead == o.overhead }) {
				out = append(out, o)
			}
		}
	}
	return out
}
