package layout

import (
	"cmp"
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/fill"
	"railhead/internal/fit"
	"railhead/internal/length"
	"railhead/internal/money"
	"railhead/internal/survey"
)

// standing is a new tall cabinet in its place.
type standing struct {
	cabinet cabinet.Placed
	side    survey.Span // between it and what it stands beside; empty where they touch
	shows   bool        // that side shows: a panel is there, else a filler
	right   bool        // it stands at the right end of its stretch
	worth   worth
}

// towers are tall cabinets on one wall. They stand at the ends of its free stretches,
// so that no counter is broken by one (common practice, no source).
type towers struct {
	stand []standing
	worth money.Amount // of all, less their fillers and panels
}

// towersOn are the ways to have tall cabinets on a wall, none first.
func (s *solver) towersOn(wall int) []towers {
	out, most := []towers{{}}, s.room.Filling.MostTall
	tall := s.rows[cabinet.Tall][wall]
	if tall == nil || len(tall.heights) == 0 {
		return out
	}
	for _, p := range s.places(tall) {
		for _, before := range slices.Clone(out) {
			for _, at := range s.stacks(tall, p, most-len(before.stand)) {
				if apart(before.stand, at) {
					out = append(out, s.together(before.stand, at))
				}
			}
		}
	}
	return out
}

func apart(a, b []standing) bool {
	for i := range a {
		for j := range b {
			if x, y := &a[i].cabinet, &b[j].cabinet; x.From < y.To && y.From < x.To {
				return false
			}
		}
	}
	return true
}

func (s *solver) together(a, b []standing) towers {
	t := towers{stand: slices.Concat(a, b)}
	for i := range t.stand {
		t.worth = t.worth.Plus(s.standingWorth(&t.stand[i]))
	}
	return t
}

// place is an end of a stretch of floor along a wall.
type place struct {
	at    length.Length
	right bool // cabinets stand to the left of it
	end   fill.End
}

// places are the ends of the stretches along a wall at which tall cabinets may stand:
// of the counter's where there is to be one. Inside corners are left to the other rows.
func (s *solver) places(tall *row) []place {
	floor := tall
	if base := s.rows[cabinet.Base][tall.Wall]; base != nil && len(base.heights) > 0 {
		floor = base
	}
	var out []place
	for i := range floor.stretches {
		at := floor.stretches[i]
		if at.Levels == 0 {
			continue
		}
		from, to := up(at.From, tall.grid), min(down(at.To, tall.grid), tall.whole)
		if (i == 0 || floor.stretches[i-1].Levels == 0) && (at.From > 0 || !s.inCorner(tall.Wall, false)) {
			out = append(out, place{from, false, tall.endAt(at.From, false)})
		}
		if (i+1 == len(floor.stretches) || floor.stretches[i+1].Levels == 0) && (at.To < tall.Length || !s.inCorner(tall.Wall, true)) {
			out = append(out, place{to, true, tall.endAt(at.To, true)})
		}
	}
	return out
}

// inCorner reports whether an end of a wall is an inside corner between walls that are
// both filled.
func (s *solver) inCorner(wall int, right bool) bool {
	w := &s.room.Kitchen.Room.Walls[wall]
	if right {
		return s.asked(w.Next)
	}
	return s.asked(w.Prev)
}

func (s *solver) asked(wall int) bool { return slices.Contains(s.room.Filling.Walls, wall) }

// endAt is what a tall cabinet meets at a station.
func (r *row) endAt(at length.Length, right bool) fill.End {
	for _, h := range r.heights {
		for _, f := range r.Free(r.Levels(h)) {
			switch {
			case right && f.To == at:
				return r.end(r.Ends(f, r.Levels(h))[1])
			case !right && f.From == at:
				return r.end(r.Ends(f, r.Levels(h))[0])
			}
		}
	}
	return fill.End{}
}

// mostStacks is how many ways to put tall cabinets at one place are looked at.
const mostStacks = 500

// stacks are the ways to have one cabinet or several of one height side by side at a
// place, the widest first.
func (s *solver) stacks(tall *row, p place, most int) (out [][]standing) {
	widths := slices.Clone(s.room.Kitchen.System.Tall.Widths)
	slices.SortFunc(widths, func(a, b length.Length) int { return cmp.Compare(b, a) })
	var more func(have []length.Length, from int)
	more = func(have []length.Length, from int) {
		for i := from; i < len(widths) && len(have) < most; i++ {
			if len(out) >= mostStacks {
				s.broken = true
				return
			}
			next := append(slices.Clone(have), widths[i])
			if ways := s.stack(tall, p, next); len(ways) > 0 {
				out = append(out, ways...)
				more(next, i)
			}
		}
	}
	more(nil, 0)
	return out
}

// stack are the heights that tall cabinets of some widths may have side by side, as far
// as they may be part of the best way to fill the room.
func (s *solver) stack(tall *row, p place, widths []length.Length) (out [][]standing) {
	var most money.Amount
	for _, h := range slices.Backward(tall.offered) {
		var all []standing
		for _, w := range widths {
			if one, ok := s.stand(tall, p, all, w, h); ok {
				all = append(all, one)
			}
		}
		if len(all) < len(widths) {
			continue
		}
		worth := s.together(nil, all).worth
		if len(out) == 0 || s.mayGain(worth, most, s.rows[cabinet.Wall][tall.Wall]) {
			most, out = max(most, worth), append(out, all)
		}
	}
	return out
}

// mayGain reports whether a lower cabinet in the place of a taller one may be part of
// the best way to fill the room: it gains no more than a change of height on either
// side and what equal neighbours are worth, and loses what the taller one holds.
func (s *solver) mayGain(lower, taller money.Amount, beside ...*row) bool {
	gain := 2 * s.room.Filling.Weights.HeightChange
	for _, r := range beside {
		if r == nil {
			continue
		}
		for _, p := range r.pairs {
			if gain = gain.Plus(p.Worth); p.Must {
				return true
			}
		}
	}
	return lower.Plus(gain) > taller
}

// stand puts one more cabinet beside those at a place.
func (s *solver) stand(tall *row, p place, have []standing, width, height length.Length) (standing, bool) {
	gap := length.Length(0)
	switch f := s.room.Filling; {
	case len(have) > 0:
		p.at = have[len(have)-1].far()
	case p.end.Open:
		gap = up(f.Panel, tall.grid)
	case p.end.Least > 0:
		gap = up(max(p.end.Least, f.LeastFiller), tall.grid)
	}
	out := standing{side: survey.Span{From: p.at, To: p.at + gap}, shows: p.end.Open, right: p.right}
	from := p.at + gap
	if p.right {
		out.side, from = survey.Span{From: p.at - gap, To: p.at}, p.at-gap-width
	}
	out.cabinet = tall.cabinet(from, width, height)
	out.worth = s.worthOf(&out.cabinet)
	c := &out.cabinet
	return out, s.clearOfCorners(tall, c.From, c.To) && tall.free(c.From, c.To, height) && !tall.kept(c.From, c.To) &&
		fit.StandsUp(s.room.Kitchen, c)
}

// clearOfCorners reports whether a tall cabinet is on its wall, and leaves the inside
// corners between walls that are filled to what stands around them.
func (s *solver) clearOfCorners(tall *row, from, to length.Length) bool {
	least, most := length.Length(0), tall.whole
	if s.inCorner(tall.Wall, false) {
		least += tall.Depth + s.room.Filling.CornerFiller
	}
	if s.inCorner(tall.Wall, true) {
		most -= tall.Depth + s.room.Filling.CornerFiller
	}
	return least <= from && to <= most
}

// far is where the next one stands.
func (t *standing) far() length.Length {
	if t.right {
		return t.cabinet.From
	}
	return t.cabinet.To
}

// whole is what it takes up in the rows that it stands in, with what closes its side.
func (t *standing) whole() survey.Span {
	return survey.Span{From: min(t.cabinet.From, t.side.From), To: max(t.cabinet.To, t.side.To)}
}
