package takeoff

import (
	"railhead/internal/cabinet"
	"railhead/internal/length"
	"railhead/internal/survey"
	"railhead/internal/trim"
)

// face is one of an overhead's faces along its wall.
type face struct {
	shows []survey.Span // where it shows: not where another part of the same thing goes on
	free  length.Length // ceiling before it, up to what faces it; negative where nothing does
}

// facesOf are an overhead's front and, where it hangs off the wall, its back.
func facesOf(room *survey.Room, parts []*survey.Overhead, o *survey.Overhead) []face {
	front := face{free: -1}
	if facing := room.Walls[o.Wall].Facing; facing != nil {
		front.free = max(0, facing.Distance-o.Face())
	}
	if front.free != 0 {
		front.shows = shows(room, parts, o, func(p cabinet.Patch) bool { return p.Near <= o.Face() && o.Face() < p.Far })
	}
	if o.Out == 0 {
		return []face{front}
	}
	back := face{free: o.Out}
	back.shows = shows(room, parts, o, func(p cabinet.Patch) bool { return p.Near < o.Out && o.Out <= p.Far })
	return []face{front, back}
}

// shows are the stretches of a face that no other part goes on from.
func shows(room *survey.Room, parts []*survey.Overhead, o *survey.Overhead, meets func(cabinet.Patch) bool) []survey.Span {
	var hidden []survey.Span
	for _, p := range parts {
		if p == o {
			continue
		}
		for _, q := range on(room, o.Wall, cabinet.Under(p)) {
			if meets(q) {
				hidden = append(hidden, survey.Span{From: q.From, To: q.To})
			}
		}
	}
	return survey.Without([]survey.Span{{From: o.From, To: o.To}}, hidden)
}

// upTo is a width, as far as there is room for it before the face.
func (f face) upTo(width length.Length) length.Length {
	if f.free < 0 {
		return width
	}
	return min(width, f.free)
}

// shown is how many faces show at all.
func (s *sheet) shown() int {
	n := 0
	for _, f := range s.faces {
		if len(f.shows) > 0 {
			n++
		}
	}
	return n
}

// freeEnds are the faces across the depth that come off with a stretch.
func (s *sheet) freeEnds(st *stretch) []end {
	var out []end
	if st.From == s.o.From && isFree(s.o.Left) {
		out = append(out, end{s.o.Depth, heightAt(st.runs, st.From)})
	}
	if st.To == s.o.To && isFree(s.o.Right) {
		out = append(out, end{s.o.Depth, heightAt(st.runs, st.To)})
	}
	return withHeight(out)
}

// isFree: a cabinet that stands against an end leaves its face there.
func isFree(e survey.EndKind) bool { return e == survey.EndOpen || e == survey.EndCabinet }

// newEnds are the faces across the depth that a cut leaves open against what
// stays hanging.
func (s *sheet) newEnds(st *stretch) []end {
	if st.cut == nil {
		return nil
	}
	var out []end
	for _, r := range st.cut.Returns {
		if r.Meets == trim.MeetsOverhead {
			out = append(out, end{r.Depth, heightAt(st.runs, r.At)})
		}
	}
	return withHeight(out)
}

func withHeight(in []end) []end {
	var out []end
	for _, e := range in {
		if e.height.Sign() > 0 {
			out = append(out, e)
		}
	}
	return out
}
