package decide

import (
	"railhead/internal/length"
	"railhead/internal/survey"
)

// total is the length of spans that do not overlap.
func total(in []survey.Span) length.Length {
	var out length.Length
	for _, s := range in {
		out += s.To - s.From
	}
	return out
}
