package takeoff

import (
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// stripOut is what comes off a stretch: the lining by face, and all of the framing
// where it comes down.
func (s *sheet) stripOut(st *stretch) {
	if s.lined() {
		a := s.account(BoardOff)
		a.addAreas(st, st.area)
		for _, f := range s.faces {
			a.addFaces(within(st.runs, f.shows), st.height())
		}
		a.addEnds(s.freeEnds(st), st.height())
	}
	if st.down && !s.solid() {
		s.framingOff(st)
	}
}

// lined reports whether there is a lining at all.
func (s *sheet) lined() bool { return s.o.Finish != "none" }

// solid reports whether it is one body, without framing.
func (s *sheet) solid() bool {
	return s.o.Structure == survey.Solid || s.o.Kind == survey.Beam && s.o.Structure != survey.Framed
}

// framingOff: the members that run along it, and at each hanger one piece across
// its depth and one up its face, of the mean height.
func (s *sheet) framingOff(st *stretch) {
	long := longOf(st.own)
	if long.Sign() <= 0 {
		return
	}
	a := s.account(FrameOff)
	members := times(a.figure("members", s.figures(), kitchen.Members), a.metre("length", long))
	pieces := times(s.hangers(a, long), plus(a.length("depth", s.o.Depth), a.metre("mean_height", meanOf(st.own))))
	a.add(plus(members, pieces))
	s.framing = s.framing.plus(members.value).plus(pieces.value)
}

// hangers is how many hangers a length has: one at each end, and no further apart
// than their spacing.
func (s *sheet) hangers(a *account, long length.Exact) figure {
	return plusOne(roundedUp(over(a.metre("length", long), a.length("spacing", s.spacing()))))
}

// meanOf is the mean height of runs.
func meanOf(runs []run) length.Exact {
	var sum fraction
	for _, r := range runs {
		sum = sum.plus(metres(r.left.Add(r.right)).times(metres(r.long())))
	}
	return sum.over(metres(longOf(runs)).times(integer(2))).nanometres()
}
