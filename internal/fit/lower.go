package fit

import (
	"slices"

	"railhead/internal/kitchen"
	"railhead/internal/length"
)

// Lower is the room-level alternative to cutting: every row goes down on its legs.
type Lower struct {
	By       length.Length
	Most     length.Length // as far as legs and counter allow
	Possible bool
	Gates    []string // what forbids or limits it, by code
	Spares   []string // overhead groups that need no cut then
}

// LowerRow finds how far the rows must go down so that what overlaps fits, and
// whether legs and counter allow it; nil where nothing overlaps above.
//
// Lowering moves base, tall and wall cabinets alike, so heights between them
// (counter to wall cabinet, cooking surface to hood cabinet) stay.
func LowerRow(k *kitchen.Kitchen, found []Result) *Lower {
	least := length.Length(0)
	for i := range found {
		if need := lowering(k, &found[i]); need > 0 && (least == 0 || need < least) {
			least = need
		}
	}
	if least == 0 {
		return nil
	}
	allowed, gates := mayLower(k)
	by := length.Length(0)
	for i := range found {
		if need := lowering(k, &found[i]); need <= allowed {
			by = max(by, need)
		}
	}
	if by == 0 {
		return &Lower{By: least, Most: allowed, Gates: append(gates, "plan.row.not_enough")}
	}
	return &Lower{By: by, Most: allowed, Possible: true, Gates: gates, Spares: spared(k, found, by)}
}

// lowering is how far one cabinet must go down to fit; 0 where nothing overlaps
// it, and where going down does not help.
func lowering(k *kitchen.Kitchen, r *Result) length.Length {
	if r.Cabinet.OwnLevel || r.Margin.Sign() >= 0 || r.Limit.Axis != Up {
		return 0
	}
	return length.Length(0).Exact().Sub(r.Margin).Plus(k.System.FitGap).Ceil()
}

// mayLower is how far the rows may go down: as far as the legs wind in, and as
// far as the counter may sink.
func mayLower(k *kitchen.Kitchen) (length.Length, []string) {
	travel := k.System.LegTravel
	if travel == nil {
		return 0, []string{"plan.legs.no_travel"}
	}
	allowed, gates := legsLeft(k), []string{"plan.legs.shortest"}
	if k.Plan.Counter > 0 && k.Plan.Counter-k.Plan.LeastCounter < allowed {
		allowed, gates = k.Plan.Counter-k.Plan.LeastCounter, []string{"plan.counter.lowest"}
	}
	return max(allowed, 0), gates
}

// spared are the overhead groups that are in some cabinet's way as found and in
// none's once every row is lower.
func spared(k *kitchen.Kitchen, found []Result, by length.Length) []string {
	var inWay, still []string
	for i := range found {
		for _, l := range found[i].Limits {
			if l.Overhead == nil || l.Margin.Sign() >= 0 {
				continue
			}
			inWay = append(inWay, l.Overhead.Group)
			if found[i].Cabinet.OwnLevel || l.Margin.Plus(by).Sign() < 0 {
				still = append(still, l.Overhead.Group)
			}
		}
	}
	var out []string
	for _, g := range k.Groups() {
		if slices.Contains(inWay, g.ID) && !slices.Contains(still, g.ID) {
			out = append(out, g.ID)
		}
	}
	return out
}

// legsLeft is how far the legs still wind in: from where the row shift put them,
// and over the highest floor that any of them stands on, which may lie over a
// datum that was given.
func legsLeft(k *kitchen.Kitchen) length.Length {
	left, shortest := k.System.LegTravel.Down+k.Plan.RowShift, shortestLeg(k.System)
	for i := range k.Plan.Cabinets {
		c := &k.Plan.Cabinets[i]
		if !c.Stands() || c.OwnLevel {
			continue
		}
		for _, p := range c.Touching(k.Room) {
			floor := k.Above(p.Wall, k.Room.Walls[p.Wall].Floor.Highest(p.From, p.To).Value)
			left = min(left, c.Underside.Exact().Sub(floor).Minus(shortest).Floor())
		}
	}
	return left
}
