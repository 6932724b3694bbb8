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
		along, ok := t.along(s)
		if !ok {
			continue
		}
		level, line := k.Above(t.Overhead.Wall, s.Underside.Value), t.CutLine.Exact()
		if t.Work == TakeDown {
			line = length.Larger(line, k.Above(t.Overhead.Wall, ceiling(k, t.Overhead).Highest(along.From, along.To).Value))
		}
		short := line.Sub(level.Minus(s.Clearance))
		if short.Sign() > 0 && lowest(k, t.Overhead, along).Less(line) {
			out = append(out, Conflict{s.Pointer, s, along.From, level, short})
		}
	}
	return out
}

// along is the part of a service that lies within the cut's stretch.
func (t *Trim) along(s *survey.Service) (survey.Span, bool) {
	out := survey.Span{From: max(s.From, t.From), To: min(s.To, t.To)}
	return out, out.From < out.To || out.From == out.To && s.From == s.To
}

// live are the wires and cables within the cut's stretch that nobody has proved
// dead.
func (t *Trim) live() []*survey.Service {
	var out []*survey.Service
	for i := range t.Overhead.Inside.Services {
		s := &t.Overhead.Inside.Services[i]
		if _, ok := t.along(s); ok && s.Live && (s.Kind == survey.Wire || s.Kind == survey.Cable) {
			out = append(out, s)
		}
	}
	return out
}
