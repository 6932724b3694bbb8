package fill

import (
	"pgregory.net/rapid"

	"railhead/internal/length"
	"railhead/internal/money"
)

// shape is how large the random runs are.
type shape struct{ steps, narrowest, widest, sizes, others int }

var (
	tiny = shape{steps: 9, narrowest: 1, widest: 4, sizes: 3, others: 2}
	wide = shape{steps: 15, narrowest: 3, widest: 7, sizes: 3, others: 2}
	// A short wall in steps of 10 cm, for a solver that knows nothing of walls.
	middle = shape{steps: 36, narrowest: 3, widest: 12, sizes: 6, others: 3}
)

// drawRun is any run, sensible or not.
func drawRun(t *rapid.T, of shape) *Run {
	grid := rapid.SampledFrom([]length.Length{length.Millimetre, length.Inch / 16, 5 * length.Centimetre}).Draw(t, "grid")
	d := drawer{t, grid}
	steps := d.number("steps", 0, of.steps)
	r := &Run{
		Length: span(steps, grid), Grid: grid,
		LeastFiller: d.span("least filler", 0, 4), LeastOpen: d.span("least open", 0, 5), Panel: d.span("panel", 0, 2),
		Closed: d.chance("closed", 4),
		Ends:   [2]End{d.end("left"), d.end("right")},
		Weights: Weights{
			Cabinet: d.amount("cabinet", 6), Filler: d.amount("filler", 6), FillerPerGrid: d.amount("filler width", 3),
			Panel: d.amount("panel price", 6), OpenPerGrid: d.amount("open width", 3),
			HeightChange: d.amount("height change", 8), LineMiss: d.amount("line miss", 4),
		},
	}
	for range d.number("sizes", 0, of.sizes) {
		width := d.number("width", of.narrowest, of.widest)
		r.Sizes = append(r.Sizes, Size{span(width, grid), d.height("height", 1), money.Amount(d.number("worth", -2, 6*width))})
	}
	d.others(r, of, steps)
	return r
}

type drawer struct {
	t    *rapid.T
	grid length.Length
}

func (d drawer) number(label string, from, to int) int {
	return rapid.IntRange(from, to).Draw(d.t, label)
}

func (d drawer) chance(label string, in int) bool { return d.number(label, 1, in) == 1 }

func (d drawer) span(label string, from, to int) length.Length {
	return span(d.number(label, from, to), d.grid)
}

func (d drawer) amount(label string, most int) money.Amount {
	return money.Amount(d.number(label, 0, most))
}

func (d drawer) height(label string, from int) length.Length {
	return length.Length(d.number(label, from, 3)) * 300 * length.Millimetre
}

func (d drawer) end(label string) End {
	return End{Least: max(0, d.span(label, -3, 3)), Open: d.chance(label+" open", 3)}
}

// whole is a stretch about as wide as a narrow cabinet, more often in the middle, where there is room for one.
func (d drawer) whole(of shape, steps int) Span {
	from := (d.number("whole", 0, steps-1) + steps/2) % steps
	to := d.number("whole", from+1, min(steps, from+of.narrowest))
	return Span{span(from, d.grid) + d.part("whole from"), span(to, d.grid) - d.part("whole to")}
}

// part is nothing, or less than half a grid.
func (d drawer) part(label string) length.Length {
	return length.Length(max(0, d.number(label, -2, 2))) * d.grid / 5
}

// others draws limits, cabinets that stay, whole stretches, lines and pairs.
func (d drawer) others(r *Run, of shape, steps int) {
	if steps == 0 {
		return
	}
	stretch := func(label string, widest int) (length.Length, length.Length) {
		from := d.number(label, 0, steps-1)
		return span(from, d.grid), span(d.number(label, from+1, min(steps, from+widest)), d.grid)
	}
	for range d.number("limits", 0, of.others) {
		from, to := stretch("limit", of.widest)
		limit := Limit{From: from, To: to, Height: d.height("limit height", 0), Sides: [2]End{d.end("left side"), d.end("right side")}}
		r.Limits = append(r.Limits, limit)
		if limit.Height == 0 && d.chance("pair", 2) {
			r.Pairs = append(r.Pairs, Pair{From: from, To: to, Must: d.chance("must", 3), Worth: d.amount("pair worth", 9)})
		}
	}
	for range d.number("fixed", -of.others, of.others) {
		from, to := stretch("fixed", of.widest/2+1)
		r.Fixed = append(r.Fixed, Piece{At: from, Width: to - from, Height: d.height("fixed height", 1)})
	}
	for range d.number("whole", -of.others, min(len(r.Sizes), of.others-1)) {
		r.Whole = append(r.Whole, d.whole(of, steps))
	}
	for range d.number("lines", -of.others, of.others) {
		r.Lines = append(r.Lines, d.span("line", 0, steps))
	}
}
