package layout

import (
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/space"
)

// Differ reports whether two skies leave some row that is asked for different room.
func Differ(k *kitchen.Kitchen, f *kitchen.Filling, a, b kitchen.Sky) bool {
	for _, kind := range f.Kinds {
		for _, w := range f.Walls {
			if !slices.Equal(stretchesOf(k, f, w, kind, a), stretchesOf(k, f, w, kind, b)) {
				return true
			}
		}
	}
	return false
}

// Barred reports whether no cabinet of a kind may stand anywhere along a wall, and the
// first thing that keeps the lowest of them off.
func Barred(k *kitchen.Kitchen, f *kitchen.Filling, wall int, kind cabinet.Kind, sky kitchen.Sky) (by string, barred bool) {
	s := &solver{room: &Room{Kitchen: k, Sky: sky, Filling: f}, grid: f.Step}
	r := s.space(wall, kind)
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
	s := &solver{room: &Room{Kitchen: k, Sky: sky, Filling: f}, grid: f.Step}
	r := s.space(wall, kind)
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

func stretchesOf(k *kitchen.Kitchen, f *kitchen.Filling, wall int, kind cabinet.Kind, sky kitchen.Sky) []space.Stretch {
	s := &solver{room: &Room{Kitchen: k, Sky: sky, Filling: f}, grid: f.Step}
	return s.space(wall, kind).stretches
}
