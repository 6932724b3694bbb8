package fill

import (
	"fmt"
	"math"
	"testing"

	"railhead/internal/length"
	"railhead/internal/mip"
	"railhead/internal/money"
)

// network writes a run as the flow of one unit from the beginning to the end of the search's own graph: a program that
// needs no branching, the kindest to a solver that there is. It proves nothing of the model; it is for the clock. The
// objective is in tenths of a unit of money.
func network(name string, r *Run) *mip.Model {
	b := reduce(r).best(&memory{})
	m := &mip.Model{Name: name}
	balance := map[int32]*mip.Sum{b.begin: {Constant: 1}}
	reached := []int32{b.begin}
	for len(reached) > 0 {
		x := reached[0]
		reached = reached[1:]
		for _, to := range b.moves(nil, x) {
			if b.gain[to.to] == impossible {
				continue
			}
			flow := m.Number(inTenths(to.gain, b.share))
			balance[x].Plus(-1, flow)
			if balance[to.to] == nil {
				balance[to.to] = &mip.Sum{}
				reached = append(reached, to.to)
			}
			balance[to.to].Plus(1, flow)
		}
	}
	balance[b.end].Constant--
	for x := range b.end + 1 {
		if balance[x] != nil {
			m.Equals(balance[x], 0)
		}
	}
	return m
}

const tenth = money.Unit / 10

// inTenths takes the share off that settles ties.
func inTenths(gain, share int64) int64 {
	return int64(math.Round(float64(gain) / float64(share) / float64(tenth)))
}

// inSteps is the wall of the benchmarks with everything on a grid, and its money in tenths of a unit.
func inSteps(metres int, grid length.Length) *Run {
	r := wall(metres)
	r.Grid, r.Length = grid, r.Length/grid*grid
	r.Panel, r.LeastFiller = grid, max(grid, 20*mm)
	r.Ends = [2]End{{Least: 50 * mm}, {Least: 50 * mm}}
	r.Weights.FillerPerGrid, r.Weights.OpenPerGrid = money.Amount(grid/mm)*unit/2, money.Amount(grid/mm)*unit
	for i := range r.Sizes {
		r.Sizes[i].Worth = r.Sizes[i].Worth / unit * unit
	}
	return r
}

// A wall of 6 m with twelve widths and three heights, filled and (where it is installed) as a program for HiGHS, in one
// run.
func BenchmarkBesideHiGHS(b *testing.B) {
	solver := mip.Installed(b)
	for _, grid := range []length.Length{50 * mm, 10 * mm} {
		b.Run(fmt.Sprint(grid), func(b *testing.B) {
			r := inSteps(6, grid)
			var worth money.Amount
			for b.Loop() {
				answers, err := Fill(r)
				if err != nil {
					b.Fatal(err)
				}
				worth = answers[0].Worth
			}
			each := b.Elapsed().Seconds() / float64(b.N)
			if solver == nil {
				return
			}
			got := solver.Solve(b, network("warm", inSteps(2, 50*mm)), network("wall", r))[1]
			if math.Round(got.Objective) != float64(worth/tenth) {
				b.Fatalf("worth %v, HiGHS %v", worth, got)
			}
			b.ReportMetric(1000*got.Seconds, "HiGHS-ms")
			b.ReportMetric(got.Seconds/each, "times")
		})
	}
}
