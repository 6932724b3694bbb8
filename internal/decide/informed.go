package decide

import (
	"railhead/internal/finding"
	"railhead/internal/money"
	"railhead/internal/survey"
)

// Informed is what finding things out before deciding is worth.
type Informed struct {
	Probes    []*Look // by group; nil where nothing is hidden
	Remeasure []*Look // by group; nil where no doubt of the ceiling reaches the taller row
	behind    []money.Amount
	d         *Decisions
}

// Inform works out what every look is worth.
func (d *Decisions) Inform() Informed {
	r := d.reckoning
	out := Informed{d: d}
	probes, behind := make([]*Look, len(r.clusters)), make([]money.Amount, len(r.clusters))
	out.Remeasure = make([]*Look, len(r.ms))
	for c := range r.clusters {
		if d.Proven {
			probes[c], behind[c] = r.probe(c), r.behind(c)
		}
	}
	for g := range r.ms {
		probe := probes[r.cluster[g]]
		if !r.ms[g].blind() && r.now.missing[r.cluster[g]] == 0 {
			probe = nil // what it shares with others is seen here
		}
		out.Probes = append(out.Probes, probe)
		out.behind = append(out.behind, behind[r.cluster[g]])
		if d.Proven {
			out.Remeasure[g] = r.remeasure(g)
		}
	}
	return out
}

// Worths are what the answers to questions are worth, by the member that would
// give them: what is inside, what is behind, and ceilings to be measured again.
func (in Informed) Worths() map[string]money.Amount {
	out := map[string]money.Amount{}
	for g, m := range in.d.reckoning.ms {
		for _, p := range m.group.Parts {
			if look := in.Probes[g]; look != nil {
				out[p.Inside.Pointer], out[p.Inside.Pointer+"/seen"] = look.Worth, look.Worth
			}
			if worth := in.behind[g]; worth > 0 || p.Behind.Wall != survey.Unknown { // what the wall would tell is not weighed
				out[p.Pointer+"/behind"] = worth
			}
		}
		if look := in.Remeasure[g]; look != nil {
			out[look.Pointer] = look.Worth
		}
	}
	return out
}

// Questions are the ceilings to be measured again before the taller row is
// decided.
func (in Informed) Questions() []finding.Question {
	var out []finding.Question
	for g, look := range in.Remeasure {
		if look != nil {
			out = append(out, finding.Question{
				Code: askRemeasure, Pointer: look.Pointer,
				Params: []finding.Param{finding.Word("overhead", in.d.reckoning.ms[g].group.ID)},
			})
		}
	}
	return out
}
