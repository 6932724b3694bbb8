package fill

// tracer follows the ways of one answer and puts down what they place.
type tracer struct {
	*more
	a Answer
	c counts

	x    int32
	as   how   // what lies before what comes next
	from int32 // where that begins
	new  bool  // behind a new cabinet
	high int32 // behind a cabinet of this height, or none
}

// answer is the answer of a rank.
func (m *more) answer(rank int32) Answer {
	t := &tracer{more: m, x: m.begin, high: none}
	for t.x != m.end {
		w, _ := m.at(t.x, rank)
		t.step(w.move)
		t.x, rank = w.move.to, w.rank
	}
	t.c.parts(t)
	return t.a
}

// step puts down what one move places.
func (t *tracer) step(m move) {
	if m.how != same {
		t.as = m.how
	}
	switch {
	case m.sign == t.keeps():
		f := &t.fixed[m.to-t.stayed]
		t.piece(f.from, f.to, f.height, false)
		t.a.Pieces = append(t.a.Pieces, t.r.Fixed[f.index].staying())
	case m.sign == t.passes():
		t.pass(m.to)
	case m.to == t.end:
		t.between(t.steps, false)
	case m.sign != none:
		t.newPiece(m)
	}
}

func (t *tracer) newPiece(m move) {
	s := &t.sizes[m.sign]
	at := t.placeOf(t.x)
	t.piece(at, at+s.width, s.height, true)
	of := t.r.Sizes[s.index]
	t.a.Pieces = append(t.a.Pieces, Piece{t.length(at), of.Width, of.Height, s.index})
	t.c.size(of.Worth)
	if m.to >= t.across {
		i := (m.to - t.across) / (int32(len(t.sizes)) + 1)
		n, _ := t.near(i, 1, s.height)
		t.as = n.as
	}
}

// placeOf is where a new cabinet begins that a state leads to.
func (t *tracer) placeOf(x int32) int32 {
	if x < t.stayed {
		return x % t.places
	}
	n := int32(len(t.sizes)) + 1
	i, s := (x-t.match)/n, (x-t.match)%n
	near, _ := t.near(i+1, 0, t.sizes[s].height)
	return t.segments[i+1].from + near.far
}

// pass ends one segment and begins the next.
func (t *tracer) pass(to int32) {
	var i int32
	if to >= t.match {
		i = (to - t.match) / (int32(len(t.sizes)) + 1)
		t.c.pair(t.gaps[i].gain / t.share)
	} else {
		i = to - t.begin - 1
	}
	t.between(t.segments[i].to, false)
	t.from, t.new, t.high = t.segments[i+1].from, false, none
}

func (t *tracer) piece(from, to, height int32, isNew bool) {
	t.between(from, isNew)
	if t.high != none && t.as == nothing {
		t.c.joint(t.onLine[from])
	}
	if t.high != none && t.high != height && t.as != left {
		t.c.change()
	}
	t.from, t.new, t.high = to, isNew, height
}

// between puts down what lies between what was last and what begins at q.
func (t *tracer) between(q int32, isNew bool) {
	from := t.from
	switch t.as {
	case filled:
		t.a.Fillers = append(t.a.Fillers, t.span(from, q))
		t.c.filler(int(q-from) * t.times)
	case left:
		from, q = t.panels(from, q, isNew)
		if from < q {
			t.a.Open = append(t.a.Open, t.span(from, q))
			t.c.open(int(q-from) * t.times)
		}
	}
}

// panels puts panels on the new sides about an open stretch, and is what is left of it.
func (t *tracer) panels(from, q int32, isNew bool) (int32, int32) {
	if t.new {
		t.a.Panels = append(t.a.Panels, t.span(from, from+t.panel))
		from += t.panel
	}
	if isNew {
		q -= t.panel
		t.a.Panels = append(t.a.Panels, t.span(q, q+t.panel))
	}
	return from, q
}

func (t *tracer) span(from, to int32) Span { return Span{t.length(from), t.length(to)} }

func (p Piece) staying() Piece { return Piece{p.At, p.Width, p.Height, Stays} }
