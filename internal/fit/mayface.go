package fit

import (
	"railhead/internal/finding"
)

// mayFace minds the runs along walls that are only known to lie opposite: where
// along them two cabinets face each other nobody surveyed, so they may collide.
func (b *beside) mayFace() {
	for _, w := range facing(b.k.Room, b.c.Wall) {
		if w.mapped {
			continue
		}
		for i := range b.k.Plan.Cabinets {
			o := &b.k.Plan.Cabinets[i]
			have := w.distance - o.Depth
			if o.Wall != w.wall || !levelled(b.k, b.c, o) || have >= b.c.Depth {
				continue
			}
			b.findings = append(b.findings, finding.Finding{
				Code: "fit.facing.may_overlap", Severity: finding.AsStop, Pointer: o.Pointer,
				Params: []finding.Param{finding.Word("other", o.ID)},
				Need:   finding.Up(b.c.Depth.Exact()), Have: finding.Down(have.Exact()),
				Remedies: remedies(shallower, moveCabinet),
			})
			return
		}
	}
}
