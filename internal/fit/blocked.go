package fit

import (
	"railhead/internal/finding"
	"railhead/internal/length"
)

// blocked minds what stands in a front's sweep: the run around a corner, a wall
// opposite, the run along it with its closed fronts.
func (d *inFront) blocked(f front) {
	have, by, sure := f.leaf, "", true
	keep := func(near length.Length, pointer string, known bool) {
		if free := max(near-f.patch.Far, 0); free < have || free == have && known && !sure {
			have, by, sure = free, pointer, known
		}
	}
	here := viewFrom(d.k.Room, f.patch.Wall)
	for _, w := range here.facing {
		keep(w.distance, d.k.Room.Walls[w.wall].Pointer, true)
	}
	for _, s := range here.others(d.k, d.c) {
		near := s.Near
		if s.side == fromFacing {
			thickness, pull := f.closed(s.c)
			near -= thickness + pull
		}
		if _, _, shared := common(f.patch.From, f.patch.To, s.From, s.To); shared && s.Near >= f.patch.Far {
			keep(near, s.c.Pointer, true)
		}
	}
	d.unmapped(f, here, keep)
	if by == "" {
		return
	}
	severity := opens(f, have)
	if !sure {
		severity = finding.AsCaution
	}
	d.add(finding.Finding{
		Code: "fit.door.blocked", Severity: severity, Pointer: by,
		Need: finding.Up(f.leaf.Exact()), Have: finding.Down(have.Exact()),
		Remedies: remedies(otherFront, narrower, moveCabinet),
	})
}

// unmapped keeps the cabinets of walls that are only known to lie opposite: where
// along them the two face each other nobody surveyed, so it may be anywhere.
func (d *inFront) unmapped(f front, here view, keep func(length.Length, string, bool)) {
	for _, w := range here.facing {
		if w.mapped {
			continue
		}
		for i := range d.k.Plan.Cabinets {
			o := &d.k.Plan.Cabinets[i]
			if o.Wall == w.wall && levelled(d.k, d.c, o) {
				thickness, pull := f.closed(o)
				keep(w.distance-o.Depth-thickness-pull, o.Pointer, false)
			}
		}
	}
}
