package takeoff

import (
	"testing"

	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/survey"
)

// Under the three-metre soffit hang two cabinets of 600 from the left wall on, tops
// at 2120; the gap to the ceiling at 2400 is 280 mm:
//
//	panel   2 × 0.60 × 0.28, and back to the wall at the free end 0.36 × 0.28  0.4368 → 0.437
//	filler  2 × 0.60
//	patch   ceiling beside the cabinets 1.80 × 0.33, the old edge 3 × 0.15, wall
//	        1.80 × 0.30, the right end's wall 0.33 × 0.30; the left end is behind
//	        the panel                                  0.594 + 0.45 + 0.54 + 0.099 = 1.683
//	paint   0.594 + 3 × 0.30 + 0.54 + 0.099                                    2.133
func TestClosedAgainWithAPanel(t *testing.T) {
	k := cook(threeMetres().Room.Walls, hung(0, 0, 600, 2120), hung(0, 600, 1200, 2120))
	got := take(k, kitchen.RemoveClose)
	want(t, got.Items, map[Work]string{
		BoardOff: "1.89", FrameOff: "14.67", Patch: "1.683", Paint: "2.133", Waste: "122.613", WasteMass: "26.775",
		ClosingPanel: "0.437", Filler: "1.2",
	})
}

// A gap that a strip closes takes no panel; base cabinets have none, and what is
// beside the overhead is not its matter.
func TestClosedAgainWithAStrip(t *testing.T) {
	base := hung(0, 600, 1200, 880)
	base.Kind = cabinet.Base
	k := cook([]survey.Wall{wall(4000, 2220, soffit(0, 3000, flat(2100)))}, hung(0, 0, 600, 2120), base, hung(0, 3000, 3600, 2120))
	have := sums(take(k, kitchen.RemoveClose).Items)
	if have[Filler] != "0.6" || have[ClosingPanel] != "" {
		t.Errorf("have %v", have)
	}
	k.Room.Walls[0].Ceiling = flat(2221)
	have = sums(take(k, kitchen.RemoveClose).Items)
	if have[Filler] != "0.6" || have[ClosingPanel] != "0.097" { // (0.60 + 0.36) × 0.101
		t.Errorf("have %v", have)
	}
}

// Between two cabinets a filler's width apart, and before the wall, no end shows;
// further apart both do.
func TestEndsOfAPanel(t *testing.T) {
	for name, c := range map[string]struct {
		second int // where the second cabinet of 600 begins
		panel  string
	}{
		"a filler between them":          {700, "0.437"}, // 2 × 0.168, one end of 0.1008
		"a gap between them":             {701, "0.638"}, // three ends
		"the second ends near the wall":  {2300, "0.538"},
		"the second ends off that wall":  {2299, "0.638"},
		"the second stands at that wall": {2400, "0.538"},
	} {
		k := cook(threeMetres().Room.Walls, hung(0, 0, 600, 2120), hung(0, c.second, c.second+600, 2120))
		if have := sums(take(k, kitchen.RemoveClose).Items)[ClosingPanel]; have != c.panel {
			t.Errorf("%s: %s, want %s", name, have, c.panel)
		}
	}
	// What stays hanging beside it closes the end.
	other := soffit(1200, 1800, flat(2100))
	other.ID, other.Group = "other", "other"
	k := cook([]survey.Wall{wall(3000, 2400, soffit(0, 1200, flat(2100)), other)}, hung(0, 0, 1200, 2120))
	if have := sums(take(k, kitchen.RemoveClose).Items)[ClosingPanel]; have != "0.336" {
		t.Errorf("beside what stays: %s", have)
	}
}

// A taller row: fronts 240 mm higher over 0.60 m each, two orders changed, and 40 mm
// up to the ceiling closed by a strip.
func TestTallerRow(t *testing.T) {
	k := cook(threeMetres().Room.Walls, hung(0, 0, 600, 2120), hung(0, 600, 1200, 2120))
	j := job(k, kitchen.RemoveTaller)
	for i := range k.Plan.Cabinets {
		j.Swaps = append(j.Swaps, cabinet.Swap{Cabinet: &k.Plan.Cabinets[i], Height: 900 * mm, Top: 2360 * mm})
	}
	got := NewSite(k).Of(j)
	want(t, got.Items, map[Work]string{
		BoardOff: "1.89", FrameOff: "14.67", Patch: "1.683", Paint: "2.133", Waste: "122.613", WasteMass: "26.775",
		Filler: "1.2", TallerFront: "0.288", ExchangeOrder: "2",
	})
	if last := got.Items[len(got.Items)-2]; last.Pointer != "/plan/cabinets/1" || last.Formula != "width*(new_height - height)" {
		t.Errorf("front %+v", last)
	}
}

// Keeping the soffit and hanging shorter cabinets: 160 mm less over 0.60 m.
func TestShorterCabinetsUnderWhatStays(t *testing.T) {
	k := cook(threeMetres().Room.Walls, hung(0, 0, 600, 2120))
	j := job(k, kitchen.Keep)
	j.Swaps = []cabinet.Swap{{Cabinet: &k.Plan.Cabinets[0], Height: 500 * mm, Top: 1960 * mm}}
	want(t, NewSite(k).Of(j).Items, map[Work]string{ShorterFront: "0.096", ExchangeOrder: "1"})
}
