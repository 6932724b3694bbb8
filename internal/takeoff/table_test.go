package takeoff

import (
	"testing"

	"railhead/internal/kitchen"
	"railhead/internal/rules"
	"railhead/internal/survey"
)

// Every value of the table has its words and its source, and is told once.
func TestEveryAssumptionHasWords(t *testing.T) {
	seen := map[string]bool{}
	for _, a := range Assumptions(nil) {
		r, ok := rules.Of(a.Code)
		if !ok || r.Source == "" || seen[a.Code] {
			t.Errorf("%s: %+v", a.Code, r)
		}
		if a.Value.Name != "value" || a.Value.Length == nil && a.Value.Text == "" {
			t.Errorf("%s: value %+v", a.Code, a.Value)
		}
		seen[a.Code] = true
	}
}

// A US study of 1995 and a table of 1994 (both seen in copies) count 267 and 300 lb
// to the cubic yard of loose wood, and 400 and 500 of loose gypsum board. A pound is
// 0.45359237 kg, a yard 0.9144 m.
func TestLooseDebrisWeighsWhatIsPublished(t *testing.T) {
	for _, c := range []struct {
		name               string
		density, bulking   float64
		lightest, heaviest float64
	}{
		{"wood", figureOf(kitchen.WoodDensity), figureOf(kitchen.FrameBulking), 267, 300},
		{"gypsum board", figureOf(kitchen.GypsumDensity), figureOf(kitchen.BoardBulking), 400, 500},
	} {
		pounds := c.density / c.bulking * 0.9144 * 0.9144 * 0.9144 / 0.45359237
		if pounds < c.lightest || pounds > c.heaviest {
			t.Errorf("%s: %.0f lb to the cubic yard, want %v to %v", c.name, pounds, c.lightest, c.heaviest)
		}
	}
}

func figureOf(f kitchen.Figure) float64 { return float64(kitchen.Figures(nil).Of(f)) }

// What the request gives is no assumption, and is what the work is reckoned with.
func TestGivenFigures(t *testing.T) {
	given := kitchen.Figures{kitchen.Band: 200}
	if len(Assumptions(given)) != len(Assumptions(nil))-1 || given.Length(kitchen.Band) != 200*mm {
		t.Errorf("%d assumptions, band %s", len(Assumptions(given)), given.Length(kitchen.Band))
	}
	k := cook([]survey.Wall{wall(3000, 2400, soffit(0, 3000, flat(2100)))}, hung(0, 1200, 1800, 2120))
	usual := sums(take(k, kitchen.Trim).Items)[Patch]
	k.Prices.Figures = given
	if wider := sums(take(k, kitchen.Trim).Items)[Patch]; wider <= usual {
		t.Errorf("patch %s with a band of 200, %s with 150", wider, usual)
	}
}

// Each lining weighs by its own density; what nobody named weighs as gypsum board.
func TestDensityByFinish(t *testing.T) {
	for finish, want := range map[string]string{
		"gypsum_board": "685", "unknown": "685", "": "685", "plaster": "1600", "wood": "500", "tile": "2000", "metal": "640",
	} {
		if got := kitchen.Figures(nil).Of(density(&survey.Overhead{Finish: finish})).Decimal(); got != want {
			t.Errorf("%q: %s, want %s", finish, got, want)
		}
	}
}

// Every kind of work has its place in the order, once, and a unit that is read again.
func TestWorksAreListedOnce(t *testing.T) {
	seen := map[Work]bool{}
	for _, w := range Works() {
		if _, known := unitDims[w.Unit()]; seen[w] || !known {
			t.Errorf("%s in %s", w, w.Unit())
		}
		seen[w] = true
	}
	if len(seen) != 24 {
		t.Errorf("%d kinds of work", len(seen))
	}
}

func TestPieces(t *testing.T) {
	i := pieces(Probe, "/survey/walls/0/overheads/0", 2, false)
	reworked(t, i)
	if i.Quantity != 2000 || i.Work != Probe || i.Pointer != "/survey/walls/0/overheads/0" {
		t.Errorf("%+v", i)
	}
}
