package takeoff

import "railhead/internal/survey"

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
	if st.down {
		s.framingOff(st)
	}
}

// lined reports whether there is a lining at all.
func (s *sheet) lined() bool { return s.o.Finish != "none" }

// solid reports whether it is one body, without framing.
func solid(o *survey.Overhead) bool {
	return o.Structure == survey.Solid || o.Kind == survey.Beam && o.Structure != survey.Framed
}
