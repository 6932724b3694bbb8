package contents

import (
	"railhead/internal/length"
	"railhead/internal/survey"
)

// away is how far a stretch of wall is from an overhead along the walls, around
// one inside corner at most; false where no such way leads there.
func away(room *survey.Room, o *survey.Overhead, wall int, s survey.Span) (length.Length, bool) {
	w := &room.Walls[o.Wall]
	out, ok := length.Length(0), false
	shorter := func(d length.Length) {
		if !ok || d < out {
			out, ok = d, true
		}
	}
	if wall == o.Wall {
		shorter(max(0, s.From-o.To, o.From-s.To))
	}
	if wall == w.Prev {
		shorter(max(0, o.From+room.Walls[wall].Length-s.To))
	}
	if wall == w.Next {
		shorter(max(0, w.Length-o.To+s.From))
	}
	return out, ok
}

// nearest is the shortest way from any part to a stretch of wall.
func (c Cluster) nearest(room *survey.Room, wall int, s survey.Span) (length.Length, bool) {
	out, found := length.Length(0), false
	for _, o := range c.Parts {
		if d, ok := away(room, o, wall, s); ok && (!found || d < out) {
			out, found = d, true
		}
	}
	return out, found
}
