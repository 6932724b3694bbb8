package combine

import "railhead/internal/money"

// Solver solves problems one after the other and keeps its memory for the next
// one. It is for one goroutine at a time. What it answers hangs on the problem
// alone.
type Solver struct {
	// Effort is how many labels (see the package) one problem may take, and so
	// bounds the time that it takes: a room of eight overheads takes about a hundred
	// of them, and a hundred thousand take some tenths of a second. 0 is as many as
	// it takes to be exact.
	Effort int

	search search
	proven bool
}

// Best is the best combination, the way for each thing, and what it is worth;
// false where nothing is possible. Of equals it is the first.
func (p *Problem) Best() (pick []int, value money.Amount, ok bool) { return new(Solver).Best(p) }

// Best is what [Problem.Best] is.
func (s *Solver) Best(p *Problem) (pick []int, value money.Amount, ok bool) { return s.solve(p, nil) }

// RunnerUp is the best combination that differs from pick somewhere.
func (s *Solver) RunnerUp(p *Problem, pick []int) (second []int, value money.Amount, ok bool) {
	switch {
	case !p.fits(pick):
		return s.solve(p, nil) // everything differs from it
	case len(pick) == 0:
		s.proven = true
		return nil, 0, false
	}
	return s.solve(p, pick)
}

// Proven reports whether the last answer is exact: always, unless Effort ended
// the search. Then the answer is the best combination found, and where it is none
// there may be one.
func (s *Solver) Proven() bool { return s.proven }

func (s *Solver) solve(p *Problem, path []int) ([]int, money.Amount, bool) {
	do := &s.search
	do.path, do.effort, s.proven = path, s.Effort, true
	if !do.prepare(p, path) {
		return nil, 0, false
	}
	if s.proven = do.solve(); !do.known {
		return nil, 0, false
	}
	return do.picks(), money.Amount(clamp(money.Amount(do.floor), int64(money.Most))), true
}

// picks is the best combination known, by things.
func (s *search) picks() []int {
	pick := make([]int, len(s.best))
	for k, w := range s.best {
		pick[s.stages[k].thing] = s.ways[w].pick
	}
	return pick
}
