package fit

import (
	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
)

// hookDepth is how far in front of its final place a cabinet is held when it is
// hooked over the rail, an assumption that makers' instructions replace
// (common practice, no source).
const hookDepth = 50 * length.Millimetre

// hanging says how a wall cabinet gets onto its rail: the lift needs room above
// its final place, over its whole footprint and over the strip in front of it
// from which it is hooked on. A hanger that lets the cabinet hang low gives that
// much back: it is hooked on low and screwed up. A cabinet that is screwed
// through hanging strips is only held up, and a tall one is slid in: nil.
func hanging(k *kitchen.Kitchen, c *cabinet.Placed, sky kitchen.Sky) *Hanging {
	if c.Kind != cabinet.Wall || k.System.Rail == nil {
		return nil
	}
	have, by := above(k, c, sky)
	return &Hanging{Verdict: hangs(k.System.Rail, have), Need: k.System.Rail.Lift.Exact(), Have: have, By: by}
}

func hangs(rail *cabinet.Rail, have length.Exact) HangingVerdict {
	switch {
	case have.CmpLength(rail.Lift) >= 0:
		return Hooks
	case have.CmpLength(max(0, rail.Lift-rail.HangerDown)) >= 0:
		return HooksLow
	case have.Sign() >= 0:
		return ScrewUpOnly
	default:
		return HangBlocked
	}
}

// above is the least room above a cabinet's top where it hangs and where it
// comes from, and what leaves it.
func above(k *kitchen.Kitchen, c *cabinet.Placed, sky kitchen.Sky) (length.Exact, string) {
	s := stage{k: k, sky: sky, judge: asFound(k).judge}
	least := tightest(s.limits(c))
	have, by := least.Margin, least.By
	for _, p := range c.Native(k.Room) {
		p.Near, p.Far = p.Far, p.Far+hookDepth
		if low, ok := lowestOf(hangingOver(k, sky, p)); ok && low.low.Minus(c.Top).Less(have) {
			have, by = low.low.Minus(c.Top), low.overhead.Pointer
		}
	}
	return have, by
}
