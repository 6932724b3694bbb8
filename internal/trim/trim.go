package trim

import (
	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// Trim is one cut along one overhead.
type Trim struct {
	ID        string // the overhead's id and a number from the left: "s1#1"
	Overhead  *survey.Overhead
	Needed    bool // a cabinet under it does not fit as found
	ByLift    bool // lifting the cabinet onto its rail rules the headroom, not the fit gap
	Cabinets  []*cabinet.Placed
	From, To  length.Length  // along the overhead's wall
	RowTop    length.Length  // highest top line it serves, above the datum
	CutLine   length.Length  // above the datum: the top line and its headroom
	FrameLine *length.Length // underside of the new bottom framing; nil where the frame is not touched
	RailEdge  *length.Length // lower edge of the rail it is marked from; nil without a rail
	Work      Work
	Boarded   bool // the wall behind is boarded where the rail goes: nobody has seen it finished
	Stations  []Station
	Most      length.Exact // the strip at its highest
	Returns   []Return
	Conflicts []Conflict
	Steps     []Step
	Findings  []finding.Finding
}

// Work is what kind of work a cut is.
type Work int

// Kinds of work, from the least to the most.
const (
	None                 Work = iota // nothing hangs below the cut line
	LiningOnly                       // the board alone comes off
	RelocateBottomMember             // the lowest member is cut free and refitted higher
	Reframe                          // the frame is shortened
	TakeDown                         // all of it goes
)

// String is the work's name on the wire.
func (w Work) String() string {
	return [...]string{"none", "lining_only", "relocate_bottom_member", "reframe", "take_down"}[w]
}

// Station is the cut at one station; a step of the underside has two, its left
// side first. Heights are above the datum.
type Station struct {
	At         length.Exact // exact, because a line can cross the cut anywhere
	Underside  length.Exact // as found
	Remove     length.Exact // height of the strip
	OpenAbove  length.Exact // what stays open above the cabinets' top line after the cut
	AboveFloor length.Exact // the cut line above the floor right there: a check
}

// Meets is what an end of a cut meets.
type Meets int

// What an end of a cut meets.
const (
	MeetsOpen     Meets = iota // a free end that is seen: cut to the same line
	MeetsWall                  // no end: the cut runs up to the wall
	MeetsCorner                // no end: it goes on around the inside corner
	MeetsCabinet               // a cabinet stands against it
	MeetsOverhead              // the uncut rest of the same overhead: a new face
)

// String is the name on the wire.
func (m Meets) String() string {
	return [...]string{"open", "wall", "corner", "cabinet", "overhead"}[m]
}

// Return is a face across the depth of the overhead at an end of a cut.
type Return struct {
	At    length.Length
	Depth length.Length // from the wall's side of the overhead to its front
	Meets Meets
}

// Conflict is a service nearer to the cut than its clearance.
type Conflict struct {
	Pointer string
	Service *survey.Service
	At      length.Length
	Level   length.Exact // its underside above the datum
	Short   length.Exact // by how much its clearance is missed
}

// Step is one step of the work.
type Step struct {
	Code   string
	Params []finding.Param
}
