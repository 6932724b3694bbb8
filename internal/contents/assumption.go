package contents

import (
	"slices"
	"strconv"
	"strings"

	"railhead/internal/belief"
	"railhead/internal/finding"
	"railhead/internal/survey"
)

// Assumptions are the numbers that a cluster's odds, a probe hole into it and
// what is behind it rest on, each with the member that would replace it.
func (o Odds) Assumptions(c Cluster) []finding.Assumption {
	var out []finding.Assumption
	for _, s := range o.Steps {
		if strings.HasPrefix(s.Code, "assume.") {
			out = append(out, finding.Assumption{Code: s.Code, Value: s.Params[0], Override: o.override(s, c)})
		}
	}
	out = append(out, c.lookAssumptions()...)
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

// lookAssumptions are what looks and probe holes are weighed by, where something
// is unseen.
func (c Cluster) lookAssumptions() []finding.Assumption {
	override := c.lookPointer()
	if override == "" {
		return nil
	}
	out := []finding.Assumption{
		{Code: runsThrough.code, Value: finding.Word("value", runsThrough.factors.text())},
		{Code: "assume.contents.missed", Value: finding.Word("value", missed.Text())},
		{Code: "assume.contents.probe_sight", Value: finding.Size("value", finding.Near(sight.Exact()))},
		{Code: "assume.contents.probe_behind", Value: finding.Word("value", Same.Text())},
	}
	if seen, _ := c.seenState(); seen == FewWires || seen == ManyWires {
		out = append(out, finding.Assumption{Code: "assume.contents.many_wires", Value: finding.Word("value", strconv.Itoa(manyWires))})
	}
	for i := range out {
		out[i].Override = override
	}
	return out
}

func behindAssumption(o *survey.Overhead, missing belief.Chance) finding.Assumption {
	return finding.Assumption{
		Code: behindRows[o.Kind].code, Value: finding.Word("value", missing.Decimal()),
		Override: BehindPointer(o),
	}
}
