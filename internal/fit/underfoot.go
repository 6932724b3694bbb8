package fit

import (
	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
)

// underFloor minds a wall cabinet whose underside was put under the floor, by a
// row shift or a top of its own: a slip, and no place to hang anything.
func underFloor(k *kitchen.Kitchen, c *cabinet.Placed) []finding.Finding {
	if c.Stands() {
		return nil
	}
	for _, p := range c.Touching(k.Room) {
		wall := &k.Room.Walls[p.Wall]
		have := c.Underside.Exact().Sub(k.Above(p.Wall, wall.RoomFloor.Highest(p.From, p.To).Value))
		if have.Sign() < 0 {
			return []finding.Finding{{
				Code: "fit.underside.under_floor", Severity: finding.AsStop, Pointer: c.Pointer,
				Have: finding.Down(have), Remedies: remedies(raiseRow, shorter),
			}}
		}
	}
	return nil
}
