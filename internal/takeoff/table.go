package takeoff

import (
	"railhead/internal/finding"
	"railhead/internal/length"
	"railhead/internal/money"
	"railhead/internal/survey"
)

// Sizes that nobody measures in a kitchen (common practice, no source).
const (
	// Spacing of light framing where nobody says; 16 in is 406 mm. Printed guides to
	// framing a soffit put the short studs of its front at 16 in.
	Spacing = 400 * length.Millimetre
	// Band is how wide is filled and sanded along a cut or a closed joint.
	Band = 150 * length.Millimetre
	// CeilingBlend is how far beyond an old edge the ceiling is painted.
	CeilingBlend = 300 * length.Millimetre
	// BackingWidth is the height of the board behind a rail.
	BackingWidth = 300 * length.Millimetre
	// MostFiller is the widest gap that a strip closes; a wider one takes a panel.
	MostFiller = 100 * length.Millimetre
	// DuctMove is how far a duct that moves goes aside, beside its way up.
	DuctMove = 1000 * length.Millimetre
)

// Members are the lengths of framing that run along an overhead: at the wall, at
// the ceiling, and the lower front edge (a 2022 carpentry textbook frames a soffit
// so, figure 11-32; seen in an extract).
const Members = 3

// Runs of wires that a state of contents stands for (common practice, no source).
// From three on, wires are many.
const (
	FewWires  = 2
	ManyWires = 5
)

// Densities in kg/m3. Gypsum board: 57 lb for a sheet of 4 by 8 ft, 1/2 in thick
// (seen on a trade page; 684.8). The rest is from memory; metal stands for thin
// sheet on a grid, taken as thick as board.
const (
	GypsumDensity  money.Quantity = 685 * money.One
	PlasterDensity money.Quantity = 1600 * money.One
	TileDensity    money.Quantity = 2000 * money.One
	MetalDensity   money.Quantity = 640 * money.One
	WoodDensity    money.Quantity = 500 * money.One
	SolidDensity   money.Quantity = 2000 * money.One
)

// How much room debris takes, loose, for each part that it took in place. A US
// study of 1995 counts 400 lb to the cubic yard of loose board and 267 of wood,
// another table of 1994 500 and 300 (seen in copies). For solid material from
// memory.
const (
	BoardBulking money.Quantity = 2500
	FrameBulking money.Quantity = 3000
	SolidBulking money.Quantity = 1500
)

// spacing of an overhead's framing.
func spacing(o *survey.Overhead) length.Length {
	if o.Make.Spacing > 0 {
		return o.Make.Spacing
	}
	return Spacing
}

// density of an overhead's lining; what nobody named is taken to be gypsum board.
func density(o *survey.Overhead) money.Quantity {
	switch o.Finish {
	case "plaster":
		return PlasterDensity
	case "wood":
		return WoodDensity
	case "tile":
		return TileDensity
	case "metal":
		return MetalDensity
	default:
		return GypsumDensity
	}
}

// Assumptions are the table's values, each under its code. No member of a request
// replaces them, but for the spacing: that of each overhead does.
func Assumptions() []finding.Assumption {
	size := func(code string, l length.Length) finding.Assumption {
		return finding.Assumption{Code: code, Value: finding.Size("value", finding.Near(l.Exact()))}
	}
	number := func(code string, q money.Quantity) finding.Assumption {
		return finding.Assumption{Code: code, Value: finding.Word("value", q.Decimal())}
	}
	return []finding.Assumption{
		size("assume.takeoff.spacing", Spacing),
		number("assume.takeoff.members", Members*money.One),
		size("assume.takeoff.band", Band),
		size("assume.takeoff.ceiling_blend", CeilingBlend),
		size("assume.takeoff.backing_width", BackingWidth),
		size("assume.takeoff.most_filler", MostFiller),
		size("assume.takeoff.duct_move", DuctMove),
		number("assume.takeoff.few_wires", FewWires*money.One),
		number("assume.takeoff.many_wires", ManyWires*money.One),
		number("assume.takeoff.gypsum_density", GypsumDensity),
		number("assume.takeoff.plaster_density", PlasterDensity),
		number("assume.takeoff.tile_density", TileDensity),
		number("assume.takeoff.metal_density", MetalDensity),
		number("assume.takeoff.wood_density", WoodDensity),
		number("assume.takeoff.solid_density", SolidDensity),
		number("assume.takeoff.board_bulking", BoardBulking),
		number("assume.takeoff.frame_bulking", FrameBulking),
		number("assume.takeoff.solid_bulking", SolidBulking),
	}
}
