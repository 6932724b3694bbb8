package contents

import (
	"slices"
	"strings"

	"railhead/internal/belief"
	"railhead/internal/finding"
	"railhead/internal/survey"
)

// Assumptions are the numbers that a cluster's odds and what is behind it rest on,
// each with the member that would replace it. The figures that looks and probe
// holes are weighed by belong to the whole request and are listed with its others.
func (o Odds) Assumptions(c Cluster) []finding.Assumption {
	var out []finding.Assumption
	for _, s := range o.Steps {
		if strings.HasPrefix(s.Code, "assume.") {
			out = append(out, finding.Assumption{Code: s.Code, Value: s.Params[0], Override: o.override(s, c)})
		}
	}
	for _, p := range c.Parts {
		if missing, assumed := BehindMissing(p); assumed {
			out = append(out, behindAssumption(p, missing))
		}
	}
	return out
}

// override is the member that replaces a step: a look at the rest, the year, or
// odds of the sender's own.
func (o Odds) override(s Step, c Cluster) string {
	switch {
	case strings.HasPrefix(s.Code, "assume.contents.seen_"):
		return c.lookPointer()
	case s.Code == ageUnknown.code:
		return s.Evidence[0]
	default:
		return o.Given
	}
}

// lookPointer is the member that says that somebody looked at what is unseen.
func (c Cluster) lookPointer() string {
	if i := slices.IndexFunc(c.Parts, notAllSeen); i >= 0 {
		return c.Parts[i].Inside.Pointer + "/seen"
	}
	return ""
}

func behindAssumption(o *survey.Overhead, missing belief.Chance) finding.Assumption {
	return finding.Assumption{
		Code: behindRows[o.Kind].code, Value: finding.Word("value", missing.Decimal()),
		Override: BehindPointer(o),
	}
}
