package fit

import (
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

// stage is what is above the cabinets at one stage of the work, and how an
// overlap with an overhead is judged then.
type stage struct {
	k     *kitchen.Kitchen
	sky   kitchen.Sky
	judge func(*survey.Overhead) Verdict // of an overlap
}

// obstacle is one thing above a cabinet over one span, as a profile in its
// wall's own coordinates.
type obstacle struct {
	by       string
	wall     int
	from, to length.Length
	profile  level.Profile
	cut      *length.Exact // hung stretches that were cut
	overhead *survey.Overhead
	assumed  bool // nobody has seen it
}

// asFound is the room before anything is done: what may be cut needs a trim.
func asFound(k *kitchen.Kitchen) stage {
	return stage{k, k.Found(), foundOverlap}
}

// foundOverlap is what an overlap with an overhead means as found.
func foundOverlap(o *survey.Overhead) Verdict {
	if o.MayCut == survey.CutNo {
		return Blocked
	}
	return NeedsTrim
}

// over lists what is above a floor area: wall by wall, on each wall it touches the
// ceiling first, then the overheads in the request's order.
func (s stage) over(patches []cabinet.Patch) []obstacle {
	var out []obstacle
	for _, p := range patches {
		if p.Native || p.Near <= 0 {
			out = with(out, s.ceiling(p))
		}
		out = with(out, s.hung(p))
	}
	slices.SortStableFunc(out, func(a, b obstacle) int { return a.wall - b.wall })
	return out
}

// with adds obstacles; one that is met already, by the other leg of a corner
// cabinet, grows.
func with(out, more []obstacle) []obstacle {
	for _, o := range more {
		i := slices.IndexFunc(out, func(e obstacle) bool {
			return e.by == o.by && e.wall == o.wall && e.cut == o.cut && e.from <= o.to && o.from <= e.to
		})
		if i < 0 {
			out = append(out, o)
			continue
		}
		out[i].from, out[i].to = min(out[i].from, o.from), max(out[i].to, o.to)
		out[i].assumed = out[i].assumed || o.assumed
	}
	return out
}

// hung lists the stretches of overheads whose floor area meets a patch's.
func (s stage) hung(p cabinet.Patch) []obstacle {
	var out []obstacle
	for _, h := range s.sky.Hung {
		o := h.Overhead
		if !p.Overlaps(cabinet.UnderStretch(o, h.From, h.To)) {
			continue
		}
		out = append(out, obstacle{
			by: o.Pointer, wall: o.Wall, from: max(p.From, h.From), to: min(p.To, h.To),
			profile: o.Underside, cut: h.Cut, overhead: o,
		})
	}
	return out
}

// ceiling lists the ceiling over a patch: as surveyed, but where the ceiling
// behind an overhead was seen, at the level seen there. In front of an overhead
// that is shallower than the patch the ceiling as surveyed counts too.
func (s stage) ceiling(p cabinet.Patch) []obstacle {
	wall := &s.k.Room.Walls[p.Wall]
	var seen []obstacle
	var hidden []survey.Span // where nothing of the ceiling as surveyed is over the patch
	assumed := false
	for i := range wall.Overheads {
		o := &wall.Overheads[i]
		if o.Behind.CeilingLevel == nil || !p.Overlaps(cabinet.Under(o)) {
			continue
		}
		if o.Out <= p.Near && o.Face() >= p.Far {
			hidden = append(hidden, survey.Span{From: o.From, To: o.To})
		}
		seen = append(seen, obstacle{
			by: o.Pointer + "/behind/ceiling_level", wall: p.Wall, from: max(p.From, o.From), to: min(p.To, o.To),
			profile: level.Level(*o.Behind.CeilingLevel),
		})
	}
	for _, g := range s.sky.Gone {
		o := g.Overhead
		if o.Behind.CeilingLevel == nil && p.Overlaps(cabinet.UnderStretch(o, g.From, g.To)) {
			assumed = assumed || o.Behind.Ceiling != survey.Yes
		}
	}
	var out []obstacle
	for _, r := range survey.Without([]survey.Span{{From: p.From, To: p.To}}, hidden) {
		out = append(out, obstacle{
			by: wall.Pointer + "/ceiling", wall: p.Wall, from: r.From, to: r.To,
			profile: wall.Ceiling, assumed: assumed,
		})
	}
	return append(out, seen...)
}

// limit is the obstacle's clearance over a top, and its verdict.
func (s stage) limit(o obstacle, top length.Length) Limit {
	low := o.profile.Lowest(o.from, o.to)
	value := low.Value
	if o.cut != nil {
		value = length.Larger(value, *o.cut)
	}
	margin := s.k.Above(o.wall, value).Minus(top)
	return Limit{
		By: o.by, Axis: Up, Wall: o.wall, At: low.At, From: o.from, To: o.to, Margin: margin,
		Verdict: s.verdict(o, margin), Overhead: o.overhead,
		terms: func() []level.Term { return s.terms(o, low) },
	}
}

// verdict is what a clearance means: at least the fit gap fits, less is snug,
// and an overlap depends on what is overlapped.
func (s stage) verdict(o obstacle, margin length.Exact) Verdict {
	switch {
	case margin.CmpLength(s.k.System.FitGap) >= 0:
		return Fits
	case margin.Sign() >= 0:
		return Snug
	case o.overhead != nil:
		return s.judge(o.overhead)
	default:
		return Blocked
	}
}

// terms are the readings that an obstacle's clearance at one spot rests on.
func (s stage) terms(o obstacle, at level.Spot) []level.Term {
	return s.k.HeightAbove(o.wall, o.profile.HeightAt(at.At, at.Side)).Terms
}
