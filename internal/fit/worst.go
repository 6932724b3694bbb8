package fit

import "slices"

// ruling picks the limit that rules the verdict: the worst verdict, then the
// smallest clearance, then the order of the list (walls in order, the ceiling
// before overheads).
func ruling(limits []Limit) Limit {
	return slices.MaxFunc(limits, func(a, b Limit) int {
		if a.Verdict != b.Verdict {
			return int(a.Verdict) - int(b.Verdict)
		}
		return b.Margin.Cmp(a.Margin)
	})
}

// tightest picks the vertical limit with the smallest clearance.
func tightest(limits []Limit) Limit {
	up := slices.DeleteFunc(slices.Clone(limits), func(l Limit) bool { return l.Axis != Up })
	return slices.MinFunc(up, func(a, b Limit) int { return a.Margin.Cmp(b.Margin) })
}
