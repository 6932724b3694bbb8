package cabinet

import (
	"slices"

	"railhead/internal/length"
)

// demoRail is an invented system hung on a rail. Its wall cabinets of 500, 660 and 900 mm end with its tall ones
// (1460 + 500 = 120 + 1840, 1460 + 660 = 120 + 2000, 1460 + 900 = 120 + 2240).
func demoRail() BuiltInSystem {
	const mm = length.Millimetre
	return BuiltInSystem{
		ID:     "demo-rail",
		Says:   "An invented system hung on a rail, for trying things out.",
		Source: "invented; nobody makes it",
		Units:  length.MM,
		Mass:   MassPerArea{Wall: "24", Tall: "30"},
		System: System{
			ID:        "demo-rail",
			Legs:      120 * mm,
			LegTravel: &LegTravel{Up: 20 * mm, Down: 30 * mm},
			Wall: Sizes{
				Heights: sizes(mm, 340, 500, 660, 900), Widths: sizes(mm, 300, 400, 600, 800), Depths: sizes(mm, 360),
				Corners: slices.Concat(corners(CornerL, mm, 600), corners(CornerDiagonal, mm, 600)),
			},
			WallUnderside: 1460 * mm,
			Tall:          Sizes{Heights: sizes(mm, 1840, 2000, 2240), Widths: sizes(mm, 400, 600), Depths: sizes(mm, 600)},
			Base: Sizes{
				Heights: sizes(mm, 740), Widths: sizes(mm, 300, 400, 600, 800), Depths: sizes(mm, 600),
				Corners: slices.Concat(corners(CornerL, mm, 900), corners(CornerBlind, mm, 1000)),
			},
			Counter: 40 * mm,
			Rail: &Rail{
				Drop: 64 * mm, Profile: 32 * mm, Stock: sizes(mm, 2400), Kerf: 3 * mm, HangerUp: 12 * mm, HangerDown: 8 * mm,
				Lift: 10 * mm, EndInset: 40 * mm, LongestSpan: 610 * mm,
			},
			FitGap:        2 * mm,
			SideClearance: 3 * mm,
		},
	}
}
