package decide

import (
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/combine"
	"railhead/internal/kitchen"
	"railhead/internal/length"
)

// lines numbers levels in the order in which they are met.
type lines []length.Length

// of is the line of some tops: their level where they have one, none where there
// are no tops, and several.
func (l *lines) of(tops []length.Length) combine.Line {
	if len(tops) == 0 {
		return combine.NoLine
	}
	for _, t := range tops {
		if t != tops[0] {
			return combine.Several
		}
	}
	i := slices.Index(*l, tops[0])
	if i < 0 {
		i = len(*l)
		*l = append(*l, tops[0])
	}
	return combine.Line(i + 1)
}

// topsAfter is where the wall and tall cabinets under one group alone end after an
// option.
func (r *reckoning) topsAfter(g int, o kitchen.Option) []length.Length {
	swaps := r.ms[g].swaps(o)
	var out []length.Length
	for _, s := range r.ms[g].under {
		if r.isJoint(s.Cabinet) {
			continue
		}
		top := s.Cabinet.Top
		if i := slices.IndexFunc(swaps, func(w cabinet.Swap) bool { return w.Cabinet == s.Cabinet }); i >= 0 {
			top = swaps[i].Top
		}
		out = append(out, top)
	}
	return out
}

// topsUnderNothing is where the wall and tall cabinets end that stand under no group.
func (r *reckoning) topsUnderNothing() []length.Length {
	covered := map[*cabinet.Placed]bool{}
	for _, m := range r.ms {
		for _, s := range m.under {
			covered[s.Cabinet] = true
		}
	}
	var out []length.Length
	for i := range r.k.Plan.Cabinets {
		if c := &r.k.Plan.Cabinets[i]; c.Kind != cabinet.Base && !covered[c] {
			out = append(out, c.Top)
		}
	}
	return out
}
