package fit

import (
	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/level"
)

// Check holds every planned cabinet against the room as found.
func Check(k *kitchen.Kitchen) []Result {
	s, out := asFound(k), make([]Result, len(k.Plan.Cabinets))
	for i := range k.Plan.Cabinets {
		out[i] = s.check(&k.Plan.Cabinets[i])
	}
	cure(k, out)
	return out
}

// Above holds every planned cabinet only against what is above it as found: of each
// result the cabinet, its floor area, the margin and the limits upwards, as [Check] has them.
func Above(k *kitchen.Kitchen) []Result {
	s, out := asFound(k), make([]Result, len(k.Plan.Cabinets))
	for i := range k.Plan.Cabinets {
		c := &k.Plan.Cabinets[i]
		patches := c.Patches(k.Room)
		over := s.over(patches)
		limits := make([]Limit, len(over))
		for n, o := range over {
			limits[n] = s.limit(o, c.Top)
		}
		out[i] = Result{Cabinet: c, Patches: patches, Margin: tightest(limits).Margin, Limits: limits}
	}
	return out
}

func (s stage) check(c *cabinet.Placed) Result {
	patches := c.Patches(s.k.Room)
	above := s.weigh(c, patches)
	beside, findings := sideways(s.k, c)
	limits := make([]Limit, 0, len(above)+len(beside))
	for _, o := range above {
		limits = append(limits, o.limit)
	}
	limits = append(limits, beside...)
	tight, rule := tightest(limits), ruling(limits)
	verdicts, edge := s.edges(c, above, beside)
	r := Result{
		Cabinet: c, Patches: patches, Verdict: rule.Verdict, Limit: rule, Limits: limits,
		Margin: tight.Margin, Doubt: level.DoubtOf(tight.terms(), s.k.Room.Readings).Expanded, Edge: edge,
		Worst: verdicts.worst, Again: verdicts.worst != verdicts.best || verdicts.worst != rule.Verdict,
		Hanging: s.hanging(c, tight),
	}
	r.Reading = -1
	if r.Again {
		r.Reading = s.toRepeat(above, tight)
	}
	standing, standingFindings := standing(s.k, c)
	r.Standing = standing
	r.Findings = join(findings, doors(s.k, c, s.sky), standingFindings, legs(s.k, c), underFloor(s.k, c))
	return r
}

func join(lists ...[]finding.Finding) []finding.Finding {
	var out []finding.Finding
	for _, l := range lists {
		out = append(out, l...)
	}
	return out
}
