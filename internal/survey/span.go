package survey

import (
	"cmp"
	"slices"

	"railhead/internal/length"
)

// Span is a stretch of wall; empty where From is not left of To.
type Span struct{ From, To length.Length }

// Clip is the part of a span within another; it may be empty.
func (s Span) Clip(to Span) Span { return Span{max(s.From, to.From), min(s.To, to.To)} }

// Union joins spans that overlap or touch, in order of station; empty ones are dropped.
func Union(spans []Span) []Span {
	if len(spans) == 0 {
		return nil
	}
	sorted := slices.Clone(spans)
	slices.SortFunc(sorted, func(a, b Span) int {
		return cmp.Or(cmp.Compare(a.From, b.From), cmp.Compare(a.To, b.To))
	})
	out := sorted[:0]
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

// Without is what holes leave of spans.
func Without(spans, holes []Span) []Span {
	holes = Union(holes)
	var out []Span
	for _, s := range spans {
		for _, h := range holes {
			if h.To <= s.From || h.From >= s.To {
				continue
			}
			if s.From < h.From {
				out = append(out, Span{s.From, h.From})
			}
			s.From = h.To
		}
		if s.From < s.To {
			out = append(out, s)
		}
	}
	return out
}
