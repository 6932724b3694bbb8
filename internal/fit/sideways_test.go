package fit

import (
	"slices"
	"testing"

	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// The geometry of boxes on a wall; every expected overlap is the difference of
// two stations in the case (common practice, no source).
func TestSideways(t *testing.T) {
	for _, c := range []struct {
		name  string
		given func() *kitchen.Kitchen // the first cabinet is held against the rest
		want  []string
	}{
		{"neighbours abut", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm)
			add(k, cabinet.Wall, 0, 0, 600*mm)
			add(k, cabinet.Wall, 0, 1200*mm, 600*mm)
			return k
		}, nil},
		{"a neighbour begins 20 too early", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm)
			add(k, cabinet.Wall, 0, 1180*mm, 600*mm)
			return k
		}, []string{"/plan/cabinets/1 along -20 blocked"}},
		{"a wall cabinet over a base cabinet", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm)
			add(k, cabinet.Base, 0, 600*mm, 600*mm)
			return k
		}, nil},
		{"a wall cabinet set down on a base cabinet", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm, func(c *cabinet.Placed) { c.Underside = 860 * mm })
			add(k, cabinet.Base, 0, 600*mm, 600*mm)
			return k
		}, nil},
		{"a wall cabinet set too low on a base cabinet", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm, func(c *cabinet.Placed) { c.Underside = 860*mm - 1 })
			add(k, cabinet.Base, 0, 600*mm, 600*mm)
			return k
		}, []string{"/plan/cabinets/1 along -600 blocked"}},
		{"a tall cabinet where a wall cabinet hangs", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Tall, 0, 600*mm, 600*mm)
			add(k, cabinet.Wall, 0, 1000*mm, 600*mm)
			return k
		}, []string{"/plan/cabinets/1 along -200 blocked"}},
		{"gap exact: 600 between two fixed neighbours", func() *kitchen.Kitchen {
			k := room(1800 * mm)
			add(k, cabinet.Tall, 0, 600*mm, 600*mm)
			add(k, cabinet.Tall, 0, 0, 600*mm)
			add(k, cabinet.Tall, 0, 1200*mm, 600*mm)
			return k
		}, nil},
		{"ends at the wall's end", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Base, 0, 2400*mm, 600*mm)
			return k
		}, nil},
		{"30 past the wall's end", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Base, 0, 2430*mm, 600*mm)
			return k
		}, []string{"/survey/walls/0/length along -30 blocked"}},
		{"30 before the wall's beginning", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Base, 0, -30*mm, 600*mm)
			return k
		}, []string{"/survey/walls/0/length along -30 blocked"}},
		{"a corner cabinet too long for the short wall", func() *kitchen.Kitchen {
			k := room(3000*mm, 800*mm)
			add(k, cabinet.Wall, 0, 2100*mm, 900*mm, corner(1, 900*mm))
			return k
		}, []string{"/survey/walls/1/length along -100 blocked"}},
		{"window casing: clear of it by its own width", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 730*mm, 600*mm)
			window(k, 0, 1400*mm, 2200*mm, 1050*mm, 2050*mm, 70*mm)
			return k
		}, nil},
		{"window casing covered by 10", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 740*mm, 600*mm)
			window(k, 0, 1400*mm, 2200*mm, 1050*mm, 2050*mm, 70*mm)
			return k
		}, []string{"/survey/walls/0/openings/0 along -10 blocked"}},
		{"wall cabinet just above a window's casing", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 1400*mm, 600*mm)
			window(k, 0, 1400*mm, 2200*mm, 900*mm, 1390*mm, 70*mm)
			return k
		}, nil},
		{"base cabinet under a window's casing", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Base, 0, 1400*mm, 600*mm)
			window(k, 0, 1400*mm, 2200*mm, 1050*mm, 2050*mm, 70*mm)
			return k
		}, nil},
		{"base cabinet before a door", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Base, 0, 900*mm, 600*mm)
			k.Room.Walls[0].Openings = []survey.Opening{{Pointer: "/survey/walls/0/openings/0", Kind: survey.Door,
				From: 1460 * mm, To: 2300 * mm, ToFloor: true, Head: at(2030 * mm), Casing: 60 * mm}}
			return k
		}, []string{"/survey/walls/0/openings/0 along -100 blocked"}},
		{"a flank in the corner covers the casing around it", func() *kitchen.Kitchen {
			k := room(3000*mm, 2000*mm)
			add(k, cabinet.Wall, 0, 2400*mm, 600*mm)
			window(k, 1, 400*mm, 1200*mm, 1050*mm, 2050*mm, 70*mm)
			return k
		}, []string{"/survey/walls/1/openings/0 out -30 blocked"}},
		{"a flank that stands off the corner covers nothing", func() *kitchen.Kitchen {
			k := room(3000*mm, 2000*mm)
			add(k, cabinet.Wall, 0, 2399*mm, 600*mm)
			window(k, 1, 400*mm, 1200*mm, 1050*mm, 2050*mm, 70*mm)
			return k
		}, nil},
		{"a flank in the corner just below a high window's casing", func() *kitchen.Kitchen {
			k := room(3000*mm, 2000*mm)
			add(k, cabinet.Wall, 0, 2400*mm, 600*mm)
			window(k, 1, 200*mm, 1200*mm, 2190*mm, 2400*mm, 70*mm)
			return k
		}, nil},
		{"a flank in the corner just above a low window's casing", func() *kitchen.Kitchen {
			k := room(3000*mm, 2000*mm)
			add(k, cabinet.Wall, 0, 2400*mm, 600*mm)
			window(k, 1, 200*mm, 1200*mm, 900*mm, 1390*mm, 70*mm)
			return k
		}, nil},
		{"a flank in the corner that ends where the casing begins", func() *kitchen.Kitchen {
			k := room(3000*mm, 2000*mm)
			add(k, cabinet.Wall, 0, 2400*mm, 600*mm)
			window(k, 1, 430*mm, 1200*mm, 1050*mm, 2050*mm, 70*mm)
			return k
		}, nil},
		{"inside corner neighbours: both runs into the corner", func() *kitchen.Kitchen {
			k := room(3000*mm, 2000*mm)
			add(k, cabinet.Wall, 0, 2400*mm, 600*mm)
			add(k, cabinet.Wall, 1, 0, 600*mm)
			return k
		}, []string{"/plan/cabinets/1 along -360 blocked"}},
		{"inside corner neighbours: the second begins at the first one's face", func() *kitchen.Kitchen {
			k := room(3000*mm, 2000*mm)
			add(k, cabinet.Wall, 0, 2400*mm, 600*mm)
			add(k, cabinet.Wall, 1, 360*mm, 600*mm)
			return k
		}, nil},
		{"inside corner: an L-shaped cabinet and its neighbour around the corner", func() *kitchen.Kitchen {
			k := room(3000*mm, 2000*mm)
			add(k, cabinet.Wall, 0, 2100*mm, 900*mm, corner(1, 900*mm))
			add(k, cabinet.Wall, 1, 890*mm, 600*mm)
			return k
		}, []string{"/plan/cabinets/1 along -10 blocked"}},
		{"the runs of a narrow galley meet", func() *kitchen.Kitchen {
			k := room(3000*mm, 1100*mm, 3000*mm)
			add(k, cabinet.Base, 0, 600*mm, 600*mm)
			add(k, cabinet.Base, 2, 2000*mm, 600*mm)
			return k
		}, []string{"/plan/cabinets/1 out -100 blocked"}},
		{"the runs of a narrow galley miss each other along the wall", func() *kitchen.Kitchen {
			k := room(3000*mm, 1100*mm, 3000*mm)
			add(k, cabinet.Base, 0, 600*mm, 600*mm)
			add(k, cabinet.Base, 2, 1000*mm, 600*mm)
			return k
		}, nil},
		{"the four walls of a closed room", func() *kitchen.Kitchen {
			k := room(3000*mm, 1100*mm, 3000*mm, 1100*mm)
			k.Room.Walls[3].Next, k.Room.Walls[0].Prev = 0, 3
			add(k, cabinet.Base, 3, 0, 400*mm)
			add(k, cabinet.Base, 0, 0, 600*mm)
			add(k, cabinet.Base, 1, 700*mm, 400*mm)
			return k
		}, nil},
		{"around the last corner of a closed room", func() *kitchen.Kitchen {
			k := room(3000*mm, 1100*mm, 3000*mm, 1100*mm)
			k.Room.Walls[3].Next, k.Room.Walls[0].Prev = 0, 3
			add(k, cabinet.Base, 3, 550*mm, 550*mm)
			add(k, cabinet.Base, 0, 590*mm, 600*mm)
			add(k, cabinet.Base, 2, 2000*mm, 400*mm)
			return k
		}, []string{"/plan/cabinets/1 along -550 blocked"}},
		{"deeper than the way to the wall opposite", func() *kitchen.Kitchen {
			k := room(3000*mm, 550*mm, 3000*mm)
			add(k, cabinet.Base, 0, 600*mm, 600*mm)
			return k
		}, []string{"/survey/walls/2 out -50 blocked"}},
		{"opposite runs on datums of their own: the wall cabinet opposite begins 10 too low", func() *kitchen.Kitchen {
			return islandAcross(-610 * mm)
		}, []string{"/plan/cabinets/1 out -60 blocked"}},
		{"opposite runs on datums of their own that just pass each other in height", func() *kitchen.Kitchen {
			return islandAcross(-600 * mm)
		}, nil},
		{"a pipe 60 off the wall behind the cabinet", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm)
			fixture(k, 0, survey.Pipe, 900*mm, 1800*mm, 60*mm)
			return k
		}, []string{"/survey/walls/0/points/0 out -60 blocked"}},
		{"a pipe 60 off the wall at the cabinet's edge", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm)
			fixture(k, 0, survey.Pipe, 1230*mm, 1800*mm, 60*mm)
			return k
		}, []string{"/survey/walls/0/points/0 along -10 blocked"}},
		{"a pipe cleared by as much either way is cleared along the wall", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm)
			fixture(k, 0, survey.Pipe, 1180*mm, 1800*mm, 60*mm)
			return k
		}, []string{"/survey/walls/0/points/0 along -60 blocked"}},
		{"pipes that just pass above and below", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm)
			fixture(k, 0, survey.Pipe, 900*mm, 1420*mm, 60*mm)
			fixture(k, 0, survey.Pipe, 900*mm, 2160*mm, 60*mm)
			return k
		}, nil},
		{"a pipe on the wall around the corner, 60 off it", func() *kitchen.Kitchen {
			k := room(3000*mm, 2000*mm)
			add(k, cabinet.Wall, 0, 2350*mm, 600*mm)
			fixture(k, 1, survey.Pipe, 200*mm, 1800*mm, 60*mm)
			return k
		}, []string{"/survey/walls/1/points/0 along -10 blocked"}},
		{"a filler that is too wide", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Base, 0, 600*mm, 600*mm)
			k.Plan.Fillers = []cabinet.Filler{{Pointer: "/plan/fillers/0", Kind: cabinet.Base, Wall: 0, From: 550 * mm, To: 605 * mm}}
			return k
		}, []string{"/plan/fillers/0 along -5 blocked"}},
		{"a filler of the other row", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Base, 0, 600*mm, 600*mm)
			k.Plan.Fillers = []cabinet.Filler{{Pointer: "/plan/fillers/0", Kind: cabinet.Wall, Wall: 0, From: 550 * mm, To: 605 * mm}}
			return k
		}, nil},
		{"a tall filler in the base row's place", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Base, 0, 600*mm, 600*mm)
			k.Plan.Fillers = []cabinet.Filler{{Pointer: "/plan/fillers/0", Kind: cabinet.Tall, Wall: 0, From: 1190 * mm, To: 1250 * mm}}
			return k
		}, []string{"/plan/fillers/0 along -10 blocked"}},
		{"a filler of no stated row where the only row there is not free", func() *kitchen.Kitchen {
			k := room(3000*mm, 2000*mm)
			add(k, cabinet.Base, 0, 600*mm, 600*mm)
			add(k, cabinet.Wall, 1, 900*mm, 600*mm)
			k.Plan.Fillers = []cabinet.Filler{{Pointer: "/plan/fillers/0", AnyKind: true, Wall: 0, From: 1190 * mm, To: 1250 * mm}}
			return k
		}, []string{"/plan/fillers/0 along -10 blocked"}},
		{"a filler of no stated row right of the upper row", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Base, 0, 600*mm, 600*mm)
			add(k, cabinet.Wall, 0, 400*mm, 600*mm)
			k.Plan.Fillers = []cabinet.Filler{{Pointer: "/plan/fillers/0", AnyKind: true, Wall: 0, From: 1000 * mm, To: 1050 * mm}}
			return k
		}, nil},
		{"a filler of no stated row where the upper row is free", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Base, 0, 600*mm, 600*mm)
			add(k, cabinet.Wall, 0, 650*mm, 600*mm)
			k.Plan.Fillers = []cabinet.Filler{{Pointer: "/plan/fillers/0", AnyKind: true, Wall: 0, From: 600 * mm, To: 650 * mm}}
			return k
		}, nil},
		{"a filler of no stated row where no row is free", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Base, 0, 600*mm, 600*mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm)
			k.Plan.Fillers = []cabinet.Filler{{Pointer: "/plan/fillers/0", AnyKind: true, Wall: 0, From: 550 * mm, To: 650 * mm}}
			return k
		}, []string{"/plan/fillers/0 along -50 blocked"}},
	} {
		k := c.given()
		limits, _ := sideways(k, &k.Plan.Cabinets[0])
		if got := limitsTold(limits); !slices.Equal(got, c.want) {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
}

// islandAcross is a narrow galley in which the wall opposite has its datum lower
// than the first, and a wall cabinet on it.
func islandAcross(datum length.Length) *kitchen.Kitchen {
	k := room(3000*mm, 900*mm, 3000*mm)
	k.Room.Walls[2].Group = 1
	k.Datums = append(k.Datums, survey.Datum{Level: at(datum)})
	add(k, cabinet.Base, 0, 600*mm, 600*mm)
	add(k, cabinet.Wall, 2, 2000*mm, 600*mm)
	return k
}

// corner makes a cabinet reach along the next wall.
func corner(other int, width length.Length) func(*cabinet.Placed) {
	return func(c *cabinet.Placed) {
		c.Corner = &cabinet.Corner{OtherWall: other, OtherWidth: width, Shape: cabinet.CornerL, AtRight: true}
	}
}

func TestBothOfTwoOverlappingCabinetsSaySo(t *testing.T) {
	k := room(3000 * mm)
	add(k, cabinet.Wall, 0, 600*mm, 600*mm)
	add(k, cabinet.Wall, 0, 1180*mm, 600*mm)
	limits, found := sideways(k, &k.Plan.Cabinets[1])
	if got := limitsTold(limits); !slices.Equal(got, []string{"/plan/cabinets/0 along -20 blocked"}) || limits[0].At != 1200*mm {
		t.Errorf("the second says %q at %s", got, limits[0].At)
	}
	if got := toldAll(found); !slices.Equal(got, []string{"fit.neighbour.overlap stop need 600 have 580"}) {
		t.Errorf("the second finds %q", got)
	}
}

// What a cabinet may hide and what must stay within reach (common practice, no
// source; junction boxes NEC 314.29, panels NEC 110.26, gas valves IRC G2420,
// all from memory).
func TestCoveredPoints(t *testing.T) {
	for _, c := range []struct {
		point   survey.FixtureKind
		cabinet cabinet.Kind
		want    string
	}{
		{survey.Socket, cabinet.Wall, "fit.point.covered caution"},
		{survey.Socket, cabinet.Tall, "fit.point.covered caution"},
		{survey.Socket, cabinet.Base, "fit.point.covered note"},
		{survey.Switch, cabinet.Wall, "fit.point.covered caution"},
		{survey.Light, cabinet.Tall, "fit.point.covered caution"},
		{survey.Junction, cabinet.Wall, "fit.point.junction_covered caution"},
		{survey.Junction, cabinet.Base, "fit.point.junction_covered note"},
		{survey.Valve, cabinet.Base, "fit.point.valve_covered stop"},
		{survey.GasValve, cabinet.Base, "fit.point.gas_valve_covered stop"},
		{survey.Panel, cabinet.Tall, "fit.point.panel_covered stop"},
		{survey.Vent, cabinet.Tall, "fit.point.vent_covered caution"},
		{survey.Pipe, cabinet.Base, "fit.point.covered note"},
	} {
		k := room(3000 * mm)
		a := add(k, c.cabinet, 0, 600*mm, 600*mm)
		height := 300 * length.Millimetre
		if c.cabinet == cabinet.Wall {
			height = 1600 * mm
		}
		fixture(k, 0, c.point, 1230*mm, height, 0) // 80 wide: its left 10 are behind the cabinet
		fixture(k, 0, c.point, 1240*mm, height, 0) // just beside it
		fixture(k, 0, c.point, 900*mm, 2200*mm, 0) // above it
		limits, found := sideways(k, a)
		if got := toldAll(found); len(limits) != 0 || !slices.Equal(got, []string{c.want}) {
			t.Errorf("%s behind a %s cabinet: %q, want %q", c.point, c.cabinet, got, c.want)
		}
	}
}

// A counter at 900 on a base cabinet that ends at 860, before a window whose
// casing begins 40 below its sill (common practice, no source).
func TestCounterAndWindow(t *testing.T) {
	for sill, want := range map[length.Length][]string{
		940 * mm: {},
		939 * mm: {"fit.opening.counter caution need 900 have 899"},
		900 * mm: {"fit.opening.counter caution need 900 have 860"},
		899 * mm: {"fit.opening.covered stop need 600 have 0"},
	} {
		k := room(3000 * mm)
		add(k, cabinet.Base, 0, 1400*mm, 600*mm)
		add(k, cabinet.Base, 0, 0, 1000*mm)
		window(k, 0, 1400*mm, 2200*mm, sill, 2050*mm, 40*mm)
		_, found := sideways(k, &k.Plan.Cabinets[0])
		if got := toldAll(found); !slices.Equal(got, want) {
			t.Errorf("sill at %s: %q, want %q", sill, got, want)
		}
		if _, found := sideways(k, &k.Plan.Cabinets[1]); len(found) != 0 {
			t.Errorf("beside the casing: %q", toldAll(found))
		}
	}
}

func TestTwoSocketsBehindOneCabinet(t *testing.T) {
	k := room(3000 * mm)
	a := add(k, cabinet.Wall, 0, 600*mm, 600*mm)
	fixture(k, 0, survey.Socket, 700*mm, 1600*mm, 0)
	fixture(k, 0, survey.Socket, 900*mm, 1600*mm, 0)
	if _, found := sideways(k, a); len(found) != 2 || found[0].Pointer == found[1].Pointer {
		t.Errorf("%q", toldAll(found))
	}
}

// Where the datum opposite is 600 lower the upper cabinets there begin at 860
// over the near one: each side says what the other does.
func TestOppositeRunsOnTheirOwnDatumsAgree(t *testing.T) {
	for datum, want := range map[length.Length]int{-600 * mm: 0, -600*mm - 1: 1} {
		k := islandAcross(datum)
		limits, _ := sideways(k, &k.Plan.Cabinets[1])
		if len(limits) != want {
			t.Errorf("datum at %s: %q", datum, limitsTold(limits))
		}
	}
}
