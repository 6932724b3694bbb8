package contents

import (
	"testing"

	"railhead/internal/belief"
	"railhead/internal/kitchen"
	"railhead/internal/money"
	"railhead/internal/rules"
	"railhead/internal/survey"
)

// What a hole shows of 3 m, by figures that the request gives, on paper (C). The
// numbers are estimates from memory; what is checked is that each counts, where
// odds are built in and where they are tried.
func TestFiguresThatLooksAreWeighedBy(t *testing.T) {
	for _, c := range []struct {
		figure kitchen.Figure
		value  money.Quantity
		state  State
		shown  belief.Chance // of a probe hole
		after  string        // odds of 10 20 30 40 0 after a hole that showed nothing
	}{
		// 1 − (0.9·0.1 + 0.1·0.5) = 0.86; 10, 20·0.14 = 2.8, 6.6, 8.8; of 28.2
		{kitchen.ThroughFewWires, 900, FewWires, 860_000_000, "35.5 9.9 23.4 31.2 0.0"},
		// 1 − (0.1·0.1 + 0.9·0.5) = 0.54; 10, 5.2, 30·0.46 = 13.8, 8.8; of 37.8
		{kitchen.ThroughManyWires, 100, ManyWires, 540_000_000, "26.5 13.8 36.5 23.3 0.0"},
		// 1 − (1·0.1 + 0) = 0.9; 10, 5.2, 6.6, 4; of 25.8
		{kitchen.ThroughPipeOrDuct, 1000, PipeOrDuct, 900_000_000, "38.8 20.2 25.6 15.5 0.0"},
		// 1 − (0.2·0.1 + 0.8·0.5) = 0.58; nothing of it in these odds
		{kitchen.ThroughImmovable, 200, Immovable, 580_000_000, "32.7 17.0 21.6 28.8 0.0"},
		// 1 − (0.6·0.5 + 0.4·0.5) = 0.5; 10, 20·0.5, 30·0.5, 40·0.5; of 55
		{kitchen.Missed, 500, FewWires, 500_000_000, "18.2 18.2 27.3 36.4 0.0"},
		// the fifth: 1 − (0.6·0.1 + 0.4·0.8) = 0.62; 10, 7.6, 30·0.31 = 9.3, 40·0.31 = 12.4; of 39.3
		{kitchen.ProbeSight, 600, FewWires, 620_000_000, "25.4 19.3 23.7 31.6 0.0"},
	} {
		k := corner(over("s", 0, 0, 3000))
		k.Prices.Figures = kitchen.Figures{c.figure: c.value}
		if got := Probe(Clusters(k)[0])[c.state][c.state]; got != c.shown {
			t.Errorf("%s: %s is seen with %d billionths, want %d", c.figure, c.state, got, c.shown)
		}
		k = corner(over("s", 0, 0, 3000, priors(10, 20, 30, 40, 0), looked(survey.ProbeHole)))
		k.Prices.Figures = kitchen.Figures{c.figure: c.value}
		odds, cluster := one(t, k)
		if got := percent(odds.Now); got != c.after {
			t.Errorf("%s: %s after a hole, want %s", c.figure, got, c.after)
		}
		if got := percent(With(cluster, odds.Prior).Now); got != c.after {
			t.Errorf("%s: %s where the odds are tried, want %s", c.figure, got, c.after)
		}
	}
}

func TestFromWhichNumberOnWiresAreMany(t *testing.T) {
	for value, want := range map[money.Quantity]State{1000: ManyWires, 2000: ManyWires, 2001: FewWires, 3000: FewWires} {
		k := corner(over("s", 0, 0, 3600, looked(survey.Opened), found(survey.Wire, survey.Cable)))
		k.Prices.Figures = kitchen.Figures{kitchen.WiresAreMany: value}
		if odds, _ := one(t, k); odds.Seen != want {
			t.Errorf("two wires, many from %s on: %s, want %s", value.Decimal(), odds.Seen, want)
		}
	}
}

// A figure is told with the request's others and nowhere else.
func TestFiguresAreToldOnce(t *testing.T) {
	for _, f := range kitchen.AllFigures() {
		if _, twice := rules.Of("assume.contents." + f.String()); twice {
			t.Errorf("%s is told with the odds too", f)
		}
		if _, told := rules.Of("assume.takeoff." + f.String()); !told {
			t.Errorf("%s has no entry", f)
		}
	}
}
