package space

import (
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

// view is the row's floor as another wall sees it around inside corners, each of
// which turns it by 90°. With at and out on the row's wall, that wall's own are
//
//	turn 0: at + along, out + off     turn 1: out + along, off − at
//	turn 2: along − at, off − out     turn 3: along − out, at + off
type view struct {
	wall       *survey.Wall
	turn       int
	along, off length.Length
}

// views are the row's own wall and those that it leads to, in the order in which
// the patches of a cabinet (package cabinet) reach them: each once, the shorter way.
func views(room *survey.Room, wall int) []view {
	own := view{wall: &room.Walls[wall]}
	out, seen := []view{own}, map[int]bool{wall: true}
	right, left := own, own
	for onRight, onLeft := true, true; onRight || onLeft; {
		if right, onRight = right.next(room, onRight, seen); onRight {
			out = append(out, right)
		}
		if left, onLeft = left.prev(room, onLeft, seen); onLeft {
			out = append(out, left)
		}
	}
	return out
}

func (v view) next(room *survey.Room, on bool, seen map[int]bool) (view, bool) {
	if !on || v.wall.Next < 0 || seen[v.wall.Next] {
		return v, false
	}
	seen[v.wall.Next] = true
	return view{&room.Walls[v.wall.Next], (v.turn + 1) % 4, v.off, v.wall.Length - v.along}, true
}

func (v view) prev(room *survey.Room, on bool, seen map[int]bool) (view, bool) {
	if !on || v.wall.Prev < 0 || seen[v.wall.Prev] {
		return v, false
	}
	seen[v.wall.Prev] = true
	before := &room.Walls[v.wall.Prev]
	return view{before, (v.turn + 3) % 4, before.Length - v.off, v.along}, true
}

// across reports whether the two walls stand at right angles.
func (v view) across() bool { return v.turn%2 == 1 }

// own reports whether it is the row's own wall.
func (v view) own(r *Row) bool { return v.wall.Index == r.Wall }

// strip is where along a wall at right angles a strip of the row's floor lies;
// beyond that wall's ends nothing was surveyed.
func (v view) strip(near, far length.Length) stretch {
	s := stretch{near + v.along, far + v.along}
	if v.turn == 3 {
		s = stretch{v.along - far, v.along - near}
	}
	return v.clip(s)
}

func (v view) clip(s stretch) stretch {
	return stretch{max(s.from, 0), min(s.to, v.wall.Length)}
}

// depth is how far from a wall that runs the same way or the other a strip of the
// row's floor lies.
func (v view) depth(near, far length.Length) (length.Length, length.Length) {
	if v.turn == 2 {
		return v.off - far, v.off - near
	}
	return near + v.off, far + v.off
}

// under are the cabinets that stand somewhere between two distances from a wall
// at right angles.
func (v view) under(near, far length.Length) Meet {
	if v.turn == 1 {
		return over(v.off-far, v.off-near)
	}
	return over(near-v.off, far-v.off)
}

// stations turns a stretch of a wall that runs the same way or the other into
// stations of the row's.
func (v view) stations(s stretch) stretch {
	if v.turn == 2 {
		return stretch{v.along - s.to, v.along - s.from}
	}
	return stretch{s.from - v.along, s.to - v.along}
}

// profile is a profile of such a wall at the row's stations.
func (v view) profile(p level.Profile) level.Profile {
	if v.turn == 2 {
		return p.Mirrored(v.along)
	}
	return p.Shifted(-v.along)
}
