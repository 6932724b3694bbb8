package layout

import (
	"errors"

	"railhead/internal/cabinet"
	"railhead/internal/fill"
	"railhead/internal/length"
)

// Solver fills rooms. It keeps what it found of runs, so that rooms that differ in
// little take little. Its zero value is ready; it is for one goroutine.
type Solver struct {
	runs   fill.Solver
	filled map[string]filled
	// Spent is what was looked for so far, in sizes at places. Effort bounds it: where it
	// is reached, what was found until then is answered, and at twice that nothing more
	// is looked for. 0 means no bound.
	Spent, Effort int64
	// Stop, where it is given, is asked now and then whether to give up.
	Stop func() bool
}

// Stopped reports whether to give up.
func (s *Solver) Stopped() bool { return s.Stop != nil && s.Stop() }

// errTooMuch is that a run would take more than may be spent on it.
var errTooMuch = errors.New("layout.run.too_much")

// filled is a run with the best ways to fill it, or why it cannot be.
type filled struct {
	answers []fill.Answer
	wrong   error
}

func (s *Solver) fill(r *fill.Run) filled {
	name := key(r)
	if have, ok := s.filled[name]; ok {
		return have
	}
	if s.filled == nil {
		s.filled = map[string]filled{}
	}
	cost := costOf(r)
	if s.Stopped() || s.Effort > 0 && (s.Spent > 2*s.Effort || cost > s.Effort/4) {
		return filled{wrong: errTooMuch}
	}
	s.Spent += cost
	answers, err := s.runs.Fill(r)
	s.filled[name] = filled{answers, err}
	return s.filled[name]
}

// costOf is about what filling a run takes, in sizes at places: a place costs as much as
// so many sizes beside them, each answer the more the more there are, and long runs,
// which no longer lie close in memory, more for each place. All measured.
func costOf(r *fill.Run) int64 {
	const beside, near = 40, 20_000
	places := int64(r.Places())
	return places * int64(len(r.Sizes)+beside+r.Best+r.Best*r.Best/3) * (near + places) / near
}

func (s *Solver) exhausted() bool { return s.Effort > 0 && s.Spent > s.Effort }

// solver is one room being filled.
type solver struct {
	*Solver
	room   *Room
	grid   length.Length
	want   int
	many   int                   // ways that are kept of every row: no fewer than are wanted
	rows   [3][]*row             // by kind and wall; nil where none is asked for
	broken bool                  // some row was not filled for what it would take
	ways   map[turning][]*corner // how to turn the corners that rows turn
	walls  map[wallKey][]ranked
}

// turning is the corner at the right end of a wall, for the rows of a kind.
type turning struct {
	kind cabinet.Kind
	wall int
}

// usualWays is how many of the best ways are kept of every row, even for one answer:
// base rows of equal worth give the wall row other lines.
const usualWays = 5

// Best are the best ways to fill a room, the best first, so many at most; and, where
// there is none, what clashes. Proven is whether none that is better was passed over.
func (s *Solver) Best(room *Room, want int) (out []Answer, clashes []Clash, proven bool) {
	one := &solver{Solver: s, room: room, grid: gridOf(room.Kitchen, room.Filling), want: max(1, want), many: max(usualWays, want), walls: map[wallKey][]ranked{}, ways: map[turning][]*corner{}}
	one.prepare()
	found, proven := one.search()
	for i := range found {
		out = append(out, one.answer(&found[i]))
	}
	if len(out) == 0 {
		clashes = one.why()
	}
	return out, clashes, proven
}

// prepare readies every row that is asked for, and the corners that they turn.
func (s *solver) prepare() {
	k, f := s.room.Kitchen, s.room.Filling
	for kind := range s.rows {
		s.rows[kind] = make([]*row, len(k.Room.Walls))
		if !f.Asks(cabinet.Kind(kind)) {
			continue
		}
		for _, w := range f.Walls {
			s.rows[kind][w] = s.row(w, cabinet.Kind(kind))
		}
	}
	for _, kind := range []cabinet.Kind{cabinet.Wall, cabinet.Base} {
		for _, w := range f.Walls {
			next := k.Room.Walls[w].Next
			if s.rows[kind][w] == nil || !s.asked(next) {
				continue
			}
			if left, right := s.rows[kind][w], s.rows[kind][next]; meet(left, right) {
				s.ways[turning{kind, w}] = s.corners(left, right)
			}
		}
	}
}

// turns reports whether the rows of a kind turn the corner at a wall's right end.
func (s *solver) turns(kind cabinet.Kind, wall int) bool { return s.ways[turning{kind, wall}] != nil }

// meet reports whether two rows come near each other in the corner between them, with
// nothing there that stays and so settles it.
func meet(left, right *row) bool {
	near := 2 * left.Depth
	return left.open(left.Length-near, left.Length) && right.open(0, near) &&
		!left.kept(left.Length-near, left.Length) && !right.kept(0, near)
}

// open reports whether anything new may stand somewhere over a stretch, kept whether
// anything stays there.
func (r *row) open(from, to length.Length) bool {
	for _, s := range r.stretches {
		if s.Levels > 0 && s.From < to && from < s.To {
			return true
		}
	}
	return false
}

func (r *row) kept(from, to length.Length) bool {
	for _, p := range r.fixed {
		if p.At < to && from < p.At+p.Width {
			return true
		}
	}
	return false
}

// wallKey names a row with everything that its run hangs on.
type wallKey struct {
	kind   cabinet.Kind
	wall   int
	ends   ends
	towers int
	lines  string
}
