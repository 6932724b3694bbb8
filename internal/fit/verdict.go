package fit

import (
	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

// Verdict is how a cabinet gets on with an obstacle, from best to worst.
type Verdict int

// Verdicts.
const (
	Fits      Verdict = iota // clearance ≥ fit gap
	Snug                     // 0 ≤ clearance < fit gap
	NeedsTrim                // overlap with an overhead that may be cut
	Blocked                  // overlap with anything else
)

// String is the verdict's name on the wire.
func (v Verdict) String() string { return [...]string{"fits", "snug", "needs_trim", "blocked"}[v] }

// Axis is the direction that a margin is measured in.
type Axis int

// Axes.
const (
	Up Axis = iota
	Along
	Out
)

// String is the axis' name on the wire.
func (a Axis) String() string { return [...]string{"up", "along", "out"}[a] }

// Limit is one obstacle with its clearance and verdict.
type Limit struct {
	By       string // pointer of the obstacle
	Axis     Axis
	Wall     int // the wall that At runs along
	At       length.Length
	From, To length.Length // the stretch of that wall over which it is an obstacle
	Margin   length.Exact
	Verdict  Verdict
	Overhead *survey.Overhead    // the obstacle, where it is one
	terms    func() []level.Term // what the margin's readings weigh; vertical limits only
}

// DoubtIn is the uncertainty of a vertical limit's margin in a room, worked out
// when it is asked for.
func (l *Limit) DoubtIn(room *survey.Room) func() level.Doubt {
	return func() level.Doubt { return level.DoubtOf(l.terms(), room.Readings) }
}

// Cure is the cheapest thing that helps.
type Cure int

// Cures.
const (
	CureNone Cure = iota
	CureLowerRow
	CureTrim
	CureOpen
	CureRemove
	CureAsk
)

// String is the cure's name on the wire.
func (c Cure) String() string {
	return [...]string{"none", "lower_row", "trim", "open", "remove", "ask"}[c]
}

// Result is one cabinet against everything around it, in the room as found.
type Result struct {
	Cabinet  *cabinet.Placed
	Patches  []cabinet.Patch // its floor area, as [cabinet.Placed.Patches] has it
	Verdict  Verdict
	Worst    Verdict         // the worst verdict within the readings' doubt
	Again    bool            // the doubt could change the verdict: measure again
	Reading  level.ReadingID // the reading to repeat; −1 for none
	Edge     string          // the overhead's edge to measure again instead, where that is what matters
	Cure     Cure
	LowerBy  length.Length // with CureLowerRow
	Margin   length.Exact  // smallest vertical clearance
	Doubt    length.Length // expanded uncertainty of the margin, k = 2
	Limit    Limit         // what rules the verdict
	Limits   []Limit
	Hanging  *Hanging
	Standing *Standing
	Findings []finding.Finding
}

// HangingVerdict is how a cabinet gets onto its rail.
type HangingVerdict int

// Ways to hang.
const (
	Hooks       HangingVerdict = iota // there is room to lift it over the rail
	HooksLow                          // hooked on low, then screwed up
	ScrewUpOnly                       // not hooked: held up and screwed
	HangBlocked
)

// String is the verdict's name on the wire.
func (h HangingVerdict) String() string {
	return [...]string{"hooks", "hooks_low", "screw_up_only", "blocked"}[h]
}

// Hanging is what hooking on needs above the final place, and what there is.
type Hanging struct {
	Verdict HangingVerdict
	Need    length.Exact
	Have    length.Exact
	By      string // the obstacle that leaves the least room
}

// StandingVerdict is how a tall carcass gets upright.
type StandingVerdict int

// Ways to stand a carcass up, in order of preference.
const (
	WithLegs StandingVerdict = iota
	OnSide
	LegsAfter
	Upright
	StandBlocked
)

// String is the verdict's name on the wire.
func (s StandingVerdict) String() string {
	return [...]string{"with_legs", "on_side", "legs_after", "upright", "blocked"}[s]
}

// Standing is the height that tilting up needs, and the room's.
type Standing struct {
	Verdict StandingVerdict
	Need    length.Length // rounded up
	Have    length.Exact
}
