package layout

import (
	"strconv"

	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/money"
	"railhead/internal/survey"
)

const mm = length.Millimetre

func at(l length.Length) level.Height         { return level.Fixed(l.Exact()) }
func flat(height length.Length) level.Profile { return level.Level(at(height)) }

func sizes(numbers ...int) []length.Length {
	out := make([]length.Length, len(numbers))
	for i, n := range numbers {
		out[i] = length.Length(n) * mm
	}
	return out
}

// railSystem is an invented rail-hung system: a 660 row that ends at 2120 with the tall
// cabinets of 2000.
func railSystem() *cabinet.System {
	return &cabinet.System{
		Legs:          120 * mm,
		Wall:          cabinet.Sizes{Heights: sizes(340, 660, 900), Widths: sizes(300, 400, 600, 800), Depths: sizes(360)},
		Tall:          cabinet.Sizes{Heights: sizes(2000, 2240), Widths: sizes(400, 600), Depths: sizes(600)},
		Base:          cabinet.Sizes{Heights: sizes(740), Widths: sizes(300, 400, 600, 800), Depths: sizes(600)},
		WallUnderside: 1460 * mm, Counter: 40 * mm,
		Rail:   &cabinet.Rail{Drop: 64 * mm, HangerUp: 12 * mm, HangerDown: 8 * mm, Lift: 10 * mm},
		FitGap: 2 * mm, SideClearance: 3 * mm,
	}
}

// euros is an amount in hundredths.
func cents(n int64) money.Amount { return money.Amount(n) * money.Unit / 100 }

// room is a level kitchen, 2.5 m high, whose walls follow each other around inside
// corners, to be filled whole by usual weights.
func room(lengths ...length.Length) *Room {
	r := &survey.Room{Groups: []survey.Group{{}}}
	f := &kitchen.Filling{
		Kinds: []cabinet.Kind{cabinet.Wall, cabinet.Tall, cabinet.Base}, Best: 3, LeastFiller: 20 * mm, WallFiller: 20 * mm, CornerFiller: 60 * mm,
		LeastOpen: 150 * mm, MostTall: 2, Step: mm,
		Weights: kitchen.FillWeights{
			Cabinet: cents(4000), Filler: cents(500), FillerPerMM: cents(10), OpenPerMM: cents(10), Panel: cents(3000), HeightChange: cents(1500),
			BaseLineMiss: cents(1000), Symmetry: cents(2000), DuctPair: cents(10000), CounterPerMM: cents(15),
		},
	}
	for i, l := range lengths {
		next := i + 1
		if next == len(lengths) {
			next = -1
		}
		r.Walls = append(r.Walls, survey.Wall{
			Index: i, Pointer: "/survey/walls/" + strconv.Itoa(i), Length: l, Prev: i - 1, Next: next,
			Floor: flat(0), RoomFloor: flat(0), Ceiling: flat(2500 * mm),
		})
		r.Groups[0].Walls = append(r.Groups[0].Walls, i)
		f.Walls = append(f.Walls, i)
	}
	k := &kitchen.Kitchen{
		Room: r, System: railSystem(), Plan: &cabinet.Plan{Counter: 900 * mm}, Datums: []survey.Datum{{Level: at(0)}},
		Prices: kitchen.Prices{Worth: kitchen.Worth{Litre: kitchen.Worthy{Amount: cents(40)}}},
	}
	return &Room{Kitchen: k, Filling: f}
}

func (r *Room) hang(wall int, from, to, depth, underside length.Length) *Room {
	w := &r.Kitchen.Room.Walls[wall]
	n := len(w.Overheads)
	w.Overheads = append(w.Overheads, survey.Overhead{
		Pointer: w.Pointer + "/overheads/" + strconv.Itoa(n), Wall: wall, Index: n, Group: w.Pointer + strconv.Itoa(n),
		From: from, To: to, Depth: depth, Underside: flat(underside), Structure: survey.Framed, MayCut: survey.CutYes,
	})
	r.Sky = r.Kitchen.Found()
	return r
}
