package layout

import (
	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/money"
	"railhead/internal/survey"
)

// Room is a kitchen to be filled, under one sky. Its plan holds only what stays, and
// its datums are what they are taken to be: no floor under a new cabinet that stands
// is above them.
type Room struct {
	Kitchen *kitchen.Kitchen
	Sky     kitchen.Sky
	Filling *kitchen.Filling
	Aim     Aim
}

// Aim is what is aimed for beside what each cabinet is worth.
type Aim struct {
	// Top is where new wall and tall cabinets end, above the datum; nil where they may
	// end anywhere.
	Top *length.Length
	// Run is the length that going up to the ceiling is shared out over, cabinet by
	// cabinet; 0 where it does not count.
	Run length.Length
}

// Answer is one way to fill a room.
type Answer struct {
	Cabinets []cabinet.Placed // the new ones, row by row and wall by wall; without ids
	Fillers  []cabinet.Filler
	Panels   []Panel
	Open     []Open
	Parts    []Part
	Worth    money.Amount // the sum of its parts
}

// Panel closes a side of a new cabinet that shows.
type Panel struct {
	Cabinet int // its place in Answer.Cabinets
	Right   bool
	Wall    int
	survey.Span
}

// Open is a stretch where something might stand and nothing does.
type Open struct {
	Kind cabinet.Kind
	Wall int
	survey.Span
}

// Part is a part of what an answer is worth.
type Part struct {
	Name     PartName
	Quantity money.Quantity
	Worth    money.Amount
}

// PartName names what is worth something.
type PartName int

// The parts, in the order in which they are told.
const (
	Storage PartName = iota
	Counter
	Cabinets
	Preferred
	Fillers
	FillerWidth
	Panels
	OpenWidth
	HeightChanges
	LineMisses
	Equal
	ToCeiling // not of an answer for one sky, like those that follow
	EvenLine
	Overheads
	PartNames // how many there are
)

// String is the part's name on the wire.
func (n PartName) String() string {
	return [...]string{
		"storage", "counter", "cabinets", "preferred", "fillers", "filler_width", "panels", "open_width", "height_changes",
		"base_line_misses", "equal_neighbours", "to_ceiling", "even_line", "overheads",
	}[n]
}

// Unit is the unit of the part's quantity.
func (n PartName) Unit() string {
	switch n {
	case Storage:
		return "l"
	case Counter, FillerWidth, OpenWidth:
		return "mm"
	case ToCeiling:
		return "%"
	default:
		return "1"
	}
}
