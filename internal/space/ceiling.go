package space

import (
	"slices"

	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

// ceilings adds a view's wall's ceiling: as surveyed, but where the ceiling behind
// an overhead was seen, at the level seen there. Another wall's ceiling counts for
// a cabinet that touches that wall.
func (r *Row) ceilings(v view) {
	if v.across() {
		r.ceilingAcross(v)
		return
	}
	near, far := v.depth(0, r.Depth)
	if v.own(r) || near <= 0 {
		r.ceilingAlong(v, near, far)
	}
}

// ceilingAlong adds the ceiling of a wall that runs as the row's does.
func (r *Row) ceilingAlong(v view, near, far length.Length) {
	var hidden []survey.Span // where nothing of the ceiling as surveyed is over the row
	for i := range v.wall.Overheads {
		o := &v.wall.Overheads[i]
		if o.Behind.CeilingLevel == nil || near >= o.Face() || o.Out >= far {
			continue
		}
		if o.Out <= near && o.Face() >= far {
			hidden = append(hidden, survey.Span{From: o.From, To: o.To})
		}
		r.ceiling(v, o.Pointer+"/behind/ceiling_level", level.Level(*o.Behind.CeilingLevel), stretch{o.From, o.To})
	}
	for _, s := range survey.Without([]survey.Span{{To: v.wall.Length}}, hidden) {
		r.ceiling(v, v.wall.Pointer+"/ceiling", v.wall.Ceiling, stretch{s.From, s.To})
	}
}

func (r *Row) ceiling(v view, by string, p level.Profile, s stretch) {
	if !v.own(r) {
		s = v.clip(s)
	}
	if s.from >= s.to {
		return
	}
	s = v.stations(s)
	r.Limits = append(r.Limits, Limit{
		Meet: overStretch(s), By: by, From: s.from, To: s.to, spare: r.Spare, group: v.wall.Group, profile: v.profile(p),
	})
}

// ceilingAcross adds the ceiling of a wall at right angles, for the cabinets that
// touch it. Which of it an overhead hides depends on how far they reach from it.
func (r *Row) ceilingAcross(v view) {
	strip := v.strip(0, r.Depth)
	if strip.from >= strip.to {
		return
	}
	var behind []*survey.Overhead
	cuts := []length.Length{strip.from, strip.to}
	for i := range v.wall.Overheads {
		o := &v.wall.Overheads[i]
		if o.Behind.CeilingLevel == nil || o.From >= strip.to || o.To <= strip.from {
			continue
		}
		behind = append(behind, o)
		cuts = append(cuts, max(o.From, strip.from), min(o.To, strip.to))
		r.across(v, o.Pointer+"/behind/ceiling_level", *o.Behind.CeilingLevel, v.touching().and(v.under(o.Out, o.Face())))
	}
	slices.Sort(cuts)
	cuts = slices.Compact(cuts)
	for i := 1; i < len(cuts); i++ {
		s := stretch{cuts[i-1], cuts[i]}
		lowest := level.Fixed(v.wall.Ceiling.Lowest(s.from, s.to).Value)
		for _, m := range v.seesPast(behind, s) {
			r.across(v, v.wall.Pointer+"/ceiling", lowest, v.touching().and(m))
		}
	}
}

func (r *Row) across(v view, by string, h level.Height, m Meet) {
	r.Limits = append(r.Limits, Limit{
		Meet: m, By: by, From: -length.Max, To: length.Max, spare: r.Spare, group: v.wall.Group, profile: level.Level(h),
	})
}

// touching are the cabinets that touch a wall at right angles.
func (v view) touching() Meet {
	if v.turn == 1 {
		return reachingRight(v.off)
	}
	return reachingLeft(-v.off)
}

// seesPast are the cabinets that some of the ceiling over a stretch of a wall at
// right angles is above: those that no overhead over that stretch hides from it.
// One hides it where it covers the cabinet from side to side, so each leaves those
// that begin far enough to the left or end far enough to the right.
func (v view) seesPast(behind []*survey.Overhead, s stretch) []Meet {
	var hides []Meet // of each overhead what it leaves by either side: From ≤ MostFrom or To ≥ LeastTo
	for _, o := range behind {
		if o.From >= s.to || o.To <= s.from {
			continue
		}
		m := Meet{v.off - o.Face() - 1, v.off - o.Out + 1}
		if v.turn == 3 {
			m = Meet{o.Out - v.off - 1, o.Face() - v.off + 1}
		}
		hides = append(hides, m)
	}
	return allOfEither(hides)
}

// allOfEither are the cabinets that for every pair of bounds keep at least one.
func allOfEither(pairs []Meet) []Meet {
	var out []Meet
	for _, most := range append([]Meet{{MostFrom: length.Max}}, pairs...) {
		m := Meet{most.MostFrom, -length.Max}
		for _, p := range pairs {
			if p.MostFrom < m.MostFrom {
				m.LeastTo = max(m.LeastTo, p.LeastTo)
			}
		}
		out = append(out, m)
	}
	return out
}
