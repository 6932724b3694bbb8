package takeoff

import (
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
	"railhead/internal/trim"
)

// refit is what a cut takes beside the stripping out: the cut itself along each
// face and each free end, the framing that goes up, the new bottom, and a band
// filled along the cut.
func (s *sheet) refit(st *stretch) {
	if longOf(st.runs).Sign() <= 0 {
		return
	}
	cut, patch := s.account(Cut), s.account(Patch)
	for _, f := range s.faces {
		if along := longWithin(st.runs, f.shows); along.Sign() > 0 {
			cut.add(cut.metre("length", along))
			patch.add(times(patch.metre("length", along), patch.length("band", s.figures().Length(kitchen.Band))))
		}
	}
	for _, e := range s.freeEnds(st) {
		cut.add(cut.length("depth", e.depth))
		patch.add(times(patch.length("depth", e.depth), patch.length("band", s.figures().Length(kitchen.Band))))
	}
	if !solid(s.o) {
		for i := range st.frames {
			s.refitFrame(st.cut.Work, &st.frames[i])
		}
	}
	if s.newBottom(st) {
		s.account(BoardOn).addAreas(st, st.area)
	}
}

// newBottom: where only the lining comes off there is no room for a new board.
func (s *sheet) newBottom(st *stretch) bool {
	return !st.down && st.cut.FrameLine != nil && s.o.Make.NewBottom > 0
}

// refitFrame is the lowest member that goes up, and the hangers that are shortened.
func (s *sheet) refitFrame(w trim.Work, f *frame) {
	if w == trim.RelocateBottomMember || w == trim.Reframe {
		a := s.account(FrameRefit)
		a.add(a.frame(f))
	}
	if w == trim.Reframe {
		s.shorten(f)
	}
}

// shorten is the hangers that then carry the stretch, one at each of its ends too;
// what is cut off those that hang there is debris.
func (s *sheet) shorten(f *frame) {
	a := s.account(Hangers)
	a.add(s.hangers(a, f))
	s.framing = s.framing.plus(metres(f.mean()).times(s.hanging(&account{bare: true}, f).value))
}

// closeEnds closes the faces that a cut leaves open: a plumb cut across the depth
// and up each face, a new board, a band filled along it, and paint.
func (s *sheet) closeEnds(st *stretch) {
	ends := s.newEnds(st)
	if len(ends) == 0 {
		return
	}
	s.account(BoardOn).addEnds(ends, st.height())
	if s.painted() {
		s.account(Paint).addEnds(ends, st.height())
	}
	cut, patch := s.account(Cut), s.account(Patch)
	for _, e := range ends {
		cut.add(cut.length("depth", e.depth))
		for range s.shown() {
			cut.add(cut.metre(st.height(), e.height))
		}
		patch.add(times(patch.length("depth", e.depth), patch.length("band", s.figures().Length(kitchen.Band))))
	}
}

// painted reports whether the overhead has to be painted again; what nobody knows
// counts as painted.
func (s *sheet) painted() bool { return s.lined() && s.o.Painted != survey.No }

// paintRest paints what a cut leaves of the faces, from one end of the overhead to
// the other: a face is painted to its corners. A free end is painted where it was
// cut, and a new bottom always.
func (s *sheet) paintRest() {
	var down []survey.Span
	var cuts []*stretch
	for i := range s.stretches {
		if st := &s.stretches[i]; st.down {
			down = append(down, st.Span)
		} else {
			cuts = append(cuts, st)
		}
	}
	if len(cuts) == 0 || !s.painted() {
		return
	}
	a, whole := s.account(Paint), s.whole
	for _, f := range s.faces {
		a.addFaces(within(whole, survey.Without(f.shows, down)), "height")
	}
	for _, st := range cuts {
		for _, f := range s.faces {
			for _, r := range within(st.runs, f.shows) {
				a.take(a.face(r, "strip"))
			}
		}
		s.paintEnds(st, whole)
		if s.newBottom(st) {
			a.addAreas(st, st.area)
		}
	}
}

func (s *sheet) paintEnds(st *stretch, whole []run) {
	a := s.account(Paint)
	paint := func(at length.Length, kind survey.EndKind) {
		if strip := heightAt(st.runs, at); isFree(kind) && strip.Sign() > 0 {
			rest := minus(a.metre("height", heightAt(whole, at)), a.metre("strip", strip))
			a.add(times(a.length("depth", s.o.Depth), rest))
		}
	}
	if st.From == s.o.From {
		paint(st.From, s.o.Left)
	}
	if st.To == s.o.To {
		paint(st.To, s.o.Right)
	}
}
