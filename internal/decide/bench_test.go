package decide

import (
	"testing"

	"railhead/internal/fit"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/level"
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

// eight is a room of two walls with eight soffits over sixteen cabinets: no two
// soffits alike, the ceiling read at three stations of each wall, every option
// possible, and a taller row that surely fits in some places and perhaps in others.
func eight() *kitchen.Kitchen {
	return room(2400, wants(6000), func(k *kitchen.Kitchen) {
		addWall(k, 4800, 2400)
		k.Plan.Cabinets, k.Room.Walls[0].Length, k.Room.Walls[0].Overheads = nil, mm(4800), nil
		k.Prices.Worth.Shorter = &kitchen.Worthy{Pointer: "/money/shorter_cabinet"}
		for w := range k.Room.Walls {
			wall := &k.Room.Walls[w]
			wall.Ceiling = read(k.Room, 0, 2358+w, 2300, 2363, 4800, 2371)
			for i := range 4 {
				from := 1200 * i
				o := soffit("s"+count(w)+"-"+count(i), w, from, from+1200, 2100)
				o.Underside = read(k.Room, from, 2090+7*i, from+500, 2097+5*w, from+1200, 2094+3*i)
				o.Painted, o.Left, o.Right = survey.Yes, survey.EndOpen, survey.EndOpen
				wall.Overheads = append(wall.Overheads, o)
				k.Plan.Cabinets = append(k.Plan.Cabinets,
					wallCabinet("c"+count(w)+"-"+count(i)+"a", w, from, 600, 660),
					wallCabinet("c"+count(w)+"-"+count(i)+"b", w, from+600, 600, 500+160*(i%2)))
			}
		}
	})
}

// read is a profile through pairs of station and level in millimetres, each a
// reading within 3 mm.
func read(room *survey.Room, pairs ...int) level.Profile {
	var points []level.Point
	for i := 0; i < len(pairs); i += 2 {
		id := level.ReadingID(len(room.Readings))
		room.Readings = append(room.Readings, level.Reading{Pointer: "/survey/readings/" + count(int(id)), HalfWidth: 3 * length.Millimetre})
		points = append(points, level.Point{At: mm(pairs[i]), Height: level.Read(id, mm(pairs[i+1]))})
	}
	p, fault := level.NewProfile(points)
	if fault != nil {
		panic(fault)
	}
	return p
}

// BenchmarkEight is a whole decision on a room of eight overheads, and its parts.
func BenchmarkEight(b *testing.B) {
	k := eight()
	found, rows := fit.Check(k), fit.Rows(k)
	decide := func() Decisions { return Decide(k, found, rows, nil) }
	decided := decide()
	for _, part := range []struct {
		name string
		do   func()
	}{
		{"Whole", func() { whole(decide()) }},
		{"Decide", func() { decide() }},
		{"Inform", func() { decided.Inform() }},
		{"Flips", func() { decided.Flips() }},
		{"FlipsOfPrices", func() { decided.reckoning.flipsFrom(decided.best.picks) }},
		{"FlipsOfCeiling", func() { decided.reckoning.ceilingFlips(decided.best.picks) }},
		{"Assumptions", func() { decided.Assumptions() }},
		{"Told", func() { told(decided) }},
	} {
		b.Run(part.name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				part.do()
			}
		})
	}
}

// whole is all that an answer tells of a decision.
func whole(d Decisions) {
	d.Inform()
	d.Flips()
	d.Assumptions()
	told(d)
}

// told is the money that an answer tells of a decision.
func told(d Decisions) {
	applied := kitchen.AppliedOptions{}
	for _, a := range d.Advice {
		applied[a.Group] = kitchen.Applied{Option: a.Option}
	}
	d.Room(applied)
	d.Lines(applied)
	for g, o := range d.Overheads {
		for i := range o.Options {
			d.Money(g, i)
		}
	}
}
