package layout

import (
	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/space"
)

// Stretches is what may stand along every row that is asked for, under a sky.
func Stretches(k *kitchen.Kitchen, f *kitchen.Filling, sky kitchen.Sky) (out [][]space.Stretch) {
	for _, kind := range f.Kinds {
		for _, w := range f.Walls {
			out = append(out, rowUnder(k, f, w, kind, sky).stretches)
		}
	}
	return out
}

// Barred reports whether no cabinet of a kind may stand anywhere along a wall, and the
// first thing that keeps the lowest of them off.
func Barred(k *kitchen.Kitchen, f *kitchen.Filling, wall int, kind cabinet.Kind, sky kitchen.Sky) (by string, barred bool) {
	r := rowUnder(k, f, wall, kind, sky)
	if r.open(0, r.Length) {
		return "", false
	}
	if len(r.heights) > 0 {
		by, _ = r.Bar(0, r.Length, r.Levels(r.heights[0]))
	}
	if by == "" {
		by = k.Room.Walls[wall].Pointer
	}
	return by, true
}

// Longest is the longest stretch of a wall in which cabinets of a kind may stand, less
// what they keep from its ends.
func Longest(k *kitchen.Kitchen, f *kitchen.Filling, wall int, kind cabinet.Kind, sky kitchen.Sky) (out length.Length) {
	r := rowUnder(k, f, wall, kind, sky)
	for i, at := range r.stretches {
		if at.Levels == 0 || i > 0 && r.stretches[i-1].Levels > 0 {
			continue
		}
		to, next := at.To, i+1
		for ; next < len(r.stretches) && r.stretches[next].Levels > 0; next++ {
			to = r.stretches[next].To
		}
		out = max(out, to-at.From-r.meets(i-1, 1).Least-r.meets(next, -1).Least)
	}
	return out
}

// Unmet are the pointers of what wants one base cabinet under it where none can stand
// at all and none stays.
func Unmet(k *kitchen.Kitchen, f *kitchen.Filling, sky kitchen.Sky) (out []string) {
	if !f.Asks(cabinet.Base) {
		return nil
	}
	for _, w := range f.Walls {
		s := &solver{room: &Room{Kitchen: k, Sky: sky, Filling: f}, grid: f.Step}
		r := s.space(w, cabinet.Base)
		s.fix(r)
		for _, one := range r.Whole {
			if !r.open(one.From, one.To) && !r.kept(one.From, one.To) {
				out = append(out, one.By)
			}
		}
	}
	return out
}

// rowUnder is a row with the room that there is for it under a sky.
func rowUnder(k *kitchen.Kitchen, f *kitchen.Filling, wall int, kind cabinet.Kind, sky kitchen.Sky) *row {
	s := &solver{room: &Room{Kitchen: k, Sky: sky, Filling: f}, grid: f.Step}
	return s.space(wall, kind)
}
