package layout

import (
	"cmp"
	"encoding/binary"
	"fmt"
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/fill"
	"railhead/internal/length"
	"railhead/internal/money"
)

// found is one way to fill the room.
type found struct {
	worth      money.Amount
	stand      [][]standing
	base, wall way
}

// frame is a choice of tall cabinets, with what the rest can be worth at most.
type frame struct {
	given
	tall  money.Amount
	base  []way
	above money.Amount // the wall row without lines to meet: no line makes it worth more
	bound money.Amount
	name  string // the places of its tall cabinets
	// The bound of a frame that is not filled is a taller one's, with what being lower
	// may be worth.
	filled, possible bool
}

// search finds the best ways to fill the room. The tall cabinets are chosen first:
// each choice is bounded by its best base row and by its best wall row with no lines
// to meet, so that only those that may still count are looked at closely. Then each
// of the best base rows gives the lines for the wall row above it.
func (s *solver) search() (out []found, proven bool) {
	frames := s.frames()
	enough := func(bound money.Amount) bool { return len(out) == s.want && bound <= out[s.want-1].worth }
	for len(frames) > 0 {
		slices.SortStableFunc(frames, func(a, b *frame) int { return cmp.Compare(b.bound, a.bound) })
		f := frames[0]
		switch {
		case enough(f.bound):
			return out, true
		case len(out) > 0 && s.exhausted():
			return out, false
		case !f.filled:
			if !s.bounded(f) {
				frames = frames[1:]
			}
			continue
		}
		frames = frames[1:]
		for _, base := range f.base {
			if enough(f.tall.Plus(base.worth).Plus(f.above)) {
				break
			}
			out = s.under(out, f, base)
		}
	}
	return out, true
}

// under adds the best wall rows over one base row; and, where lines count, over the
// base row that meets the joints of the best of those as far as it can.
func (s *solver) under(out []found, f *frame, base way) []found {
	above := s.over(f, base)
	out = s.add(out, f, base, above)
	if len(above) > 0 && s.room.Filling.Weights.BaseLineMiss > 0 {
		if met, ok := s.meeting(f, above[0]); ok {
			out = s.add(out, f, met, s.over(f, met))
		}
	}
	return out
}

// over are the best wall rows over a base row.
func (s *solver) over(f *frame, base way) []way {
	g := f.given
	g.lines = s.lines(cabinet.Wall, base)
	return s.fillKind(cabinet.Wall, &g)
}

// meeting is the base row that meets a wall row's joints, without what that is worth.
func (s *solver) meeting(f *frame, wall way) (way, bool) {
	g := f.given
	g.lines = s.lines(cabinet.Base, wall)
	below := s.fillKind(cabinet.Base, &g)
	if len(below) == 0 {
		return way{}, false
	}
	out := below[0]
	for _, one := range out.runs {
		for _, p := range one.answer.Parts {
			if p.Name == fill.LineMisses {
				out.worth = out.worth.Minus(p.Worth)
			}
		}
	}
	return out, true
}

func (s *solver) add(out []found, f *frame, base way, above []way) []found {
	for _, w := range above {
		out = append(out, found{f.tall.Plus(base.worth).Plus(w.worth), f.stand, base, w})
	}
	slices.SortStableFunc(out, func(a, b found) int { return cmp.Compare(b.worth, a.worth) })
	seen := map[string]bool{}
	out = slices.DeleteFunc(out, func(one found) bool {
		name := one.name()
		defer func() { seen[name] = true }()
		return seen[name]
	})
	return out[:min(s.want, len(out))]
}

// name tells apart what was found by its cabinets: tall ones by their places, those of
// the rows in whatever order.
func (f *found) name() string {
	var all []string
	for w := range f.stand {
		for i := range f.stand[w] {
			c := &f.stand[w][i].cabinet
			all = append(all, fmt.Sprint(w, c.From, c.Width(), c.Height))
		}
	}
	slices.Sort(all)
	return fmt.Sprint(all, f.base.name, f.wall.name)
}

// frames are all choices of tall cabinets. Their rows are filled for the tallest in
// each set of places; the others take their bound from those.
func (s *solver) frames() (out []*frame) {
	n := len(s.room.Kitchen.Room.Walls)
	walls, most := s.room.Filling.Walls, s.room.Filling.MostTall
	on := make([][]towers, n)
	for _, w := range walls {
		on[w] = s.towersOn(w, most)
	}
	tallest := map[string]*frame{}
	var choose func(at int, f frame, left int)
	choose = func(at int, f frame, left int) {
		if at == len(walls) {
			out = append(out, &f)
			if have := tallest[f.name]; have == nil || f.tall > have.tall {
				tallest[f.name] = &f
			}
			return
		}
		w := walls[at]
		for i, t := range on[w] {
			if len(t.stand) > left {
				continue
			}
			next := f
			next.towers, next.stand = slices.Clone(f.towers), slices.Clone(f.stand)
			next.towers[w], next.stand[w] = i, t.stand
			next.tall, next.name = f.tall.Plus(t.worth), f.name+t.name+"/"
			choose(at+1, next, left-len(t.stand))
		}
	}
	choose(0, frame{given: given{towers: make([]int, n), stand: make([][]standing, n)}}, most)
	some := false
	for _, f := range out {
		f.bound = money.Most
		if tallest[f.name] == f && !(some && s.exhausted()) {
			f.possible = s.bounded(f)
			some = some || f.possible
		}
	}
	for _, f := range out {
		if top := tallest[f.name]; top != f && top.possible {
			f.bound = top.bound.Minus(top.tall.Minus(f.tall)).Plus(s.lowered(f))
		}
	}
	return slices.DeleteFunc(out, func(f *frame) bool { return f.filled && !f.possible })
}

// lowered is what the rows gain at most where tall cabinets end lower: beside each of
// them a change of height, and what equal neighbours are worth.
func (s *solver) lowered(f *frame) (out money.Amount) {
	for w, stand := range f.stand {
		if len(stand) == 0 {
			continue
		}
		out = out.Plus(s.room.Filling.Weights.HeightChange * money.Amount(2*len(stand)))
		if r := s.rows[cabinet.Wall][w]; r != nil {
			for _, p := range r.pairs {
				out = out.Plus(p.Worth)
			}
		}
	}
	return out
}

// bounded fills the rows of a frame; false where they cannot be filled.
func (s *solver) bounded(f *frame) bool {
	f.filled = true
	f.base = s.fillKind(cabinet.Base, &f.given)
	above := s.fillKind(cabinet.Wall, &f.given)
	if len(f.base) == 0 || len(above) == 0 {
		return false
	}
	f.above = above[0].worth
	f.bound = f.tall.Plus(f.base[0].worth).Plus(f.above)
	return true
}

// lines are what the joints of a kind's rows should meet, by wall: the edges of the
// other rows' cabinets, and of what stays.
func (s *solver) lines(kind cabinet.Kind, other way) [][]length.Length {
	out := make([][]length.Length, len(s.rows[kind]))
	for w, r := range s.rows[kind] {
		if r == nil {
			continue
		}
		lines := slices.Clone(r.Lines)
		for _, one := range other.runs {
			if one.row.Wall != w {
				continue
			}
			for _, p := range one.answer.Pieces {
				lines = append(lines, p.At, p.At+p.Width)
			}
		}
		lines = slices.DeleteFunc(lines, func(x length.Length) bool { return x <= 0 || x >= r.whole })
		slices.Sort(lines)
		out[w] = slices.Compact(lines)
	}
	return out
}

func nameOf(lines []length.Length) string {
	var b []byte
	for _, l := range lines {
		b = binary.AppendVarint(b, int64(l))
	}
	return string(b)
}
