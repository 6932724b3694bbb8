package belief

import (
	"testing"

	"railhead/internal/money"
)

var sinkAmount money.Amount

func BenchmarkGiven(b *testing.B) {
	b.ReportAllocs()
	p := wildcatter()
	for b.Loop() {
		p.prior.Given(p.signals[1])
	}
}

// What it takes beside the decisions themselves, nine states and three signals.
func BenchmarkSample(b *testing.B) {
	b.ReportAllocs()
	p := uncertainCost()
	for b.Loop() {
		sinkAmount = Sample(p.prior, p.signals, p.best)
	}
}

func BenchmarkPerfect(b *testing.B) {
	b.ReportAllocs()
	p := uncertainCost()
	for b.Loop() {
		sinkAmount = Perfect(p.prior, p.best)
	}
}
