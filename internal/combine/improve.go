package combine

// improve changes single ways of the best combination known while that makes it
// better.
func (s *search) improve() {
	if !s.known || len(s.ways)*len(s.stages) > improvable {
		return
	}
	for better := true; better; {
		better = false
		for k := range s.stages {
			better = s.improveStage(k) || better
		}
	}
}

// improvable is how many ways times things are worth improving one by one: it
// takes their square, and with many of them the search finds as good ones.
const improvable = 200_000

func (s *search) improveStage(k int) bool {
	best, better := s.best[k], false
	for w := s.stages[k].from; w < s.stages[k].to; w++ {
		s.best[k] = int32(w)
		if v, ok := s.total(); ok && v > s.floor && !s.onPath() {
			s.floor, best, better = v, int32(w), true
		}
	}
	s.best[k] = best
	return better
}

// onPath reports whether best is what the answer must differ from.
func (s *search) onPath() bool {
	if s.path == nil {
		return false
	}
	for k, w := range s.best {
		if s.ways[w].pick != s.path[s.stages[k].thing] {
			return false
		}
	}
	return true
}

// total is what best is worth; false where it cannot be.
func (s *search) total() (int64, bool) {
	s.sums, s.states = s.sums[:0], s.states[:0]
	for range s.trades {
		s.sums = append(s.sums, certain, 0)
	}
	for n := range s.joints {
		s.states = append(s.states, s.joints[n].none())
	}
	worth, at := s.base, s.lines.number(s.lines.others)
	for _, w := range s.best {
		way := &s.ways[w]
		worth, at = worth+way.worth, at.with(way.line)
		for _, c := range s.callsOf(way) {
			s.sums[2*c.trade] = miss(s.sums[2*c.trade], c.unmoved)
			s.sums[2*c.trade+1] += c.labour
		}
		for _, e := range s.effectsOf(way) {
			s.states[e.joint] = both(s.states[e.joint], e.state)
		}
	}
	for n := range s.trades {
		worth -= s.trades[n].charge(s.sums[2*n], s.sums[2*n+1])
	}
	if at > anyLine {
		worth += s.lines.worth
	}
	return s.addOutcomes(worth)
}

// addOutcomes adds what the joints come to.
func (s *search) addOutcomes(worth int64) (int64, bool) {
	for n := range s.joints {
		j := &s.joints[n]
		if j.first < 0 {
			continue // in base
		}
		outcome := j.outcome[s.states[n]]
		if outcome == impossible {
			return 0, false
		}
		worth += outcome
	}
	return worth, true
}
