package space

import (
	"slices"

	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

// Raised are the stretches over which the floor lies above the datum, where nothing
// that stands on it can be as low as its row; from left to right.
func (r *Row) Raised() []survey.Span {
	floor, datum := r.k.Room.Walls[r.Wall].Floor, r.k.DatumOf(r.Wall).Level.Value.Neg()
	stations := slices.Concat([]length.Length{0}, floor.Breaks(0, r.Length), []length.Length{r.Length})
	var out []survey.Span
	for i := 1; i < len(stations); i++ {
		x0, x1 := stations[i-1], stations[i]
		s, some := below(x0, floor.At(x0, level.Right).Neg(), x1, floor.At(x1, level.Left).Neg(), datum)
		if last := len(out) - 1; some && last >= 0 && out[last].To >= s.from {
			out[last].To = s.to
		} else if some {
			out = append(out, survey.Span{From: s.from, To: s.to})
		}
	}
	return out
}
