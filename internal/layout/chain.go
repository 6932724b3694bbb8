package layout

import (
	"errors"

	"railhead/internal/cabinet"
	"railhead/internal/length"
	"railhead/internal/money"
)

// given is what is settled before a kind's rows are filled: which tall cabinets stand
// on each wall, and the lines that joints should meet.
type given struct {
	walls  []int             // that are filled
	towers []int             // by wall, into the solver's list for it
	stand  [][]standing      // by wall
	lines  [][]length.Length // by wall; nil where none count
	named  []string          // the lines, to tell them apart
}

// fillKind are the best ways to fill all rows of a kind.
func (s *solver) fillKind(kind cabinet.Kind, g *given) []way {
	out := []way{{}}
	seen := make([]bool, len(s.rows[kind]))
	for _, first := range g.walls {
		if s.rows[kind][first] == nil || seen[first] {
			continue
		}
		walls, closed := s.joined(kind, first)
		for _, w := range walls {
			seen[w] = true
		}
		out = s.both(out, s.chain(kind, walls, closed, g))
	}
	return out
}

// joined are the walls whose rows turn corners into each other, from left to right,
// and whether the last turns into the first.
func (s *solver) joined(kind cabinet.Kind, wall int) (walls []int, closed bool) {
	room := s.room.Kitchen.Room
	first := wall
	for {
		prev := room.Walls[first].Prev
		if prev < 0 || !s.turns(kind, prev) {
			break
		}
		if first = prev; first == wall {
			closed = true
			break
		}
	}
	walls = []int{first}
	for w := first; s.turns(kind, w); {
		if w = room.Walls[w].Next; w == first {
			break
		}
		walls = append(walls, w)
	}
	return walls, closed
}

// both are the best ways to have one of each.
func (s *solver) both(a, b []way) []way {
	var out []way
	for i := range a {
		for j := range b {
			out = append(out, a[i].with(&b[j]))
		}
	}
	return keep(out, s.many)
}

// chain fills rows that turn corners into each other. What one row does to the next
// hangs on the corner between them alone, so the best ways up to each way to turn a
// corner are enough. Where the last turns into the first, every way to turn that
// corner is tried.
func (s *solver) chain(kind cabinet.Kind, walls []int, closed bool, g *given) []way {
	if !closed {
		return s.along(kind, walls, nil, []*corner{nil}, g)
	}
	var out []way
	for _, c := range s.ways[turning{kind, walls[len(walls)-1]}] {
		out = append(out, s.along(kind, walls, c, []*corner{c}, g)...)
	}
	return keep(out, s.many)
}

// along fills rows from the first, which begins with a corner, to the last, which ends
// with one of some.
func (s *solver) along(kind cabinet.Kind, walls []int, begin *corner, end []*corner, g *given) []way {
	type state struct {
		at   *corner
		ways []way
	}
	states := []state{{begin, []way{{}}}}
	for i, w := range walls {
		next := end
		if i < len(walls)-1 {
			next = s.ways[turning{kind, w}]
		}
		var reached []state
		for _, c := range next {
			var all []way
			for _, from := range states {
				all = append(all, s.through(kind, w, ends{from.at, c}, from.ways, g)...)
			}
			if len(all) > 0 {
				reached = append(reached, state{c, keep(all, s.many)})
			}
		}
		states = reached
	}
	var out []way
	for _, one := range states {
		out = append(out, one.ways...)
	}
	return keep(out, s.many)
}

// through goes on along one more wall. A corner is counted with the wall before it.
func (s *solver) through(kind cabinet.Kind, wall int, e ends, before []way, g *given) []way {
	var worth money.Amount
	var name uint64
	if e[1] != nil {
		worth, name = e[1].sum, e[1].name
	}
	r, rows := s.rows[kind][wall], s.wall(kind, wall, e, g)
	s.Spent += costOfSteps(int64(len(before) * len(rows)))
	found := steps(before, rows, worth, name, s.many)
	out := make([]way, len(found))
	for i, one := range found {
		out[i] = way{one.worth, one.name, &link{before: before[one.way].last, ran: ran{r, e, rows[one.then].answer}, turn: e[1]}}
	}
	return out
}

// costOfSteps is about what choosing among steps takes, in sizes at places: measured.
func costOfSteps(n int64) int64 { return 100 + 8*n + n*n/16 }

// cornerWorth is what turning a corner some way is worth by itself.
func (s *solver) cornerWorth(c *corner) money.Amount {
	var a account
	s.cornered(&Answer{}, &a, c)
	_, worth := a.parts()
	if c.cabinet != nil {
		worth = worth.Plus(s.toCeiling(s.rows[c.cabinet.Kind][c.cabinet.Wall], c.cabinet.Width(), c.cabinet.Height))
	}
	return worth
}

// wall are the best ways to fill one row.
func (s *solver) wall(kind cabinet.Kind, wall int, e ends, g *given) []ranked {
	name := wallKey{kind: kind, wall: wall, ends: e, towers: g.towers[wall]}
	var lines []length.Length
	if g.lines != nil {
		lines, name.lines = g.lines[wall], g.named[wall]
	}
	if have, ok := s.walls[name]; ok {
		return have
	}
	if s.rows[kind][wall].crowded(e, g.stand[wall]) {
		s.walls[name] = nil
		return nil
	}
	found := s.fill(s.rows[kind][wall].run(e, g.stand[wall], lines, s.many))
	s.broken = s.broken || errors.Is(found.wrong, errTooMuch)
	var out []ranked
	for i := range found.answers {
		out = append(out, named(s.rows[kind][wall], &found.answers[i]))
	}
	s.walls[name] = out
	return out
}
