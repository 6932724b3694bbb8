package fit

import (
	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// CookingArea is the floor area under the cooking surface of a plan that has one.
func CookingArea(k *kitchen.Kitchen) cabinet.Patch {
	cook := k.Plan.Cooking
	area := cabinet.Patch{Wall: cook.Wall, From: cook.From, To: cook.To}
	for i := range k.Plan.Cabinets {
		c := &k.Plan.Cabinets[i]
		if c.Kind == cabinet.Base && c.Wall == cook.Wall && c.From < cook.To && cook.From < c.To {
			area.Far = max(area.Far, c.Depth)
		}
	}
	if area.Far == 0 {
		area.Far = cookingDepth
	}
	return area
}

// combustible is one thing above the cooking surface that can burn.
type combustible struct {
	by, what  string
	underside length.Exact // above the datum
}

// combustibles are the planned wall cabinets, the fillers and the overheads over
// an area. A filler of the wall row is taken to end where that row does.
func combustibles(k *kitchen.Kitchen, area cabinet.Patch) []combustible {
	var out []combustible
	here := viewFrom(k.Room, area.Wall)
	for i := range k.Plan.Cabinets {
		c := &k.Plan.Cabinets[i]
		for _, s := range here.sees(nil, c) {
			if c.Kind == cabinet.Wall && s.side != fromFacing && area.Overlaps(s.Patch) {
				out = append(out, combustible{c.Pointer, "cabinet", c.Underside.Exact()})
				break
			}
		}
	}
	row := k.System.WallUnderside + k.Plan.RowShift
	for i := range k.Plan.Fillers {
		f := &k.Plan.Fillers[i]
		if f.Wall == area.Wall && f.Kind == cabinet.Wall && !f.AnyKind && f.From < area.To && area.From < f.To && row > 0 {
			out = append(out, combustible{f.Pointer, "filler", row.Exact()})
		}
	}
	for _, o := range hangingOver(k, k.Found(), area) {
		out = append(out, combustible{o.overhead.Pointer, overheadWord(o.overhead.Kind), o.low})
	}
	return out
}

func overheadWord(k survey.OverheadKind) string {
	return [...]string{"soffit", "closed gap", "lowered ceiling", "beam", "duct box"}[k]
}
