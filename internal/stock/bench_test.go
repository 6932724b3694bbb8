package stock

import (
	"testing"

	"railhead/internal/length"
)

func benchmark(b *testing.B, p Problem) {
	for b.Loop() {
		if _, err := Cut(p); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkPublished(b *testing.B) {
	for _, c := range published {
		b.Run(c.name, func(b *testing.B) { benchmark(b, problem(0, c.orders, c.stock)) })
	}
}

// A wall, a kitchen, a house.
func BenchmarkRails(b *testing.B) {
	stock := []length.Length{2400 * mm, 3000 * mm}
	for _, c := range []struct {
		name   string
		pieces int
	}{{"4", 4}, {"10", 10}, {"14", 14}, {"24", 24}} {
		b.Run(c.name, func(b *testing.B) {
			benchmark(b, Problem{Stock: stock, Kerf: 3 * mm, Pieces: random(c.pieces, 200, 2000, mm)})
		})
	}
}

func BenchmarkHard(b *testing.B) {
	for _, c := range hard {
		b.Run(c.name, func(b *testing.B) { benchmark(b, c.p) })
	}
}
