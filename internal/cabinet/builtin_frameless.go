package cabinet

import (
	"slices"

	"railhead/internal/length"
)

// framelessMetric is generic frameless sizes: base cabinets of 820, 870 and 920 mm with their 100 mm plinth under a
// counter of 40 mm. Wall cabinets of 600 and 700 mm end with tall cabinets of 1850 and 1950 mm on the same legs
// (1350 + 600 = 100 + 1850, 1350 + 700 = 100 + 1950).
func framelessMetric() BuiltInSystem {
	const mm = length.Millimetre
	widths := func() []length.Length { return sizes(mm, 300, 400, 500, 600, 800, 1000, 1200) }
	return BuiltInSystem{
		ID:   "frameless-metric",
		Says: "Generic frameless sizes in millimetres after EN 1116, screwed through hanging strips.",
		Source: "EN 1116:2018 base heights and plinth (from memory); widths, wall heights 400 to 700 mm, depths: metric data " +
			"sheet of kitchen sizes (looked up); the row's underside, the tall heights that end with it, leg travel, " +
			"corner cabinets and fit gap: common practice, no source",
		Units: length.MM,
		System: System{
			ID:        "frameless-metric",
			Legs:      100 * mm,
			LegTravel: &LegTravel{Up: 25 * mm},
			Wall: Sizes{
				Heights: sizes(mm, 400, 500, 600, 700), Widths: widths(), Depths: sizes(mm, 350),
				Corners: slices.Concat(corners(CornerL, mm, 600, 650), corners(CornerDiagonal, mm, 600, 650)),
			},
			WallUnderside: 1350 * mm,
			Tall:          Sizes{Heights: sizes(mm, 1850, 1950), Widths: sizes(mm, 300, 400, 500, 600), Depths: sizes(mm, 600)},
			Base: Sizes{
				Heights: sizes(mm, 720, 770, 820), Widths: widths(), Depths: sizes(mm, 600),
				Corners: slices.Concat(corners(CornerL, mm, 900), corners(CornerDiagonal, mm, 900), corners(CornerBlind, mm, 1000, 1100)),
			},
			Counter:       40 * mm,
			FitGap:        2 * mm,
			SideClearance: 2 * mm,
		},
	}
}
