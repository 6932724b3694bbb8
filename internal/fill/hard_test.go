package fill

import "railhead/internal/length"

// window keeps a stretch free whose sides are open.
func window(from, to int) Limit {
	return Limit{From: span(from, mm), To: span(to, mm), Sides: [2]End{{Open: true}, {Open: true}}}
}

// hard are runs where one thing leans on another. What is best is not told here; other solvers say it.
var hard = []named{
	{"every order is worth the same", row(4650, sizes(700, metric...)).with(func(*Run) {}), ""},
	{"nothing but lines to tell the orders apart", row(4200, sizes(700, metric...)).with(func(r *Run) {
		for _, at := range []int{450, 900, 1600, 2100, 2700, 3300, 3800} {
			r.Lines = append(r.Lines, span(at, mm))
		}
		r.Weights.LineMiss = 30 * unit
	}), ""},
	{"stairs of a sloped ceiling", row(3600, slices3(sizes(400, 300, 400, 500), sizes(500, 300, 400, 500), sizes(700, 300, 400, 500))).with(func(r *Run) {
		r.Limits = []Limit{
			{From: 0, To: 950 * mm, Height: 450 * mm}, {From: 950 * mm, To: 2250 * mm, Height: 600 * mm},
			{From: 3450 * mm, To: 3600 * mm, Height: 450 * mm},
		}
	}), ""},
	{"one cabinet between two windows that must both have equal neighbours", row(3900, sizes(700, 300, 400, 500, 600)).with(func(r *Run) {
		r.Limits = []Limit{window(1000, 1700), window(2300, 3000)}
		r.Pairs = []Pair{{From: 1000 * mm, To: 1700 * mm, Must: true}, {From: 2300 * mm, To: 3000 * mm, Must: true}}
		r.Panel = 50 * mm
	}), ""},
	{"a cabinet that stays at a window, and its like across", row(3200, sizes(700, 400, 450, 600)).with(func(r *Run) {
		r.Limits = []Limit{window(1300, 2100)}
		r.Fixed = []Piece{{At: 850 * mm, Width: 450 * mm, Height: 700 * mm}}
		r.Pairs = []Pair{{From: 1400 * mm, To: 2000 * mm, Worth: 90 * unit}}
	}), ""},
	{"a chimney that doors keep away from, equal on both sides", row(3950, append(sizes(700, 400, 600), sizes(500, 400, 600)...)).with(func(r *Run) {
		r.Limits = []Limit{
			{From: 1700 * mm, To: 2250 * mm, Sides: [2]End{{Least: 100 * mm}, {Least: 50 * mm}}},
			{From: 2250 * mm, To: 3950 * mm, Height: 600 * mm},
		}
		r.Pairs = []Pair{{From: 1700 * mm, To: 2250 * mm, Worth: 200 * unit}}
	}), ""},
	{"no holes beside a window, between what stays", row(3600, sizes(700, 300, 500)).with(func(r *Run) {
		r.Limits = []Limit{window(1550, 2200)}
		r.Fixed = []Piece{{At: 350 * mm, Width: 400 * mm, Height: 600 * mm}, {At: 2950 * mm, Width: 300 * mm, Height: 600 * mm}}
		r.Closed, r.Panel = true, 50*mm
		r.Ends = [2]End{{Least: 50 * mm}, {Least: 50 * mm}}
	}), ""},
	{"a sink and a hob off the grid, a dishwasher between, fillers at both walls", row(3700, sizes(700, metric...)).with(func(r *Run) {
		r.Limits = []Limit{{From: 1700 * mm, To: 2300 * mm}}
		r.Whole = []Span{{930 * mm, 1510 * mm}, {2590 * mm, 3130 * mm}}
		r.Ends = [2]End{{Least: 50 * mm}, {Least: 50 * mm}}
	}), ""},
	{"a sink and its like across a dishwasher", row(3300, sizes(700, 300, 450, 500, 600, 800)).with(func(r *Run) {
		r.Limits = []Limit{{From: 1350 * mm, To: 1950 * mm}}
		r.Pairs = []Pair{{From: 1350 * mm, To: 1950 * mm, Must: true}}
		r.Whole = []Span{{800 * mm, 1200 * mm}, {2400 * mm, 2700 * mm}}
	}), ""},
	{"three basins under a sloped ceiling, on lines, beside a free end", row(3600, append(sizes(500, 300, 500, 600, 900), sizes(700, 300, 500, 600, 900)...)).with(func(r *Run) {
		r.Limits = []Limit{{From: 0, To: 1250 * mm, Height: 550 * mm}}
		r.Whole = []Span{{400 * mm, 800 * mm}, {1150 * mm, 1600 * mm}, {2950 * mm, 3350 * mm}}
		r.Panel, r.Ends[1].Open = 50*mm, true
		for at := 600; at < 3600; at += 600 {
			r.Lines = append(r.Lines, span(at, mm))
		}
		r.Weights.LineMiss = 30 * unit
	}), ""},
	{"the numbers 6, 9 and 20 just below what they can make", (Run{
		Length: 43 * length.Inch, Grid: length.Inch, Closed: true, LeastFiller: 2 * length.Inch, LeastOpen: length.Foot,
		Sizes: []Size{
			{6 * length.Inch, 30 * length.Inch, 6 * unit}, {9 * length.Inch, 30 * length.Inch, 9 * unit},
			{20 * length.Inch, 30 * length.Inch, 20 * unit},
		},
		Weights: Weights{Cabinet: unit, Filler: unit, FillerPerGrid: unit},
	}).with(func(*Run) {}), ""},
}

func slices3(a, b, c []Size) []Size { return append(append(a, b...), c...) }
