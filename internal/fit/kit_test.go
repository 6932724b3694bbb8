package fit

import (
	"strconv"
	"testing"

	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

const mm = length.Millimetre

// inch reads a length as a tape says it.
func inch(t testing.TB, text string) length.Length {
	t.Helper()
	l, err := length.Parse(text + " in")
	if err != nil {
		t.Fatalf("%q: %v", text, err)
	}
	return l
}

func at(l length.Length) level.Height         { return level.Fixed(l.Exact()) }
func flat(height length.Length) level.Profile { return level.Level(at(height)) }

// line is a profile through points given as station, height, station, height, …
func line(t testing.TB, numbers ...length.Length) level.Profile {
	t.Helper()
	var points []level.Point
	for i := 0; i < len(numbers); i += 2 {
		points = append(points, level.Point{At: numbers[i], Height: at(numbers[i+1])})
	}
	p, fault := level.NewProfile(points)
	if fault != nil {
		t.Fatal(fault)
	}
	return p
}

// railSystem is an invented rail-hung system: a 660 row that ends at 2120.
func railSystem() *cabinet.System {
	return &cabinet.System{
		Legs: 120 * mm, LegTravel: &cabinet.LegTravel{Up: 20 * mm, Down: 30 * mm},
		Wall:          cabinet.Sizes{Widths: []length.Length{300 * mm, 600 * mm}},
		Tall:          cabinet.Sizes{Widths: []length.Length{400 * mm, 600 * mm}},
		Base:          cabinet.Sizes{Widths: []length.Length{300 * mm, 600 * mm}},
		WallUnderside: 1460 * mm, Counter: 40 * mm,
		Rail:   &cabinet.Rail{Drop: 64 * mm, HangerUp: 12 * mm, HangerDown: 8 * mm, Lift: 10 * mm},
		FitGap: 2 * mm, SideClearance: 3 * mm,
	}
}

// room is a level kitchen, 2.5 m high, whose walls follow each other around
// inside corners.
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

// add puts a cabinet into the plan: a 660 wall cabinet, a 2000 tall one or a 740
// base one, of the system's depth and height.
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

// door gives a cabinet a front of ordinary thickness with an ordinary pull.
func door(opens cabinet.Opens) func(*cabinet.Placed) {
	return func(c *cabinet.Placed) {
		c.Door = &cabinet.Door{Opens: opens, Thickness: 20 * mm, Pull: 40 * mm}
	}
}

// hang puts an overhead under a wall's ceiling.
func hang(k *kitchen.Kitchen, wall int, from, to, out, depth, underside length.Length, change ...func(*survey.Overhead)) {
	w := &k.Room.Walls[wall]
	n := len(w.Overheads)
	o := survey.Overhead{
		Pointer: w.Pointer + "/overheads/" + strconv.Itoa(n), Wall: wall, Index: n, Group: w.Pointer + strconv.Itoa(n),
		From: from, To: to, Out: out, Depth: depth, Underside: flat(underside), Structure: survey.Framed, MayCut: survey.CutYes,
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

// appliance puts an appliance of ordinary depth into the plan.
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

// told is a finding in short: code, severity, need and have in millimetres.
func told(f finding.Finding) string {
	out := f.Code + " " + f.Severity.String()
	if f.Need != nil {
		out += " need " + f.Need.Value.Round(f.Need.Round).MM()
	}
	if f.Have != nil {
		out += " have " + f.Have.Value.Round(f.Have.Round).MM()
	}
	return out
}

func toldAll(in []finding.Finding) []string {
	out := []string{}
	for _, f := range in {
		out = append(out, told(f))
	}
	return out
}

func limitsTold(in []Limit) []string {
	out := []string{}
	for _, l := range in {
		out = append(out, l.By+" "+l.Axis.String()+" "+l.Margin.Floor().MM()+" "+l.Verdict.String())
	}
	return out
}

// hangingFound is how a cabinet hangs in the room as found.
func hangingFound(k *kitchen.Kitchen, c *cabinet.Placed) *Hanging {
	return asFound(k).check(c).Hanging
}
