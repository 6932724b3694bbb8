package money

import (
	"math/big"
	"testing"

	"pgregory.net/rapid"
)

func TestMeanRoundsOnceHalfToEven(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 8).Draw(t, "values")
		largest := rapid.SampledFrom([]int64{3, 1e9, 1e17}).Draw(t, "largest weight")
		values, weights := make([]Amount, n), make([]Quantity, n)
		want, whole := new(big.Rat), Quantity(0)
		for i := range values {
			values[i], weights[i] = drawAmount(t, "value"), Quantity(rapid.Int64Range(0, largest).Draw(t, "weight"))
			want.Add(want, new(big.Rat).Mul(exact(values[i]), big.NewRat(int64(weights[i]), 1)))
			whole += weights[i]
		}
		if whole == 0 {
			if got := Mean(values, weights, whole); got != 0 {
				t.Fatalf("nothing counts, and the mean is %d", got)
			}
			return
		}
		want.Quo(want, big.NewRat(int64(whole), 1))
		if got := Mean(values, weights, whole); !isNearest(int64(got), want) {
			t.Fatalf("mean of %v by %v is %d, want nearest to %v", values, weights, got, want)
		}
	})
}

func TestMeanOfGainAndLoss(t *testing.T) { // a quarter of 700 and three quarters of -100
	if got := Mean([]Amount{700 * Unit, -100 * Unit}, []int64{1, 3}, 4); got != 100*Unit {
		t.Errorf("%s, want 100", got.Decimal())
	}
}
