package layout

import (
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/fill"
	"railhead/internal/length"
	"railhead/internal/money"
)

// Base cabinets with room to spare stand as far to the left as they may. Where a joint
// of the wall row misses their edges, some of them may be slid to meet it: all from
// one on that nothing touches from the left.

// slides is how often what was found is slid further.
const slides = 8

// slid is what was found with base cabinets slid for the better, as far as that goes.
func (s *solver) slid(f found) found {
	for range slides {
		better, ok := s.slideOnce(&f)
		if !ok || s.exhausted() {
			break
		}
		f = better
	}
	return f
}

// slideOnce is the best that one slide does; false where none is for the better. It
// is for the joints of the wall row as it is, and as it would be with no lines to meet.
func (s *solver) slideOnce(f *found) (best found, ok bool) {
	const some = 3
	lines, _ := s.lines(cabinet.Wall, f.base)
	aims := append([]way{f.wall}, f.frame.free[:min(some, len(f.frame.free))]...)
	f.base.each(func(below *link) {
		var joints []length.Length
		for i := range aims {
			aims[i].each(func(above *link) {
				if above.row.Wall == below.row.Wall {
					joints = append(joints, missed(above.answer, lines[above.row.Wall])...)
				}
			})
		}
		slices.Sort(joints)
		for _, t := range shifts(below.answer, slices.Compact(joints)) {
			if one, better := s.shifted(f, below, t); better && (!ok || one.worth > best.worth) {
				best, ok = one, true
			}
		}
	})
	return best, ok
}

// missed are the joints of a wall row that meet no line.
func missed(a *fill.Answer, lines []length.Length) (out []length.Length) {
	for i := 1; i < len(a.Pieces); i++ {
		joint := a.Pieces[i].At
		if a.Pieces[i-1].At+a.Pieces[i-1].Width == joint && !slices.Contains(lines, joint) {
			out = append(out, joint)
		}
	}
	return out
}

// shift keeps new cabinets off a stretch, so that what begins there begins behind it.
type shift struct{ from, to length.Length }

// shifts are those that bring an edge of a base row under a joint.
func shifts(a *fill.Answer, joints []length.Length) (out []shift) {
	for i, first := range a.Pieces {
		if i > 0 && a.Pieces[i-1].At+a.Pieces[i-1].Width == first.At || first.Size == fill.Stays {
			continue
		}
		for _, p := range a.Pieces[i:] {
			for _, x := range joints {
				for _, edge := range []length.Length{p.At, p.At + p.Width} {
					if t := (shift{first.At, first.At + x - edge}); t.from < t.to && !slices.Contains(out, t) {
						out = append(out, t)
					}
				}
			}
		}
	}
	return out
}

// shifted is what was found with one base row shifted, and the wall row filled over it
// anew; false where that is not for the better.
func (s *solver) shifted(f *found, below *link, t shift) (found, bool) {
	g := f.frame.given
	if below.row.whole < t.to || s.exhausted() {
		return found{}, false
	}
	run := below.row.run(below.ends, g.stand[below.row.Wall], nil, 1)
	run.Limits = append(run.Limits, fill.Limit{From: t.from, To: t.to, Height: 1})
	moved := s.fill(run)
	if len(moved.answers) == 0 || bare(below.answer).Minus(bare(&moved.answers[0])) >= s.room.Filling.Weights.BaseLineMiss {
		return found{}, false
	}
	base := f.base.replaced(below, &moved.answers[0])
	above := s.over(f.frame, base)
	if len(above) == 0 {
		return found{}, false
	}
	out := found{f.frame.tall.Plus(base.worth).Plus(above[0].worth), f.stand, base, above[0], f.frame}
	return out, out.worth > f.worth
}

// bare is what a base row is worth without what it meets.
func bare(a *fill.Answer) money.Amount {
	out := a.Worth
	for _, p := range a.Parts {
		if p.Name == fill.LineMisses {
			out = out.Minus(p.Worth)
		}
	}
	return out
}

// replaced is a way with another answer for one of its rows.
func (w *way) replaced(old *link, a *fill.Answer) way {
	out := way{worth: w.worth.Minus(bare(old.answer)).Plus(bare(a)), name: w.name - named(old.row, old.answer).name + named(old.row, a).name}
	w.each(func(l *link) {
		next := &link{before: out.last, ran: l.ran, turn: l.turn}
		if l == old {
			next.answer = a
		}
		out.last = next
	})
	return out
}
