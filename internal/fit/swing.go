package fit

import (
	"railhead/internal/cabinet"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// front is what a cabinet's front takes up when it opens: a leaf (or drawer)
// that comes out, and at its hinges the leaf's thickness and the pull on it.
type front struct {
	c         *cabinet.Placed
	patch     cabinet.Patch // the cabinet's floor area
	leaf      length.Length // how far it comes out of the cabinet's face; 0 for a lift-up front
	thickness length.Length
	pull      length.Length
}

// frontOf is a cabinet's front; false where there is none, where nobody
// described it, and for corner cabinets, whose folding or blind fronts open
// clear of the corner by their own make.
func frontOf(room *survey.Room, c *cabinet.Placed) (front, bool) {
	if c.Door == nil || c.Corner != nil || c.Door.Opens == cabinet.OpensNot {
		return front{}, false
	}
	return front{c, c.Native(room)[0], leaf(c), c.Door.Thickness, c.Door.Pull}, true
}

// leaf is how far a front comes out: a door by its width, one of a pair by half
// of it, a drawer by the cabinet's depth (full extension).
func leaf(c *cabinet.Placed) length.Length {
	switch c.Door.Opens {
	case cabinet.OpensLeft, cabinet.OpensRight:
		return c.Width()
	case cabinet.OpensPair:
		return (c.Width() + 1) / 2
	case cabinet.OpensDrawer:
		return c.Depth
	default:
		return 0
	}
}

// hinges reports whether a leaf turns about the cabinet's left or right side.
func (f front) hinges(right bool) bool {
	if right {
		return f.c.Door.HingesRight()
	}
	return f.c.Door.HingesLeft()
}

// sweep is the floor area straight in front that an opening front passes over.
func (f front) sweep() cabinet.Patch {
	p := f.patch
	p.Near, p.Far = p.Far, p.Far+f.leaf
	return p
}

// face is the distance from the wall to the outside of the closed front.
func (f front) face() length.Length { return f.patch.Far + f.thickness }

// aside is the room that an open leaf needs beside its hinges, next to something
// that stands out to a given distance from the wall.
//
// Opened to 90° the leaf stands along the line of the cabinet's side: with
// hinges that turn it out of the opening its whole thickness lies beyond that
// line, and the pull stands off further. A plain door of 20 mm (3/4 in) so needs
// 20 mm (3/4 in), and with a pull the pull's projection more. The pull sits in
// the outer half of the leaf, so what reaches along less than half of the leaf
// only meets its thickness (common practice, no source).
func (f front) aside(reaches length.Length) length.Length {
	if 2*(reaches-f.patch.Far) < f.leaf {
		return f.thickness
	}
	return f.thickness + f.pull
}

// closed is a neighbour's closed front; one that nobody described counts like
// the cabinet's own, as a kitchen has one kind.
func (f front) closed(o *cabinet.Placed) (thickness, pull length.Length) {
	switch {
	case o.Door == nil:
		return f.thickness, f.pull
	case o.Door.Opens == cabinet.OpensNot:
		return 0, 0
	default:
		return o.Door.Thickness, o.Door.Pull
	}
}

// gapTo is the free way from a patch's side to a stretch beyond it; negative
// where the stretch begins before that side.
func gapTo(p cabinet.Patch, right bool, from, to length.Length) length.Length {
	if right {
		return from - p.To
	}
	return p.From - to
}

// endsAtWall reports whether a wall stands at a wall's end, how far it reaches
// into the room, and whether the survey shows it: a joined wall, or an overhead
// whose end there meets a wall.
func endsAtWall(room *survey.Room, wall int, right bool) (reaches length.Length, surveyed bool) {
	w := &room.Walls[wall]
	if next := joinedAt(w, right); next >= 0 {
		return room.Walls[next].Length, true
	}
	for i := range w.Overheads {
		o := &w.Overheads[i]
		if right && o.To >= w.Length && o.Right == survey.EndWall || !right && o.From <= 0 && o.Left == survey.EndWall {
			return length.Max, true
		}
	}
	return length.Max, false
}

func joinedAt(w *survey.Wall, right bool) int {
	if right {
		return w.Next
	}
	return w.Prev
}
