package layout

import (
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/fill"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/space"
	"railhead/internal/survey"
)

// row is one row along one wall, ready to be filled. Everything in it is on the grid:
// what is in the way is taken to reach to the next mark.
type row struct {
	*space.Row
	filling     *kitchen.Filling
	grid, whole length.Length   // whole is the wall's length in whole grids
	heights     []length.Length // that the system makes
	offered     []length.Length // of those, what new cabinets may have
	stretches   []space.Stretch // by heights, as surveyed
	raised      []survey.Span   // where the floor is too high for what stands on it
	limits      []fill.Limit
	ends        [2]fill.End
	fixed       []fill.Piece
	pairs       []fill.Pair
	paired      []space.Gap // what each pair is for
	needs       []fill.Span // stretches that want one cabinet
	sizes       []fill.Size
}

// front is what new cabinets are taken to have: their fronts are settled later, and
// can be hinged away from what is beside them.
var front = cabinet.Door{Opens: cabinet.OpensLeft, Thickness: 20 * length.Millimetre, Pull: 40 * length.Millimetre}

// space is a row with the room that there is for it.
func (s *solver) space(wall int, kind cabinet.Kind) *row {
	k := s.room.Kitchen
	ask, _ := space.Usual(k, wall, kind) // only kinds that the system makes are asked for
	ask.Spare, _ = k.System.Headroom(kind)
	ask.Door = &front
	r := &row{Row: space.Of(k, s.room.Sky, ask), filling: s.room.Filling, grid: s.grid, whole: down(k.Room.Walls[wall].Length, s.grid)}
	r.heights = k.System.Sizes(kind).Heights
	if r.offered = s.offered(r); kind == cabinet.Base {
		r.heights = r.offered // what carries no counter is no base row
	}
	r.stretches = r.Heights(r.heights)
	if kind != cabinet.Wall {
		r.raised = r.Raised()
	}
	return r
}

// offered are the heights that new cabinets of a row may have: under the counter the
// one that carries it where it is to be, or comes nearest; elsewhere all, or the one
// that ends on the line that is aimed at.
func (s *solver) offered(r *row) []length.Length {
	if r.Kind == cabinet.Base {
		k, best := s.room.Kitchen, -1
		off := func(i int) length.Length { return (r.Low + r.heights[i] + k.System.Counter - k.Plan.Counter).Abs() }
		for i := range r.heights {
			if best < 0 || off(i) < off(best) {
				best = i
			}
		}
		return r.heights[best : best+1]
	}
	if s.room.Aim.Top == nil {
		return r.heights
	}
	return slices.DeleteFunc(slices.Clone(r.heights), func(h length.Length) bool { return r.Low+h != *s.room.Aim.Top })
}

// row prepares a row.
func (s *solver) row(wall int, kind cabinet.Kind) *row {
	r := s.space(wall, kind)
	r.limit()
	s.fix(r)
	s.pair(r)
	r.need()
	r.sizes = s.sizes(r)
	return r
}

// limit turns the stretches into limits, and says what stands at the ends of those
// where nothing may.
func (r *row) limit() {
	for i, s := range r.stretches {
		if s.Levels == len(r.heights) && s.Levels > 0 {
			continue
		}
		l := fill.Limit{From: down(s.From, r.grid), To: min(up(s.To, r.grid), r.whole)}
		if l.From >= l.To {
			continue
		}
		if s.Levels > 0 {
			l.Height = r.heights[s.Levels-1]
		} else {
			l.Sides = [2]fill.End{r.meets(i, -1), r.meets(i, 1)}
		}
		r.limits = append(r.limits, l)
	}
	for _, bar := range r.raised { // a strip may be cut to the floor, and a cabinet not
		if l := (fill.Limit{From: down(bar.From, r.grid), To: min(up(bar.To, r.grid), r.whole), Height: 1}); l.From < l.To {
			r.limits = append(r.limits, l)
		}
	}
	if len(r.stretches) > 0 {
		r.ends = [2]fill.End{r.meets(-1, 1), r.meets(len(r.stretches), -1)}
	}
}

// meets is what a cabinet meets that comes up against a stretch where nothing may
// stand, from its left (step −1) or its right (step 1); of the two ends of the row
// the stretch is the one beyond.
func (r *row) meets(i, step int) fill.End {
	j := i + step
	if j < 0 || j >= len(r.stretches) || r.stretches[j].Levels == 0 {
		return fill.End{}
	}
	free := r.stretches[j].Span
	for n := j + step; n >= 0 && n < len(r.stretches) && r.stretches[n].Levels > 0; n += step {
		free.From, free.To = min(free.From, r.stretches[n].From), max(free.To, r.stretches[n].To)
	}
	side := 0
	if step < 0 {
		side = 1
	}
	return r.end(r.Ends(free, r.Levels(r.heights[0]))[side])
}

// end is how a new cabinet meets a thing.
func (r *row) end(e space.End) fill.End {
	switch {
	case e.What == space.WallEnd && e.Joined < 0 && r.filling.SideWalls:
		return fill.End{Least: r.filling.WallFiller}
	case e.Shows:
		return fill.End{Open: true}
	case e.What == space.WallEnd:
		return fill.End{Least: r.filling.WallFiller}
	case e.What == space.Corner || e.What == space.Opposite:
		return fill.End{Least: r.filling.CornerFiller}
	default:
		return fill.End{}
	}
}

// fix adds the cabinets that stay, with the height above the row's own low level at
// which they end; in a row of base cabinets what is tall breaks no line. One that
// stands between marks, or in the way of another, is merely in the way.
func (s *solver) fix(r *row) {
	for i := range s.room.Kitchen.Plan.Cabinets {
		c := &s.room.Kitchen.Plan.Cabinets[i]
		if c.Kind != r.Kind && c.Kind != cabinet.Tall && r.Kind != cabinet.Tall {
			continue
		}
		for _, p := range c.Native(s.room.Kitchen.Room) {
			if p.Wall == r.Wall && p.From%r.grid == 0 && p.To%r.grid == 0 && p.From >= 0 && p.To <= r.whole {
				r.stays(fill.Piece{At: p.From, Width: p.To - p.From, Height: r.rise(c), Size: fill.Stays})
			}
		}
	}
}

func (r *row) stays(p fill.Piece) {
	if p.Height > 0 && !r.kept(p.At, p.At+p.Width) {
		r.fixed = append(r.fixed, p)
	}
}

// rise is how high above the row's low level a cabinet ends, as far as that is seen
// beside the row's own.
func (r *row) rise(c *cabinet.Placed) length.Length {
	if r.Kind == cabinet.Base && c.Kind == cabinet.Tall && len(r.heights) > 0 {
		return r.heights[len(r.heights)-1]
	}
	return c.Top - r.Low
}

// need adds the stretches that want one cabinet under them, as far as any may stand
// there.
func (r *row) need() {
	for _, w := range r.Whole {
		if r.open(w.From, w.To) || r.kept(w.From, w.To) {
			r.needs = append(r.needs, fill.Span{From: max(0, w.From), To: min(r.whole, w.To)})
		}
	}
}

// free reports whether a cabinet of a height may stand over a stretch.
func (r *row) free(from, to, height length.Length) bool {
	level, found := slices.BinarySearch(r.heights, height)
	if !found || from < 0 || to > r.Length {
		return false
	}
	return !slices.ContainsFunc(r.stretches, func(s space.Stretch) bool { return s.Levels <= level && s.From < to && from < s.To }) &&
		!slices.ContainsFunc(r.raised, func(bar survey.Span) bool { return bar.From < to && from < bar.To })
}

// cabinet is a new cabinet of the row.
func (r *row) cabinet(from, width, height length.Length) cabinet.Placed {
	return cabinet.Placed{
		Kind: r.Kind, Wall: r.Wall, From: from, To: from + width, Depth: r.Depth, Height: height, Underside: r.Low, Top: r.Low + height,
	}
}
