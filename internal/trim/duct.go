package trim

import (
	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// neighbours are the nearest cabinets of the row on both sides of what stands
// under a duct box; ok where there is one on each side.
func neighbours(k *kitchen.Kitchen, t *Trim) (left, right *cabinet.Placed, ok bool) {
	middle, ok := standsOn(k, t)
	if t.Overhead.Kind != survey.DuctBox || t.Work == None || !ok {
		return nil, nil, false
	}
	var end, start length.Length
	for _, p := range row(k, t) {
		switch {
		case p.To <= middle.From && (left == nil || p.To > end):
			left, end = p.cabinet, p.To
		case p.From >= middle.To && (right == nil || p.From < start):
			right, start = p.cabinet, p.From
		}
	}
	return left, right, left != nil && right != nil
}

// placed is a cabinet's stretch of a wall.
type placed struct {
	cabinet.Patch
	cabinet *cabinet.Placed
}

// row are the cabinets on the overhead's wall that end on the trim's top line.
func row(k *kitchen.Kitchen, t *Trim) []placed {
	var out []placed
	for i := range k.Plan.Cabinets {
		c := &k.Plan.Cabinets[i]
		if c.Top != t.RowTop || !hangsOnRail(c) {
			continue
		}
		for _, p := range c.Native(k.Room) {
			if p.Wall == t.Overhead.Wall {
				out = append(out, placed{p, c})
			}
		}
	}
	return out
}

// standsOn is the stretch of the overhead's wall that the cabinets under the cut
// cover; ok where there are some.
func standsOn(k *kitchen.Kitchen, t *Trim) (out survey.Span, ok bool) {
	for _, c := range t.Cabinets {
		for _, p := range c.Native(k.Room) {
			switch {
			case p.Wall != t.Overhead.Wall || c.Top != t.RowTop:
			case !ok:
				out, ok = survey.Span{From: p.From, To: p.To}, true
			default:
				out.From, out.To = min(out.From, p.From), max(out.To, p.To)
			}
		}
	}
	return out, ok
}

// isItsDuct reports whether a conflict is the duct that a box is there for: it
// is cut back with the box, not moved out of its way.
func (t *Trim) isItsDuct(c Conflict) bool {
	return t.Overhead.Kind == survey.DuctBox && c.Service.Kind == survey.DuctRun
}
