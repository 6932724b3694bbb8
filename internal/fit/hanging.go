package fit

import (
	"railhead/internal/cabinet"
	"railhead/internal/length"
)

// hookDepth is how far in front of its final place a cabinet is held when it is
// hooked over the rail, an assumption that makers' instructions replace
// (common practice, no source).
const hookDepth = 50 * length.Millimetre

// Hooking is how far in front of its place a cabinet of a kind is held while it is
// hooked on; 0 for what is not hooked.
func Hooking(s *cabinet.System, kind cabinet.Kind) length.Length {
	if kind != cabinet.Wall || s.Rail == nil {
		return 0
	}
	return hookDepth
}

// hanging says how a wall cabinet gets onto its rail: the lift needs room above
// its final place, over its whole footprint and over the strip in front of it
// from which it is hooked on. A hanger that lets the cabinet hang low gives that
// much back: it is hooked on low and screwed up. A cabinet that is screwed
// through hanging strips is only held up, and a tall one is slid in: nil.
//
// tight is the cabinet's smallest clearance upwards at this stage.
func (s stage) hanging(c *cabinet.Placed, tight Limit) *Hanging {
	rail := s.k.System.Rail
	if c.Kind != cabinet.Wall || rail == nil {
		return nil
	}
	have, by := s.room(c, tight)
	return &Hanging{Verdict: hangs(rail, have), Need: rail.Lift.Exact(), Have: have, By: by}
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

// room is the least room above a cabinet's top where it hangs and where it comes
// from, and what leaves it.
func (s stage) room(c *cabinet.Placed, tight Limit) (length.Exact, string) {
	have, by := tight.Margin, tight.By
	for _, p := range c.Native(s.k.Room) {
		p.Near, p.Far = p.Far, p.Far+hookDepth
		if low, ok := lowestOf(hangingOver(s.k, s.sky, p)); ok && low.low.Minus(c.Top).Less(have) {
			have, by = low.low.Minus(c.Top), low.overhead.Pointer
		}
	}
	return have, by
}
