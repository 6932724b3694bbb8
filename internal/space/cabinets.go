package space

import (
	"railhead/internal/cabinet"
	"railhead/internal/fit"
	"railhead/internal/length"
)

// cabinets adds the plan's cabinets, on the wall, around its corners and across
// the room.
func (r *Row) cabinets() {
	for i := range r.k.Plan.Cabinets {
		c := &r.k.Plan.Cabinets[i]
		low := fit.Underfoot
		if !c.Stands() {
			low = c.Underside
		}
		for _, p := range c.Native(r.k.Room) {
			r.standing(p, Box{By: c.Pointer, What: Cabinet, Low: r.here(p.Wall, low), High: r.here(p.Wall, c.Top)})
		}
	}
}

// standing adds something over a floor area, where the row's wall sees it within
// the row's depth. What stands right before the row leaves its fronts no room.
func (r *Row) standing(p cabinet.Patch, b Box) {
	q, ok := fit.Seen(r.k.Room, r.Wall, p)
	if !ok || q.Far <= 0 || q.Near >= r.Depth && (b.Soft || q.Near >= r.Depth+r.sweep()) {
		return
	}
	b.Soft = b.Soft || q.Near >= r.Depth
	switch room := r.k.Room.Walls[r.Wall]; {
	case p.Wall == r.Wall:
	case p.Wall == room.Next || p.Wall == room.Prev:
		b.What = Corner
	default:
		b.What = Opposite
	}
	b.Meet = over(q.From, q.To)
	r.Boxes = append(r.Boxes, b)
}

// sweep is how far before the row its fronts come: drawers, and doors as wide as
// the row is deep.
func (r *Row) sweep() length.Length {
	if r.Door == nil || r.Door.Opens == cabinet.OpensNot || r.Door.Opens == cabinet.OpensUp {
		return 0
	}
	return r.Depth
}

// here is a height above a wall's datum as one above the row's.
func (r *Row) here(wall int, height length.Length) length.Exact {
	return r.k.DatumOf(wall).Level.Value.Sub(r.k.DatumOf(r.Wall).Level.Value).Plus(height)
}

// facing keeps the row off the walls that it looks at, and off what stands there
// where nobody surveyed which stations face each other: it may be anywhere.
func (r *Row) facing() {
	for _, w := range fit.Opposites(r.k.Room, r.Wall) {
		if r.Depth > w.Distance {
			r.wholeHeight(everywhere(), r.k.Room.Walls[w.Wall].Pointer, Opposite)
		}
		if w.Mapped {
			continue
		}
		for i := range r.k.Plan.Cabinets {
			c := &r.k.Plan.Cabinets[i]
			if c.Wall != w.Wall || w.Distance-c.Depth >= r.Depth {
				continue
			}
			low := fit.Underfoot
			if !c.Stands() {
				low = c.Underside
			}
			r.Boxes = append(r.Boxes, Box{
				Meet: everywhere(), By: c.Pointer, What: Opposite, Low: r.here(c.Wall, low), High: r.here(c.Wall, c.Top), Soft: true,
			})
		}
	}
}
