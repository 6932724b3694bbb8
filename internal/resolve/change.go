package resolve

import (
	"railhead/api"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// changes are what moves before fitting.
type changes struct {
	floor, ceiling     length.Length
	floorOK, ceilingOK bool
}

func (c changes) some() bool { return c.floor != 0 || c.ceiling != 0 }

// readChanges moves the floor and the ceiling. A new floor that ends at the plinth leaves the cabinets' floor alone.
func (b *body) readChanges() {
	in := &b.req.Plan
	b.moved.floor, b.moved.floorOK = b.moves(in.FloorChange, "/plan/floor_change")
	b.moved.ceiling, b.moved.ceilingOK = b.moves(in.CeilingChange, "/plan/ceiling_change")
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

// moves reads a change: none, where it is left out; false where it is refused.
func (b *body) moves(in api.Length, pointer string) (length.Length, bool) {
	by, ok := b.optional(in, pointer, anySign)
	return by, ok || !in.Given()
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
	if b.moved.some() {
		b.possibleChange(w)
	}
}

// possibleChange refuses a new ceiling that swallows an overhead or meets the floor, and a new floor that meets what
// hangs above it; not what was wrong before.
func (b *body) possibleChange(w *wall) {
	m, whole := b.moved, survey.Span{From: 0, To: w.Length}
	if m.floorOK && m.ceilingOK && w.lengthOK && w.sound &&
		!b.above(w.Ceiling, w.RoomFloor, whole, "plan.change.ceiling_meets_floor", b.mover()) {
		return
	}
	for i := range w.overheads {
		o := &w.overheads[i]
		if o.goes() {
			continue // it is down before anything changes
		}
		if m.ceilingOK && o.underCeiling {
			b.above(w.Ceiling, o.Underside, o.on, "plan.ceiling_change.swallows_overhead", "/plan/ceiling_change")
		}
		if m.floorOK && o.overFloor {
			b.above(o.Underside, w.RoomFloor, o.on, "plan.floor_change.meets_overhead", "/plan/floor_change")
		}
	}
}

// mover is the change that brings floor and ceiling together.
func (b *body) mover() string {
	if b.moved.ceiling < 0 {
		return "/plan/ceiling_change"
	}
	return "/plan/floor_change"
}
