package fit

import (
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/finding"
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
	// Findings are what overheads then still do to its front and to hanging it.
	Findings []finding.Finding
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
	for _, o := range s.over(found.Cabinet.Patches(s.k.Room)) {
		limits = append(limits, s.limit(o, found.Cabinet.Top))
		assumed = assumed || o.assumed
	}
	tight := tightest(limits)
	for _, l := range found.Limits {
		if l.Axis != Up {
			limits = append(limits, l)
		}
	}
	rule := ruling(limits)
	a := After{Verdict: rule.Verdict, Margin: tight.Margin, By: rule.By, Assumed: assumed, Hanging: s.hanging(found.Cabinet, tight)}
	a.Findings = append(s.frontsAfter(found.Cabinet), a.cannotHang()...)
	return a
}

// frontsAfter is what overheads then leave a front. A lip that is below its top
// now stays below it: nothing more is cut.
func (s stage) frontsAfter(c *cabinet.Placed) []finding.Finding {
	var out []finding.Finding
	for _, f := range doors(s.k, c, s.sky) {
		if !slices.ContainsFunc(s.sky.Hung, func(h kitchen.Hung) bool { return h.Overhead.Pointer == f.Pointer }) {
			continue
		}
		if f.Code == codeUnderLip && f.Have.Value.Sign() < 0 {
			f.Severity = finding.AsStop
		}
		out = append(out, f)
	}
	return out
}

// cannotHang: it fits where it is to hang, and cannot be brought there.
func (a *After) cannotHang() []finding.Finding {
	if a.Hanging == nil || a.Hanging.Verdict != HangBlocked || a.Verdict > Snug {
		return nil
	}
	return []finding.Finding{{
		Code: "fit.hanging.blocked", Severity: finding.AsStop, Pointer: a.Hanging.By,
		Need: finding.Up(a.Hanging.Need), Have: finding.Down(a.Hanging.Have), Remedies: remedies(lowerRow, cutOverhead, shorter),
	}}
}
