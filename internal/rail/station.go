package rail

import (
	"slices"

	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

// stations are the checks along the runs: at the pieces' ends, the cabinets'
// edges, the surveyed floor points and the screws.
func (b band) stations(runs []survey.Span, r *row, rail *Rail) []Station {
	var at []length.Length
	for _, p := range rail.Pieces {
		at = append(at, p.From, p.To)
	}
	for _, c := range r.cabinets {
		at = append(at, c.From, c.To)
	}
	for _, p := range b.wall.Floor.Points() {
		at = append(at, p.At)
	}
	for _, f := range rail.Fixings {
		at = append(at, f.At)
	}
	slices.Sort(at)
	var out []Station
	for _, x := range slices.Compact(at) {
		for _, run := range runs {
			out = append(out, b.checks(run, x)...)
		}
	}
	return out
}

// checks are the rail's heights above the floor at one station of a run: two
// where the floor has a step inside the run, else one.
func (b band) checks(run survey.Span, x length.Length) []Station {
	if x < run.From || x > run.To {
		return nil
	}
	left, right := b.aboveFloor(x, level.Left), b.aboveFloor(x, level.Right)
	switch {
	case x == run.From:
		return []Station{{x, right}}
	case x == run.To || left.Equal(right):
		return []Station{{x, left}}
	default:
		return []Station{{x, left}, {x, right}}
	}
}

func (b band) aboveFloor(x length.Length, s level.Side) length.Exact {
	return b.low.Exact().Sub(b.above(b.wall.Floor.At(x, s)))
}
