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
	b, faults := settled(req, nil)
	if faults != nil {
		return nil, faults
	}
	return b.finished(), nil
}

// LayoutRequest resolves a request for layouts: the case, and what is to be
// proposed for it.
func LayoutRequest(req *api.LayoutRequest) (*Case, *kitchen.Filling, []Fault) {
	if req == nil {
		req = &api.LayoutRequest{}
	}
	fill := req.Fill
	if fill == nil {
		fill = &api.Fill{}
	}
	b, faults := settled(&req.Request, fill)
	if faults != nil {
		return nil, nil, faults
	}
	return b.finished(), &b.filling, nil
}

// settled reads a request until it is known what is wrong with it.
func settled(req *api.Request, fill *api.Fill) (*body, []Fault) {
	b := read(req, fill, guesses[0])
	if len(b.faults) == 0 {
		b.askSurvey()
		b.oddities()
		b.notAssessed()
		return b, nil
	}
	found := [][]Fault{b.unexplained()}
	for _, other := range guesses[1:b.guessed.needed()] {
		found = append(found, read(req, fill, other).unexplained())
	}
	return nil, everywhere(found)
}

// read reads a request; the guess stands for what is not usable of it.
func read(req *api.Request, fill *api.Fill, g guess) *body {
	b := newBody(req, fill, g)
	b.head()
	b.names()
	b.survey()
	b.readSystem()
	b.readPlan()
	b.readChoices()
	b.readMoney()
	if fill != nil {
		b.readFill()
	}
	return b
}
