package fit

import (
	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// hungOver is a stretch of an overhead over some floor area.
type hungOver struct {
	overhead *survey.Overhead
	area     cabinet.Patch // what they share, in the floor area's own coordinates
	low      length.Exact  // its lowest underside there, above the datum
	at       length.Length // the station of that on the overhead's own wall
}

// hangingOver lists what hangs over a floor area, on its own wall and on the
// walls joined to it, each tested on the wall where it was surveyed.
func hangingOver(k *kitchen.Kitchen, sky kitchen.Sky, area cabinet.Patch) []hungOver {
	here := viewFrom(k.Room, area.Wall)
	var out []hungOver
	for _, h := range sky.Hung {
		o := h.Overhead
		s, ok := here.area(cabinet.UnderStretch(o, h.From, h.To))
		if !ok || s.side == fromFacing || !area.Overlaps(s.Patch) {
			continue
		}
		shared := shared(area, s.Patch)
		if back, ok := viewFrom(k.Room, o.Wall).area(shared); ok {
			low, at := h.Lowest(back.From, back.To)
			out = append(out, hungOver{o, shared, k.Above(o.Wall, low), at})
		}
	}
	return out
}

// shared is the floor area that two overlapping patches of one wall share.
func shared(a, b cabinet.Patch) cabinet.Patch {
	return cabinet.Patch{
		Wall: a.Wall, From: max(a.From, b.From), To: min(a.To, b.To),
		Near: max(a.Near, b.Near), Far: min(a.Far, b.Far),
	}
}
