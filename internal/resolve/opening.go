package resolve

import (
	"railhead/api"
	"railhead/internal/finding"
	"railhead/internal/level"
	"railhead/internal/survey"
)

// readOpening reads a window, door, passage or hatch. Levels taped from the floor were taped in its middle.
func (b *body) readOpening(w *wall, i int) {
	in, pointer := &w.in.Openings[i], item(w.Pointer, "openings", i)
	o := survey.Opening{
		ID: in.ID, Pointer: pointer, ToFloor: !in.Sill.Given(),
		Kind:   oneOf[survey.OpeningKind](b, in.Kind, pointer+"/kind", "window", "door", "passage", "hatch"),
		Casing: b.lengthOr(in.Casing, pointer+"/casing", notNegative, 0),
	}
	s, ok := b.span(in.From, in.To, pointer)
	if ok {
		b.onWallOver(w, s, "survey.opening.off_wall", pointer)
	}
	o.From, o.To = s.From, s.To
	floor := b.floorOver(w, s, ok, pointer)
	var headOK, sillOK bool
	o.Head, headOK = b.level(&in.Head, pointer+"/head", w, floor)
	o.Sill, sillOK = b.sill(in, pointer+"/sill", w, floor)
	if headOK && sillOK {
		b.headOverSill(&o)
	}
	if ok && headOK && w.ceilingOK {
		b.headUnderCeiling(&o, w)
	}
	if ok && sillOK && w.floorOK && !o.ToFloor {
		b.sillOverFloor(&o, w)
	}
	w.Openings = append(w.Openings, o)
}

// sill is an opening's lower edge: the floor, where none is given.
func (b *body) sill(in *api.Opening, pointer string, w *wall, floor floorAt) (level.Height, bool) {
	if !in.Sill.Given() {
		return floor(pointer), true
	}
	return b.level(&in.Sill, pointer, w, floor)
}

// An opening that ends under its sill, under the floor or above the ceiling is refused.

func (b *body) headOverSill(o *survey.Opening) {
	if gap := o.Head.Value.Sub(o.Sill.Value); gap.Sign() <= 0 {
		b.fault("survey.opening.head_under_sill", o.Pointer+"/head", finding.Size("gap", finding.Down(gap)))
	}
}

func (b *body) sillOverFloor(o *survey.Opening, w *wall) {
	low := w.FoundFloor.Lowest(o.From, o.To)
	if gap := o.Sill.Value.Sub(low.Value); gap.Sign() < 0 {
		b.fault("survey.opening.sill_under_floor", o.Pointer+"/sill", size("at", low.At), finding.Size("gap", finding.Down(gap)))
	}
}

func (b *body) headUnderCeiling(o *survey.Opening, w *wall) {
	if low := w.Ceiling.Lowest(o.From, o.To); low.Value.Less(o.Head.Value) {
		b.fault("survey.opening.head_above_ceiling", o.Pointer+"/head", size("at", low.At),
			finding.Size("over", finding.Up(o.Head.Value.Sub(low.Value))))
	}
}
