package takeoff

import (
	"railhead/internal/belief"
	"railhead/internal/contents"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

// find is the work that comes on top for each state of what nobody has seen. Wires
// and pipes run along what is unseen, or up a box; something that cannot be moved
// has what was opened there closed again.
func (s *sheet) find(out *[contents.States][]Item) {
	kept := s.standing.removal
	if kept == nil || !s.takesDownBare() {
		s.findAnew(out)
		return
	}
	if !kept.foundFor(s) {
		kept.found, kept.backed, kept.duct = [contents.States][]Item{}, s.backed, s.of(RerouteDuct).sign() != 0
		s.findAnew(&kept.found)
	}
	for state := range out {
		out[state] = append(out[state], kept.found[state]...)
	}
}

func (s *sheet) findAnew(out *[contents.States][]Item) {
	spans := s.unseen()
	unseen, unbacked := sum(spans), sum(survey.Without(spans, s.backed))
	if unseen == 0 {
		return
	}
	a := &account{}
	add := func(state contents.State, w Work, measure func(*account) figure) {
		*a = account{bare: s.job.Bare}
		a.add(measure(a))
		out[state] = appendItem(out[state], a, w, s.o.Pointer)
	}
	run := func(a *account) figure {
		if s.o.Kind == survey.DuctBox {
			return a.metre("height", s.most())
		}
		return a.length("unseen", unseen)
	}
	for _, wires := range []struct {
		state contents.State
		runs  kitchen.Figure
	}{{contents.FewWires, kitchen.FewWires}, {contents.ManyWires, kitchen.ManyWires}} {
		add(wires.state, RerouteWire, func(a *account) figure { return times(run(a), a.figure("wires", s.figures(), wires.runs)) })
		if s.o.Out == 0 {
			add(wires.state, BackingBoard, func(a *account) figure {
				return times(a.length("unseen", unbacked), a.figure("width", s.figures(), kitchen.BackingWidth))
			})
		}
	}
	switch {
	case s.o.Kind != survey.DuctBox:
		add(contents.PipeOrDuct, ReroutePipe, run)
	case s.of(RerouteDuct).sign() == 0: // else it is counted for sure
		add(contents.PipeOrDuct, RerouteDuct, run)
	}
	add(contents.Immovable, CloseAgain, func(a *account) figure {
		return times(a.derived("boards", s.of(BoardOff), "m2"), over(a.length("unseen", unseen), a.length("length", total(s.spans()))))
	})
}

// unseen is what of the stretches nobody has looked into.
func (s *sheet) unseen() []survey.Span {
	var parts []survey.Span
	for _, span := range survey.Union(s.spans()) {
		for _, u := range contents.UnseenSpans(s.o) {
			parts = append(parts, u.Clip(span))
		}
	}
	return survey.Union(parts)
}

// total is the length of spans together, and sum of spans that do not overlap.
func total(in []survey.Span) length.Length { return sum(survey.Union(in)) }

func sum(in []survey.Span) length.Length {
	var out length.Length
	for _, s := range in {
		out += s.To - s.From
	}
	return out
}

// reach is the chance that contents are in the way of the work: all of them where
// something comes down; else the largest share of the height that a cut takes, as
// they may be anywhere over it.
func (m *measuring) reach() belief.Chance {
	var most fraction
	for _, s := range m.sheets {
		for i := range s.stretches {
			if share := s.share(&s.stretches[i]); share.exceeds(most) {
				most = share
			}
		}
	}
	return belief.Chance(most.nanometres().Nearest()) // billionths, as nanometres are of a metre
}

// share is the largest share of an overhead's height that comes off.
func (s *sheet) share(st *stretch) fraction {
	var most fraction
	if st.down {
		return integer(1)
	}
	ceiling := s.k.Room.CeilingOver(s.o)
	for _, station := range st.cut.Stations {
		x, whole := station.At.Whole()
		if !whole || station.Remove.Sign() <= 0 {
			continue // between two breaks, where nothing comes off
		}
		top := length.Smaller(ceiling.At(x, level.Left), ceiling.At(x, level.Right))
		height := s.k.Above(s.o.Wall, top).Sub(station.Underside)
		if height.Cmp(station.Remove) <= 0 {
			return integer(1)
		}
		if share := metres(station.Remove).over(metres(height)); share.exceeds(most) {
			most = share
		}
	}
	return most
}
