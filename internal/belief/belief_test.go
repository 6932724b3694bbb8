package belief

import (
	"math"
	"math/big"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/money"
)

func TestOf(t *testing.T) {
	for name, c := range map[string]struct {
		parts []Chance
		want  Belief
	}{
		"two to one":              {[]Chance{2, 1}, Belief{666_666_667, 333_333_333}},
		"thirds, the first first": {[]Chance{1, 1, 1}, Belief{333_333_334, 333_333_333, 333_333_333}},
		"percent as sent":         {[]Chance{70, 20, 10}, Belief{700_000_000, 200_000_000, 100_000_000}},
		"nothing known":           {[]Chance{0, 0}, Belief{500_000_000, 500_000_000}},
		"one below zero":          {[]Chance{-5, 5}, Belief{0, Certain}},
		"one state":               {[]Chance{3}, Belief{Certain}},
		"no states":               {nil, Belief{}},
		"the largest":             {[]Chance{math.MaxInt64, math.MaxInt64}, Belief{500_000_000, 500_000_000}},
	} {
		if got := Of(c.parts...); !slices.Equal(got, c.want) {
			t.Errorf("%s: %v, want %v", name, got, c.want)
		}
	}
}

func TestFromRats(t *testing.T) {
	for name, c := range map[string]struct {
		parts []string
		want  Belief
	}{
		"as decimals":       {[]string{"0.7", "0.2", "0.1"}, Belief{700_000_000, 200_000_000, 100_000_000}},
		"as fractions":      {[]string{"1/3", "2/3"}, Belief{333_333_333, 666_666_667}},
		"do not add up":     {[]string{"0.6", "0.6"}, Belief{500_000_000, 500_000_000}},
		"far apart":         {[]string{"1e300", "1e-300"}, Belief{Certain, 0}},
		"nothing known":     {[]string{"0", "0", "0"}, Belief{333_333_334, 333_333_333, 333_333_333}},
		"one below zero":    {[]string{"-1", "2"}, Belief{0, Certain}},
		"finer than a hair": {[]string{"0.0000000004", "0.9999999996"}, Belief{0, Certain}},
		"no states":         {nil, Belief{}},
	} {
		if got := FromRats(rationals(c.parts)); !slices.Equal(got, c.want) {
			t.Errorf("%s: %v, want %v", name, got, c.want)
		}
	}
}

func rationals(texts []string) (out []*big.Rat) {
	for _, text := range texts {
		r, _ := new(big.Rat).SetString(text)
		out = append(out, r)
	}
	return out
}

// Whole proportions give the same belief by either way.
func TestFromRatsIsOf(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		parts := rapid.SliceOfN(rapid.Int64Range(-3, 1e12), 0, 9).Draw(t, "parts")
		over := rapid.Int64Range(1, 1e12).Draw(t, "over")
		var chances []Chance
		var rats []*big.Rat
		for _, p := range parts {
			chances, rats = append(chances, Chance(p)), append(rats, big.NewRat(p, over))
		}
		got, want := FromRats(rats), Of(chances...)
		if !slices.Equal(got, want) {
			t.Fatalf("%v and %v", got, want)
		}
		checkBelief(t, got, len(parts) > 0)
	})
}

func checkBelief(t *rapid.T, b Belief, states bool) {
	t.Helper()
	var sum Chance
	for _, c := range b {
		if c < 0 {
			t.Fatalf("%v", b)
		}
		sum += c
	}
	if states && sum != Certain {
		t.Fatalf("%v adds up to %d", b, sum)
	}
}

func TestPointIsSure(t *testing.T) {
	b := Point(3, 1)
	if !slices.Equal(b, Belief{0, Certain, 0}) || b.Mean(units(5, 7, 9)) != 7*money.Unit {
		t.Errorf("%v", b)
	}
}

func TestChances(t *testing.T) {
	if got := (Certain / 4).Not(); got != 750_000_000 {
		t.Errorf("not a quarter is %d", got)
	}
	if got := (Certain / 4).Of(-90 * money.Unit); got.Decimal() != "-22.5" {
		t.Errorf("a quarter of -90 is %s", got.Decimal())
	}
}
