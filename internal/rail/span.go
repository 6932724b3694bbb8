package rail

import (
	"cmp"
	"slices"

	"railhead/internal/length"
	"railhead/internal/survey"
)

// union joins spans that overlap or touch, in order of station; empty ones are dropped.
func union(spans []survey.Span) []survey.Span {
	sorted := slices.Clone(spans)
	slices.SortFunc(sorted, func(a, b survey.Span) int {
		return cmp.Or(cmp.Compare(a.From, b.From), cmp.Compare(a.To, b.To))
	})
	var out []survey.Span
	for _, s := range sorted {
		last := len(out) - 1
		switch {
		case s.From >= s.To:
		case last >= 0 && s.From <= out[last].To:
			out[last].To = max(out[last].To, s.To)
		default:
			out = append(out, s)
		}
	}
	return out
}

// without is what holes leave of spans, both as [union] gives them.
func without(spans, holes []survey.Span) []survey.Span {
	var out []survey.Span
	for _, s := range spans {
		for _, h := range holes {
			if h.To <= s.From || h.From >= s.To {
				continue
			}
			if s.From < h.From {
				out = append(out, survey.Span{From: s.From, To: h.From})
			}
			s.From = h.To
		}
		if s.From < s.To {
			out = append(out, s)
		}
	}
	return out
}

// clipped is the part of a span within from..to; it may be empty.
func clipped(s survey.Span, from, to length.Length) survey.Span {
	return survey.Span{From: max(s.From, from), To: min(s.To, to)}
}

// common is how much of a span lies within the others, which do not overlap.
func common(s survey.Span, others []survey.Span) length.Length {
	var sum length.Length
	for _, o := range others {
		if c := clipped(s, o.From, o.To); c.From < c.To {
			sum += c.To - c.From
		}
	}
	return sum
}
