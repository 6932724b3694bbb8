package takeoff

import (
	"railhead/internal/belief"
	"railhead/internal/contents"
	"railhead/internal/money"
)

// Takeoff is the work of one option for one overhead group.
type Takeoff struct {
	Items []Item // work that is certain
	// Found is the work that comes on top where the contents turn out so; none for
	// Empty. It is for contents that nobody has seen: what was seen is in Items.
	Found [contents.States][]Item
	// Reach is the chance that contents which are there are in the way of the work:
	// a shallow cut reaches few of them.
	Reach belief.Chance
	// Behind is the work that comes on top where the ceiling's board is missing
	// behind what comes down, and nobody has seen whether it is.
	Behind []Item
}

// Item is one item of work with the figures that its quantity is made of.
type Item struct {
	Work     Work
	Pointer  string // the overhead or the cabinet that it is about
	Quantity money.Quantity
	Formula  string // of the inputs' names: "length*depth + length*height"
	Inputs   []Input
}

// Input is one figure of a quantity's formula, as a person would write it.
type Input struct {
	Name  string // "length", "depth", "strip"; a second of the name is "length_2"
	Value string // a decimal
	Unit  string // "m", "m2", "1", "kg/m3"
}
