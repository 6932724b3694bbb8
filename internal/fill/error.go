package fill

import (
	"strconv"
	"strings"
)

// The codes of an Error.
const (
	CodeNotPositive = "fill.value.not_positive" // a length, width or grid that is not above 0, or a weight below 0
	CodeTooLarge    = "fill.value.too_large"    // beyond what can be reckoned with
	CodeTooMany     = "fill.value.too_many"     // more than the Max constants
	CodeOffGrid     = "fill.value.off_grid"     // no whole number of Grids
	CodeOutside     = "fill.value.outside"      // a stretch or cabinet beyond the run's ends
	CodeNoGap       = "fill.pair.no_gap"        // a pair about a stretch where something may stand
)

// How much one run may hold.
const (
	MaxSteps   = 200_000 // Grids
	MaxPlaces  = 600_000 // Grids for each height there is and one more
	MaxSizes   = 400
	MaxHeights = 24
	MaxOthers  = 500 // fixed cabinets, limits, whole stretches, lines, pairs: each
	MaxBest    = 50
)

// Member is the part of a Run that an Error or a Constraint is about.
type Member string

// The parts.
const (
	InLength      Member = "length"
	InGrid        Member = "grid"
	InSizes       Member = "sizes"
	InLimits      Member = "limits"
	InFixed       Member = "fixed"
	InWhole       Member = "whole"
	InLines       Member = "lines"
	InEnds        Member = "ends"
	InPairs       Member = "pairs"
	InLeastFiller Member = "least_filler"
	InLeastOpen   Member = "least_open"
	InPanel       Member = "panel"
	InClosed      Member = "closed"
	InWeights     Member = "weights"
	InBest        Member = "best"
)

// Error is one thing wrong with a Run.
type Error struct {
	Code   string
	Member Member
	Index  int // none, -1, for the member as a whole
}

func (e Error) Error() string { return e.Code + ": " + place(e.Member, e.Index) }

func place(m Member, index int) string {
	if index < 0 {
		return string(m)
	}
	return string(m) + " " + strconv.Itoa(index)
}

// Errors is all that is wrong, in the order of the Run's members.
type Errors []Error

func (e Errors) Error() string {
	lines := make([]string, len(e))
	for i, one := range e {
		lines[i] = one.Error()
	}
	return strings.Join(lines, "; ")
}
