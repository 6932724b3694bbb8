package contents

import (
	"testing"

	"railhead/internal/kitchen"
	"railhead/internal/survey"
)

func eight() *kitchen.Kitchen {
	var overheads []survey.Overhead
	for i := range 8 {
		from := 400 * i
		overheads = append(overheads, over(string(rune('a'+i)), 0, from, from+400,
			hinted("bath_above", "cable_enters", "stack_in_line", "sounds_hollow"), bathAway(900), looked(survey.ProbeHole, from, from+200)))
	}
	return corner(overheads...)
}

// A room of eight overheads with many hints.
func BenchmarkOf(b *testing.B) {
	k := eight()
	b.ReportAllocs()
	for b.Loop() {
		for _, c := range Clusters(k) {
			Of(k, c)
			Probe(c)
		}
	}
}

// One more set of odds, as when looking for where the advice flips.
func BenchmarkWith(b *testing.B) {
	k := eight()
	c := Clusters(k)[0]
	prior := Of(k, c).Prior
	b.ReportAllocs()
	for b.Loop() {
		With(c, prior)
	}
}
