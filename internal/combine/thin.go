package combine

import "slices"

// thin drops the ways to do the stage's thing that another way makes needless
// whatever is done elsewhere. A way that the answer must not follow makes no
// other needless.
func (t *task) thin(st *stage, path int) {
	from := st.from
	t.doomed = t.doomed[:0]
	for b := st.from; b < st.to; b++ {
		doomed := false
		for a := st.from; a < st.to && !doomed && t.ways[b].pick != path; a++ {
			doomed = a != b && t.ways[a].pick != path && t.needless(&t.ways[a], &t.ways[b], a < b)
		}
		t.doomed = append(t.doomed, doomed)
	}
	for b := st.from; b < st.to; b++ {
		if !t.doomed[b-st.from] {
			t.ways[from] = t.ways[b]
			from++
		}
	}
	st.to = from
	t.ways = t.ways[:from]
}

// needless reports whether way b is never better than way a, nor as good where b
// comes first.
func (t *task) needless(a, b *way, first bool) bool {
	spare := a.worth - b.worth - t.lines.lead(a.line, b.line)
	if spare < 0 || !slices.Equal(t.given[a.effect:a.lastEnd], t.given[b.effect:b.lastEnd]) {
		return false
	}
	as, bs := t.callsOf(a), t.callsOf(b)
	for _, c := range as {
		other := callOf(bs, c.trade)
		spare -= t.trades[c.trade].worse(c.unmoved, c.labour, other.unmoved, other.labour)
	}
	// What only b calls for may cost nothing more: others may call for it too.
	return spare > 0 || spare == 0 && first
}

// callOf is the call for a trade, or one that never comes.
func callOf(calls []call, trade int) call {
	for _, c := range calls {
		if c.trade == trade {
			return c
		}
	}
	return call{trade, certain, 0}
}
