package space

import (
	"railhead/internal/cabinet"
	"railhead/internal/fit"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// End is what stands at one end of a free stretch, and how far a front keeps off
// the stretch's end on its account.
type End struct {
	What What
	By   string // pointer of the thing
	// Joined is the wall around the corner at the wall's own end; −1 elsewhere.
	Joined int
	// Shows is whether what stands here shows its side and no filler closes against
	// the thing: an open end of the wall, an opening, something that hangs above.
	Shows bool
	// Hinged is what a door that is hinged at this end needs, Other what any other
	// front does: of the row's door, in every width up to the row's depth.
	Hinged, Other length.Length
}

// Ends are the two ends of a stretch that is free at some heights.
func (r *Row) Ends(s survey.Span, at Levels) [2]End {
	return [2]End{r.end(s, at, false), r.end(s, at, true)}
}

func (r *Row) end(s survey.Span, at Levels, right bool) End {
	out := End{Joined: -1}
	wall := &r.k.Room.Walls[r.Wall]
	out.What, out.By = r.ends(s, at, right)
	if out.What == WallEnd {
		out.Shows = !fit.SideWall(r.k.Room, r.Wall, right)
		if out.Joined = wall.Prev; right {
			out.Joined = wall.Next
		}
	}
	out.Shows = out.Shows || out.What == Opening || out.What == Cooking || out.What >= Overhead
	out.Hinged, out.Other = r.fronts(s, at, right)
	return out
}

// ends is the first thing that bars the next cabinet beyond a stretch's end.
func (r *Row) ends(s survey.Span, at Levels, right bool) (What, string) {
	beyond := survey.Span{From: s.From - 1, To: s.From}
	if right {
		beyond = survey.Span{From: s.To, To: s.To + 1}
	}
	feet := r.feet(at)
	for i := range r.Boxes {
		b := &r.Boxes[i]
		if b.meets(feet, at.Top) && barred([]stretch{b.bar(r.Length)}, beyond) {
			return b.What, b.By
		}
	}
	for i := range r.Limits {
		l := &r.Limits[i]
		if !barred(r.low(l, at.Top), beyond) {
			continue
		}
		if l.Overhead != nil {
			return Overhead, l.By
		}
		return Ceiling, l.By
	}
	return WallEnd, r.k.Room.Walls[r.Wall].Pointer + "/length"
}

// fronts asks package fit what a cabinet that ends with the stretch would need
// there. A wide leaf reaches more things, and a narrow one carries its pull past
// more of them: what both need is enough for every width between.
func (r *Row) fronts(s survey.Span, at Levels, right bool) (hinged, other length.Length) {
	if r.Door == nil || r.Door.Opens == cabinet.OpensNot {
		return 0, 0
	}
	here, away := cabinet.OpensLeft, cabinet.OpensRight
	if right {
		here, away = away, here
	}
	for _, width := range []length.Length{1, s.To - s.From} {
		hinged = max(hinged, r.front(s, at, right, width, here))
		other = max(other, r.front(s, at, right, width, away), r.front(s, at, right, width, cabinet.OpensDrawer))
	}
	return hinged, other
}

func (r *Row) front(s survey.Span, at Levels, right bool, width length.Length, opens cabinet.Opens) length.Length {
	door := *r.Door
	door.Opens = opens
	c := &cabinet.Placed{
		Index: nobody, Kind: r.Kind, Wall: r.Wall, From: s.From, To: s.From + width, Depth: r.Depth,
		Underside: at.Low, Top: at.Top, Height: at.Top - at.Low, Door: &door,
	}
	if right {
		c.From, c.To = s.To-width, s.To
	}
	out := length.Length(0)
	for _, t := range fit.FrontNeeds(r.k, c, right) {
		out = max(out, t.Need-t.Have)
	}
	return out
}

// nobody is an index that no cabinet of a plan has.
const nobody = 1 << 30
