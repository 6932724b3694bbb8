package takeoff

import (
	"railhead/internal/kitchen"
	"railhead/internal/survey"
)

// services moves what was seen inside and is in the way, over the stretches that
// are worked on. Wires of an overhead at the wall go into the wall, which is then
// boarded so that the rail has a flat base.
func (s *sheet) services() {
	var backed []survey.Span
	for i := range s.o.Inside.Services {
		v := &s.o.Inside.Services[i]
		w, moved := reroute(v.Kind)
		if !moved || s.isItsDuct(v) || !s.reached(v) {
			continue
		}
		for _, span := range s.workedOn(v) {
			a := s.account(w)
			a.add(s.effort(a, v, a.length("length", span.To-span.From)))
			if w == RerouteWire {
				backed = append(backed, span)
			}
		}
	}
	s.back(backed)
}

// effort is a length as often as it counts: more where moving it takes work. What
// nobody knows is asked, and counts as moved easily.
func (s *sheet) effort(a *account, v *survey.Service, long figure) figure {
	if v == nil || v.Movable != survey.MovableWithWork {
		return long
	}
	return times(long, a.figure("with_work", s.figures(), kitchen.WithWork))
}

func (s *sheet) reached(v *survey.Service) bool { return s.job.Reached == nil || s.job.Reached(s.o, v) }

// reroute is the work that moving a service is. Structure is no service.
func reroute(k survey.ServiceKind) (Work, bool) {
	switch k {
	case survey.Wire, survey.Cable:
		return RerouteWire, true
	case survey.PipeRun, survey.Gas, survey.Sprinkler:
		return ReroutePipe, true
	case survey.DuctRun:
		return RerouteDuct, true
	default:
		return "", false
	}
}

// workedOn are the parts of a service within the stretches.
func (s *sheet) workedOn(v *survey.Service) []survey.Span {
	var out []survey.Span
	for _, span := range survey.Union(s.spans()) {
		if part := (survey.Span{From: v.From, To: v.To}).Clip(span); part.From < part.To {
			out = append(out, part)
		}
	}
	return out
}

func (s *sheet) spans() []survey.Span {
	var out []survey.Span
	for i := range s.stretches {
		out = append(out, s.stretches[i].Span)
	}
	return out
}

// back boards the wall behind the rail: where wires went into it, and where a cut
// bares its place on a wall that nobody has seen finished.
func (s *sheet) back(wired []survey.Span) {
	if s.o.Out > 0 {
		return
	}
	for i := range s.stretches {
		if st := &s.stretches[i]; st.cut != nil && st.cut.Boarded {
			wired = append(wired, st.Span)
		}
	}
	s.backed = survey.Union(wired)
	a := s.account(BackingBoard)
	for _, span := range s.backed {
		a.add(times(a.length("length", span.To-span.From), a.figure("width", s.figures(), kitchen.BackingWidth)))
	}
}
