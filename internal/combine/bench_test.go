package combine

import (
	"math/rand/v2"
	"testing"

	"railhead/internal/belief"
	"railhead/internal/money"
)

// many problems of a kind, so that no single one decides.
func many(draw func(*rand.Rand) *Problem) []*Problem {
	var all []*Problem
	for seed := range uint64(50) {
		all = append(all, draw(rand.New(rand.NewPCG(20, seed))))
	}
	return all
}

func bench(b *testing.B, draw func(*rand.Rand) *Problem) {
	b.Helper()
	all := many(draw)
	var s Solver
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		if _, _, ok := s.Best(all[i%len(all)]); !ok {
			b.Fatal("nothing is possible")
		}
	}
}

func BenchmarkRoomOf8(b *testing.B) {
	bench(b, func(r *rand.Rand) *Problem { return room(r, 8) })
}

func BenchmarkRoomOf20(b *testing.B) {
	bench(b, func(r *rand.Rand) *Problem { return room(r, 20) })
}

func of(things, ways int) func(*rand.Rand) *Problem {
	return func(r *rand.Rand) *Problem {
		sh := shape{things: things, ways: ways, trades: 8, worth: 1e7, labour: 2e6, callOut: 1e6, minimum: 2e6, calls: 0.3, perhaps: 0.4, full: true}
		return sh.draw(r)
	}
}

func Benchmark8x6(b *testing.B)   { bench(b, of(8, 6)) }
func Benchmark8x7(b *testing.B)   { bench(b, of(8, 7)) }
func Benchmark100x7(b *testing.B) { bench(b, of(100, 7)) }
func Benchmark300x7(b *testing.B) { bench(b, of(300, 7)) }

// Minimum charges that several jobs fill, worth that goes with labour: the hard
// kind of eight things.
func Benchmark8x7Hard(b *testing.B) {
	bench(b, func(r *rand.Rand) *Problem {
		sh := shape{things: 8, ways: 7, trades: 8, worth: 5e6, labour: 2e6, callOut: 3e6, minimum: 5e6, calls: 0.3, perhaps: 0.6, forLabour: true, full: true}
		return sh.draw(r)
	})
}

func Benchmark8x7JointOfAll(b *testing.B) {
	bench(b, func(r *rand.Rand) *Problem {
		p := of(8, 7)(r)
		for i := range p.Things {
			for w := range p.Things[i].Ways {
				p.Things[i].Ways[w].Effects = []Effect{{0, uint8(r.IntN(6)), r.IntN(4) == 0}}
			}
		}
		step := number(r, 2e6)
		p.Joints = []Joint{{9, func(limit uint8, wish bool) (m money.Amount, ok bool) {
			if wish {
				m = -3e6
			}
			return m + step*money.Amount(limit), true
		}}}
		return p
	})
}

func BenchmarkRunnerUp(b *testing.B) {
	all := many(func(r *rand.Rand) *Problem { return room(r, 8) })
	var s Solver
	var picks [][]int
	for _, p := range all {
		pick, _, _ := s.Best(p)
		picks = append(picks, pick)
	}
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		s.RunnerUp(all[i%len(all)], picks[i%len(all)])
	}
}

// The same room again and again with one number changed, as when thresholds are
// looked for.
func BenchmarkSolvedAgain(b *testing.B) {
	p := room(rand.New(rand.NewPCG(21, 1)), 8)
	was := p.Things[3].Ways[1].Calls[4].Chance
	var s Solver
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		p.Things[3].Ways[1].Calls[4].Chance = (was + belief.Chance(i)*1_000_000) % belief.Certain
		s.Best(p)
	}
}
