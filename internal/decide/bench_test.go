package decide

import (
	"testing"

	"railhead/internal/fit"
	"railhead/internal/kitchen"
	"railhead/internal/survey"
)

// crowded is a room of many walls, each with overheads of one group or of their
// own over a row of cabinets.
func crowded(walls, each, cabinets int, oneGroup bool) *kitchen.Kitchen {
	return room(2500, func(k *kitchen.Kitchen) {
		k.Plan.Cabinets, k.Room.Walls[0].Overheads = nil, nil
		for w := range walls {
			if w > 0 {
				addWall(k, 3600, 2500)
			}
			for i := range each {
				from := i * 3600 / each
				o := soffit("s"+count(w)+"-"+count(i), w, from, (i+1)*3600/each, 2100)
				o.Painted = survey.Yes
				if oneGroup {
					o.Group = "s"
				}
				k.Room.Walls[w].Overheads = append(k.Room.Walls[w].Overheads, o)
			}
			for i := range cabinets {
				k.Plan.Cabinets = append(k.Plan.Cabinets, wallCabinet("c", w, i*3600/cabinets, 3600/cabinets, 660))
			}
		}
	})
}

func benchmark(b *testing.B, k *kitchen.Kitchen) {
	found, rows := fit.Check(k), fit.Rows(k)
	lower := fit.LowerRow(k, found)
	b.ReportAllocs()
	for b.Loop() {
		Decide(k, found, rows, lower)
	}
}

func BenchmarkOneSoffit(b *testing.B)       { benchmark(b, room(2500)) }
func BenchmarkCrowded(b *testing.B)         { benchmark(b, crowded(10, 20, 20, false)) }
func BenchmarkCrowdedOneGroup(b *testing.B) { benchmark(b, crowded(10, 20, 20, true)) }

// BenchmarkPiled is as many cabinets as a body may hold in one place, under as
// many overheads as a wall may have, in one group.
func BenchmarkPiled(b *testing.B) {
	k := crowded(1, 100, 1, true)
	for range 999 {
		k.Plan.Cabinets = append(k.Plan.Cabinets, k.Plan.Cabinets[0])
	}
	benchmark(b, settled(k))
}
