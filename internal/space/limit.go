package space

import (
	"railhead/internal/fit"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

// Limit is something above the row, as a profile along it.
type Limit struct {
	Meet
	By       string           // pointer of the thing
	Overhead *survey.Overhead // nil for a ceiling
	From, To length.Length    // where the profile counts; of a thing around a corner, which has one height for the row, everywhere
	// Soft limits are not above a cabinet but before it, on its way to its place or
	// where its front moves.
	Soft bool

	spare   length.Length // what stays open under it
	group   int           // of the wall that it was surveyed on
	profile level.Profile
	cut     *length.Exact
}

// Height is its lowest height over a stretch that meets it, above the datum.
func (l *Limit) Height(k *kitchen.Kitchen, from, to length.Length) length.Exact {
	from, to = max(from, l.From), min(to, l.To)
	return l.raised(k, l.profile.Lowest(from, to).Value)
}

// raised is a level of the profile above the datum, after the cut.
func (l *Limit) raised(k *kitchen.Kitchen, v length.Exact) length.Exact {
	if l.cut != nil {
		v = length.Larger(v, *l.cut)
	}
	return v.Sub(k.Datums[l.group].Level.Value)
}

// limits gathers what is above the row, and what hangs where its cabinets are
// hooked on and where their fronts move.
func (r *Row) limits(sky kitchen.Sky) {
	for _, v := range views(r.k.Room, r.Wall) {
		r.ceilings(v)
		r.hung(v, sky, area{0, r.Depth, false, r.Spare})
		if room := fit.Hooking(r.k.System, r.Kind); room > 0 {
			r.hung(v, sky, area{r.Depth, r.Depth + room, true, 0})
		}
		if front := fit.FrontDepth(r.Door); front > 0 {
			r.hung(v, sky, area{r.Depth, r.Depth + front, true, r.k.System.FitGap})
		}
	}
}

// area is the floor between two distances from the row's wall, and what stays open
// over it.
type area struct {
	near, far length.Length
	soft      bool
	spare     length.Length
}

// hung adds the overheads of a view's wall that hang over an area.
func (r *Row) hung(v view, sky kitchen.Sky, over area) {
	for _, h := range sky.Hung {
		if h.Overhead.Wall != v.wall.Index {
			continue
		}
		s := stretch{h.From, h.To}
		if !v.own(r) {
			s = v.clip(s)
		}
		if s.from >= s.to {
			continue
		}
		l := Limit{
			By: h.Overhead.Pointer, Overhead: h.Overhead, Soft: over.soft, spare: over.spare,
			group: v.wall.Group, cut: h.Cut,
		}
		if v.across() {
			r.hungAcross(v, l, s, over)
		} else {
			r.hungAlong(v, l, s, over)
		}
	}
}

// hungAcross adds an overhead of a wall at right angles: for the row it has one
// height, between two stations.
func (r *Row) hungAcross(v view, l Limit, s stretch, over area) {
	strip := v.strip(over.near, over.far)
	from, to := max(s.from, strip.from), min(s.to, strip.to)
	if from >= to {
		return
	}
	l.Meet = v.under(l.Overhead.Out, l.Overhead.Face())
	l.From, l.To = -length.Max, length.Max
	l.profile = level.Level(level.Fixed(l.Overhead.Underside.Lowest(from, to).Value))
	r.Limits = append(r.Limits, l)
}

// hungAlong adds an overhead of a wall that runs as the row's does.
func (r *Row) hungAlong(v view, l Limit, s stretch, over area) {
	near, far := v.depth(over.near, over.far)
	if near >= l.Overhead.Face() || l.Overhead.Out >= far {
		return
	}
	s = v.stations(s)
	l.From, l.To = s.from, s.to
	l.Meet = overStretch(s)
	l.profile = v.profile(l.Overhead.Underside)
	r.Limits = append(r.Limits, l)
}

func overStretch(s stretch) Meet { return over(s.from, s.to) }
