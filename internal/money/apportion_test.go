package money

import (
	"math"
	"math/big"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// The census of 1790 and the 60 seats that it gives by Hamilton's method (F,
// electowiki.org, Hamilton method).
var census1790 = []struct {
	state             string
	population, seats int64
}{
	{"VA", 630_560, 11}, {"MA", 475_327, 8}, {"PA", 432_879, 7}, {"NC", 353_523, 6}, {"NY", 331_589, 6},
	{"MD", 278_514, 5}, {"CT", 236_841, 4}, {"SC", 206_236, 3}, {"NJ", 179_570, 3}, {"NH", 141_822, 2},
	{"VT", 85_533, 1}, {"GA", 70_835, 1}, {"KY", 68_705, 1}, {"RI", 68_446, 1}, {"DE", 55_540, 1},
}

func TestApportionSeatsOf1790(t *testing.T) {
	var populations, seats []int64
	var people int64
	for _, c := range census1790 {
		populations, seats = append(populations, c.population), append(seats, c.seats)
		people += c.population
	}
	if people != 3_615_920 {
		t.Fatalf("%d people: the table is not the one published", people)
	}
	if got := Apportion(int64(60), populations); !slices.Equal(got, seats) {
		t.Errorf("%v, want %v", got, seats)
	}
	rests := make([]uint64, len(populations))
	for i, p := range populations {
		rests[i] = uint64(60 * p % people)
	}
	var order []string // of the states that get one of the eight seats left over
	for _, i := range largestFirst(rests)[:8] {
		order = append(order, census1790[i].state)
	}
	if want := []string{"NJ", "CT", "DE", "MA", "NC", "MD", "NY", "VA"}; !slices.Equal(order, want) {
		t.Errorf("seats left over go to %v, want %v", order, want)
	}
}

func TestApportion(t *testing.T) {
	for name, c := range map[string]struct {
		total         int64
		weights, want []int64
	}{
		"quotients 2.67, 6.92, 4.17 and 13 seats (F, the same page)": {13, []int64{267, 692, 417}, []int64{2, 7, 4}},
		"100.00 in thirds (C)":                {10_000, []int64{1, 1, 1}, []int64{3334, 3333, 3333}},
		"a debt in thirds":                    {-10_000, []int64{1, 1, 1}, []int64{-3334, -3333, -3333}},
		"nobody has a weight":                 {5, []int64{0, 0, 0}, []int64{2, 2, 1}},
		"a weight below zero":                 {5, []int64{-3, 1, 1}, []int64{0, 3, 2}},
		"nobody there":                        {5, nil, []int64{}},
		"nothing to split":                    {0, []int64{4, 5}, []int64{0, 0}},
		"weights too heavy to add up":         {3, []int64{math.MaxInt64, math.MaxInt64, math.MaxInt64}, []int64{1, 1, 1}},
		"the largest of all":                  {math.MaxInt64, []int64{math.MaxInt64, 0}, []int64{math.MaxInt64, 0}},
		"the smallest of all":                 {math.MinInt64, []int64{0, 1}, []int64{0, math.MinInt64}},
		"the first of many pairs":             {50, slices.Repeat([]int64{1, 2}, 15), slices.Concat(slices.Repeat([]int64{1, 3}, 5), slices.Repeat([]int64{1, 2}, 10))},
		"one coin and many with equal rights": {1, []int64{2, 2, 2, 2}, []int64{1, 0, 0, 0}},
	} {
		if got := Apportion(c.total, c.weights); !slices.Equal(got, c.want) {
			t.Errorf("%s: %v, want %v", name, got, c.want)
		}
	}
}

// Each gets its quota rounded down or up, nobody with a larger weight gets less,
// and all of it is given.
func TestApportionKeepsToTheQuota(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		largest := rapid.SampledFrom([]int64{5, 1e6, 1e17}).Draw(t, "largest weight")
		weights := rapid.SliceOfN(rapid.Int64Range(0, largest), 1, 12).Draw(t, "weights")
		total := rapid.Int64Range(-1e18, 1e18).Draw(t, "total")
		var whole, sum int64
		for _, w := range weights {
			whole += w
		}
		parts := Apportion(total, weights)
		for i, part := range parts {
			sum += part
			if whole > 0 && !withinOne(part, total, weights[i], whole) {
				t.Fatalf("part %d of %d by %v is %d", i, total, weights, part)
			}
			for j := range parts {
				if weights[i] > weights[j] && size(part) < size(parts[j]) {
					t.Fatalf("%v by %v", parts, weights)
				}
			}
		}
		if sum != total {
			t.Fatalf("%v add up to %d, not %d", parts, sum, total)
		}
	})
}

// withinOne reports whether a part is less than one off its quota.
func withinOne(part, total, weight, whole int64) bool {
	quota := new(big.Rat).SetFrac(new(big.Int).Mul(big.NewInt(total), big.NewInt(weight)), big.NewInt(whole))
	off := quota.Sub(quota, big.NewRat(part, 1))
	return off.Abs(off).Cmp(big.NewRat(1, 1)) < 0
}

func TestSplitTo(t *testing.T) {
	for name, c := range map[string]struct {
		currency    Currency
		parts, want []string
	}{
		"100.00 in thirds (C)":     {euro, []string{"33.3334", "33.3333", "33.3333"}, []string{"33.34", "33.33", "33.33"}},
		"yen in thirds":            {Currency{"JPY", 0}, []string{"33.3334", "33.3333", "33.3333"}, []string{"34", "33", "33"}},
		"dinars in thirds":         {Currency{"KWD", 3}, []string{"33.3334", "33.3333", "33.3333"}, []string{"33.334", "33.333", "33.333"}},
		"half cents take turns":    {euro, []string{"0.005", "0.005", "0.005", "0.005"}, []string{"0.01", "0.01", "0", "0"}},
		"a saving among costs":     {euro, []string{"10.006", "-2.006", "1"}, []string{"10.01", "-2.01", "1"}},
		"the sum ties to even":     {euro, []string{"0.0025", "0.0025"}, []string{"0", "0"}},
		"the sum ties up to even":  {euro, []string{"0.01", "0.005"}, []string{"0.01", "0.01"}},
		"two odd coins and a half": {euro, []string{"0.01", "0.01", "0.005"}, []string{"0.01", "0.01", "0"}},
		"whole coins stay":         {euro, []string{"1.25", "3.5"}, []string{"1.25", "3.5"}},
		"as fine as an amount":     {Currency{"CLF", 4}, []string{"0.0001", "-0.0001"}, []string{"0.0001", "-0.0001"}},
		"one line alone":           {euro, []string{"50.635"}, []string{"50.64"}},
		"the end of the range":     {euro, []string{"99999999999.999"}, []string{"100000000000"}},
		"nothing to split, nobody": {euro, nil, nil},
	} {
		var parts []Amount
		var got []string
		for _, text := range c.parts {
			parts = append(parts, amount(t, text))
		}
		for _, part := range SplitTo(c.currency, parts) {
			got = append(got, part.Decimal())
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("%s: %v, want %v", name, got, c.want)
		}
	}
}

func TestSplitToAddsUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := drawCurrency(t)
		coin := c.Coin()
		parts := make([]Amount, rapid.IntRange(1, 30).Draw(t, "parts"))
		var sum, told Amount
		for i := range parts {
			parts[i] = Amount(rapid.Int64Range(-1e10, 1e10).Draw(t, "part"))
			sum += parts[i]
		}
		for i, part := range SplitTo(c, parts) {
			told += part
			if part%coin != 0 || part-parts[i] >= coin || parts[i]-part >= coin {
				t.Fatalf("%d of %v is %d in coins of %d", i, parts, part, coin)
			}
		}
		if told != sum.Rounded(c) {
			t.Fatalf("%v add up to %d, not to %d", parts, told, sum.Rounded(c))
		}
	})
}

// More of the longest lines than an Amount could add up.
func TestSplitToOfSenselessLines(t *testing.T) {
	parts := make([]Amount, 20_000)
	for i := range parts {
		parts[i] = Most - 1
	}
	for i, part := range SplitTo(euro, parts) {
		if part != Most && part != Most-euro.Coin() {
			t.Fatalf("line %d is %d", i, part)
		}
	}
}
