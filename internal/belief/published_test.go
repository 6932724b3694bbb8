package belief

import (
	"testing"

	"railhead/internal/money"
)

// thousandth is a thousandth of one of the problems' units.
const thousandth = money.Unit / 1000

// Sources of the problems stand beside them. What is not marked F follows from
// their data: C.
func TestPublishedDecisions(t *testing.T) {
	for name, c := range map[string]struct {
		problem
		before, perfect, sample, net money.Amount // in thousandths of a unit
		test                         bool
	}{
		"oil wildcatter":                          {wildcatter(), 20_000, 35_000, 12_500, 22_500, true},
		"the same, cost uncertain (F: perfect)":   {uncertainCost(), 140_000, 155_000, 40_100, 120_100, false},
		"Goferbroke (F: before, perfect, sample)": {goferbroke(), 100_000, 142_500, 53_000, 123_000, true},
	} {
		before, perfect, sample := c.best(c.prior), Perfect(c.prior, c.best), Sample(c.prior, c.signals, c.best)
		check(t, name+": before", before, c.before*thousandth, 0)
		check(t, name+": perfect", perfect, c.perfect*thousandth, 0)
		check(t, name+": sample", sample, c.sample*thousandth, 0)
		check(t, name+": net", before.Plus(sample).Minus(c.testCost), c.net*thousandth, 0)
		if perfect <= c.testCost {
			t.Errorf("%s: no test at %s could pay", name, c.testCost.Decimal())
		}
		if test := sample > c.testCost; test != c.test {
			t.Errorf("%s: to test is %t, want %t", name, test, c.test)
		}
	}
}

// What the sounding is worth of what knowing would be: 37.19 % (C).
func TestEfficiencyOfTheSounding(t *testing.T) {
	p := goferbroke()
	sample, perfect := Sample(p.prior, p.signals, p.best), Perfect(p.prior, p.best)
	check(t, "per 100 000", sample.Share(100_000, int64(perfect)), 37_193, 0)
}

func TestPublishedPosteriors(t *testing.T) {
	for name, c := range map[string]struct {
		problem
		signal    int
		chance    Chance
		posterior Belief // to a millionth
		first     money.Amount
		decision  int
	}{
		"oil wildcatter, no structure":     {wildcatter(), 0, 410_000_000, Belief{731_707_000, 219_512_000, 48_780_000}, -30_488, 1},
		"oil wildcatter, open structure":   {wildcatter(), 1, 350_000_000, Belief{428_571_000, 342_857_000, 228_571_000}, 32_857, 0},
		"oil wildcatter, closed structure": {wildcatter(), 2, 240_000_000, Belief{208_333_000, 375_000_000, 416_667_000}, 87_500, 0},
		"Goferbroke, favourable (F)":       {goferbroke(), 0, 300_000_000, Belief{500_000_000, 500_000_000}, 300_000, 0},
		"Goferbroke, unfavourable (F)":     {goferbroke(), 1, 700_000_000, Belief{142_857_000, 857_143_000}, 14_286, 1},
	} {
		posterior, chance := c.prior.Given(c.signals[c.signal])
		check(t, name+": chance", chance, c.chance, 0)
		for i, want := range c.posterior {
			check(t, name+": posterior", posterior[i], want, 500)
		}
		first, second := posterior.Mean(c.payoffs[0]), posterior.Mean(c.payoffs[1])
		check(t, name+": first decision", first, c.first*thousandth, thousandth/2)
		if decision := map[bool]int{first >= second: 0, first < second: 1}[true]; decision != c.decision {
			t.Errorf("%s: decision %d, want %d", name, decision, c.decision)
		}
	}
}

// Shale gas, Kaminski 2018, figure 7: gas is there with .7; the test costs 50, its
// sensitivity is .9 and its specificity .7; digging costs 300 and gas brings 2500.
// Unsold ground brings 800, 600 after a bad test and 1000 after a good one, so that
// what a decision brings hangs on the signal too. Test, sell, sell: benefit 888 and
// cost 50 (F, test file of rdecision); the rest C.
func TestShaleGas(t *testing.T) {
	const testCost = 50 * money.Unit
	prior, dig := Belief(percent(70, 30)), units(2500-300, -300)
	check(t, "dig untested", prior.Mean(dig), 1450*money.Unit, 0)
	good, chance := prior.Given(percent(90, 30))
	check(t, "chance of a good test", chance, 720_000_000, 0)
	check(t, "gas after a good test", good[0], 875_000_000, 0)
	bad, badChance := prior.Given(percent(10, 70))
	check(t, "chance of a bad test", badChance, chance.Not(), 0)
	check(t, "gas after a bad test", bad[0], 250_000_000, 0)

	signals := Belief{chance, badChance}
	sellSell := signals.Mean(units(1000, 600))
	check(t, "test, sell, sell: benefit (F)", sellSell, 888*money.Unit, 0)
	check(t, "test, sell, sell (F)", sellSell.Minus(testCost), 838*money.Unit, 0)
	best := signals.Mean([]money.Amount{max(good.Mean(dig), 1000*money.Unit), max(bad.Mean(dig), 600*money.Unit)})
	check(t, "test, dig when good, sell when bad", best.Minus(testCost), 1477*money.Unit, 0)
	if bad.Mean(dig) >= 600*money.Unit || good.Mean(dig) <= 1000*money.Unit || best.Minus(testCost) <= prior.Mean(dig) {
		t.Errorf("the best is to test, dig when it is good and sell when it is bad")
	}
}

func check[T ~int64](t *testing.T, what string, got, want, within T) {
	t.Helper()
	if got-want > within || want-got > within {
		t.Errorf("%s: %d, want %d", what, got, want)
	}
}
