package kitchen

import (
	"railhead/internal/length"
	"railhead/internal/money"
)

// Figure is a number that work is reckoned with and nobody measures in a kitchen.
// The request may give it; else it is assumed.
type Figure int

// Figures.
const (
	Spacing       Figure = iota // of light framing, where an overhead's own is not stated
	Members                     // lengths of framing along an overhead
	Band                        // filled and sanded along a cut or an old joint
	CeilingBlend                // how far beyond an old edge the ceiling is painted
	BackingWidth                // height of the board behind a rail
	MostFiller                  // the widest gap that a strip closes
	DuctMove                    // how far aside a duct goes that moves
	FewWires                    // runs of wires
	ManyWires                   // from three on, wires are many
	GypsumDensity               // of board, also where nobody named it
	PlasterDensity
	TileDensity
	MetalDensity // thin sheet on a grid, taken as thick as board
	WoodDensity
	SolidDensity
	BoardBulking // how much room debris takes, loose, for each part that it took in place
	FrameBulking
	SolidBulking
	NarrowGap       // an open gap over cabinets below which it only gathers dust, because no arm can clean it
	RemeasuredRight // how often a ceiling measured again, with care, tells rightly whether a row fits
	ThroughFewWires // how often what is there runs through the whole overhead; else it is at one place, anywhere in it
	ThroughManyWires
	ThroughPipeOrDuct
	ThroughImmovable
	Missed       // how often who looks straight at what runs through does not see it: behind framing, insulation or dust
	ProbeSight   // how much of an overhead a probe hole shows, with a mirror or a small camera, both ways together
	WiresAreMany // from how many on
	WithWork     // how many times the length of a service counts that moves only with work
	figures
)

// figure is a figure's name on the wire, its unit there, the value assumed and the
// range in which it makes sense. Where each comes from stands in the catalogue of
// rules.
type figure struct {
	name, unit         string
	value, least, most money.Quantity
}

var known = [figures]figure{
	Spacing:         {"spacing", "m", 400, 50, 3000},
	Members:         {"members", "1", 3000, 1000, 20_000},
	Band:            {"band", "m", 150, 0, 3000},
	CeilingBlend:    {"ceiling_blend", "m", 300, 0, 20_000},
	BackingWidth:    {"backing_width", "m", 300, 0, 3000},
	MostFiller:      {"most_filler", "m", 100, 0, 3000},
	DuctMove:        {"duct_move", "m", 1000, 0, 50_000},
	FewWires:        {"few_wires", "1", 2000, 1000, 50_000},
	ManyWires:       {"many_wires", "1", 5000, 1000, 50_000},
	GypsumDensity:   {"gypsum_density", "kg/m3", 685_000, 1000, 10_000_000},
	PlasterDensity:  {"plaster_density", "kg/m3", 1_600_000, 1000, 10_000_000},
	TileDensity:     {"tile_density", "kg/m3", 2_000_000, 1000, 10_000_000},
	MetalDensity:    {"metal_density", "kg/m3", 640_000, 1000, 10_000_000},
	WoodDensity:     {"wood_density", "kg/m3", 500_000, 1000, 10_000_000},
	SolidDensity:    {"solid_density", "kg/m3", 2_000_000, 1000, 10_000_000},
	BoardBulking:    {"board_bulking", "1", 2500, 1000, 20_000},
	FrameBulking:    {"frame_bulking", "1", 3000, 1000, 20_000},
	SolidBulking:    {"solid_bulking", "1", 1500, 1000, 20_000},
	NarrowGap:       {"narrow_gap", "m", 300, 0, 3000},
	RemeasuredRight: {"remeasured_right", "1", 950, 500, 1000},
	// A share of 0 would rule out what nobody has seen.
	ThroughFewWires:   {"through_few_wires", "1", 600, 1, 1000},
	ThroughManyWires:  {"through_many_wires", "1", 700, 1, 1000},
	ThroughPipeOrDuct: {"through_pipe_or_duct", "1", 700, 1, 1000},
	ThroughImmovable:  {"through_immovable", "1", 500, 1, 1000},
	Missed:            {"missed", "1", 100, 1, 1000},
	ProbeSight:        {"probe_sight", "m", 1500, 10, 50_000},
	WiresAreMany:      {"wires_are_many", "1", 3000, 1000, 50_000},
	WithWork:          {"with_work", "1", 2000, 1000, 10_000},
}

// AllFigures are all figures, in order.
func AllFigures() []Figure {
	out := make([]Figure, figures)
	for f := range out {
		out[f] = Figure(f)
	}
	return out
}

// FigureOf finds a figure by its name on the wire.
func FigureOf(name string) (Figure, bool) {
	for f := range known {
		if known[f].name == name {
			return Figure(f), true
		}
	}
	return 0, false
}

// String is the figure's name on the wire, and Unit the unit it has there.
func (f Figure) String() string { return known[f].name }

// Unit is the figure's unit on the wire: metres, kg/m3 or a plain number.
func (f Figure) Unit() string { return known[f].unit }

// Range is what a figure may be on the wire.
func (f Figure) Range() (least, most money.Quantity) { return known[f].least, known[f].most }

// Figures are those that the request gives.
type Figures map[Figure]money.Quantity

// Of is a figure: as given, else as assumed.
func (g Figures) Of(f Figure) money.Quantity {
	if q, ok := g[f]; ok {
		return q
	}
	return known[f].value
}

// Length is a figure in metres as a length.
func (g Figures) Length(f Figure) length.Length {
	return length.Length(g.Of(f)) * length.Millimetre
}
