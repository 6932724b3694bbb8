package resolve

import (
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

// closest is the first place over a closed span at which an upper profile comes closest to a lower one, or dips furthest
// under it: the difference of two lines is a line between the breaks of both.
func closest(upper, lower level.Profile, s survey.Span) level.Spot {
	at := func(x length.Length, side level.Side) level.Spot {
		return level.Spot{At: x, Side: side, Value: upper.At(x, side).Sub(lower.At(x, side))}
	}
	least := at(s.From, level.Right)
	try := func(spot level.Spot) {
		if c := spot.Value.Cmp(least.Value); c < 0 || c == 0 && spot.At < least.At {
			least = spot
		}
	}
	for _, p := range [...]level.Profile{upper, lower} {
		for _, x := range p.Breaks(s.From, s.To) {
			try(at(x, level.Left))
			try(at(x, level.Right))
		}
	}
	try(at(s.To, level.Left))
	return least
}
