package decide

import (
	"sort"

	"railhead/internal/length"
	"railhead/internal/survey"
)

// outside is what is left of a span beside others.
func outside(s survey.Span, others []survey.Span) []survey.Span {
	var out []survey.Span
	for _, o := range union(others) {
		if o.To <= s.From || o.From >= s.To {
			continue
		}
		if o.From > s.From {
			out = append(out, survey.Span{From: s.From, To: o.From})
		}
		s.From = o.To
	}
	if s.From < s.To {
		out = append(out, s)
	}
	return out
}

// union joins spans that meet, in order.
func union(in []survey.Span) []survey.Span {
	sorted := append([]survey.Span{}, in...)
	sort.Slice(sorted, func(i, j int) bool { return sorted[i].From < sorted[j].From })
	var out []survey.Span
	for _, s := range sorted {
		if last := len(out) - 1; last >= 0 && s.From <= out[last].To {
			out[last].To = max(out[last].To, s.To)
			continue
		}
		out = append(out, s)
	}
	return out
}

// total is the length of spans that do not overlap.
func total(in []survey.Span) length.Length {
	var out length.Length
	for _, s := range in {
		out += s.To - s.From
	}
	return out
}
