package decide

import (
	"railhead/internal/cabinet"
	"railhead/internal/combine"
	"railhead/internal/estimate"
	"railhead/internal/finding"
	"railhead/internal/fit"
	"railhead/internal/kitchen"
	"railhead/internal/money"
)

// Decisions is what to do with each overhead, and why.
type Decisions struct {
	Advice []Advised // in order of [kitchen.Kitchen.Groups]

	Lower     *fit.Lower // lowering every row on its legs; nil when that helps nothing
	Overheads []Overhead
	Questions []finding.Question
	Findings  []finding.Finding // choices that a gate stands against
	// Proven: no combination is better. False only where the search was ended; then
	// looks and thresholds are not worked out.
	Proven     bool
	reckoning  *reckoning
	best, once plan
}

// Advised is the advice for one overhead group.
type Advised struct {
	Group  string
	Option kitchen.Option
	Gated  bool           // somebody has to answer or clear something first; until then it stays
	Once   kitchen.Option // where gated: what would be advised once its gates are open
}

// Overhead is one overhead group with every way to treat it.
type Overhead struct {
	Group   kitchen.OverheadGroup
	Advice  kitchen.Option
	Options []Option
	Reasons []Reason
}

// Option is one way to treat an overhead group.
type Option struct {
	Option   kitchen.Option
	Possible bool // no gate forbids it
	Gates    []Gate
	Swaps    []cabinet.Swap
	Needs    []string // other groups that must come down with it
}

// Money is one option in money, by itself: without what the room shares.
type Money struct {
	Gains []Gain
	Lines []estimate.Line
	Cost  estimate.Cost
	Gain  money.Amount // expected: what may stop it is counted
}

// Room is the room's best combination, and what stands beside it.
type Room struct {
	Best     Combination
	Charges  []combine.Charge // of the best, by trade
	Together []Together       // of the best
	Applied  Combination      // what the applied options come to
	RunnerUp *Combination     // the best that differs somewhere; nil where there is none
	Once     *Combination     // the best once gates that can be opened are open; nil where it is the best itself
}

// Combination is one option for each group, in order of groups.
type Combination struct {
	Options        []kitchen.Option
	Gain, Expected money.Amount
}

// Net is the gain less the expected cost.
func (c *Combination) Net() money.Amount { return c.Gain.Minus(c.Expected) }

// Together is a worth that several groups make together, less what it costs.
type Together struct {
	Code       string
	Evidence   []string
	Gain, Cost money.Amount
}

// Gate is what must be settled before an option may be taken.
type Gate struct {
	Code    string
	Pointer string
	Params  []finding.Param
	// Forbids: no answer opens it. Licensed: work by the licensed trade does; a
	// gate that forbids without it stays shut whatever anyone does.
	Forbids, Licensed bool
}

// Factor is what a reason is about.
type Factor int

// Factors, in the order in which they are told.
const (
	Contents Factor = iota
	CeilingHeight
	Footprint
	Expense
	Structure
	Health
	Preference
)

// String is the factor's name on the wire.
func (f Factor) String() string {
	return [...]string{"contents", "ceiling_height", "footprint", "expense", "structure", "health", "preference"}[f]
}

// Lean is which way a reason pulls.
type Lean int

// Leans.
const (
	LeansNone Lean = iota
	LeansKeep
	LeansTrim
	LeansOpenPart
	LeansTakeDown
)

// String is the lean's name on the wire.
func (l Lean) String() string {
	return [...]string{"none", "keep", "trim", "open_part", "take_down"}[l]
}

// Reason is one factor's pull, with its evidence.
type Reason struct {
	Factor   Factor
	Leans    Lean
	Code     string
	Params   []finding.Param
	Evidence []string // members of the request
}
