package fill

import (
	"strconv"
	"testing"

	"railhead/internal/length"
	"railhead/internal/money"
)

const (
	mm   = length.Millimetre
	unit = money.Unit
)

// wall is a wall with twelve widths and three heights, a lowered part in each 6 m and the lines of base cabinets of
// 60 cm. The widths are generic metric ones.
func wall(metres int) *Run {
	r := &Run{
		Length: length.Length(metres)*length.Metre - 13*mm, Grid: mm,
		Ends:        [2]End{{Least: 50 * mm}, {Least: 30 * mm}},
		LeastFiller: 20 * mm, LeastOpen: 200 * mm, Panel: 16 * mm,
		Weights: Weights{
			Cabinet: 20 * unit, Filler: 15 * unit, FillerPerGrid: unit / 2, Panel: 60 * unit, OpenPerGrid: unit,
			HeightChange: 40 * unit, LineMiss: 5 * unit,
		},
	}
	for _, w := range []length.Length{150, 200, 300, 350, 400, 450, 500, 600, 750, 800, 900, 1000} {
		for _, h := range []length.Length{500, 660, 900} {
			r.Sizes = append(r.Sizes, Size{w * mm, h * mm, money.Amount(w*h/1000) * unit / 2})
		}
	}
	for at := 2 * length.Metre; at+1250*mm < r.Length; at += 6 * length.Metre {
		r.Limits = append(r.Limits, Limit{From: at, To: at + 1250*mm, Height: 700 * mm})
	}
	for at := length.Length(0); at < r.Length; at += 600 * mm {
		r.Lines = append(r.Lines, at)
	}
	return r
}

// Ten times the wall is to take ten times as long.
func BenchmarkWall(b *testing.B) {
	for _, metres := range []int{6, 12, 24, 60} {
		b.Run(strconv.Itoa(metres)+"m", func(b *testing.B) { benchmark(b, wall(metres)) })
	}
}

func BenchmarkBest(b *testing.B) {
	for _, metres := range []int{6, 60} {
		for _, best := range []int{2, 5, 20} {
			r := wall(metres)
			r.Best = best
			name := strconv.Itoa(metres) + "m/" + strconv.Itoa(best)
			b.Run(name, func(b *testing.B) { benchmark(b, r) })
			r.AnyOrder = true
			b.Run(name+"/any_order", func(b *testing.B) { benchmark(b, r) })
		}
	}
}

func benchmark(b *testing.B, r *Run) {
	b.ReportAllocs()
	var s Solver
	for b.Loop() {
		if _, err := s.Fill(r); err != nil {
			b.Fatal(err)
		}
	}
}

// shortWall is a wall of 3 m with four widths and four heights, the lower ones under a lowered part: what a room is filled
// with hundreds of times, under one ceiling after the other.
func shortWall() *Run {
	r := wall(3)
	r.Sizes, r.Limits = nil, []Limit{{From: 1103 * mm, To: 2410 * mm, Height: 700 * mm}}
	for _, w := range []length.Length{300, 450, 600, 900} {
		for _, h := range []length.Length{500, 660, 780, 900} {
			r.Sizes = append(r.Sizes, Size{w * mm, h * mm, money.Amount(w*h/1000) * unit / 2})
		}
	}
	return r
}

func BenchmarkShortWall(b *testing.B) {
	b.Run("cabinets", func(b *testing.B) { benchmark(b, shortWall()) })
	b.Run("over_a_sink", func(b *testing.B) {
		r := shortWall()
		r.Whole = []Span{{From: 1207 * mm, To: 1651 * mm}}
		benchmark(b, r)
	})
}
