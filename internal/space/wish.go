package space

import (
	"cmp"
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// lines are the stations that joints should meet: the edges of what stands on the
// wall in the rows over or under this one, appliances among them.
func (r *Row) lines() {
	add := func(from, to length.Length) {
		for _, x := range []length.Length{from, to} {
			if x > 0 && x < r.Length {
				r.Lines = append(r.Lines, x)
			}
		}
	}
	for i := range r.k.Plan.Cabinets {
		c := &r.k.Plan.Cabinets[i]
		for _, p := range c.Native(r.k.Room) {
			if p.Wall == r.Wall && c.Kind != r.Kind {
				add(p.From, p.To)
			}
		}
	}
	for i := range r.k.Plan.Appliances {
		a := &r.k.Plan.Appliances[i]
		if a.Wall == r.Wall && a.Hangs != (r.Kind == cabinet.Wall) && a.Kind != cabinet.Sink {
			add(a.From, a.To)
		}
	}
	slices.Sort(r.Lines)
	r.Lines = slices.Compact(r.Lines)
}

// GapKind is what two cabinets stand on either side of.
type GapKind int

// Gaps whose two neighbours should be equal.
const (
	WindowGap GapKind = iota
	HoodGap
	DuctGap
)

// Gap is a stretch whose two neighbours in the upper rows should be equal in width
// and height: a window, a hood, a duct box. It need not be one where nothing
// stands; [Row.Stretches] says that.
type Gap struct {
	Kind     GapKind
	By       string // pointer of the thing
	From, To length.Length
}

func (r *Row) gaps(sky kitchen.Sky) {
	if r.Kind == cabinet.Base {
		return
	}
	wall := &r.k.Room.Walls[r.Wall]
	for i := range wall.Openings {
		if o := &wall.Openings[i]; o.Kind == survey.Window {
			r.gap(WindowGap, o.Pointer, o.From-o.Casing, o.To+o.Casing)
		}
	}
	if cook := r.k.Plan.Cooking; cook != nil && cook.Wall == r.Wall && hooded(cook) {
		r.gap(HoodGap, cook.Pointer+"/hood", cook.From, cook.To)
	}
	for i := range r.k.Plan.Appliances {
		if a := &r.k.Plan.Appliances[i]; a.Kind == cabinet.HoodOnWall && a.Wall == r.Wall {
			r.gap(HoodGap, a.Pointer, a.From-a.Left.Need, a.To+a.Right.Need)
		}
	}
	for _, h := range sky.Hung {
		if o := h.Overhead; o.Kind == survey.DuctBox && o.Wall == r.Wall && o.Out < r.Depth {
			r.gap(DuctGap, o.Pointer, h.From, h.To)
		}
	}
	slices.SortStableFunc(r.Gaps, func(a, b Gap) int {
		return cmp.Or(cmp.Compare(a.From, b.From), cmp.Compare(a.Kind, b.Kind))
	})
}

func (r *Row) gap(kind GapKind, by string, from, to length.Length) {
	if from, to = max(from, 0), min(to, r.Length); from < to {
		r.Gaps = append(r.Gaps, Gap{kind, by, from, to})
	}
}

// Whole is a stretch that one base cabinet should stand under: a sink hangs in one,
// and so does a hob that no range brings along.
type Whole struct {
	By string // pointer of the thing
	survey.Span
}

func (r *Row) whole() {
	if r.Kind != cabinet.Base {
		return
	}
	ranged := false
	cook := r.k.Plan.Cooking
	for i := range r.k.Plan.Appliances {
		a := &r.k.Plan.Appliances[i]
		switch {
		case a.Wall != r.Wall:
		case a.Kind == cabinet.Sink:
			r.Whole = append(r.Whole, Whole{a.Pointer, survey.Span{From: a.From, To: a.To}})
		case !a.Hangs && cook != nil && a.From < cook.To && cook.From < a.To:
			ranged = true
		}
	}
	if cook != nil && cook.Wall == r.Wall && !ranged {
		r.Whole = append(r.Whole, Whole{cook.Pointer, survey.Span{From: cook.From, To: cook.To}})
	}
}
