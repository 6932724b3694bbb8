package contents

import (
	"railhead/internal/belief"
	"railhead/internal/finding"
)

// Step is one move of the odds: the chances before it, each multiplied by its
// factor and all brought back to 1, are the chances after it. The first step's
// factors stand for the odds themselves; where it has none, they were given.
type Step struct {
	Code     string   // in the catalogue of rules; an assumption where it starts with "assume."
	Evidence []string // pointers to the members that it rests on, the first one first
	Params   []finding.Param
	Factors  Factors
	After    belief.Belief
}

// Given reports whether the step has no factors: its odds came from the request,
// or everything was seen.
func (s Step) Given() bool { return s.Factors == Factors{} }

// trail is the odds on their way, with every step that they took.
type trail struct {
	now   belief.Belief
	steps []Step
}

// move multiplies the odds by a row's factors.
func (t *trail) move(r row, evidence []string, more ...finding.Param) {
	t.now = r.factors.on(t.now)
	t.steps = append(t.steps, Step{
		Code: r.code, Evidence: evidence, Factors: r.factors, After: t.now,
		Params: append([]finding.Param{finding.Word("value", r.factors.text())}, more...),
	})
}

// set replaces the odds.
func (t *trail) set(b belief.Belief, code string, evidence ...string) {
	t.now = b
	t.steps = append(t.steps, Step{
		Code: code, Evidence: evidence, After: b,
		Params: []finding.Param{finding.Word("value", Text(b))},
	})
}
