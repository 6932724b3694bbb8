// Package rules is the catalogue: every code that an answer may carry, with its
// words, its source and, where it can hurt someone, who is licensed to deal
// with it. The core knows codes only.
package rules

import "sort"

// Status says how a rule's source was obtained.
type Status string

// Statuses.
const (
	LookedUp       Status = "looked_up"       // read in the document or a copy of it
	FromMemory     Status = "from_memory"     // recalled, not looked up
	CommonPractice Status = "common_practice" // a fact of the trade without a document
	Own            Status = "own"             // follows from this service's own definitions
)

// Rule is one entry of the catalogue.
type Rule struct {
	Code   string // area.subject.problem
	Says   string // a template: {name} stands for the parameter of that name
	Source string // document, edition, clause; or "common practice, no source"
	Status Status
	Who    string // of a hazard: who is licensed to deal with it
}

// Of finds a code's rule.
func Of(code string) (Rule, bool) {
	all := All()
	i := sort.Search(len(all), func(i int) bool { return all[i].Code >= code })
	if i < len(all) && all[i].Code == code {
		return all[i], true
	}
	return Rule{}, false
}
