package fill

import "slices"

// without is a run that asks for less. A pair whose gap is given up goes with it.
func (r *Run) without(up []Constraint) *Run {
	given := func(m Member, i int) bool { return slices.Contains(up, Constraint{m, i}) }
	out := *r
	out.Fixed = remaining(r.Fixed, func(i int) bool { return given(InFixed, i) })
	out.Whole = remaining(r.Whole, func(i int) bool { return given(InWhole, i) })
	out.Limits = remaining(r.Limits, func(i int) bool { return given(InLimits, i) })
	out.Pairs = slices.Clone(r.Pairs)
	for i := range out.Pairs {
		out.Pairs[i].Must = out.Pairs[i].Must && !given(InPairs, i)
	}
	for i := range out.Ends {
		if given(InEnds, i) {
			out.Ends[i].Least = 0
		}
	}
	if given(InLeastFiller, none) {
		out.LeastFiller = 0
	}
	out.Closed = r.Closed && !given(InClosed, none)
	t := reduce(&out)
	out.Pairs = slices.DeleteFunc(out.Pairs, func(p Pair) bool { return !t.isGap(p) })
	return &out
}

// remaining is what is not given up.
func remaining[T any](all []T, given func(int) bool) []T {
	var out []T
	for i, one := range all {
		if !given(i) {
			out = append(out, one)
		}
	}
	return out
}
