package estimate

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/belief"
	"railhead/internal/contents"
	"railhead/internal/money"
)

func near(t *testing.T, name string, got, want, within float64) {
	t.Helper()
	if math.Abs(got-want) > within {
		t.Errorf("%s: %.4f, want %.4f", name, got, want)
	}
}

func inUnits(a money.Amount) float64 { return float64(a) / float64(money.Unit) }

// The critical paths of three published networks of activities, in their own units
// of time. Of independent activities the variances add up. Sources: General Foundry,
// Render & Stair (M); Reliable Construction, Hillier & Lieberman (M); fourteen
// activities, wizedu 717873 (F for the data, C for the sums).
var published = []struct {
	name                     string
	path                     []money.Spread
	mean, variance, at, prob float64
}{
	{"General Foundry", []money.Spread{units(1, 2, 3), units(1, 2, 3), units(1, 4, 7), units(3, 4, 11), units(1, 2, 3)}, 15, 3.111, 16, .7146},
	{"Reliable Construction", []money.Spread{units(1, 2, 3), halves(4, 7, 16), units(6, 9, 18), halves(2, 9, 10), units(4, 4, 10), units(3, 9, 9), halves(2, 11, 14), halves(10, 11, 18)}, 44, 9, 47, .8413},
	{"fourteen activities", []money.Spread{units(5, 5, 7), units(5, 5, 5), units(1, 10, 17), units(4, 4, 6), units(2, 7, 10), units(6, 10, 13), units(2, 2, 3), units(7, 7, 12)}, 50.833, 11.1944, 55, .8935},
}

// halves is a spread in halves of a unit.
func halves(low, likely, high money.Amount) money.Spread { return units(low, likely, high).Share(1, 2) }

func TestIndependentLinesAddTheirVariances(t *testing.T) {
	for _, c := range published {
		var lines []Line
		for i, s := range c.path {
			lines = append(lines, sure(string(rune('a'+i)), s))
		}
		total := TotalOf(lines)
		near(t, c.name+", mean", inUnits(total.Mean), c.mean, .001)
		near(t, c.name+", variance", inUnits(total.Deviation)*inUnits(total.Deviation), c.variance, .001)
	}
}

func TestLinesOfOneRateAddTheirDeviations(t *testing.T) {
	// General Foundry again, if all were dear or cheap together, by hand:
	// 1/3 + 1/3 + 1 + 4/3 + 1/3 = 10/3.
	var lines []Line
	for _, s := range published[0].path {
		lines = append(lines, sure("a", s))
	}
	near(t, "deviation", inUnits(CostOf(lines).Deviation), 10.0/3, .0001)
	// Two carpenters' lines (deviations 1 and 2) and a painter's (4): sqrt(3² + 4²).
	hours := func(trade Trade, s money.Spread) Line {
		l := sure("wage."+trade.String(), s)
		l.Kind, l.Trade, l.HoursCode = Labour, trade, "hours.cut"
		return l
	}
	lines = []Line{hours(Carpenter, units(1, 4, 7)), hours(Carpenter, units(0, 6, 12)), hours(Painter, units(0, 12, 24))}
	near(t, "two trades", inUnits(CostOf(lines).Deviation), 5, .0001)
}

// Without a third moment, percentiles are those of the normal distribution: what is
// printed for the published paths, and for Hill Construction (ru.scribd.com
// 438492051, F).
func TestWithoutSkewPercentilesAreNormal(t *testing.T) {
	for _, c := range published {
		near(t, c.name, moments{c.mean, c.variance, 0}.within(c.at), c.prob, .0005)
		near(t, c.name, percentile([]outcome{{1, moments{c.mean, c.variance, 0}}}, c.prob), c.at, .005)
	}
	near(t, "Hill Construction", moments{260, 319.43, 0}.within(270), .7121, .0005)
	near(t, "General Foundry, 99 in 100", percentile([]outcome{{1, moments{15, 3.111, 0}}}, .99), 19.1, .01)
}

// Chi-square with n degrees of freedom has mean n, variance 2n and third moment 8n.
// Source: Abramowitz & Stegun, Handbook of Mathematical Functions, table 26.8 (from
// memory). The expansion up to the third moment comes within 0.04 deviations.
func TestSkewedPercentiles(t *testing.T) {
	for _, c := range []struct{ n, p10, p50, p90 float64 }{
		{10, 4.86518, 9.34182, 15.9871},
		{20, 12.4426, 19.3374, 28.4120},
		{30, 20.5992, 29.3360, 40.2560},
		{100, 82.3581, 99.3341, 118.498},
	} {
		m := moments{c.n, 2 * c.n, 8 * c.n}
		within := .04 * m.deviation()
		for _, p := range []struct{ p, want float64 }{{.1, c.p10}, {.5, c.p50}, {.9, c.p90}} {
			got := percentile([]outcome{{1, m}}, p.p)
			near(t, "chi-square", got, p.want, within)
			near(t, "and back", m.within(got), p.p, 1e-9)
		}
	}
}

// The beta distribution with parameters 2 and 4 between 0 and 6 has mean 2 and
// variance 36·8/(36·7); PERT's with the same mean has variance 1. By hand, from the
// moments of the beta distribution, skew = 2(b - a)·sqrt(a + b + 1) /
// ((a + b + 2)·sqrt(a·b)): with u = 1/3 and n = 7, a = 7/3 and b = 14/3, that is
// 2·(7/3)·sqrt(8) / (9·sqrt(98/9)) = 0.4444.
func TestTheThirdMomentIsThatOfTheBetaDistribution(t *testing.T) {
	near(t, "skew", shape(money.Spread{Low: 0, Likely: 1.5 * 10_000, High: 6 * 10_000}).skew(), 0.444444, 1e-6)
	near(t, "mirrored", shape(money.Spread{Low: -6 * 10_000, Likely: -1.5 * 10_000, High: 0}).skew(), -0.444444, 1e-6)
	near(t, "even", shape(units(1, 2, 3)).skew(), 0, 1e-9)
	near(t, "known", shape(known(5)).skew(), 0, 0)
}

// By hand: 100 that come anyhow, and 1000 with a chance p: nine times in ten one
// stays within 100 as long as p is at most 0.1.
func TestWhatRarelyComesIsNotSpreadOverAllCases(t *testing.T) {
	for _, c := range []struct {
		chance        belief.Chance
		p10, p50, p90 money.Amount
	}{
		{9, 100, 100, 100}, {11, 100, 100, 1100}, {49, 100, 100, 1100}, {51, 100, 1100, 1100}, {91, 1100, 1100, 1100},
	} {
		e := Event{State: contents.PipeOrDuct, Chance: percent(c.chance)}
		total := TotalOf([]Line{sure("a", units(100, 100, 100)), maybe("b", units(1000, 1000, 1000), e)})
		if total.P10 != c.p10*money.Unit || total.P50 != c.p50*money.Unit || total.P90 != c.p90*money.Unit {
			t.Errorf("%d in 100: %s %s %s", c.chance, total.P10.Decimal(), total.P50.Decimal(), total.P90.Decimal())
		}
	}
}

// By hand: states that exclude each other, 100 with 0.2 and 300 with 0.1: mean 50,
// variance 0.2·100² + 0.1·300² - 50² = 8500. If they could come together, the
// variances 1600 and 8100 would add up.
func TestStatesOfOneUnknownExcludeEachOther(t *testing.T) {
	few := Event{State: contents.FewWires, Chance: percent(20)}
	many := Event{State: contents.ManyWires, Chance: percent(10)}
	one := CostOf([]Line{maybe("a", units(100, 100, 100), few), maybe("b", units(300, 300, 300), many)})
	near(t, "one unknown", inUnits(one.Deviation), math.Sqrt(8500), .0001)
	few.Of, many.Of = "s", "t"
	two := CostOf([]Line{maybe("a", units(100, 100, 100), few), maybe("b", units(300, 300, 300), many)})
	near(t, "two unknowns", inUnits(two.Deviation), math.Sqrt(9700), .0001)
	few.Of = "t"
	few.State = contents.Empty // what is behind is no state of the contents
	if behind := CostOf([]Line{maybe("a", units(100, 100, 100), few), maybe("b", units(300, 300, 300), many)}); behind.Deviation != two.Deviation {
		t.Errorf("contents and what is behind: %s", behind.Deviation.Decimal())
	}
	if one.Mean != 50*money.Unit || one.Spread != units(0, 0, 400) {
		t.Errorf("%+v", one)
	}
}

// Ten overheads, each with 100 to pay with a chance of 0.3: the binomial table has
// P(at most 1) = .1493, P(at most 3) = .6496, P(at most 5) = .9527 (from memory).
// There are more cases than are told apart, so the steps are smoothed a little.
func TestManyUnknowns(t *testing.T) {
	var lines []Line
	for i := range 10 {
		lines = append(lines, maybe("a", units(100, 100, 100), Event{Of: string(rune('a' + i)), Chance: percent(30)}))
	}
	total := TotalOf(lines)
	near(t, "deviation", inUnits(total.Deviation), 100*math.Sqrt(10*.3*.7), .001)
	near(t, "P10", inUnits(total.P10), 100, 50)
	near(t, "P50", inUnits(total.P50), 300, 50)
	near(t, "P90", inUnits(total.P90), 500, 50)
}

func TestNoLinesComeToNothing(t *testing.T) {
	if total := TotalOf(nil); total != (Total{}) {
		t.Errorf("%+v", total)
	}
}

func TestTotalsKeepTheirOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		lines := someLines(t)
		total := TotalOf(lines)
		if total.Low > total.P10 || total.P10 > total.P50 || total.P50 > total.P90 || total.P90 > total.High || total.Low > total.Likely || total.Likely > total.High {
			t.Fatalf("%+v", total)
		}
		if total.Deviation < 0 || total.Cost != CostOf(lines) {
			t.Fatalf("%+v", total)
		}
	})
}
