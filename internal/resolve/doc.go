// Package resolve turns a request of the wire into the case that the trade core
// computes: lengths read, references followed, readings reduced to one frame,
// defaults filled in and named as assumptions, changes before fitting applied.
//
// What cannot be is refused with the member's pointer, all of it at once. What
// is merely odd becomes a finding; what nobody knows becomes a question.
package resolve

import (
	"railhead/api"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/length"
)

// Case is a request resolved.
type Case struct {
	Kitchen     *kitchen.Kitchen
	Units       length.Unit
	Tape        length.Length     // step of the tape marks
	Findings    []finding.Finding // oddities of the survey and of the plan
	Questions   []finding.Question
	Assumptions []finding.Assumption
	NotAssessed []finding.NotAssessed
}

// Fault is why a request is refused; its words stand in package rules.
type Fault struct {
	Code    string
	Pointer string // the member of the request that is wrong
	Params  []finding.Param
}

// Request resolves a request, or says everything that is wrong with it.
func Request(req *api.Request) (*Case, []Fault) {
	b := read(req, guesses[0])
	if len(b.faults) == 0 {
		b.askSurvey()
		b.oddities()
		b.notAssessed()
		return b.finished(), nil
	}
	found := [][]Fault{b.unexplained()}
	for _, other := range guesses[1:b.guessed.needed()] {
		found = append(found, read(req, other).unexplained())
	}
	return nil, everywhere(found)
}

// read reads a request; the guess stands for what is not usable of it.
func read(req *api.Request, g guess) *body {
	b := newBody(req, g)
	b.head()
	b.names()
	b.survey()
	b.readSystem()
	b.readPlan()
	b.readChoices()
	b.readMoney()
	return b
}
