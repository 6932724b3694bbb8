package fit

import (
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

// standing says how a tall carcass gets upright. Built lying down, it is tilted
// up under the room's ceiling about one lower edge and passes through its
// diagonal: over its depth when it lies on its back, over its width when it lies
// on its side; the legs add to its height unless they are put on afterwards.
func standing(k *kitchen.Kitchen, c *cabinet.Placed) (*Standing, []finding.Finding) {
	if c.Kind != cabinet.Tall {
		return nil, nil
	}
	have := roomHeight(k, c)
	way, ok := wayUp(k.System, c, have)
	out := &Standing{Verdict: way.verdict, Need: way.need, Have: have}
	var found []finding.Finding
	if !ok {
		out.Verdict = StandBlocked
		found = append(found, finding.Finding{
			Code: "fit.standing.blocked", Severity: finding.AsStop, Pointer: c.Pointer,
			Need: finding.Up(way.need.Exact()), Have: finding.Down(have),
			Remedies: remedies(shorter, twoParts),
		})
	}
	return out, append(found, slideIn(k, c)...)
}

// way is one way to get a carcass upright and the height that it needs.
type way struct {
	verdict StandingVerdict
	need    length.Length // rounded up, for output
	fits    bool          // decided exactly
}

// wayUp is the first way that the room is high enough for; when none is, the
// last and least demanding one.
func wayUp(s *cabinet.System, c *cabinet.Placed, have length.Exact) (way, bool) {
	ways := waysUp(s, c, have)
	for _, w := range ways {
		if w.fits {
			return w, true
		}
	}
	return ways[len(ways)-1], false
}

// waysUp are the ways in order of preference. However it is tilted, it must then
// stand on its legs at their shortest.
func waysUp(s *cabinet.System, c *cabinet.Placed, have length.Exact) []way {
	upright := c.Height + shortestLeg(s)
	stands := have.CmpLength(upright) >= 0
	tilted := func(v StandingVerdict, high, deep length.Length) way {
		return way{v, length.Hypot(high, deep), stands && length.HypotFits(high, deep, have)}
	}
	built := way{Upright, upright, stands}
	if c.Upright {
		return []way{built}
	}
	narrow := min(c.Width(), c.Depth)
	return []way{
		tilted(WithLegs, c.Height+s.Legs, c.Depth),
		tilted(OnSide, c.Height+s.Legs, narrow),
		tilted(LegsAfter, c.Height, narrow),
		built,
	}
}

func shortestLeg(s *cabinet.System) length.Length {
	if s.LegTravel == nil {
		return s.Legs
	}
	return s.Legs - s.LegTravel.Down
}

// roomHeight is the least height of the room along the cabinet's wall, from the
// floor in front of the cabinets to the ceiling, or to a lowered ceiling that
// reaches over the whole place where the carcass lies and is tilted.
func roomHeight(k *kitchen.Kitchen, c *cabinet.Placed) length.Exact {
	wall := &k.Room.Walls[c.Wall]
	have := leastBetween(wall.Ceiling, wall.RoomFloor, 0, wall.Length)
	for i := range wall.Overheads {
		o := &wall.Overheads[i]
		if o.Kind == survey.LoweredCeiling && o.From < c.To && c.From < o.To && o.Face() >= c.Depth+c.Height {
			have = length.Smaller(have, leastBetween(o.Underside, wall.RoomFloor, o.From, o.To))
		}
	}
	return have
}

// leastBetween is the least height between two profiles over a closed span; as
// both are straight between their points, it lies at one of them.
func leastBetween(up, down level.Profile, from, to length.Length) length.Exact {
	stations := slices.Concat([]length.Length{from, to}, up.Breaks(from, to), down.Breaks(from, to))
	between := func(at length.Length, s level.Side) length.Exact { return up.At(at, s).Sub(down.At(at, s)) }
	least := between(from, level.Right)
	for _, at := range stations {
		if at > from {
			least = length.Smaller(least, between(at, level.Left))
		}
		if at < to {
			least = length.Smaller(least, between(at, level.Right))
		}
	}
	return least
}
