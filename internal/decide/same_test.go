package decide

import (
	"reflect"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/combine"
	"railhead/internal/estimate"
	"railhead/internal/kitchen"
	"railhead/internal/money"
)

// What is reckoned for a ceiling elsewhere, without all that nobody asks for, is
// what would be decided there.
func TestElsewhereIsDecidedTheSame(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := wildRoom(t)
		moved := k.CeilingMoved(mm(rapid.IntRange(-100, 300).Draw(t, "up")))
		want := decided(moved)
		other := decided(k).reckoning.elsewhere(moved)
		if got := other.choose(&other.priced, other.now, asTheyStand); got.net != want.best.net || !slices.Equal(got.picks, want.best.picks) {
			t.Fatalf("%v, decided %v", got, want.best)
		}
	})
}

// Prices that are reckoned anew only where they hang on a rate or a worth are those
// of the whole room reckoned anew.
func TestRepricingIsPricing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := decided(wildRoom(t)).reckoning
		r.choose(&r.priced, r.now, asTheyStand) // ways are kept from here on
		code := rapid.SampledFrom(estimate.Codes()).Draw(t, "rate")
		rated := r.atRate(code, r.bills())
		set := func(w *kitchen.Worth, a money.Amount) { w.ToCeiling.Amount = a }
		worth := r.atWorth(set)
		for range 3 {
			a := money.Amount(rapid.Int64Range(0, 500*int64(money.Unit)).Draw(t, "amount"))
			slow := r.price(r.book.With(code, money.Spread{Low: a, Likely: a, High: a}), r.k.Prices.Worth)
			samePrices(t, r, rated(a), &slow)
			w := r.k.Prices.Worth
			set(&w, a)
			slow = r.price(r.book, w)
			samePrices(t, r, worth(a), &slow)
		}
	})
}

func samePrices(t *rapid.T, r *reckoning, got, want *priced) {
	fast := r.problem(got, r.now, r.everything())
	things := everyWay(fast.Things)
	slow := r.problem(want, r.now, r.everything())
	if !reflect.DeepEqual(things, everyWay(slow.Things)) || !reflect.DeepEqual(fast.Trades, slow.Trades) || fast.Even != slow.Even {
		t.Fatalf("%+v, reckoned anew %+v", fast, slow)
	}
	if !reflect.DeepEqual(got.shared, want.shared) || !reflect.DeepEqual(got.values, want.values) {
		t.Fatalf("%+v, reckoned anew %+v", got, want)
	}
}

// everyWay is the ways of things, for longer than the next problem.
func everyWay(things []combine.Thing) (out []combine.Way) {
	for _, thing := range things {
		out = append(out, thing.Ways...)
	}
	return out
}

// everything is all options of all groups.
func (r *reckoning) everything() [][]int {
	out := make([][]int, len(r.options))
	for g := range out {
		for i := range r.options[g] {
			out[g] = append(out[g], i)
		}
	}
	return out
}
