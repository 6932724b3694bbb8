package fit

import (
	"testing"

	"railhead/internal/cabinet"
	"railhead/internal/length"
)

// The largest plan a request may hold, 1000 cabinets on three walls.
func BenchmarkBesideThousandCabinets(b *testing.B) {
	k := room(99000*mm, 9000*mm, 99000*mm)
	for i := range 1000 {
		add(k, cabinet.Kind(i%3), 2*(i%2), 0, 90*mm, door(cabinet.OpensLeft), func(c *cabinet.Placed) {
			c.From, c.To = c.From+90*mm*length.Length(i), c.To+90*mm*length.Length(i)
		})
	}
	sky := k.Found()
	for b.Loop() {
		for i := range k.Plan.Cabinets {
			c := &k.Plan.Cabinets[i]
			sideways(k, c)
			doors(k, c, sky)
		}
	}
}
