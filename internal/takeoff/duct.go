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
	a, seen := s.account(RerouteDuct), s.seenDuct()
	needed := seen != nil || s.servesHood()
	for i := range s.stretches {
		st := &s.stretches[i]
		switch top := a.metre(st.height(), highest(st.runs)); {
		case s.job.Option == kitchen.Move:
			a.add(s.effort(a, seen, plus(top, a.figure("aside", s.figures(), kitchen.DuctMove))))
		case needed:
			a.add(s.effort(a, seen, top))
		}
	}
}

// servesHood reports whether a planned hood's duct is in the box.
func (s *sheet) servesHood() bool {
	c := s.k.Plan.Cooking
	return c != nil && c.Hood != nil && c.Hood.DuctBox == s.o.ID
}

// seenDuct is the duct that was seen in the box and that the work comes to; of
// several, one that moves only with work. It has to go on serving.
func (s *sheet) seenDuct() *survey.Service {
	var out *survey.Service
	for i := range s.o.Inside.Services {
		v := &s.o.Inside.Services[i]
		if v.Kind == survey.DuctRun && s.reached(v) && (out == nil || v.Movable == survey.MovableWithWork) {
			out = v
		}
	}
	return out
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
