package cabinet

import (
	"railhead/internal/length"
	"railhead/internal/survey"
)

// Patch is a rectangle of floor area in one wall's own coordinates.
type Patch struct {
	Wall     int
	From, To length.Length // along the wall
	Near     length.Length // distance from the wall to its near side
	Far      length.Length // and to its far side
	Native   bool          // on the cabinet's own wall (or its corner's other wall)
}

// Overlaps reports whether the open interiors of two patches of one wall meet.
func (p Patch) Overlaps(o Patch) bool {
	return p.Wall == o.Wall && p.From < o.To && o.From < p.To && p.Near < o.Far && o.Near < p.Far
}

// Span is its stretch along the wall.
func (p Patch) Span() survey.WallSpan { return survey.WallSpan{Wall: p.Wall, From: p.From, To: p.To} }

// Under is the floor area under an overhead.
func Under(o *survey.Overhead) Patch { return UnderStretch(o, o.From, o.To) }

// UnderStretch is the floor area under a stretch of an overhead.
func UnderStretch(o *survey.Overhead, from, to length.Length) Patch {
	return Patch{Wall: o.Wall, From: from, To: to, Near: o.Out, Far: o.Face()}
}

// Native are the rectangles of a cabinet on the walls it stands at. A diagonal
// corner cabinet counts as the whole square it fills, which is to the safe side.
func (c *Placed) Native(room *survey.Room) []Patch {
	own := Patch{c.Wall, c.From, c.To, 0, c.Depth, true}
	if c.Corner == nil || c.Corner.Shape == CornerBlind {
		return []Patch{own}
	}
	if c.Corner.Shape == CornerDiagonal && c.Corner.OtherWidth > own.Far {
		own.Far = c.Corner.OtherWidth
	}
	other := Patch{c.Corner.OtherWall, 0, c.Corner.OtherWidth, 0, c.Depth, true}
	if !c.Corner.AtRight {
		end := room.Walls[c.Corner.OtherWall].Length
		other.From, other.To = end-c.Corner.OtherWidth, end
	}
	return []Patch{own, other}
}

// Patches are its native rectangles and what they are in the coordinates of the
// walls around the room's inside corners, as far as the walls join, so that
// whatever hangs on any of those walls is tested where it was measured.
func (c *Placed) Patches(room *survey.Room) []Patch {
	out := c.Native(room)
	for _, p := range out { // the native ones; what is appended does not count
		out = append(out, p.around(room)...)
	}
	return out
}

// Touching are its patches on the walls that it touches: those it stands at, and
// those that its flank meets in a corner.
func (c *Placed) Touching(room *survey.Room) []Patch {
	var out []Patch
	for _, p := range c.Patches(room) {
		if p.Native || p.Near <= 0 {
			out = append(out, p)
		}
	}
	return out
}

// around are a patch's images on the walls that follow to the right and to the
// left; in a closed room each wall is reached once, the shorter way.
func (p Patch) around(room *survey.Room) []Patch {
	if wall := &room.Walls[p.Wall]; wall.Next < 0 && wall.Prev < 0 {
		return nil
	}
	var out []Patch
	seen := make([]bool, len(room.Walls))
	seen[p.Wall] = true
	right, left := p, p
	for onRight, onLeft := true, true; onRight || onLeft; {
		right, onRight = step(right, onRight, room, seen, Patch.next)
		if onRight {
			out = appendClipped(out, right, room)
		}
		left, onLeft = step(left, onLeft, room, seen, Patch.prev)
		if onLeft {
			out = appendClipped(out, left, room)
		}
	}
	return out
}

// step goes on to the wall that turn leads to, unless it was seen before.
func step(p Patch, on bool, room *survey.Room, seen []bool, turn func(Patch, *survey.Room) (Patch, bool)) (Patch, bool) {
	if !on {
		return p, false
	}
	q, ok := turn(p, room)
	if !ok || seen[q.Wall] {
		return p, false
	}
	seen[q.Wall] = true
	return q, true
}

// next is the patch in the coordinates of the wall that its own joins at the
// right end: a 90° inside corner maps (at, out) of a wall of length L to
// (out, L − at) of the next.
func (p Patch) next(room *survey.Room) (Patch, bool) {
	wall := &room.Walls[p.Wall]
	if wall.Next < 0 {
		return p, false
	}
	return Patch{wall.Next, p.Near, p.Far, wall.Length - p.To, wall.Length - p.From, false}, true
}

// prev is the patch in the coordinates of the wall joined at the left end.
func (p Patch) prev(room *survey.Room) (Patch, bool) {
	wall := &room.Walls[p.Wall]
	if wall.Prev < 0 {
		return p, false
	}
	l := room.Walls[wall.Prev].Length
	return Patch{wall.Prev, l - p.Far, l - p.Near, p.From, p.To, false}, true
}

// Joined are a patch's images on the two walls joined to its own.
func (p Patch) Joined(room *survey.Room) []Patch {
	var out []Patch
	if q, ok := p.next(room); ok {
		out = appendClipped(out, q, room)
	}
	if q, ok := p.prev(room); ok {
		out = appendClipped(out, q, room)
	}
	return out
}

func appendClipped(out []Patch, q Patch, room *survey.Room) []Patch {
	q.From, q.To = max(q.From, 0), min(q.To, room.Walls[q.Wall].Length)
	if q.From >= q.To {
		return out
	}
	return append(out, q)
}
