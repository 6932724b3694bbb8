package decide

import (
	"testing"

	"railhead/internal/kitchen"
)

// A row that is planned up to the ceiling goes there once the soffit in its way is
// gone, and not where the soffit is only cut higher (common practice, no source).
func TestARowPlannedUpToTheCeilingGoesThere(t *testing.T) {
	for _, c := range []struct {
		name   string
		option kitchen.Option
		wide   bool
	}{
		{"kept", kitchen.Keep, false},
		{"cut higher", kitchen.Trim, false},
		{"opened over the cabinets", kitchen.OpenPart, true},
		{"down and closed", kitchen.RemoveClose, true},
		{"down and left open", kitchen.RemoveOpen, true},
		{"down for a row that is taller still", kitchen.RemoveTaller, false},
	} {
		// The room's cabinets end at 2120; the ceiling is 180 above them.
		d := decided(room(2300))
		if got := d.reckoning.ms[0].plannedUp(c.option); got > 0 != c.wide {
			t.Errorf("%s: %s of the row goes up to the ceiling", c.name, got)
		}
	}
}
