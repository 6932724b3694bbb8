package rail

import (
	"cmp"
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// row is the wall and tall cabinets that end on one top line of one wall.
type row struct {
	wall     *survey.Wall
	top      length.Length
	cabinets []behind
}

// behind is a cabinet and the stretch of this wall that it covers; a corner
// cabinet covers a stretch of two walls.
type behind struct {
	cabinet *cabinet.Placed
	survey.Span
}

// rows are the rows of the plan, wall by wall, the higher row first.
func rows(k *kitchen.Kitchen) []*row {
	var out []*row
	for i := range k.Plan.Cabinets {
		c := &k.Plan.Cabinets[i]
		if c.Kind == cabinet.Base {
			continue
		}
		for _, p := range c.Native(k.Room) {
			r := rowOf(&out, &k.Room.Walls[p.Wall], c.Top)
			r.cabinets = append(r.cabinets, behind{c, survey.Span{From: p.From, To: p.To}.Clip(survey.Span{To: r.wall.Length})})
		}
	}
	slices.SortFunc(out, func(a, b *row) int {
		return cmp.Or(cmp.Compare(a.wall.Index, b.wall.Index), cmp.Compare(b.top, a.top))
	})
	for _, r := range out {
		r.sort()
	}
	return out
}

func rowOf(rows *[]*row, wall *survey.Wall, top length.Length) *row {
	for _, r := range *rows {
		if r.wall == wall && r.top == top {
			return r
		}
	}
	*rows = append(*rows, &row{wall: wall, top: top})
	return (*rows)[len(*rows)-1]
}

func (r *row) sort() {
	slices.SortFunc(r.cabinets, func(a, b behind) int {
		return cmp.Or(cmp.Compare(a.From, b.From), cmp.Compare(a.cabinet.Index, b.cabinet.Index))
	})
}

// runs are the stretches that the rail would cover if nothing were in its way:
// behind the cabinets, and behind fillers that close a gap between two of them.
func (r *row) runs(fillers []cabinet.Filler) []survey.Span {
	var spans []survey.Span
	for _, b := range r.cabinets {
		spans = append(spans, b.Span)
	}
	runs := survey.Union(spans)
	closed := r.closers(fillers)
	for i := 1; i < len(runs); i++ {
		gap := survey.Span{From: runs[i-1].To, To: runs[i].From}
		if common(gap, closed) == gap.To-gap.From {
			spans = append(spans, gap)
		}
	}
	return survey.Union(spans)
}

func (r *row) closers(fillers []cabinet.Filler) []survey.Span {
	var spans []survey.Span
	for _, f := range fillers {
		if f.Wall == r.wall.Index && (f.AnyKind || f.Kind != cabinet.Base) {
			spans = append(spans, survey.Span{From: f.From, To: f.To})
		}
	}
	return survey.Union(spans)
}
