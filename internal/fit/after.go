package fit

import (
	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// After is a cabinet's fit once the applied options are carried out.
type After struct {
	Verdict Verdict
	Margin  length.Exact
	By      string // pointer of what rules it
	Assumed bool   // it rests on what nobody has seen behind an overhead
	Beside  bool   // something beside the cabinet rules it, not something above
}

// AfterAll holds every cabinet against the sky that the applied options leave.
//
// An overhead that the planner chose to keep blocks what still overlaps it. One
// that stays only because a gate is open still needs its trim: it is undecided.
func AfterAll(k *kitchen.Kitchen, sky kitchen.Sky, applied kitchen.AppliedOptions) []After {
	s := stage{k, sky, func(o *survey.Overhead) Verdict {
		a := applied[o.Group]
		if o.MayCut == survey.CutNo || a.Option == kitchen.Keep && a.By == kitchen.ByChoice {
			return Blocked
		}
		return NeedsTrim
	}}
	out := make([]After, len(k.Plan.Cabinets))
	for i := range k.Plan.Cabinets {
		out[i] = s.after(&k.Plan.Cabinets[i])
	}
	return out
}

func (s stage) after(c *cabinet.Placed) After {
	var limits []Limit
	assumed := map[string]bool{}
	for _, o := range s.over(c) {
		limits = append(limits, s.limit(o, c.Top))
		assumed[o.by] = assumed[o.by] || o.assumed
	}
	margin := smallest(limits)
	beside, _ := sideways(s.k, c)
	rule := ruling(append(limits, beside...))
	anyAssumed := false
	for _, a := range assumed {
		anyAssumed = anyAssumed || a
	}
	return After{rule.Verdict, margin, rule.By, anyAssumed, rule.Axis != Up}
}
