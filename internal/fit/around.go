package fit

import (
	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// from is where a wall sees a floor area come from.
type from int

const (
	fromOwnWall from = iota
	fromLeftCorner
	fromRightCorner
	fromFacing
)

// seen is a floor area in the coordinates of a wall, which need not be its own.
type seen struct {
	cabinet.Patch
	side from
}

// placedAt is a cabinet as a wall sees it, or an appliance in a cabinet's stead.
type placedAt struct {
	c *cabinet.Placed
	seen
	appliance *cabinet.Appliance // nil for a cabinet
}

// view is what a wall sees: its own floor area, the areas around the inside
// corners at its ends, and the walls opposite.
type view struct {
	room   *survey.Room
	wall   *survey.Wall
	facing []opposite
}

func viewFrom(room *survey.Room, wall int) view {
	return view{room, &room.Walls[wall], facing(room, wall)}
}

// sees appends a cabinet's floor areas in the wall's coordinates; none where the
// two walls have nothing to do with each other.
func (v view) sees(out []placedAt, c *cabinet.Placed) []placedAt {
	for _, p := range c.Native(v.room) {
		if s, ok := v.area(p); ok {
			out = append(out, placedAt{c, s, nil})
		}
	}
	return out
}

// others are the plan's other cabinets, and its appliances, that share some height
// with one, as the wall sees them.
func (v view) others(k *kitchen.Kitchen, c *cabinet.Placed) []placedAt {
	out := make([]placedAt, 0, len(k.Plan.Cabinets))
	for i := range k.Plan.Cabinets {
		o := &k.Plan.Cabinets[i]
		if o.Index != c.Index && levelled(k, c, o) {
			out = v.sees(out, o)
		}
	}
	return v.appliances(out, k, c)
}

// area is a floor area in the wall's coordinates: its own, around an inside
// corner, or across the room where two corners tell the stations.
func (v view) area(p cabinet.Patch) (seen, bool) {
	switch p.Wall {
	case v.wall.Index:
		return seen{p, fromOwnWall}, true
	case v.wall.Next:
		return v.around(p, fromRightCorner)
	case v.wall.Prev:
		return v.around(p, fromLeftCorner)
	}
	for _, f := range v.facing {
		if f.wall == p.Wall && f.mapped {
			q := cabinet.Patch{Wall: v.wall.Index, From: f.turn - p.To, To: f.turn - p.From, Near: f.distance - p.Far, Far: f.distance - p.Near}
			return seen{q, fromFacing}, true
		}
	}
	return seen{}, false
}

func (v view) around(p cabinet.Patch, side from) (seen, bool) {
	for _, q := range p.Joined(v.room) {
		if q.Wall == v.wall.Index {
			return seen{q, side}, true
		}
	}
	return seen{}, false
}

// Underfoot is below every floor: what stands on the floor reaches down to it.
const Underfoot = -length.Max

// lowest is where a cabinet begins, above the datum; of a standing one, its feet.
func lowest(c *cabinet.Placed) length.Length {
	if c.Stands() {
		return Underfoot
	}
	return c.Underside
}

// levelled reports whether two cabinets take up a common height; abutting is not.
// Walls of different level groups have their own datums.
func levelled(k *kitchen.Kitchen, a, b *cabinet.Placed) bool {
	if k.Room.Walls[a.Wall].Group == k.Room.Walls[b.Wall].Group {
		return lowest(a) < b.Top && lowest(b) < a.Top
	}
	up := k.DatumOf(b.Wall).Level.Value.Sub(k.DatumOf(a.Wall).Level.Value)
	return up.Plus(b.Top).CmpLength(lowest(a)) > 0 && up.Plus(lowest(b)).CmpLength(a.Top) < 0
}

// common is the stretch that two spans share, and whether they share any.
func common(aFrom, aTo, bFrom, bTo length.Length) (from, to length.Length, shared bool) {
	from, to = max(aFrom, bFrom), min(aTo, bTo)
	return from, to, from < to
}
