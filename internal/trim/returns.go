package trim

import (
	"slices"

	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

// returns are the faces across the depth where a cut ends: against the uncut
// rest, against a cabinet, and at free ends, which are cut to the same line. At
// a wall or an inside corner there is no end, and where nothing comes off there
// is no face.
func (c *cut) returns(k *kitchen.Kitchen, t Trim, all []cut) []Return {
	var out []Return
	if t.Stations[0].Remove.Sign() > 0 {
		out = append(out, c.face(k, t, all, c.From, c.From > c.over.From, c.over.Left, level.Left)...)
	}
	if t.Stations[len(t.Stations)-1].Remove.Sign() > 0 {
		out = append(out, c.face(k, t, all, c.To, c.To < c.over.To, c.over.Right, level.Right)...)
	}
	return out
}

func (c *cut) face(k *kitchen.Kitchen, t Trim, all []cut, at length.Length, rest bool, end survey.EndKind, side level.Side) []Return {
	if rest {
		return []Return{{at, c.over.Depth, MeetsOverhead}}
	}
	switch {
	case end == survey.EndCorner:
		return c.cornerFace(k, t, all, at, side)
	case t.Work == TakeDown || end == survey.EndWall: // nothing stays hanging, or there is no end
		return nil
	case end == survey.EndCabinet:
		return []Return{{at, c.over.Depth, MeetsCabinet}}
	default:
		return []Return{{at, c.over.Depth, MeetsOpen}}
	}
}

// cornerFace is the face that shows in a corner: that of the part on the other
// side, where it stays hanging below the cut.
func (c *cut) cornerFace(k *kitchen.Kitchen, t Trim, all []cut, at length.Length, side level.Side) []Return {
	for _, o := range k.Overheads() {
		if !beyond(k.Room, c.over, o, side) {
			continue
		}
		end, from := o.From, level.Right
		if side == level.Left {
			end, from = o.To, level.Left
		}
		if k.Above(o.Wall, o.Underside.At(end, from)).CmpLength(t.CutLine) < 0 && !isCutAt(all, o, end) {
			return []Return{{at, o.Depth, MeetsOverhead}}
		}
	}
	return nil
}

func beyond(room *survey.Room, c, o *survey.Overhead, side level.Side) bool {
	if side == level.Left {
		return goesOn(room, o, c)
	}
	return goesOn(room, c, o)
}

// isCutAt reports whether an overhead is cut at one of its ends; cuts that meet
// have one line.
func isCutAt(all []cut, o *survey.Overhead, end length.Length) bool {
	return slices.ContainsFunc(all, func(c cut) bool { return c.over == o && c.From <= end && end <= c.To })
}
