package money

import "testing"

var (
	sinkAmount  Amount
	sinkText    string
	sinkAmounts []Amount
)

func BenchmarkTimes(b *testing.B) {
	b.ReportAllocs()
	rate, q := 12*Unit+3456, Quantity(4175)
	for b.Loop() {
		sinkAmount = rate.Times(q)
	}
}

func BenchmarkPlus(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		sinkAmount = sinkAmount.Plus(3)
	}
}

func BenchmarkSpread(b *testing.B) { // one line of an estimate: its spread, mean and deviation
	b.ReportAllocs()
	rate, q := Spread{35 * Unit, 48 * Unit, 70 * Unit}, Quantity(4175)
	for b.Loop() {
		s := rate.Times(q)
		sinkAmount = s.Mean().Plus(s.Deviation())
	}
}

func BenchmarkMean(b *testing.B) { // eight states
	b.ReportAllocs()
	values, weights := make([]Amount, 8), make([]int64, 8)
	for i := range values {
		values[i], weights[i] = Amount(i-3)*123_4567, 125_000_000
	}
	for b.Loop() {
		sinkAmount = Mean(values, weights, 1_000_000_000)
	}
}

func BenchmarkText(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		sinkText = Amount(1_234_567).Text(euro)
	}
}

func BenchmarkSplitTo(b *testing.B) { // the lines of a room
	b.ReportAllocs()
	parts := make([]Amount, 100)
	for i := range parts {
		parts[i] = Amount(i) * 123_457
	}
	for b.Loop() {
		sinkAmounts = SplitTo(euro, parts)
	}
}
