package space

import (
	"testing"

	"railhead/internal/cabinet"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// A wall of 6 m with what an ordinary kitchen has on it, and the heights that may
// stand along it.
func BenchmarkRowOfSixMetres(b *testing.B) {
	k := room(6000*mm, 3000*mm)
	k.Room.Walls[0].Ceiling = slope(0, 2300*mm, 2000*mm, 2310*mm, 6000*mm, 2290*mm)
	window(k, 0, 2000*mm, 3000*mm, 1050*mm, 2050*mm, 70*mm)
	for i := range 8 {
		fixture(k, 0, survey.Socket, length.Length(i)*700*mm, 1150*mm, 0)
	}
	hang(k, 0, 0, 6000*mm, 0, 330*mm, slope(0, 2100*mm, 6000*mm, 2140*mm))
	add(k, cabinet.Tall, 0, 5400*mm, 600*mm)
	appliance(k, cabinet.Fridge, 0, 4700*mm, 600*mm, 1800*mm)
	ask, _ := Usual(k, 0, cabinet.Wall)
	ask.Door = ordinary()
	sky := k.Found()
	for b.Loop() {
		r := Of(k, sky, ask)
		r.Heights(k.System.Wall.Heights)
		for _, s := range r.Free(r.Levels(660 * mm)) {
			r.Ends(s, r.Levels(660*mm))
		}
	}
}
