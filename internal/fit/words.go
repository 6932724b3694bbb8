package fit

import (
	"railhead/internal/finding"
	"railhead/internal/length"
)

// What helps; the words stand in package rules.
const (
	moveCabinet  = "fit.remedy.move_cabinet"
	narrower     = "fit.remedy.narrower"
	shallower    = "fit.remedy.shallower"
	shorter      = "fit.remedy.shorter"
	otherFront   = "fit.remedy.other_front"
	otherHinge   = "fit.remedy.hinge_other_side"
	addFiller    = "fit.remedy.add_filler"
	cutFiller    = "fit.remedy.cut_filler"
	movePoint    = "fit.remedy.move_point"
	leaveAccess  = "fit.remedy.leave_access"
	cutBack      = "fit.remedy.cut_back"
	changeCasing = "fit.remedy.change_casing"
	lowerRow     = "fit.remedy.lower_row"
	raiseRow     = "fit.remedy.raise_row"
	cutOverhead  = "fit.remedy.cut_overhead"
	twoParts     = "fit.remedy.two_parts"
	packFloor    = "fit.remedy.pack_floor"
	otherLegs    = "fit.remedy.other_legs"
	levelFloor   = "fit.remedy.level_floor"
	moveCooking  = "fit.remedy.move_cooking"
	protect      = "fit.remedy.protect"
	raiseHood    = "fit.remedy.raise_hood"
	lowerCounter = "fit.remedy.lower_counter"
	makeGoodWall = "fit.remedy.make_good_wall"
)

func remedies(codes ...string) []finding.Remedy {
	out := make([]finding.Remedy, len(codes))
	for i, c := range codes {
		out[i] = finding.Remedy{Code: c}
	}
	return out
}

// place is the station that a text names.
func place(at length.Length) finding.Param { return size("at", at) }

// size is a plan size that a text names.
func size(name string, l length.Length) finding.Param {
	return finding.Size(name, finding.Near(l.Exact()))
}

// keepWorst adds a finding, or puts it in the place of one of its code about the
// same thing that has more to spare.
func keepWorst(in []finding.Finding, f finding.Finding) []finding.Finding {
	for i := range in {
		if in[i].Code != f.Code || in[i].Pointer != f.Pointer {
			continue
		}
		if f.Have != nil && in[i].Have != nil && f.Have.Value.Less(in[i].Have.Value) {
			in[i] = f
		}
		return in
	}
	return append(in, f)
}
