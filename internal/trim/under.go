package trim

import (
	"cmp"
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/fit"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// cabinetsUnder are the cabinets under an overhead, each as the cut it would
// need by itself: its stretch widened by the side clearance and clipped to the
// overhead, at its top and headroom. Cabinets around an inside corner count
// with what they are in this wall's coordinates. A base cabinet counts only
// where the overhead comes down to it.
func cabinetsUnder(k *kitchen.Kitchen, o *survey.Overhead, found asFound) []cut {
	var out []cut
	for i := range k.Plan.Cabinets {
		c := &k.Plan.Cabinets[i]
		span, ok := spanUnder(k, c, found.patches(k, c), o)
		if !ok {
			continue
		}
		headroom, byLift := k.System.Headroom(c.Kind)
		one := cut{over: o, Span: span, cabinets: []*cabinet.Placed{c}, top: c.Top, line: c.Top + headroom, byLift: byLift}
		if c.Kind == cabinet.Base && !one.takes(k) {
			continue
		}
		one.needed = found.inTheWay(c, o)
		out = append(out, one)
	}
	slices.SortStableFunc(out, func(a, b cut) int {
		return cmp.Or(cmp.Compare(a.From, b.From), cmp.Compare(a.top, b.top))
	})
	return out
}

// spanUnder is the stretch of an overhead over a cabinet.
func spanUnder(k *kitchen.Kitchen, c *cabinet.Placed, patches []cabinet.Patch, o *survey.Overhead) (survey.Span, bool) {
	area := cabinet.Under(o)
	var out survey.Span
	for _, p := range patches {
		if !p.Overlaps(area) {
			continue
		}
		beside := besides(k, c, p)
		s := survey.Span{From: p.From - beside, To: p.To + beside}.Clip(survey.Span{From: o.From, To: o.To})
		if out == (survey.Span{}) {
			out = s
		}
		out.From, out.To = min(out.From, s.From), max(out.To, s.To)
	}
	return out, out.From < out.To
}

// besides is how much more than a cabinet's floor area is cut: the side
// clearance, and on a wall around a corner, which sees its front from the side,
// at least the front's thickness.
func besides(k *kitchen.Kitchen, c *cabinet.Placed, p cabinet.Patch) length.Length {
	if p.Native || c.Door == nil {
		return k.System.SideClearance
	}
	return max(k.System.SideClearance, c.Door.Thickness)
}

// asFound is each cabinet in the room as found.
type asFound map[*cabinet.Placed]*fit.Result

func index(found []fit.Result) asFound {
	out := make(asFound, len(found))
	for i := range found {
		out[found[i].Cabinet] = &found[i]
	}
	return out
}

// patches are a cabinet's floor area.
func (f asFound) patches(k *kitchen.Kitchen, c *cabinet.Placed) []cabinet.Patch {
	if r, ok := f[c]; ok && r.Patches != nil {
		return r.Patches
	}
	return c.Patches(k.Room)
}

// inTheWay reports whether a cabinet overlaps an overhead as found; a snug one
// does not.
func (f asFound) inTheWay(c *cabinet.Placed, o *survey.Overhead) bool {
	r, ok := f[c]
	return ok && slices.ContainsFunc(r.Limits, func(l fit.Limit) bool {
		return l.Overhead == o && l.Axis == fit.Up && l.Verdict >= fit.NeedsTrim
	})
}

// openings are the stretches of an overhead that the planner named, each with
// the cabinets under it.
func openings(o *survey.Overhead, all []cut, named []survey.WallSpan) []cut {
	var spans []survey.Span
	for _, n := range named {
		if n.Wall == o.Wall {
			spans = append(spans, survey.Span{From: n.From, To: n.To}.Clip(survey.Span{From: o.From, To: o.To}))
		}
	}
	var out []cut
	for _, s := range survey.Union(spans) {
		c := cut{over: o, Span: s, opened: true}
		for _, u := range all {
			if u.From < s.To && s.From < u.To {
				u.Span = s
				c.join(u)
			}
		}
		out = append(out, c)
	}
	return out
}
