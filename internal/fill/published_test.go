package fill

import (
	"slices"
	"testing"

	"railhead/internal/length"
	"railhead/internal/money"
)

// Cutting a rod: T. Cormen, C. Leiserson, R. Rivest, C. Stein, Introduction to Algorithms, 3rd edition, section 15.1,
// prices of figure 15.1 and the revenues printed with it (status M, from memory; each revenue is also the maximum over
// the ways to take off a first piece). A run without any other cost is a rod.
var (
	rodPrices   = []money.Amount{1, 5, 8, 9, 10, 17, 17, 20, 24, 30}
	rodRevenues = []money.Amount{1, 5, 8, 10, 13, 17, 18, 22, 25, 30}
)

// plain is a run of so many millimetres with sizes of one height by width, and neither fillers nor holes.
func plain(long int, worth map[int]money.Amount) *Run {
	r := &Run{Length: span(long, mm), Grid: mm, LeastFiller: length.Max, Closed: true}
	for w := 1; w <= 1000; w++ {
		if a, ok := worth[w]; ok {
			r.Sizes = append(r.Sizes, Size{span(w, mm), 720 * mm, a})
		}
	}
	return r
}

func rod(long int) *Run {
	worth := map[int]money.Amount{}
	for i, price := range rodPrices {
		worth[i+1] = price
	}
	return plain(long, worth)
}

func TestPublishedRodRevenues(t *testing.T) {
	for i, want := range rodRevenues {
		if got := fill(t, rod(i+1)); got[0].Worth != want {
			t.Errorf("rod of %d: %v, published %v", i+1, got[0].Worth, want)
		}
	}
}

// The eight ways to cut a rod of 4 and what they fetch (figure 15.2 of the same, M).
func TestPublishedWaysToCutARod(t *testing.T) {
	r := rod(4)
	r.Best = 20
	var worths []money.Amount
	for _, a := range fill(t, r) {
		worths = append(worths, a.Worth)
	}
	if want := []money.Amount{10, 9, 9, 9, 7, 7, 7, 4}; !slices.Equal(worths, want) {
		t.Errorf("%v, published %v", worths, want)
	}
}

// Of 6, 9 and 20 every number above 43 can be put together, and 43 cannot (the coin problem, Wikipedia; status M). Of
// two numbers without a common divisor the largest is ab - a - b (J. J. Sylvester, 1882, M): 7 and 10 give 53.
func TestPublishedNumbersThatCannotBeMade(t *testing.T) {
	for _, c := range []struct {
		name    string
		widths  map[int]money.Amount
		largest int
		others  []int
	}{
		{"6, 9 and 20", map[int]money.Amount{6: 1, 9: 1, 20: 1}, 43,
			[]int{1, 2, 3, 4, 5, 7, 8, 10, 11, 13, 14, 16, 17, 19, 22, 23, 25, 28, 31, 34, 37}},
		{"7 and 10", map[int]money.Amount{7: 1, 10: 1}, 53, nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			var never []int
			for n := range 120 {
				if _, err := Fill(plain(n, c.widths)); err != nil {
					never = append(never, n)
				}
			}
			if last := never[len(never)-1]; last != c.largest {
				t.Errorf("largest %d, published %d", last, c.largest)
			}
			if c.others != nil && !slices.Equal(never, append(c.others, c.largest)) {
				t.Errorf("never: %v", never)
			}
		})
	}
}

// A number is a sum of ones and twos, in order, in as many ways as a Fibonacci number says: 8 in 34 (OEIS A000045, M).
// A quarter is changed into cents, nickels, dimes and quarters in 13 ways, order apart (OEIS A001299, M).
func TestPublishedNumbersOfWays(t *testing.T) {
	ordered := plain(8, map[int]money.Amount{1: 1, 2: 2})
	ordered.Best = MaxBest
	if got := fill(t, ordered); len(got) != 34 {
		t.Errorf("%d ways, published 34", len(got))
	}
	change := plain(25, map[int]money.Amount{1: 1, 5: 1, 10: 1, 25: 1})
	change.Best, change.AnyOrder = MaxBest, true
	if got := fill(t, change); len(got) != 13 {
		t.Errorf("%d ways, published 13", len(got))
	}
}

// fill is the answers to a run that has some.
func fill(t testing.TB, r *Run) []Answer {
	t.Helper()
	got, err := Fill(r)
	if err != nil {
		t.Fatal(err)
	}
	return got
}
