package space

import (
	"railhead/internal/fit"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// openings adds the wall's windows, doors and passages with their casings, and
// those of the walls at its ends for the cabinets whose flank touches them.
func (r *Row) openings() {
	wall := &r.k.Room.Walls[r.Wall]
	for i := range wall.Openings {
		o := &wall.Openings[i]
		r.opening(wall, o, over(o.From-o.Casing, o.To+o.Casing))
	}
	for _, v := range r.beside() {
		strip := v.strip(0, r.Depth)
		for i := range v.wall.Openings {
			o := &v.wall.Openings[i]
			if o.From-o.Casing < strip.to && strip.from < o.To+o.Casing {
				r.opening(v.wall, o, v.touching())
			}
		}
	}
}

func (r *Row) opening(wall *survey.Wall, o *survey.Opening, m Meet) {
	low, high := fit.Cased(r.k, wall.Index, o)
	r.Boxes = append(r.Boxes, Box{Meet: m, By: o.Pointer, What: Opening, Low: low, High: high})
}

// beside are the views of the two walls joined to the row's.
func (r *Row) beside() []view {
	var out []view
	own := view{wall: &r.k.Room.Walls[r.Wall]}
	if v, ok := own.next(r.k.Room, true, map[int]bool{}); ok {
		out = append(out, v)
	}
	if v, ok := own.prev(r.k.Room, true, map[int]bool{}); ok {
		out = append(out, v)
	}
	return out
}

// fixtures adds what stands off the wall, or off the walls at its ends within
// reach. What lies flush is merely covered, but the place before an electrical
// panel stays free.
func (r *Row) fixtures() {
	wall := &r.k.Room.Walls[r.Wall]
	for i := range wall.Fixtures {
		f := &wall.Fixtures[i]
		if f.Out > 0 || f.Kind == survey.Panel {
			r.fixture(wall, f, over(f.At-f.Width/2, f.At+f.Width/2), f.Out <= 0)
		}
	}
	for _, v := range r.beside() {
		strip := v.strip(0, r.Depth)
		for i := range v.wall.Fixtures {
			f := &v.wall.Fixtures[i]
			if f.At-f.Width/2 >= strip.to || f.At+f.Width/2 <= strip.from {
				continue
			}
			if f.Out > 0 {
				r.fixture(v.wall, f, v.within(f.Out), false)
			}
			if f.Kind == survey.Panel {
				r.fixture(v.wall, f, v.touching(), true)
			}
		}
	}
}

func (r *Row) fixture(wall *survey.Wall, f *survey.Fixture, m Meet, soft bool) {
	at := r.k.Above(wall.Index, f.Level.Value)
	r.Boxes = append(r.Boxes, Box{
		Meet: m, By: f.Pointer, What: Fixture, Low: at.Minus(f.Height / 2), High: at.Plus(f.Height / 2), Soft: soft,
	})
}

// within are the cabinets that come nearer to a wall at right angles than a distance.
func (v view) within(distance length.Length) Meet {
	if v.turn == 1 {
		return reachingRight(v.off - distance + 1)
	}
	return reachingLeft(distance - v.off - 1)
}
