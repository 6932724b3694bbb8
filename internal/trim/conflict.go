package trim

import (
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// conflicts are the services nearer to the cut than their clearance; where all
// of the overhead comes down, every service in it.
func conflicts(k *kitchen.Kitchen, t Trim) []Conflict {
	var out []Conflict
	for i := range t.Overhead.Inside.Services {
		s := &t.Overhead.Inside.Services[i]
		level := k.Above(t.Overhead.Wall, s.Underside.Value)
		along, ok := t.along(s)
		var short length.Exact
		if ok {
			short = t.shortOver(k, s, along, level)
		} else {
			along, short = t.shortBeside(s, level)
		}
		if short.Sign() > 0 {
			out = append(out, Conflict{s.Pointer, s, along.From, level, short})
		}
	}
	return out
}

// shortOver is by how much a service within the cut's stretch misses its
// clearance over the cut line; 0 where nothing is cut there.
func (t *Trim) shortOver(k *kitchen.Kitchen, s *survey.Service, along survey.Span, level length.Exact) length.Exact {
	line := t.CutLine.Exact()
	if t.Work == TakeDown {
		line = length.Larger(line, k.Above(t.Overhead.Wall, k.Room.CeilingOver(t.Overhead).Highest(along.From, along.To).Value))
	}
	if !lowest(k, t.Overhead, along).Less(line) {
		return length.Exact{}
	}
	return line.Sub(level.Minus(s.Clearance))
}

// shortBeside is by how much a service that ends beside the cut misses its
// clearance from the cut's end: the distance goes along the wall and, where it
// runs higher than the cut line, upwards.
func (t *Trim) shortBeside(s *survey.Service, level length.Exact) (survey.Span, length.Exact) {
	at, beside := t.From, t.From-s.To
	if s.From > t.To {
		at, beside = t.To, s.From-t.To
	}
	up := max(level.Minus(t.CutLine).Ceil(), 0)
	here := survey.Span{From: at, To: at}
	if t.Work == None {
		return here, length.Exact{}
	}
	return here, (s.Clearance - length.Hypot(beside, up)).Exact()
}

// along is the part of a service that lies within the cut's stretch.
func (t *Trim) along(s *survey.Service) (survey.Span, bool) {
	out := survey.Span{From: max(s.From, t.From), To: min(s.To, t.To)}
	return out, out.From < out.To || out.From == out.To && s.From == s.To
}

// reaches reports whether a service comes nearer to the cut's stretch than its
// clearance, seen along the wall.
func (t *Trim) reaches(s *survey.Service) bool {
	_, within := t.along(s)
	return within || s.From-s.Clearance < t.To && s.To+s.Clearance > t.From
}

// live are the wires and cables at the cut's stretch that nobody has proved dead.
func (t *Trim) live() []*survey.Service {
	var out []*survey.Service
	for i := range t.Overhead.Inside.Services {
		s := &t.Overhead.Inside.Services[i]
		if t.reaches(s) && s.Live && (s.Kind == survey.Wire || s.Kind == survey.Cable) {
			out = append(out, s)
		}
	}
	return out
}
