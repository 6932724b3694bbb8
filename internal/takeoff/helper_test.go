package takeoff

import (
	"fmt"
	"strconv"
	"testing"

	"railhead/internal/cabinet"
	"railhead/internal/fit"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
	"railhead/internal/trim"
)

const mm = length.Millimetre

// profile is a path through pairs of station and level, in millimetres.
func profile(pairs ...int) level.Profile {
	var points []level.Point
	for i := 0; i < len(pairs); i += 2 {
		points = append(points, level.Point{At: length.Length(pairs[i]) * mm, Height: fixed(pairs[i+1])})
	}
	p, fault := level.NewProfile(points)
	if fault != nil {
		panic(fault)
	}
	return p
}

func fixed(v int) level.Height { return level.Fixed((length.Length(v) * mm).Exact()) }

func flat(v int) level.Profile { return profile(0, v) }

// soffit is a plain framed one of gypsum board, 330 deep, between walls.
func soffit(from, to int, under level.Profile) survey.Overhead {
	return survey.Overhead{
		ID: "s", Group: "s", From: length.Length(from) * mm, To: length.Length(to) * mm, Depth: 330 * mm, Underside: under,
		Structure: survey.Framed, MayCut: survey.CutYes, Finish: "gypsum_board", Left: survey.EndWall, Right: survey.EndWall,
		Make: survey.Make{Lining: 12500 * length.Micrometre, BottomMember: 38 * mm, LeastStub: 50 * mm, LeastRun: 150 * mm},
	}
}

func wall(long, ceiling int, overheads ...survey.Overhead) survey.Wall {
	return survey.Wall{
		Length: length.Length(long) * mm, Prev: -1, Next: -1, Overheads: overheads,
		FoundFloor: flat(0), Floor: flat(0), RoomFloor: flat(0), Ceiling: flat(ceiling),
	}
}

// corner joins walls one to the next.
func corner(walls ...survey.Wall) []survey.Wall {
	for i := 1; i < len(walls); i++ {
		walls[i-1].Next, walls[i].Prev = i, i-1
	}
	return walls
}

// cook is a kitchen with the demo system of the trade model.
func cook(walls []survey.Wall, cabinets ...cabinet.Placed) *kitchen.Kitchen {
	room := &survey.Room{Walls: walls, Groups: []survey.Group{{}}}
	for i := range walls {
		w := &walls[i]
		w.Index, w.Pointer = i, "/survey/walls/"+strconv.Itoa(i)
		room.Groups[0].Walls = append(room.Groups[0].Walls, i)
		for j := range w.Overheads {
			o := &w.Overheads[j]
			o.Wall, o.Index, o.Pointer = i, j, w.Pointer+"/overheads/"+strconv.Itoa(j)
		}
	}
	plan := &cabinet.Plan{Cabinets: cabinets}
	for i := range cabinets {
		c := &cabinets[i]
		c.Index, c.ID, c.Pointer = i, "c"+strconv.Itoa(i), "/plan/cabinets/"+strconv.Itoa(i)
	}
	system := &cabinet.System{
		Legs: 120 * mm, WallUnderside: 1460 * mm, FitGap: 2 * mm, SideClearance: 3 * mm,
		Rail: &cabinet.Rail{Drop: 64 * mm, Profile: 32 * mm, HangerUp: 12 * mm, HangerDown: 8 * mm, Lift: 10 * mm},
	}
	return &kitchen.Kitchen{Room: room, System: system, Plan: plan, Datums: kitchen.Datums(room, plan, nil)}
}

// hung is a wall cabinet 360 deep with its top at a height.
func hung(wall, from, to, top int) cabinet.Placed {
	t := length.Length(top) * mm
	return cabinet.Placed{
		Kind: cabinet.Wall, Wall: wall, From: length.Length(from) * mm, To: length.Length(to) * mm, Depth: 360 * mm,
		Height: 660 * mm, Underside: t - 660*mm, Top: t,
	}
}

// job is an option for the first overhead group, with the cuts that trim plans.
func job(k *kitchen.Kitchen, o kitchen.Option, spans ...survey.WallSpan) Job {
	g := k.Groups()[0]
	applied := kitchen.AppliedOptions{g.ID: {Option: o, By: kitchen.ByChoice, Spans: spans}}
	return Job{Group: g, Option: o, Cuts: trim.Plan(k, fit.Check(k), applied)}
}

func take(k *kitchen.Kitchen, o kitchen.Option, spans ...survey.WallSpan) Takeoff {
	return NewSite(k).Of(job(k, o, spans...))
}

// sums are the quantities by kind of work.
func sums(items []Item) map[Work]string {
	total := map[Work]int64{}
	for _, i := range items {
		total[i.Work] += int64(i.Quantity)
	}
	out := map[Work]string{}
	for w, q := range total {
		out[w] = thousandths(q)
	}
	return out
}

func thousandths(q int64) string { return decimalOf(ratio(q, 1000)) }

// want compares quantities by kind of work; all that is measured is to be named.
func want(t *testing.T, got []Item, quantities map[Work]string) {
	t.Helper()
	have := sums(got)
	for _, w := range Works() {
		if have[w] != quantities[w] {
			t.Errorf("%s: %q %s, want %q", w, have[w], w.Unit(), quantities[w])
		}
	}
	for _, i := range got {
		reworked(t, i)
	}
}

// quantities are the quantities by kind of work, as plain numbers.
func quantities(items []Item) map[Work]float64 {
	out := map[Work]float64{}
	for _, i := range items {
		out[i.Work] += float64(i.Quantity) / 1000
	}
	return out
}

func near(have, want, within float64) error {
	if have < want-within || have > want+within {
		return fmt.Errorf("%v, want %v within %v", have, want, within)
	}
	return nil
}
