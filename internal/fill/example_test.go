package fill_test

import (
	"fmt"

	"railhead/internal/fill"
	"railhead/internal/length"
	"railhead/internal/money"
)

// A wall of 3.1 m between two walls, where doors need 50 mm to open; half of it is under a lowered part.
func Example() {
	const mm, unit = length.Millimetre, money.Unit
	r := &fill.Run{
		Length: 3100 * mm, Grid: mm,
		Sizes: []fill.Size{
			{Width: 600 * mm, Height: 700 * mm, Worth: 42 * unit}, {Width: 600 * mm, Height: 500 * mm, Worth: 30 * unit},
			{Width: 300 * mm, Height: 700 * mm, Worth: 21 * unit}, {Width: 300 * mm, Height: 500 * mm, Worth: 15 * unit},
		},
		Limits:      []fill.Limit{{From: 1600 * mm, To: 3100 * mm, Height: 560 * mm}},
		Ends:        [2]fill.End{{Least: 50 * mm}, {Least: 50 * mm}},
		LeastFiller: 20 * mm, LeastOpen: 300 * mm,
		Weights: fill.Weights{
			Cabinet: 2 * unit, Filler: 3 * unit, FillerPerGrid: unit / 10, OpenPerGrid: unit, HeightChange: 5 * unit,
		},
	}
	answers, err := fill.Fill(r)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, p := range answers[0].Pieces {
		fmt.Println(p.At, "wide", p.Width, "high", p.Height)
	}
	for _, f := range answers[0].Fillers {
		fmt.Println("filler", f.From, "to", f.To)
	}
	for _, p := range answers[0].Parts {
		fmt.Println(p.Name, p.Worth.Decimal())
	}
	// Output:
	// 50 mm wide 600 mm high 700 mm
	// 650 mm wide 600 mm high 700 mm
	// 1250 mm wide 300 mm high 700 mm
	// 1550 mm wide 600 mm high 500 mm
	// 2150 mm wide 600 mm high 500 mm
	// 2750 mm wide 300 mm high 500 mm
	// filler 0 mm to 50 mm
	// filler 3050 mm to 3100 mm
	// sizes 180
	// cabinets -12
	// fillers -6
	// filler_width -10
	// height_changes -5
}
