package fit

import (
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// sliver is a stretch too short to mention: a filler covers it (common practice,
// no source).
const sliver = 20 * length.Millimetre

// Footprint says which part of each overhead stands above old cabinets, new
// ones, or nothing; a hood counts as new. Where only old ones stood, wall that
// nobody finished shows; a soffit that stays over nothing looks lost. Only
// cabinets that reach up to an overhead count, wall and tall ones.
func Footprint(k *kitchen.Kitchen) []finding.Finding {
	var out []finding.Finding
	if len(k.Plan.Cabinets) == 0 {
		return nil // nothing planned yet, nothing to say about it
	}
	for _, o := range k.Overheads() {
		if o.Kind == survey.Beam {
			continue // it belongs to the building
		}
		was, is := oldUnder(k, o), newUnder(k, o)
		for _, s := range stretches(o, was, is) {
			code := footprintCode(o, covers(was, s), covers(is, s))
			if code == "" || s.To-s.From <= sliver {
				continue
			}
			out = append(out, finding.Finding{
				Code: code, Severity: finding.AsNote, Pointer: o.Pointer,
				Params:   []finding.Param{finding.Word("what", overheadWord(o.Kind)), size("from", s.From), size("to", s.To)},
				Remedies: footprintHelp(was, s),
			})
		}
	}
	return out
}

func footprintCode(o *survey.Overhead, was, is bool) string {
	switch {
	case is:
		return ""
	case was:
		return "fit.footprint.unfinished_wall"
	case o.Kind == survey.Soffit || o.Kind == survey.ClosedGap && !o.GoesWithOldCabinets():
		return "fit.footprint.over_nothing"
	default:
		return ""
	}
}

func footprintHelp(was []survey.Span, s survey.Span) []finding.Remedy {
	if covers(was, s) {
		return remedies(makeGoodWall)
	}
	return remedies(cutOverhead)
}

// oldUnder are the stretches of an overhead that stand above old cabinets.
func oldUnder(k *kitchen.Kitchen, o *survey.Overhead) []survey.Span {
	var out []survey.Span
	for _, c := range k.Plan.Old {
		if c.Kind != cabinet.Base {
			out = append(out, under(k, o, cabinet.Patch{Wall: c.Wall, From: c.From, To: c.To, Far: c.Depth})...)
		}
	}
	return out
}

// newUnder are the stretches of an overhead that stand above planned cabinets,
// fillers and the hood.
func newUnder(k *kitchen.Kitchen, o *survey.Overhead) []survey.Span {
	var out []survey.Span
	for i := range k.Plan.Cabinets {
		c := &k.Plan.Cabinets[i]
		if c.Kind == cabinet.Base {
			continue
		}
		for _, p := range c.Native(k.Room) {
			out = append(out, under(k, o, p)...)
		}
	}
	for _, f := range k.Plan.Fillers {
		if f.Wall == o.Wall && (f.AnyKind || f.Kind != cabinet.Base) {
			out = append(out, survey.Span{From: f.From, To: f.To})
		}
	}
	if cook := k.Plan.Cooking; cook != nil && cook.Hood != nil && cook.Hood.Kind != cabinet.Downdraft {
		out = append(out, under(k, o, cabinet.Patch{Wall: cook.Wall, From: cook.From, To: cook.To, Far: cookingDepth})...)
	}
	for i := range k.Plan.Appliances {
		if a := &k.Plan.Appliances[i]; a.Kind == cabinet.HoodOnWall {
			out = append(out, under(k, o, a.Patch())...)
		}
	}
	return out
}

// under is the stretch of an overhead that stands above a floor area.
func under(k *kitchen.Kitchen, o *survey.Overhead, p cabinet.Patch) []survey.Span {
	own := cabinet.Under(o)
	s, ok := viewFrom(k.Room, o.Wall).area(p)
	if !ok || s.side == fromFacing || !own.Overlaps(s.Patch) {
		return nil
	}
	return []survey.Span{{From: s.From, To: s.To}}
}

// stretches are an overhead's parts between all ends of what stands under it;
// neighbouring parts over the same are one.
func stretches(o *survey.Overhead, was, is []survey.Span) []survey.Span {
	cuts := []length.Length{o.From, o.To}
	for _, s := range slices.Concat(was, is) {
		for _, at := range []length.Length{s.From, s.To} {
			if at > o.From && at < o.To {
				cuts = append(cuts, at)
			}
		}
	}
	slices.Sort(cuts)
	cuts = slices.Compact(cuts)
	var out []survey.Span
	for i := 1; i < len(cuts); i++ {
		s := survey.Span{From: cuts[i-1], To: cuts[i]}
		if n := len(out); n > 0 && covers(was, out[n-1]) == covers(was, s) && covers(is, out[n-1]) == covers(is, s) {
			out[n-1].To = s.To
			continue
		}
		out = append(out, s)
	}
	return out
}

// covers reports whether one of some spans begins a stretch; within a stretch
// none begins or ends, so it then covers the stretch's beginning and all like it.
func covers(spans []survey.Span, s survey.Span) bool {
	return slices.ContainsFunc(spans, func(o survey.Span) bool { return o.From <= s.From && s.From < o.To })
}
