package layout

import (
	"cmp"
	"encoding/binary"
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/length"
	"railhead/internal/money"
)

// found is one way to fill the room.
type found struct {
	worth      money.Amount
	stand      [][]standing
	base, wall way
	frame      *frame // that it was found in; nil of several together
}

// frame is a choice of tall cabinets, with what the rest can be worth at most.
type frame struct {
	given
	tall  money.Amount
	base  []way
	free  []way        // wall rows with no lines to meet
	above money.Amount // the best of those: no line makes it worth more
	bound money.Amount
}

// search finds the best ways to fill the room. Parts of it that turn no corner into
// each other have nothing in common but the number of tall cabinets.
func (s *solver) search() (out []found, proven bool) {
	parts, most := s.parts(), s.room.Filling.MostTall
	if len(parts) == 1 {
		return s.searchIn(parts[0], 0, most)
	}
	all, proven := [][]found{{{stand: make([][]standing, len(s.rows[0]))}}}, true
	for _, walls := range parts {
		var part [][]found
		for n := range most + 1 {
			one, done := s.searchIn(walls, n, n)
			part, proven = append(part, one), proven && done
		}
		all = s.combined(all, part)
	}
	for _, one := range all {
		out = append(out, one...)
	}
	return s.keep(out), proven
}

// parts are the walls that are filled, grouped by the corners that rows turn.
func (s *solver) parts() (out [][]int) {
	seen := make([]bool, len(s.rows[0]))
	for _, w := range s.room.Filling.Walls {
		if seen[w] {
			continue
		}
		part := []int{w}
		seen[w] = true
		for i := 0; i < len(part); i++ {
			wall := &s.room.Kitchen.Room.Walls[part[i]]
			for _, beside := range []struct{ corner, wall int }{{part[i], wall.Next}, {wall.Prev, wall.Prev}} {
				if beside.wall >= 0 && !seen[beside.wall] && (s.turns(cabinet.Base, beside.corner) || s.turns(cabinet.Wall, beside.corner)) {
					seen[beside.wall] = true
					part = append(part, beside.wall)
				}
			}
		}
		slices.Sort(part)
		out = append(out, part)
	}
	return out
}

// combined are the best ways to have one of each part, by the number of tall cabinets.
func (s *solver) combined(a, b [][]found) [][]found {
	out := make([][]found, min(len(a)+len(b)-1, s.room.Filling.MostTall+1))
	for i := range a {
		for j := range b {
			if i+j >= len(out) {
				continue
			}
			for x := range a[i] {
				for y := range b[j] {
					out[i+j] = append(out[i+j], a[i][x].with(&b[j][y]))
				}
			}
		}
	}
	for n := range out {
		out[n] = s.keep(out[n])
	}
	return out
}

// with is both together, which are of different walls.
func (f *found) with(o *found) found {
	out := found{f.worth.Plus(o.worth), slices.Clone(f.stand), f.base.with(&o.base), f.wall.with(&o.wall), nil}
	for w := range o.stand {
		if len(o.stand[w]) > 0 {
			out.stand[w] = o.stand[w]
		}
	}
	return out
}

// searchIn fills some walls with so many tall cabinets. The tall ones are chosen
// first: each choice is bounded by its best base row and by its best wall row with no
// lines to meet, so that only those that may still count are looked at closely. Then
// each of the best base rows gives the lines for the wall row above it.
func (s *solver) searchIn(walls []int, least, most int) (out []found, proven bool) {
	frames := s.frames(walls, least, most)
	slices.SortStableFunc(frames, func(a, b frame) int { return cmp.Compare(b.bound, a.bound) })
	enough := func(bound money.Amount) bool { return len(out) == s.want && bound <= out[s.want-1].worth }
	for i := range frames {
		f := &frames[i]
		if enough(f.bound) {
			break
		}
		if len(out) > 0 && s.exhausted() {
			s.broken = true
			break
		}
		for _, base := range f.base {
			if enough(f.tall.Plus(base.worth).Plus(f.above)) {
				break
			}
			out = s.under(out, f, base)
		}
	}
	if s.room.Filling.Weights.BaseLineMiss > 0 {
		for i := range out {
			out[i] = s.slid(out[i])
		}
		out = s.keep(out)
	}
	return out, !s.broken
}

// under adds the best wall rows over one base row; and, where lines count, over the
// base rows that meet the joints of some of the best wall rows as far as they can: of
// those over this base row, and of those with no lines to meet.
func (s *solver) under(out []found, f *frame, base way) []found {
	above := s.over(f, base)
	out = s.add(out, f, base, above)
	if s.room.Filling.Weights.BaseLineMiss == 0 {
		return out
	}
	const some = 3
	for _, w := range slices.Concat(above[:min(some, len(above))], f.free[:min(some, len(f.free))]) {
		if met, ok := s.meeting(f, w); ok {
			out = s.add(out, f, met, s.over(f, met))
		}
	}
	return out
}

// over are the best wall rows over a base row.
func (s *solver) over(f *frame, base way) []way {
	g := f.given
	g.lines, g.named = s.lines(cabinet.Wall, base)
	return s.fillKind(cabinet.Wall, &g)
}

// meeting is the base row that meets a wall row's joints, without what that is worth.
func (s *solver) meeting(f *frame, wall way) (way, bool) {
	g := f.given
	g.lines, g.named = s.lines(cabinet.Base, wall)
	below := s.fillKind(cabinet.Base, &g)
	if len(below) == 0 {
		return way{}, false
	}
	out := below[0]
	out.each(func(l *link) { out.worth = out.worth.Minus(l.answer.Worth).Plus(bare(l.answer)) })
	return out, true
}

func (s *solver) add(out []found, f *frame, base way, above []way) []found {
	for _, w := range above {
		out = append(out, found{f.tall.Plus(base.worth).Plus(w.worth), f.stand, base, w, f})
	}
	return s.keep(out)
}

// keep sorts what was found by worth, and keeps as many as are wanted with different
// cabinets.
func (s *solver) keep(in []found) []found {
	slices.SortStableFunc(in, func(a, b found) int { return cmp.Compare(b.worth, a.worth) })
	seen, out := map[uint64]bool{}, in[:0]
	for _, f := range in {
		if name := f.name(); len(out) < s.want && !seen[name] {
			seen[name] = true
			out = append(out, f)
		}
	}
	return out
}

// name tells apart what was found by its cabinets: tall ones by their places, those of
// the rows in whatever order.
func (f *found) name() uint64 {
	out := f.base.name + f.wall.name
	for w := range f.stand {
		for i := range f.stand[w] {
			c := &f.stand[w][i].cabinet
			out += hashOf("tall", w, c.From, c.Width(), c.Height)
		}
	}
	return out
}

// frames are all choices of so many tall cabinets for some walls that leave the other
// rows possible.
func (s *solver) frames(walls []int, least, most int) (out []frame) {
	n := len(s.room.Kitchen.Room.Walls)
	on := make([][]towers, n)
	for _, w := range walls {
		on[w] = s.towersOn(w)
	}
	var choose func(at int, f frame, left int)
	choose = func(at int, f frame, left int) {
		switch {
		case len(out) > 0 && s.exhausted():
			s.broken = true
			return
		case at < len(walls):
			w := walls[at]
			for i, t := range on[w] {
				if len(t.stand) <= left {
					next := f
					next.towers, next.stand = slices.Clone(f.towers), slices.Clone(f.stand)
					next.towers[w], next.stand[w] = i, t.stand
					next.tall = f.tall.Plus(t.worth)
					choose(at+1, next, left-len(t.stand))
				}
			}
		case most-left >= least && s.bounded(&f):
			out = append(out, f)
		}
	}
	choose(0, frame{given: given{walls: walls, towers: make([]int, n), stand: make([][]standing, n)}}, most)
	return out
}

// bounded fills the rows of a frame; false where they cannot be filled.
func (s *solver) bounded(f *frame) bool {
	f.base = s.fillKind(cabinet.Base, &f.given)
	f.free = s.fillKind(cabinet.Wall, &f.given)
	if len(f.base) == 0 || len(f.free) == 0 {
		return false
	}
	f.above = f.free[0].worth
	f.bound = f.tall.Plus(f.base[0].worth).Plus(f.above)
	return true
}

// lines are what the joints of a kind's rows should meet, by wall: the edges of the
// other rows' cabinets, and of what stays.
func (s *solver) lines(kind cabinet.Kind, other way) (out [][]length.Length, named []string) {
	out, named = make([][]length.Length, len(s.rows[kind])), make([]string, len(s.rows[kind]))
	for w, r := range s.rows[kind] {
		if r != nil {
			out[w] = slices.Clone(r.Lines)
		}
	}
	other.each(func(l *link) {
		for _, p := range l.answer.Pieces {
			out[l.row.Wall] = append(out[l.row.Wall], p.At, p.At+p.Width)
		}
	})
	for w, r := range s.rows[kind] {
		if r == nil {
			continue
		}
		inside := slices.DeleteFunc(out[w], func(x length.Length) bool { return x <= 0 || x >= r.whole })
		slices.Sort(inside)
		out[w] = slices.Compact(inside)
		named[w] = nameOf(out[w])
	}
	return out, named
}

func nameOf(lines []length.Length) string {
	var b []byte
	for _, l := range lines {
		b = binary.AppendVarint(b, int64(l))
	}
	return string(b)
}
