package trim

import (
	"railhead/internal/survey"
)

// even gives cuts that meet one line: the parts of one thing around an inside
// corner, or end to end along a wall, are cut to the highest line of any.
func even(room *survey.Room, cuts []cut) {
	meetings := meetings(room, cuts)
	for changed := true; changed; { // a line travels one part further each time
		changed = false
		for _, m := range meetings {
			changed = m.left.evenedTo(m.right) || m.right.evenedTo(m.left) || changed
		}
	}
}

// meeting is where the right end of one cut is the left end of another.
type meeting struct{ left, right *cut }

func meetings(room *survey.Room, cuts []cut) []meeting {
	var out []meeting
	for i := range cuts {
		if cuts[i].over.Right != survey.EndCorner {
			continue
		}
		for j := range cuts {
			if cuts[i].meets(room, &cuts[j]) {
				out = append(out, meeting{&cuts[i], &cuts[j]})
			}
		}
	}
	return out
}

func (c *cut) evenedTo(o *cut) bool {
	if c.line >= o.line {
		return false
	}
	c.raise(*o)
	c.evened = true
	return true
}

// meets reports whether the right end of one cut is the left end of the other.
func (c *cut) meets(room *survey.Room, o *cut) bool {
	return goesOn(room, c.over, o.over) && c.To >= c.over.To && o.From <= o.over.From
}

// goesOn reports whether an overhead goes on at its right end as another part
// of the same thing.
func goesOn(room *survey.Room, left, right *survey.Overhead) bool {
	if left == right || left.Group != right.Group || left.Right != survey.EndCorner || right.Left != survey.EndCorner {
		return false
	}
	if left.Wall == right.Wall {
		return left.To == right.From
	}
	return room.Walls[left.Wall].Next == right.Wall
}
