package rail

import (
	"railhead/internal/length"
	"railhead/internal/survey"
)

// common is how much of a span lies within the others, which do not overlap.
func common(s survey.Span, others []survey.Span) length.Length {
	var sum length.Length
	for _, o := range others {
		if c := s.Clip(o); c.From < c.To {
			sum += c.To - c.From
		}
	}
	return sum
}
