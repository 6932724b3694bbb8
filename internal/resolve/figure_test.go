package resolve

import (
	"testing"

	"railhead/internal/kitchen"
)

// Figures that the request gives stand in place of assumed ones; what makes no
// sense is refused where it stands.
func TestFigures(t *testing.T) {
	k := resolved(t, changed(t, contractRoom, change{"/money/figures", `{"band": "0.2", "members": 4}`})).Kitchen
	if got := k.Prices.Figures; got.Of(kitchen.Band) != 200 || got.Of(kitchen.Members) != 4000 || got.Of(kitchen.Spacing) != 400 {
		t.Errorf("figures %v", got)
	}
	sameLines(t, "faults", refused(t, changed(t, contractRoom, change{"/money/figures", `{"band": "3.001", "colour": 1, "remeasured_right": "0.4"}`})), []string{
		"money.figure.out_of_range /money/figures/band", "money.figure.unknown /money/figures/colour", "money.figure.out_of_range /money/figures/remeasured_right",
	})
}
