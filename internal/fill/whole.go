package fill

// keepWhole has nothing begin or end, and nothing be filled or left open, where one cabinet is to stand. Then nothing but
// a cabinet can be there, and it stands over all of it.
func (t *task) keepWhole() {
	if len(t.r.Whole) == 0 {
		return
	}
	over := make([]bool, t.steps+1)
	for _, s := range t.r.Whole {
		s = t.r.around(s)
		from, to := t.in(s.From), t.in(s.To)
		for q := from; q < to; q++ {
			over[q] = true
		}
		for q := from + 1; q < to; q++ {
			t.segment[q] = none
		}
	}
	for q := t.steps - 1; q >= 0; q-- {
		switch {
		case over[q]:
			t.clear[q] = q
		case t.clear[q] > q:
			t.clear[q] = t.clear[q+1]
		}
	}
	for i := range t.gaps {
		for q := t.segments[i].to; q < t.segments[i+1].from; q++ {
			t.gaps[i].whole = t.gaps[i].whole || over[q]
		}
	}
}
