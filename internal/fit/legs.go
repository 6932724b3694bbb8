package fit

import (
	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/level"
)

// legs holds a standing cabinet's legs against the floor under it: at every
// place under its footprint the height from the floor to the carcass must lie
// between the shortest and the longest leg.
func legs(k *kitchen.Kitchen, c *cabinet.Placed) []finding.Finding {
	if !c.Stands() || k.System.LegTravel == nil {
		return nil
	}
	var short, long, steps []finding.Finding
	for _, p := range c.Touching(k.Room) {
		floor := k.Room.Walls[p.Wall].Floor
		by := k.Room.Walls[p.Wall].Pointer + "/floor"
		deepest, highest := floor.Lowest(p.From, p.To), floor.Highest(p.From, p.To)
		most := c.Underside.Exact().Sub(k.Above(p.Wall, deepest.Value))
		least := c.Underside.Exact().Sub(k.Above(p.Wall, highest.Value))
		longest, shortest := k.System.Legs+k.System.LegTravel.Up, shortestLeg(k.System)
		if most.CmpLength(longest) > 0 {
			short = append(short, finding.Finding{
				Code: "fit.legs.too_short", Severity: finding.AsStop, Pointer: by, Params: []finding.Param{place(deepest.At)},
				Need: finding.Up(most), Have: finding.Down(longest.Exact()), Remedies: remedies(packFloor, lowerRow, otherLegs, levelFloor),
			})
		}
		if least.CmpLength(shortest) < 0 {
			long = append(long, finding.Finding{
				Code: "fit.legs.too_long", Severity: finding.AsStop, Pointer: by, Params: []finding.Param{place(highest.At)},
				Need: finding.Up(shortest.Exact()), Have: finding.Down(least), Remedies: remedies(raiseRow, otherLegs, levelFloor),
			})
		}
		steps = append(steps, floorSteps(floor, p, by)...)
	}
	return join(short, long, steps)
}

// floorSteps notes where the floor steps under a cabinet: a foot must not stand
// on the edge.
func floorSteps(floor level.Profile, p cabinet.Patch, by string) []finding.Finding {
	var out []finding.Finding
	for _, at := range floor.Breaks(p.From, p.To) {
		step := floor.At(at, level.Right).Sub(floor.At(at, level.Left))
		if step.Sign() == 0 {
			continue
		}
		out = append(out, finding.Finding{
			Code: "fit.legs.step", Severity: finding.AsCaution, Pointer: by,
			Params:   []finding.Param{place(at), finding.Size("step", finding.Up(length.Larger(step, step.Neg())))},
			Remedies: remedies(levelFloor, moveCabinet),
		})
	}
	return out
}
