package space

import (
	"strconv"

	"pgregory.net/rapid"

	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

const mm = length.Millimetre

func at(l length.Length) level.Height         { return level.Fixed(l.Exact()) }
func flat(height length.Length) level.Profile { return level.Level(at(height)) }

// railSystem is an invented rail-hung system: a 660 row that ends at 2120.
func railSystem() *cabinet.System {
	return &cabinet.System{
		Legs: 120 * mm, LegTravel: &cabinet.LegTravel{Up: 20 * mm, Down: 30 * mm},
		Wall:          cabinet.Sizes{Heights: []length.Length{340 * mm, 660 * mm, 900 * mm}, Widths: []length.Length{300 * mm, 600 * mm}, Depths: []length.Length{360 * mm}},
		Tall:          cabinet.Sizes{Heights: []length.Length{2000 * mm}, Widths: []length.Length{400 * mm, 600 * mm}, Depths: []length.Length{600 * mm}},
		Base:          cabinet.Sizes{Heights: []length.Length{740 * mm}, Widths: []length.Length{300 * mm, 600 * mm}, Depths: []length.Length{600 * mm}},
		WallUnderside: 1460 * mm, Counter: 40 * mm,
		Rail:   &cabinet.Rail{Drop: 64 * mm, HangerUp: 12 * mm, HangerDown: 8 * mm, Lift: 10 * mm},
		FitGap: 2 * mm, SideClearance: 3 * mm,
	}
}

// room is a level kitchen, 2.5 m high, whose walls follow each other around inside
// corners.
func room(lengths ...length.Length) *kitchen.Kitchen {
	r := &survey.Room{Groups: []survey.Group{{}}}
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
	}
	return &kitchen.Kitchen{
		Room: r, System: railSystem(), Plan: &cabinet.Plan{Counter: 900 * mm},
		Datums: []survey.Datum{{Level: at(0)}},
	}
}

// add puts a cabinet into the plan, of the system's depth and height and in its row.
func add(k *kitchen.Kitchen, kind cabinet.Kind, wall int, from, width length.Length, change ...func(*cabinet.Placed)) *cabinet.Placed {
	n := len(k.Plan.Cabinets)
	c := cabinet.Placed{
		ID: "c" + strconv.Itoa(n), Pointer: "/plan/cabinets/" + strconv.Itoa(n), Index: n, Kind: kind, Wall: wall, From: from, To: from + width,
		Depth: 600 * mm, Height: [...]length.Length{660 * mm, 2000 * mm, 740 * mm}[kind], Underside: 120 * mm,
	}
	if kind == cabinet.Wall {
		c.Depth, c.Underside = 360*mm, 1460*mm
	}
	c.Top = c.Underside + c.Height
	for _, f := range change {
		f(&c)
	}
	k.Plan.Cabinets = append(k.Plan.Cabinets, c)
	return &k.Plan.Cabinets[n]
}

// hang puts an overhead under a wall's ceiling.
func hang(k *kitchen.Kitchen, wall int, from, to, out, depth length.Length, underside level.Profile, change ...func(*survey.Overhead)) {
	w := &k.Room.Walls[wall]
	n := len(w.Overheads)
	o := survey.Overhead{
		Pointer: w.Pointer + "/overheads/" + strconv.Itoa(n), Wall: wall, Index: n, Group: w.Pointer + strconv.Itoa(n),
		From: from, To: to, Out: out, Depth: depth, Underside: underside, Structure: survey.Framed, MayCut: survey.CutYes,
	}
	for _, f := range change {
		f(&o)
	}
	w.Overheads = append(w.Overheads, o)
}

func fixture(k *kitchen.Kitchen, wall int, kind survey.FixtureKind, station, height, out length.Length) {
	w := &k.Room.Walls[wall]
	w.Fixtures = append(w.Fixtures, survey.Fixture{
		Pointer: w.Pointer + "/points/" + strconv.Itoa(len(w.Fixtures)), Kind: kind, At: station, Level: at(height),
		Width: 80 * mm, Height: 80 * mm, Out: out,
	})
}

func window(k *kitchen.Kitchen, wall int, from, to, sill, head, casing length.Length) {
	w := &k.Room.Walls[wall]
	w.Openings = append(w.Openings, survey.Opening{
		Pointer: w.Pointer + "/openings/" + strconv.Itoa(len(w.Openings)), From: from, To: to, Sill: at(sill), Head: at(head), Casing: casing,
	})
}

func appliance(k *kitchen.Kitchen, kind cabinet.ApplianceKind, wall int, from, width, top length.Length, change ...func(*cabinet.Appliance)) {
	n := strconv.Itoa(len(k.Plan.Appliances))
	a := cabinet.Appliance{
		ID: "x" + n, Pointer: "/plan/appliances/" + n, Kind: kind, Wall: wall, From: from, To: from + width, Depth: 600 * mm, Top: top,
		Hangs: kind == cabinet.HoodOnWall, Underside: top - 100*mm,
	}
	for _, f := range change {
		f(&a)
	}
	k.Plan.Appliances = append(k.Plan.Appliances, a)
}

// draw draws lengths on a 10 mm grid, so that things abut now and then.
type draw struct{ *rapid.T }

func (t draw) grid(name string, low, high int) length.Length {
	return length.Length(rapid.IntRange(low/10, high/10).Draw(t.T, name)) * 10 * mm
}

// depth draws an ordinary depth, or any.
func (t draw) depth(name string, low, high int) length.Length {
	if n := t.n(name+" of a kind", 0, 3); n > 0 {
		return [...]length.Length{300 * mm, 360 * mm, 600 * mm}[n-1]
	}
	return t.grid(name, low, high)
}

func (t draw) n(name string, low, high int) int { return rapid.IntRange(low, high).Draw(t.T, name) }
func (t draw) yes(name string) bool             { return rapid.Bool().Draw(t.T, name) }

// profile draws a level line, a slope, steps.
func (t draw) profile(name string, low, high int) level.Profile {
	var points []level.Point
	x := t.grid(name+" at", -100, 400)
	for range t.n(name+" points", 1, 4) {
		points = append(points, level.Point{At: x, Height: at(t.grid(name+" height", low, high))})
		run := t.grid(name+" run", 0, 900)
		if n := len(points); n > 1 && points[n-2].At == x {
			run = max(run, 10*mm)
		}
		x += run
	}
	p, _ := level.NewProfile(points)
	return p
}

// anyKitchen draws one to five walls around inside corners, or two runs of walls
// that look at each other, with whatever may stand, hang and open there.
func anyKitchen(t draw) *kitchen.Kitchen {
	var lengths []length.Length
	for range t.n("walls", 1, 5) {
		lengths = append(lengths, t.grid("wall", 600, 2500))
	}
	k := room(lengths...)
	last := len(lengths) - 1
	switch {
	case last == 3 && t.yes("closed"):
		k.Room.Walls[3].Next, k.Room.Walls[0].Prev = 0, 3
	case last > 0 && t.yes("two runs"):
		twoRuns(t, k, last)
	}
	for i := range k.Room.Walls {
		furnish(t, k, i)
	}
	for range t.n("cabinets", 0, 4) {
		anyCabinet(t, k, last)
	}
	for range t.n("fillers", 0, 2) {
		from := t.grid("filler", 0, 2000)
		k.Plan.Fillers = append(k.Plan.Fillers, cabinet.Filler{
			Pointer: "/plan/fillers/" + strconv.Itoa(len(k.Plan.Fillers)), Kind: cabinet.Kind(t.n("filler kind", 0, 2)),
			AnyKind: t.yes("filler of no row"), Wall: t.n("filler on wall", 0, last), From: from, To: from + t.grid("filler width", 10, 100),
		})
	}
	for range t.n("appliances", 0, 2) {
		kind := cabinet.ApplianceKind(t.n("appliance", 0, int(cabinet.OtherAppliance)))
		appliance(k, kind, t.n("appliance on wall", 0, last), t.grid("appliance from", 0, 1500), t.grid("appliance width", 200, 900), t.grid("appliance top", 600, 2000), func(a *cabinet.Appliance) {
			a.Depth = t.depth("appliance depth", 300, 700)
			a.Left.Need, a.Right.Need, a.Above.Need = t.grid("left", 0, 50), t.grid("right", 0, 50), t.grid("above", 0, 800)
			a.Hangs, a.Underside = t.yes("hangs"), a.Top-t.grid("appliance height", 50, 600)
		})
	}
	if t.yes("cooking") {
		from := t.grid("cook", 0, 1500)
		k.Plan.Cooking = &cabinet.Cooking{Pointer: "/plan/cooking", Wall: t.n("cooking on wall", 0, last), From: from, To: from + 600*mm, Surface: 900 * mm}
	}
	return k
}

// twoRuns breaks the walls in two, each run levelled by itself.
func twoRuns(t draw, k *kitchen.Kitchen, last int) {
	cut := t.n("cut", 0, last-1)
	k.Room.Walls[cut].Next, k.Room.Walls[cut+1].Prev = -1, -1
	k.Room.Groups = []survey.Group{{}, {}}
	for i := range k.Room.Walls {
		g := 0
		if i > cut {
			g = 1
		}
		k.Room.Walls[i].Group = g
		k.Room.Groups[g].Walls = append(k.Room.Groups[g].Walls, i)
	}
	k.Datums = append(k.Datums, survey.Datum{Group: 1, Level: at(t.grid("second datum", -50, 50))})
	if t.yes("facing") {
		k.Room.Walls[cut].Facing = &survey.Facing{Wall: cut + 1, Distance: t.grid("apart", 600, 2500)}
	}
}

func furnish(t draw, k *kitchen.Kitchen, i int) {
	w := &k.Room.Walls[i]
	w.Ceiling = t.profile("ceiling", 2050, 2400)
	for range t.n("openings", 0, 1) {
		from := t.grid("opening", 0, 1500)
		window(k, i, from, from+t.grid("opening width", 100, 900), t.grid("sill", 600, 1500), t.grid("head", 1300, 2200), t.grid("casing", 0, 80))
		w.Openings[0].ToFloor = t.yes("to floor")
	}
	for range t.n("points", 0, 2) {
		kind := survey.FixtureKind(t.n("point", 0, int(survey.OtherFixture)))
		fixture(k, i, kind, t.grid("point at", 0, 2000), t.grid("point level", 100, 2000), t.grid("point out", 0, 100))
	}
	for range t.n("overheads", 0, 2) {
		from, out := t.grid("overhead", 0, 1500), t.depth("overhead out", 0, 800)
		if t.yes("at the wall") {
			out = 0
		}
		hang(k, i, from, from+t.grid("overhead length", 100, 2000), out, t.grid("overhead depth", 100, 2600), t.profile("underside", 1900, 2200), func(o *survey.Overhead) {
			o.Kind = survey.OverheadKind(t.n("overhead kind", 0, 4))
			o.MayCut = survey.MayCut(t.n("may cut", 0, 2))
			if t.yes("seen behind") {
				h := at(t.grid("behind", 2050, 2400))
				o.Behind.CeilingLevel = &h
			}
		})
	}
}

func anyCabinet(t draw, k *kitchen.Kitchen, last int) {
	wall := t.n("on wall", 0, last)
	add(k, cabinet.Kind(t.n("kind", 0, 2)), wall, t.grid("from", -50, 2000), t.grid("width", 200, 1000), func(c *cabinet.Placed) {
		c.Depth, c.Keep = t.depth("depth", 300, 650), t.yes("keep")
		c.Height = t.grid("height", 300, 1000)
		c.Top = c.Underside + c.Height
		if next := k.Room.Walls[wall].Next; next >= 0 && t.yes("corner") {
			c.From, c.To = k.Room.Walls[wall].Length-c.Width(), k.Room.Walls[wall].Length
			c.Corner = &cabinet.Corner{OtherWall: next, OtherWidth: t.grid("other width", 300, 900), Shape: cabinet.CornerShape(t.n("shape", 0, 2)), AtRight: true}
		}
	})
}
