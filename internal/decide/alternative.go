package decide

import (
	"railhead/internal/finding"
	"railhead/internal/kitchen"
)

// Alternatives are what only the planner can do: lower the row where that nets
// more than the advice, and send the taller cabinets that the applied options make
// room for.
func (d *Decisions) Alternatives(lowered *Combination, applied kitchen.AppliedOptions) []finding.Finding {
	var out []finding.Finding
	if lowered != nil {
		r := d.reckoning
		best := r.combination(d.best.picks)
		if saves := lowered.Net().Minus(best.Net()); saves > 0 {
			out = append(out, finding.Finding{
				Code: codeLowerSaves, Severity: finding.AsCaution, Pointer: "/plan/row_shift",
				Params: []finding.Param{finding.Size("by", finding.Up(d.Lower.By.Exact())), finding.Word("saves", r.told(saves))},
			})
		}
	}
	for _, o := range d.Overheads {
		if swaps := of(o.Options, kitchen.RemoveTaller).Swaps; applied[o.Group.ID].Option == kitchen.RemoveTaller && len(swaps) > 0 {
			out = append(out, finding.Finding{
				Code: codeSendTaller, Severity: finding.AsNote, Pointer: swaps[0].Cabinet.Pointer,
				Params: []finding.Param{finding.Word("overhead", o.Group.ID), finding.Word("count", count(len(swaps)))},
			})
		}
	}
	return out
}
