package resolve

import (
	"railhead/api"
	"railhead/internal/level"
)

// profile reads the points of a profile on a wall; false where any of them is refused.
func (b *body) profile(in []api.Point, pointer string, w *wall) (level.Profile, bool) {
	points, where := make([]level.Point, 0, len(in)), make([]int, 0, len(in))
	ok := true
	for i := range in {
		p, good := b.point(in, i, pointer, w)
		ok = ok && good
		if p != nil {
			points, where = append(points, *p), append(where, i)
		}
	}
	if len(in) == 0 {
		b.fault("body.member.missing", pointer)
		return level.Profile{}, false
	}
	return b.inOrder(points, where, pointer, ok)
}

// point reads one point; it is nil where its station is not usable, and false where anything is refused.
func (b *body) point(in []api.Point, i int, pointer string, w *wall) (*level.Point, bool) {
	at := element(pointer, i)
	station, ok := b.length(in[i].At, at+"/at", anySign)
	if !ok {
		b.reading(&in[i].Reading, at, w, b.noFloor(at))
		return nil, false
	}
	ok = b.onWallAt(w, station, "survey.profile.off_wall", at+"/at")
	height, read := b.reading(&in[i].Reading, at, w, b.floorUnder(in, i, w))
	return &level.Point{At: station, Height: height}, ok && read
}

// floorUnder is the floor under a point: where two points make a step, each stands on its own side of it.
func (b *body) floorUnder(in []api.Point, i int, w *wall) floorAt {
	at, ok := b.quiet(in[i].At)
	if !ok {
		return b.noFloor(element(w.Pointer, i))
	}
	if i > 0 && b.same(in[i-1].At, in[i].At) {
		return b.floorOn(w, at, level.Right)
	}
	if i+1 < len(in) && b.same(in[i].At, in[i+1].At) {
		return b.floorOn(w, at, level.Left)
	}
	return b.floorNear(w, at, at)
}

// inOrder makes the profile and refuses every point that is out of order.
func (b *body) inOrder(points []level.Point, where []int, pointer string, ok bool) (level.Profile, bool) {
	for start := 0; start < len(points); {
		p, fault := level.NewProfile(points[start:])
		if fault == nil {
			return p, ok
		}
		i := start + fault.Index
		b.fault(fault.Code, element(pointer, where[i])+"/at")
		ok, start = false, i
		if fault.Code == "survey.profile.third_at_station" {
			start = i - 1 // a fourth is one too many as well
		}
	}
	return level.Profile{}, false
}
