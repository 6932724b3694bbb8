package cabinet

import (
	"slices"

	"railhead/internal/length"
)

// faceFrameInch is the common run of inch sizes, screwed through hanging strips. Standing cabinets have their toe kick in
// their height, so there are no legs: they are shimmed. A base cabinet of 34 1/2 in takes a counter of 1 1/2 in to 36 in;
// 18 in above it hang the wall cabinets, and 30, 36 and 42 in of them end with tall cabinets of 84, 90 and 96 in.
func faceFrameInch() BuiltInSystem {
	const in, half = length.Inch, length.Inch / 2
	return BuiltInSystem{
		ID:   "face-frame-inch",
		Says: "Generic face-frame sizes in inches, screwed through hanging strips.",
		Source: "sizes, corner cabinets and fit gap: common practice, no source; counter to wall cabinet 15 to 18 in: a state university " +
			"extension service's kitchen design and space guidelines (looked up)",
		Units: length.IN,
		System: System{
			ID: "face-frame-inch",
			Wall: Sizes{
				Heights: sizes(in, 12, 15, 18, 24, 30, 36, 42), Widths: sizes(in, 9, 12, 15, 18, 21, 24, 27, 30, 33, 36), Depths: sizes(in, 12),
				Corners: slices.Concat(corners(CornerL, in, 24), corners(CornerDiagonal, in, 24), corners(CornerBlind, in, 27, 30)),
			},
			WallUnderside: 54 * in,
			Tall:          Sizes{Heights: sizes(in, 84, 90, 96), Widths: sizes(in, 18, 24, 30, 33, 36), Depths: sizes(in, 24)},
			Base: Sizes{
				Heights: sizes(half, 69), Widths: sizes(in, 9, 12, 15, 18, 21, 24, 27, 30, 33, 36), Depths: sizes(in, 24),
				Corners: slices.Concat(corners(CornerL, in, 33, 36), corners(CornerBlind, in, 42, 45, 48)),
			},
			Counter: 3 * half,
			FitGap:  in / 8,
		},
	}
}
