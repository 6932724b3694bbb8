package money

import (
	"testing"

	"pgregory.net/rapid"
)

// Mean (a + 4m + b)/6 and variance ((b - a)/6)^2 of PERT (F, flylib 3.287.1.117).
// Reliable Construction of Hillier and Lieberman: data M, means and the critical
// path A-B-C-E-F-J-L-N of 44 weeks with a variance of 9: C.
func TestPERTReliableConstruction(t *testing.T) {
	half := Unit / 2
	activities := map[string]struct {
		Spread
		mean Amount
	}{
		"A": {Spread{1 * Unit, 2 * Unit, 3 * Unit}, 2},
		"B": {Spread{2 * Unit, 3*Unit + half, 8 * Unit}, 4},
		"C": {Spread{6 * Unit, 9 * Unit, 18 * Unit}, 10},
		"D": {Spread{4 * Unit, 5*Unit + half, 10 * Unit}, 6},
		"E": {Spread{1 * Unit, 4*Unit + half, 5 * Unit}, 4},
		"F": {Spread{4 * Unit, 4 * Unit, 10 * Unit}, 5},
		"G": {Spread{5 * Unit, 6*Unit + half, 11 * Unit}, 7},
		"H": {Spread{5 * Unit, 8 * Unit, 17 * Unit}, 9},
		"I": {Spread{3 * Unit, 7*Unit + half, 9 * Unit}, 7},
		"J": {Spread{3 * Unit, 9 * Unit, 9 * Unit}, 8},
		"K": {Spread{4 * Unit, 4 * Unit, 4 * Unit}, 4},
		"L": {Spread{1 * Unit, 5*Unit + half, 7 * Unit}, 5},
		"M": {Spread{1 * Unit, 2 * Unit, 3 * Unit}, 2},
		"N": {Spread{5 * Unit, 5*Unit + half, 9 * Unit}, 6},
	}
	for name, a := range activities {
		if got := a.Mean(); got != a.mean*Unit {
			t.Errorf("mean of %s is %s, want %d", name, got.Decimal(), a.mean)
		}
	}
	var path Spread
	var variance float64
	for _, name := range "ABCEFJLN" {
		a := activities[string(name)]
		path = path.Plus(a.Spread)
		variance += square(a.Deviation())
	}
	if path.Mean() != 44*Unit || !near(variance, 9, 0.001) {
		t.Errorf("path of %s weeks, variance %f; want 44 and 9", path.Mean().Decimal(), variance)
	}
}

// The critical path A-C-E-H-I-K-M-N of fourteen activities: data F (wizedu
// 717873), 50.833 and 11.1944 C. That of General Foundry, Render and Stair, A-C-E-G-H:
// data M, 15 and 3.111 C.
func TestPERTCriticalPaths(t *testing.T) {
	for name, c := range map[string]struct {
		path           [][3]Amount
		mean, variance float64
	}{
		"fourteen activities": {[][3]Amount{{5, 5, 7}, {5, 5, 5}, {1, 10, 17}, {4, 4, 6}, {2, 7, 10}, {6, 10, 13}, {2, 2, 3}, {7, 7, 12}}, 50.833, 11.1944},
		"general foundry":     {[][3]Amount{{1, 2, 3}, {1, 2, 3}, {1, 4, 7}, {3, 4, 11}, {1, 2, 3}}, 15, 3.111},
	} {
		var mean, variance float64
		for _, a := range c.path {
			s := Spread{a[0] * Unit, a[1] * Unit, a[2] * Unit}
			mean += float64(s.Mean()) / float64(Unit)
			variance += square(s.Deviation())
		}
		if !near(mean, c.mean, 0.0006) || !near(variance, c.variance, 0.001) {
			t.Errorf("%s: %f and %f, want %f and %f", name, mean, variance, c.mean, c.variance)
		}
	}
}

func square(a Amount) float64 {
	units := float64(a) / float64(Unit)
	return units * units
}

func near(got, want, within float64) bool { return got-want < within && want-got < within }

func TestSpreadsStayInOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, other := drawSpread(t, "s"), drawSpread(t, "other")
		q, part := drawQuantity(t, "q"), rapid.Int64().Draw(t, "part")
		for name, got := range map[string]Spread{
			"plus": s.Plus(other), "neg": s.Neg(), "times": s.Times(q), "share": s.Share(part, 7),
		} {
			if got.Low > got.Likely || got.Likely > got.High {
				t.Fatalf("%s: %+v", name, got)
			}
			if mean := got.Mean(); mean < got.Low || mean > got.High || got.Deviation() < 0 {
				t.Fatalf("%s: mean %d, deviation %d of %+v", name, mean, got.Deviation(), got)
			}
		}
		if s.Neg().Mean() != -s.Mean() || s.Neg().Deviation() != s.Deviation() {
			t.Fatalf("saving %+v: mean %d, deviation %d", s.Neg(), s.Neg().Mean(), s.Neg().Deviation())
		}
	})
}

func drawSpread(t *rapid.T, label string) Spread {
	a, b, c := drawAmount(t, label), drawAmount(t, label), drawAmount(t, label)
	return Spread{min(a, b, c), max(min(a, b), min(max(a, b), c)), max(a, b, c)}
}
