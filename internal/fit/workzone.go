package fit

import (
	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/length"
)

// Between a counter and the wall cabinets over it 18 in are usual and 15 in the
// least (kitchen planning guide: counter to upper 15–18 in; metric practice 450
// and 380 mm, which are the slightly smaller numbers).
const (
	usualWorkHeight = 450 * length.Millimetre
	leastWorkHeight = 380 * length.Millimetre
)

// WorkZone checks the heights that cooks work in: counter to wall cabinets, the
// cooking surface to what can burn above it, and the hood.
func WorkZone(k *kitchen.Kitchen) []finding.Finding {
	return join(overCounter(k), overCooking(k), hoodHeight(k))
}

// overCounter checks every wall cabinet that hangs over a base cabinet.
func overCounter(k *kitchen.Kitchen) []finding.Finding {
	var out []finding.Finding
	for i := range k.Plan.Cabinets {
		c := &k.Plan.Cabinets[i]
		have := c.Underside - k.Plan.Counter
		if c.Kind != cabinet.Wall || have >= usualWorkHeight || !overBase(k, c) {
			continue
		}
		f := finding.Finding{
			Code: "fit.work_zone.tight", Severity: finding.AsNote, Pointer: c.Pointer,
			Params: []finding.Param{finding.Word("cabinet", c.ID)},
			Need:   finding.Up(usualWorkHeight.Exact()), Have: finding.Down(have.Exact()),
			Remedies: remedies(raiseRow, shorter),
		}
		if have < leastWorkHeight {
			f.Code, f.Severity, f.Need = "fit.work_zone.low", finding.AsCaution, finding.Up(leastWorkHeight.Exact())
		}
		out = append(out, f)
	}
	return out
}

func overBase(k *kitchen.Kitchen, c *cabinet.Placed) bool {
	for _, p := range c.Native(k.Room) {
		here := viewFrom(k.Room, p.Wall)
		for i := range k.Plan.Cabinets {
			if k.Plan.Cabinets[i].Kind != cabinet.Base {
				continue
			}
			for _, s := range here.sees(nil, &k.Plan.Cabinets[i]) {
				if s.side != fromFacing && p.Overlaps(s.Patch) {
					return true
				}
			}
		}
	}
	return false
}
