// Package finding holds what the trade core notices: findings, questions,
// cautions, assumptions and parts not assessed. It carries codes and values
// only; the words belong to package rules, the wire form to package report.
package finding

import (
	"railhead/internal/length"
	"railhead/internal/money"
)

// Severity says how much a finding weighs.
type Severity int

// Severities, from light to heavy.
const (
	AsNote    Severity = iota // worth knowing
	AsCaution                 // mind it on site
	AsStop                    // must be answered before work starts
)

// String is the severity's name on the wire.
func (s Severity) String() string { return [...]string{"note", "caution", "stop"}[s] }

// Measure is a length with the direction in which it is rounded for output.
type Measure struct {
	Value length.Exact
	Round length.Direction
}

// Up, Down and Near make a Measure that rounds that way.
func Up(v length.Exact) *Measure   { return &Measure{v, length.Up} }
func Down(v length.Exact) *Measure { return &Measure{v, length.Down} }
func Near(v length.Exact) *Measure { return &Measure{v, length.Nearest} }

// Param is one named value of a text: a word, or a length.
type Param struct {
	Name   string
	Text   string
	Length *Measure // when set, Text is unused
}

// Word and Size make a Param.
func Word(name, text string) Param       { return Param{Name: name, Text: text} }
func Size(name string, m *Measure) Param { return Param{Name: name, Length: m} }

// Finding is something noticed, with what it needs and what there is.
type Finding struct {
	Code     string // area.subject.problem, listed in package rules
	Severity Severity
	Pointer  string // the member of the request that it is about
	Params   []Param
	Need     *Measure
	Have     *Measure
	Remedies []Remedy
}

// Remedy is one way out of a finding.
type Remedy struct {
	Code   string
	Params []Param
}

// Question is something unknown on which the answer rests.
type Question struct {
	Code    string
	Pointer string // the member that would answer it
	Params  []Param
	Worth   *money.Amount // what the answer would be worth before deciding; nil where that is not money
}

// Caution is a hazard; who may deal with it stands in package rules.
type Caution struct {
	Code    string
	Pointer string
	Params  []Param
}

// Assumption is a value that the answer rests on and nobody gave.
type Assumption struct {
	Code     string
	Value    Param
	Override string // the member that replaces it
}

// NotAssessed is a part that could not be computed, or a member that was not used.
type NotAssessed struct {
	Part    string
	Code    string
	Pointer string
}
