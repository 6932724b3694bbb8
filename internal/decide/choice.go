package decide

import (
	"railhead/internal/finding"
	"railhead/internal/kitchen"
)

// againstChoices are the gates that stand against what the planner chose. The
// choice holds, but nobody starts before each gate is cleared; a trim that finds
// nothing to take, and a gap that goes anyhow, harm nobody.
func (d Decisions) againstChoices(k *kitchen.Kitchen) []finding.Finding {
	var out []finding.Finding
	for _, o := range d.Overheads {
		choice, ok := k.Choices[o.Group.ID]
		if !ok {
			continue
		}
		for _, g := range o.gatesOf(choice.Option) {
			out = append(out, against(choice, o.Group.ID, g))
		}
		for _, need := range of(o.Options, choice.Option).Needs {
			if !d.goes(k, need) {
				out = append(out, finding.Finding{
					Code: codeChoiceNeeds, Severity: finding.AsStop, Pointer: choice.Pointer,
					Params: []finding.Param{finding.Word("overhead", o.Group.ID), finding.Word("needs", need)},
				})
			}
		}
	}
	return out
}

// goes reports whether a group comes down by what is chosen, else advised, for it.
func (d Decisions) goes(k *kitchen.Kitchen, group string) bool {
	for i, a := range d.Advice {
		if a.Group == group {
			return d.Overheads[i].goesAnyhow() || applied(k, a, false).Option.TakesDown()
		}
	}
	return false
}

// goingBehindGates are the gates in front of what goes with the old cabinets: it
// cannot wait, so the old cabinets do.
func (d Decisions) goingBehindGates(k *kitchen.Kitchen) []finding.Finding {
	var out []finding.Finding
	for i, o := range d.Overheads {
		if _, chosen := k.Choices[o.Group.ID]; chosen || !o.goesAnyhow() || !d.Advice[i].Gated {
			continue
		}
		for _, g := range o.gatesOf(o.Advice) {
			out = append(out, finding.Finding{
				Code: codeGapGated, Severity: finding.AsStop, Pointer: g.Pointer,
				Params:   []finding.Param{finding.Word("overhead", o.Group.ID), finding.Word("gate", g.Code)},
				Remedies: []finding.Remedy{{Code: g.Code, Params: g.Params}},
			})
		}
	}
	return out
}

func (o Overhead) gatesOf(option kitchen.Option) []Gate {
	for _, one := range o.Options {
		if one.Option == option {
			return one.Gates
		}
	}
	return nil
}

func against(c kitchen.Choice, group string, g Gate) finding.Finding {
	f := finding.Finding{
		Code: codeChoiceGated, Severity: finding.AsStop, Pointer: c.Pointer,
		Params: []finding.Param{
			finding.Word("overhead", group), finding.Word("option", c.Option.String()), finding.Word("gate", g.Code),
		},
		Remedies: []finding.Remedy{{Code: g.Code, Params: g.Params}},
	}
	if g.Code == gateNothingToTake || g.Code == gateGoesAnyhow {
		f.Severity = finding.AsNote
	}
	return f
}
