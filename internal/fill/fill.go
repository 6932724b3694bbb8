package fill

// Solver fills runs one after the other, and keeps its memory from one to the next. Its zero value is ready.
type Solver struct{ memory memory }

// Fill finds the best ways to fill a run, the best first. The error is of type [Errors] where the run makes no sense,
// and of type [*Infeasible] where what it asks for cannot be had together.
func Fill(r *Run) ([]Answer, error) { return new(Solver).Fill(r) }

// Fill is [Fill] with the memory of the runs before.
func (s *Solver) Fill(r *Run) ([]Answer, error) {
	if wrong := check(r); len(wrong) > 0 {
		return nil, wrong
	}
	t := reduce(r)
	if wrong := t.checkPairs(); len(wrong) > 0 {
		return nil, wrong
	}
	b := t.best(&s.memory)
	if b.gain[b.begin] == impossible {
		return nil, s.relax(r)
	}
	return b.more().answers(max(1, r.Best)), nil
}

// answers are so many of the best answers, or as many as there are.
func (m *more) answers(want int) []Answer {
	var out []Answer
	for rank := range int32(want) {
		if _, ok := m.at(m.begin, rank); !ok {
			break
		}
		out = append(out, m.answer(rank))
	}
	if len(out) > 0 {
		out[len(out)-1].Unsought = len(out) < want && m.left <= 0
	}
	return out
}
