package fit

import (
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// What is above a cabinet is the same whether or not anything else is asked.
func TestAboveIsWhatCheckFindsAbove(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := anyKitchen(t)
		above := Above(k)
		for i, want := range Check(k) {
			got := above[i]
			want.Limits = slices.DeleteFunc(want.Limits, func(l Limit) bool { return l.Axis != Up })
			if got.Cabinet != want.Cabinet || !got.Margin.Equal(want.Margin) || !slices.EqualFunc(got.Limits, want.Limits, sameLimit) {
				t.Fatalf("%s: %v, want %v", got.Cabinet.ID, limitsTold(got.Limits), limitsTold(want.Limits))
			}
		}
	})
}

func sameLimit(a, b Limit) bool {
	return a.By == b.By && a.Axis == b.Axis && a.Wall == b.Wall && a.At == b.At && a.From == b.From && a.To == b.To &&
		a.Margin.Equal(b.Margin) && a.Verdict == b.Verdict && a.Overhead == b.Overhead
}
