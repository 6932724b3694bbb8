package fill

import "railhead/internal/length"

// divide finds the segments and the gaps between them.
func (t *task) divide() {
	blocked := make([]bool, t.steps)
	for _, l := range t.r.Limits {
		for q := t.in(l.From); l.Height == 0 && q < t.in(l.To); q++ {
			blocked[q] = true
		}
	}
	for _, f := range t.fixed {
		for q := f.from; q < f.to; q++ {
			blocked[q] = false // what stays stands whatever is said
		}
	}
	t.segment = make([]int32, t.steps+1)
	for q := range t.segment {
		t.segment[q] = none
	}
	begin := int32(0)
	left := t.side(t.r.Ends[0])
	for q := int32(0); q < t.steps; q++ {
		if !blocked[q] {
			continue
		}
		from := q
		for q+1 < t.steps && blocked[q+1] {
			q++
		}
		t.segments = append(t.segments, segment{begin, from, [2]side{left, t.sideAt(from, 0)}})
		t.gaps = append(t.gaps, t.gap(from, q+1))
		begin, left = q+1, t.sideAt(q, 1)
	}
	t.segments = append(t.segments, segment{begin, t.steps, [2]side{left, t.side(t.r.Ends[1])}})
	for i, s := range t.segments {
		for q := s.from; q <= s.to; q++ {
			t.segment[q] = int32(i)
		}
	}
}

// sideAt is what a cabinet beside step q of a gap meets: the most that any limit there asks for.
func (t *task) sideAt(q int32, which int) side {
	at := t.length(q)
	meets := side{0, true}
	for _, l := range t.r.Limits {
		if l.Height == 0 && l.From <= at && at < l.To {
			s := t.side(l.Sides[which])
			meets.least, meets.open = max(meets.least, s.least), meets.open && s.open
		}
	}
	return meets
}

// gap is a gap with all that its pairs say.
func (t *task) gap(from, to int32) gap {
	var g gap
	for _, p := range t.r.Pairs {
		if t.length(from) <= p.From && p.To <= t.length(to) {
			g.paired, g.must = true, g.must || p.Must
			g.gain += int64(p.Worth) * t.share
		}
	}
	return g
}

// rooms finds how far each place is clear, and for each height how far a cabinet may reach from there.
func (t *task) rooms() {
	most := t.most()
	t.clear = make([]int32, t.steps+1)
	t.clear[t.steps] = t.steps
	for h := range t.heights {
		t.room = append(t.room, make([]int32, t.steps+1))
		t.room[h][t.steps] = t.steps
	}
	for q := t.steps - 1; q >= 0; q-- {
		t.clear[q] = q
		if most[q] > 0 {
			t.clear[q] = t.clear[q+1]
		}
		for h, height := range t.heights {
			t.room[h][q] = q
			if most[q] >= height {
				t.room[h][q] = t.room[h][q+1]
			}
		}
	}
}

// most is the greatest height that may newly stand over each step.
func (t *task) most() []length.Length {
	most := make([]length.Length, t.steps)
	for q := range most {
		most[q] = 1 << 62
	}
	for _, l := range t.r.Limits {
		for q := t.in(l.From); q < t.in(l.To); q++ {
			most[q] = min(most[q], l.Height)
		}
	}
	for _, f := range t.fixed {
		for q := f.from; q < f.to; q++ {
			most[q] = 0
		}
	}
	return most
}
