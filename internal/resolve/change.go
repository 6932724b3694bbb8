package resolve

import (
	"railhead/internal/length"
	"railhead/internal/survey"
)

// changes are what moves before fitting.
type changes struct{ floor, ceiling length.Length }

// readChanges moves the floor and the ceiling. A new floor that ends at the plinth leaves the cabinets' floor alone.
func (b *body) readChanges() {
	in := &b.req.Plan
	b.moved = changes{
		floor:   b.lengthOr(in.FloorChange, "/plan/floor_change", anySign, 0),
		ceiling: b.lengthOr(in.CeilingChange, "/plan/ceiling_change", anySign, 0),
	}
	if !in.FloorChange.Given() {
		b.assume("assume.plan.floor_change", 0, "/plan/floor_change")
		b.ask("ask.plan.floor_change", "/plan/floor_change")
	}
	if !in.CeilingChange.Given() {
		b.assume("assume.plan.ceiling_change", 0, "/plan/ceiling_change")
		b.ask("ask.plan.ceiling_change", "/plan/ceiling_change")
	}
	b.plan.FloorChange, b.plan.CeilingChange = b.moved.floor, b.moved.ceiling
	under := in.FloorUnderCabinets == nil || *in.FloorUnderCabinets
	for i := range b.walls {
		b.change(&b.walls[i], under)
	}
}

func (b *body) change(w *wall, under bool) {
	w.RoomFloor = w.FoundFloor.Moved(b.moved.floor)
	if under {
		w.Floor = w.RoomFloor
	}
	w.Ceiling = w.Ceiling.Moved(b.moved.ceiling)
	for i := range w.Overheads {
		o := &w.Overheads[i]
		if o.Behind.CeilingLevel != nil {
			h := o.Behind.CeilingLevel.Plus(b.moved.ceiling)
			o.Behind.CeilingLevel = &h
		}
	}
	if b.moved != (changes{}) && len(b.faults) == 0 {
		b.possibleChange(w)
	}
}

// possibleChange refuses a new ceiling that swallows an overhead or meets the floor, and a new floor that meets what
// hangs above it.
func (b *body) possibleChange(w *wall) {
	whole := survey.Span{From: 0, To: w.Length}
	if !b.above(w.Ceiling, w.RoomFloor, whole, "plan.change.ceiling_meets_floor", b.mover()) {
		return
	}
	for i := range w.Overheads {
		o := &w.Overheads[i]
		if o.GoesWithOldCabinets() {
			continue // it is down before anything changes
		}
		s := survey.Span{From: o.From, To: o.To}
		b.above(w.Ceiling, o.Underside, s, "plan.ceiling_change.swallows_overhead", "/plan/ceiling_change")
		b.above(o.Underside, w.RoomFloor, s, "plan.floor_change.meets_overhead", "/plan/floor_change")
	}
}

// mover is the change that brings floor and ceiling together.
func (b *body) mover() string {
	if b.moved.ceiling < 0 {
		return "/plan/ceiling_change"
	}
	return "/plan/floor_change"
}
