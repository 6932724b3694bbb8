package hazard

import (
	"sort"

	"railhead/internal/length"
	"railhead/internal/survey"
)

// SeenAll reports whether somebody looked into the whole of an overhead: it was
// opened, or what was seen reaches from end to end.
func SeenAll(o *survey.Overhead) bool {
	switch {
	case o.Inside.Looked == survey.NotLooked:
		return false
	case len(o.Inside.Seen) == 0:
		return o.Inside.Looked == survey.Opened
	default:
		return reach(o.Inside.Seen, o.From) >= o.To
	}
}

// reach is how far spans run on without a gap from a station.
func reach(spans []survey.Span, from length.Length) length.Length {
	sorted := append([]survey.Span{}, spans...)
	sort.Slice(sorted, func(i, j int) bool { return sorted[i].From < sorted[j].From })
	for _, s := range sorted {
		if s.From > from {
			break
		}
		from = max(from, s.To)
	}
	return from
}

// ShowsSprinklerHead reports whether a sprinkler head shows on an overhead.
func ShowsSprinklerHead(o *survey.Overhead) bool {
	for _, h := range o.Inside.Hints {
		if h == "sprinkler_head" {
			return true
		}
	}
	return false
}
