package takeoff

import (
	"railhead/internal/cabinet"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// without is what areas of one wall leave of another, in rectangles, from the
// left and from the wall.
func without(area cabinet.Patch, holes []cabinet.Patch) []cabinet.Patch {
	out := []cabinet.Patch{area}
	for _, h := range holes {
		out = withoutOne(out, h)
	}
	return out
}

func withoutOne(areas []cabinet.Patch, hole cabinet.Patch) []cabinet.Patch {
	var out []cabinet.Patch
	for _, p := range areas {
		out = append(out, around(p, hole)...)
	}
	return out
}

// shared is what areas have in common with one of the same wall.
func shared(areas []cabinet.Patch, with cabinet.Patch) []cabinet.Patch {
	var out []cabinet.Patch
	for _, p := range areas {
		if p.Overlaps(with) {
			p.From, p.To = max(p.From, with.From), min(p.To, with.To)
			p.Near, p.Far = max(p.Near, with.Near), min(p.Far, with.Far)
			out = append(out, p)
		}
	}
	return out
}

// around is what one area leaves of another: beside it, then behind and before it.
func around(p, hole cabinet.Patch) []cabinet.Patch {
	if !p.Overlaps(hole) {
		return []cabinet.Patch{p}
	}
	var out []cabinet.Patch
	add := func(from, to, near, far length.Length) {
		if from < to && near < far {
			out = append(out, cabinet.Patch{Wall: p.Wall, From: from, To: to, Near: near, Far: far})
		}
	}
	from, to := max(p.From, hole.From), min(p.To, hole.To)
	add(p.From, from, p.Near, p.Far)
	add(from, to, p.Near, hole.Near)
	add(from, to, hole.Far, p.Far)
	add(to, p.To, p.Near, p.Far)
	return out
}

// on are an area's images on a wall: itself there, else around the corner.
func on(room *survey.Room, wall int, p cabinet.Patch) []cabinet.Patch {
	if p.Wall == wall {
		return []cabinet.Patch{p}
	}
	var out []cabinet.Patch
	for _, q := range p.Joined(room) {
		if q.Wall == wall {
			out = append(out, q)
		}
	}
	return out
}
