package fit

import (
	"railhead/internal/length"
	"railhead/internal/survey"
)

// opposite is a wall that another one looks at.
type opposite struct {
	wall     int
	distance length.Length
	mapped   bool          // the stations of the two walls are known to each other
	turn     length.Length // when mapped: at = turn − at of the opposite wall
}

// facing are the walls opposite to a wall: those around two inside corners, of
// which the stations are known, and those that the survey names.
//
// Two corner turns map (at, out) to (L − at, D − out), where D is the wall
// between and L the wall that the turns start from.
func facing(room *survey.Room, wall int) []opposite {
	w := &room.Walls[wall]
	var out []opposite
	if w.Next >= 0 && room.Walls[w.Next].Next >= 0 {
		between := &room.Walls[w.Next]
		out = append(out, opposite{between.Next, between.Length, true, w.Length})
	}
	if w.Prev >= 0 && room.Walls[w.Prev].Prev >= 0 {
		between := &room.Walls[w.Prev]
		out = appendNew(out, opposite{between.Prev, between.Length, true, room.Walls[between.Prev].Length})
	}
	if w.Facing != nil {
		out = appendNew(out, opposite{wall: w.Facing.Wall, distance: w.Facing.Distance})
	}
	for i := range room.Walls {
		if f := room.Walls[i].Facing; f != nil && f.Wall == wall {
			out = appendNew(out, opposite{wall: i, distance: f.Distance})
		}
	}
	return out
}

func appendNew(out []opposite, o opposite) []opposite {
	for _, have := range out {
		if have.wall == o.wall {
			return out
		}
	}
	return append(out, o)
}
