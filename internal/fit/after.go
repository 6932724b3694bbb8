package fit

import (
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
	Hanging *Hanging
}

// AfterAll holds every cabinet against the sky that the applied options leave.
//
// What still overlaps an overhead then is blocked, whatever was chosen or advised
// for it. One that stays only because a gate is open still needs its trim: it is
// undecided.
func AfterAll(k *kitchen.Kitchen, found []Result, sky kitchen.Sky, applied kitchen.AppliedOptions) []After {
	s := stage{k, sky, func(o *survey.Overhead) Verdict {
		if o.MayCut == survey.CutNo || applied[o.Group].By != kitchen.ByDefault {
			return Blocked
		}
		return NeedsTrim
	}}
	out := make([]After, len(found))
	for i := range found {
		out[i] = s.after(&found[i])
	}
	return out
}

// after judges what is above anew; what is beside the cabinet has not changed.
func (s stage) after(found *Result) After {
	var limits []Limit
	assumed := false
	for _, o := range s.over(found.Cabinet) {
		limits = append(limits, s.limit(o, found.Cabinet.Top))
		assumed = assumed || o.assumed
	}
	margin := smallest(limits)
	for _, l := range found.Limits {
		if l.Axis != Up {
			limits = append(limits, l)
		}
	}
	rule := ruling(limits)
	return After{rule.Verdict, margin, rule.By, assumed, hanging(s.k, found.Cabinet, s.sky)}
}
