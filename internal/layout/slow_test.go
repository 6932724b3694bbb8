package layout

import (
	"cmp"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/cabinet"
	"railhead/internal/length"
	"railhead/internal/money"
)

// slowly fills a room by trying every choice of tall cabinets with every way to turn
// every corner, one by one; the rows themselves are filled by package fill, which is
// proven beside it. Of the base rows so many of the best are looked at for each choice.
func slowly(r *Room, want, bases int) []money.Amount {
	s := &solver{Solver: &Solver{}, room: r, grid: gridOf(r.Kitchen, r.Filling), want: want, many: max(want, bases), walls: map[wallKey][]ranked{}, ways: map[turning][]*corner{}}
	s.prepare()
	var all []found
	for _, g := range s.everyTower() {
		tall := money.Amount(0)
		for _, stand := range g.stand {
			for i := range stand {
				tall += s.standingWorth(&stand[i])
			}
		}
		for _, base := range keep(s.everyTurn(cabinet.Base, g), bases) {
			over := *g
			over.lines, over.named = s.lines(cabinet.Wall, base)
			for _, wall := range s.everyTurn(cabinet.Wall, &over) {
				all = append(all, found{tall + base.worth + wall.worth, g.stand, base, wall, nil})
			}
		}
	}
	slices.SortStableFunc(all, func(a, b found) int { return cmp.Compare(b.worth, a.worth) })
	var out []money.Amount
	seen := map[uint64]bool{}
	for i := range all {
		if name := all[i].name(); !seen[name] && len(out) < want {
			seen[name], out = true, append(out, all[i].worth)
		}
	}
	return out
}

func (s *solver) everyTower() []*given {
	n := len(s.rows[0])
	out := []*given{{walls: s.room.Filling.Walls, towers: make([]int, n), stand: make([][]standing, n)}}
	for _, w := range s.room.Filling.Walls {
		var next []*given
		for _, g := range out {
			have := 0
			for _, stand := range g.stand {
				have += len(stand)
			}
			for i, t := range s.towersOn(w) {
				if have+len(t.stand) <= s.room.Filling.MostTall {
					one := &given{walls: g.walls, towers: slices.Clone(g.towers), stand: slices.Clone(g.stand)}
					one.towers[w], one.stand[w] = i, t.stand
					next = append(next, one)
				}
			}
		}
		out = next
	}
	return out
}

// everyTurn are the ways to fill a kind's rows for every way to turn its corners.
func (s *solver) everyTurn(kind cabinet.Kind, g *given) []way {
	turns := [][]*corner{make([]*corner, len(s.rows[kind]))} // by wall: at its right end
	for w := range s.rows[kind] {
		if !s.turns(kind, w) {
			continue
		}
		var next [][]*corner
		for _, have := range turns {
			for _, c := range s.ways[turning{kind, w}] {
				one := slices.Clone(have)
				one[w] = c
				next = append(next, one)
			}
		}
		turns = next
	}
	var out []way
	for _, at := range turns {
		out = append(out, s.turned(kind, at, g)...)
	}
	return out
}

func (s *solver) turned(kind cabinet.Kind, at []*corner, g *given) []way {
	out := []way{{}}
	for w, r := range s.rows[kind] {
		if r == nil {
			continue
		}
		e := ends{nil, at[w]}
		if prev := s.room.Kitchen.Room.Walls[w].Prev; prev >= 0 {
			e[0] = at[prev]
		}
		var next []way
		for _, one := range s.wall(kind, w, e, g) {
			for i := range out {
				longer := way{out[i].worth + one.worth, out[i].name + one.name, &link{before: out[i].last, ran: ran{r, e, one.answer}, turn: at[w]}}
				if at[w] != nil {
					longer.worth, longer.name = longer.worth+at[w].sum, longer.name+at[w].name
				}
				next = append(next, longer)
			}
		}
		out = next
	}
	return out
}

// Where no lines count, the rows have nothing to do with each other.
func TestNoWayToFillARoomIsWorthMore(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := wildRoom(t)
		r.Filling.Weights.BaseLineMiss = 0
		want := rapid.IntRange(1, 3).Draw(t, "best")
		got, _, proven := new(Solver).Best(r, want)
		slow := slowly(r, want, usualWays)
		if !proven || len(got) != len(slow) {
			t.Fatalf("%d answers, proven %v; there are %d", len(got), proven, len(slow))
		}
		for i := range got {
			if got[i].Worth != slow[i] {
				t.Fatalf("answer %d is worth %s, one by one %s: %+v", i+1, got[i].Worth.Decimal(), slow[i].Decimal(), got)
			}
		}
	})
}

// Where lines count, what is found is worth no less than by the wall row over each of
// the best base rows, and no more than if no joint had to meet any.
func TestTheWallRowMeetsTheBestBaseRows(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := wildRoom(t)
		got, _, _ := new(Solver).Best(r, 1)
		least := slowly(r, 1, usualWays)
		r.Filling.Weights.BaseLineMiss = 0
		most := slowly(r, 1, usualWays)
		if len(got) != len(least) || len(got) > 0 && (got[0].Worth < least[0] || got[0].Worth > most[0]) {
			t.Fatalf("%v of %d, one by one %v, without lines %v", got[0].Worth, len(got), least, most)
		}
	})
}

// wildRoom draws a small room: one to four walls, on which overheads hang, windows
// open and cabinets stay.
func wildRoom(t *rapid.T) *Room {
	number := func(name string, low, high int) length.Length {
		return length.Length(rapid.IntRange(low, high).Draw(t, name)) * 50 * mm
	}
	var lengths []length.Length
	for range rapid.IntRange(1, 3).Draw(t, "walls") {
		lengths = append(lengths, number("length", 20, 50))
	}
	if len(lengths) == 3 {
		lengths[1] = max(lengths[1], 1200*mm) // or the two others would look at each other
	}
	r := room(lengths...)
	if len(lengths) > 1 && rapid.IntRange(0, 2).Draw(t, "apart") == 0 {
		for i := range lengths {
			r.Kitchen.Room.Walls[i].Prev, r.Kitchen.Room.Walls[i].Next = -1, -1
		}
	}
	r.Filling.Step = 50 * mm
	r.Filling.MostTall = rapid.IntRange(1, 2).Draw(t, "most_tall")
	r.Filling.Panel = rapid.SampledFrom(sizes(0, 50)).Draw(t, "panel")
	r.Filling.Weights.CounterPerMM = cents(int64(rapid.IntRange(0, 40).Draw(t, "counter")))
	system := r.Kitchen.System
	system.Wall.Widths, system.Base.Widths, system.Tall.Widths = sizes(300, 450, 600), sizes(300, 600), sizes(600)
	if rapid.Bool().Draw(t, "corners") {
		system.Base.Corners = []cabinet.CornerSize{{Shape: cabinet.CornerL, Width: 900 * mm, OtherWidth: 900 * mm}, {Shape: cabinet.CornerBlind, Width: 1000 * mm}}
		system.Wall.Corners = []cabinet.CornerSize{{Shape: cabinet.CornerDiagonal, Width: 600 * mm, OtherWidth: 650 * mm}}
	}
	for w, l := range lengths {
		if rapid.Bool().Draw(t, "overhead") {
			from := number("from", 0, 20)
			r.hang(w, from, min(l, from+number("long", 4, 30)), 350*mm, 1900*mm+number("underside", 0, 10))
		}
		if rapid.Bool().Draw(t, "window") {
			from := number("window", 4, 20)
			r.window(w, from, min(l, from+number("wide", 8, 20)))
		}
		if rapid.IntRange(0, 3).Draw(t, "stays") == 0 {
			from := number("at", 0, 20)
			if from+600*mm <= l {
				r.stay(cabinet.Kind(rapid.IntRange(0, 2).Draw(t, "kind")), w, from, 600*mm)
			}
		}
	}
	r.Sky = r.Kitchen.Found()
	return r
}
