package takeoff

import (
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// isItsDuct reports whether a service is the duct that a box is there for.
func (s *sheet) isItsDuct(v *survey.Service) bool {
	return s.o.Kind == survey.DuctBox && v.Kind == survey.DuctRun
}

// duct is the duct of a box. It is cut back with the box, goes the box's height
// elsewhere where the box goes, and so much aside where it is to move.
func (s *sheet) duct() {
	if s.o.Kind != survey.DuctBox {
		return
	}
	a, needed := s.account(RerouteDuct), s.ductInUse()
	for i := range s.stretches {
		st := &s.stretches[i]
		switch top := a.metre(st.height(), highest(st.runs)); {
		case s.job.Option == kitchen.Move:
			a.add(plus(top, a.figure("aside", s.figures(), kitchen.DuctMove)))
		case needed:
			a.add(top)
		}
	}
}

// ductInUse reports whether a duct is known to be in the box that has to go on
// serving: a planned hood's, or one that was seen.
func (s *sheet) ductInUse() bool {
	if c := s.k.Plan.Cooking; c != nil && c.Hood != nil && c.Hood.DuctBox == s.o.ID {
		return true
	}
	for i := range s.o.Inside.Services {
		if v := &s.o.Inside.Services[i]; v.Kind == survey.DuctRun && s.reached(v) {
			return true
		}
	}
	return false
}

// newBox is the box that goes around a duct once it has moved: as large as the old
// one, of new board on new framing. Its joints are filled as it is boarded.
func (s *sheet) newBox() {
	if s.job.Option != kitchen.Move || s.o.Kind != survey.DuctBox {
		return
	}
	boards := s.of(BoardOff)
	works := []Work{BoardOn}
	if s.painted() {
		works = append(works, Paint)
	}
	for _, w := range works {
		a := s.account(w)
		a.add(a.derived("boards", boards, "m2"))
	}
	a := s.account(FrameRefit)
	a.add(a.derived("framing", s.of(FrameOff), "m"))
}

// most is how high the stretches are that are worked on.
func (s *sheet) most() length.Exact {
	var out length.Exact
	for i := range s.stretches {
		out = length.Larger(out, highest(s.stretches[i].runs))
	}
	return out
}
