package rail

import (
	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/length"
)

// Rail is one row's rail on one wall.
type Rail struct {
	Wall      int
	RowTop    length.Length // above the datum
	LowerEdge length.Length // above the datum: the row's top less the rail drop
	Cabinets  []*cabinet.Placed
	BeforeCut bool // nothing that hangs there now is in its way
	Stations  []Station
	Pieces    []Piece
	Fixings   []Fixing
	Findings  []finding.Finding
	Questions []finding.Question
}

// Station is a check of the level rail at one station: never struck as a line.
// A step of the floor has two, its left side first.
type Station struct {
	At         length.Length
	AboveFloor length.Exact
}

// Piece is one length of rail.
type Piece struct {
	From, To length.Length
	Joint    bool // its right end butts against the next piece
}

// Length is the piece's length.
func (p Piece) Length() length.Length { return p.To - p.From }

// Into is what a screw goes into.
type Into int

// What a screw goes into.
const (
	Stud      Into = iota
	Blocking       // timber that has to be put behind the board first
	BoardOnly      // nothing but the board is known there
	Masonry
	Unknown
)

// String is the name on the wire.
func (i Into) String() string {
	return [...]string{"stud", "blocking", "board", "masonry", "unknown"}[i]
}

// Fixing is one screw through the rail.
type Fixing struct {
	At   length.Length
	Into Into
}
