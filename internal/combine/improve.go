package combine

// total is what a choice of ways by stage is worth; false where it cannot be.
func (t *task) total(ways []int32, sum []int64, states []uint16) (int64, bool) {
	left, labour := sum[:len(t.trades)], sum[len(t.trades):]
	for n := range t.trades {
		left[n], labour[n] = certain, 0
	}
	for n := range t.joints {
		states[n] = t.joints[n].none()
	}
	worth, at := t.base, t.lines.number(t.lines.others)
	for _, i := range ways {
		w := &t.ways[i]
		worth += w.worth
		at = at.with(w.line)
		for _, c := range t.callsOf(w) {
			left[c.trade] = miss(left[c.trade], c.unmoved)
			labour[c.trade] += c.labour
		}
		for _, e := range t.effects[w.effect:w.lastEnd] {
			states[e.joint] = both(states[e.joint], e.state)
		}
	}
	for n := range t.trades {
		if left[n] < certain || labour[n] > 0 {
			worth -= t.trades[n].charge(left[n], labour[n])
		}
	}
	for n := range t.joints {
		j := &t.joints[n]
		if j.first < 0 {
			continue
		}
		o := j.outcome[states[n]]
		if o == impossible {
			return 0, false
		}
		worth += o
	}
	if at > 0 {
		worth += t.lines.worth
	}
	return worth, true
}

func (s *search) improve() {
	if len(s.ways)*len(s.stages) > 2000 {
		return
	}
	sum := make([]int64, 2*len(s.trades))
	states := make([]uint16, len(s.joints))
	for better := true; better; {
		better = false
		for k := range s.stages {
			st := &s.stages[k]
			was := s.best[k]
			for w := st.from; w < st.to; w++ {
				s.best[k] = int32(w)
				if v, ok := s.total(s.best, sum, states); ok && v > s.floor {
					s.floor, was, better = v, int32(w), true
				}
			}
			s.best[k] = was
		}
	}
}
