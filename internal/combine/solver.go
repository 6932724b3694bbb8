package combine

import (
	"math"

	"railhead/internal/money"
)

// Solver solves problems one after the other with the same memory.
type Solver struct{ s search }

// Best is the best combination.
func (p *Problem) Best() ([]int, money.Amount, bool) { return new(Solver).Best(p) }

// RunnerUp is the best that differs.
func (p *Problem) RunnerUp(pick []int) ([]int, money.Amount, bool) {
	return new(Solver).RunnerUp(p, pick)
}

// Best is the best combination.
func (v *Solver) Best(p *Problem) ([]int, money.Amount, bool) { return v.solve(p, nil) }

// RunnerUp is the best that differs.
func (v *Solver) RunnerUp(p *Problem, pick []int) ([]int, money.Amount, bool) {
	if !p.fits(pick) {
		pick = nil
	}
	return v.solve(p, pick)
}

func (v *Solver) solve(p *Problem, path []int) ([]int, money.Amount, bool) {
	s := &v.s
	s.path = path
	s.labels = 0
	s.known = false
	if !s.prepare(p, path) {
		return nil, 0, false
	}
	s.bound.tune(&s.task, nil)
	s.bound.prepare(&s.task)
	if !s.run(1) && s.known {
		s.improve()
	}
	for _, width := range []int{64, 1024, 1 << 15, math.MaxInt} {
		if s.run(width) {
			break
		}
	}
	if !s.known {
		return nil, 0, false
	}
	pick := make([]int, len(s.stages))
	for k, w := range s.best {
		pick[s.stages[k].thing] = s.ways[w].pick
	}
	return pick, money.Amount(clamp(money.Amount(s.floor), int64(money.Most))), true
}

func (s *search) retune() {
	if !s.known {
		return
	}
	sunk := make([]bool, len(s.trades))
	for _, w := range s.best {
		for _, c := range s.callsOf(&s.ways[w]) {
			sunk[c.trade] = sunk[c.trade] || c.unmoved < certain
		}
	}
	s.bound.tune(&s.task, sunk)
	s.bound.prepare(&s.task)
}
