package kitchen

import (
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/length"
)

// Lowered is the same case with every row lower on its legs. Cabinets that were
// given a level of their own stay where they are.
func (k *Kitchen) Lowered(by length.Length) *Kitchen {
	out, plan := *k, *k.Plan
	plan.RowShift -= by
	plan.Cabinets = slices.Clone(plan.Cabinets)
	for i := range plan.Cabinets {
		if c := &plan.Cabinets[i]; !c.OwnLevel {
			c.Underside, c.Top = c.Underside-by, c.Top-by
		}
	}
	out.Plan = &plan
	return &out
}

// CeilingMoved is the same case with every ceiling, also where it was seen behind
// overheads, at another level: what a change of the ceiling before fitting does.
func (k *Kitchen) CeilingMoved(by length.Length) *Kitchen {
	out, room, plan := *k, *k.Room, *k.Plan
	plan.CeilingChange += by
	room.Walls = slices.Clone(room.Walls)
	for i := range room.Walls {
		w := &room.Walls[i]
		w.Ceiling = w.Ceiling.Moved(by)
		w.Overheads = slices.Clone(w.Overheads)
		for o := range w.Overheads {
			if seen := w.Overheads[o].Behind.CeilingLevel; seen != nil {
				moved := seen.Plus(by)
				w.Overheads[o].Behind.CeilingLevel = &moved
			}
		}
	}
	out.Room, out.Plan = &room, &plan
	return &out
}

// Standing are the cabinets that stand on the floor and follow their row.
func (k *Kitchen) Standing() []*cabinet.Placed {
	var out []*cabinet.Placed
	for i := range k.Plan.Cabinets {
		if c := &k.Plan.Cabinets[i]; c.Stands() && !c.OwnLevel {
			out = append(out, c)
		}
	}
	return out
}
