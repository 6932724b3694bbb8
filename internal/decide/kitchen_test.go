package decide

import (
	"strings"

	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/fit"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/money"
	"railhead/internal/rules"
	"railhead/internal/survey"
)

func mm(v int) length.Length { return length.Length(v) * length.Millimetre }

func at(v int) level.Height { return level.Fixed(mm(v).Exact()) }

// demo is the invented rail system of the trade notes: the 660 row tops out at
// 2120, the 900 row at 2360.
func demo() *cabinet.System {
	return &cabinet.System{
		Legs:          mm(120),
		Wall:          cabinet.Sizes{Heights: []length.Length{mm(340), mm(500), mm(660), mm(900)}, Depths: []length.Length{mm(360)}},
		WallUnderside: mm(1460),
		Tall:          cabinet.Sizes{Heights: []length.Length{mm(1840), mm(2000), mm(2240)}, Depths: []length.Length{mm(600)}},
		Rail:          &cabinet.Rail{Drop: mm(64), Lift: mm(10), HangerDown: mm(8)},
		FitGap:        mm(2), SideClearance: mm(3),
	}
}

// soffit is a plain framed one over a whole wall, its underside at a height.
func soffit(id string, wall, from, to, underside int) survey.Overhead {
	return survey.Overhead{
		ID: id, Group: id, Wall: wall, Kind: survey.Soffit, From: mm(from), To: mm(to), Depth: mm(330),
		Underside: level.Level(at(underside)), Structure: survey.Framed, MayCut: survey.CutYes,
		Finish: "gypsum_board", Painted: survey.No, Textured: survey.No,
		Make: survey.Make{Lining: mm(12), BottomMember: mm(38), LeastStub: mm(50), LeastRun: mm(150)},
		Left: survey.EndWall, Right: survey.EndWall,
	}
}

// wallCabinet hangs on the row's own underside.
func wallCabinet(id string, wall, from, width, height int) cabinet.Placed {
	return cabinet.Placed{
		ID: id, Kind: cabinet.Wall, Wall: wall, From: mm(from), To: mm(from + width), Depth: mm(360),
		Height: mm(height), Underside: mm(1460), Top: mm(1460 + height),
	}
}

func tallCabinet(id string, wall, from, width, height int) cabinet.Placed {
	return cabinet.Placed{
		ID: id, Kind: cabinet.Tall, Wall: wall, From: mm(from), To: mm(from + width), Depth: mm(600),
		Height: mm(height), Underside: mm(120), Top: mm(120 + height),
	}
}

// room is one wall 3600 long under a ceiling, with a soffit "s" over all of it
// and a 660 wall cabinet "a" that reaches 20 into it.
func room(ceiling int, edits ...func(*kitchen.Kitchen)) *kitchen.Kitchen {
	k := &kitchen.Kitchen{
		Room:    &survey.Room{Built: 2001, CodeSet: survey.CodeUSIRC, Groups: []survey.Group{{}}},
		System:  demo(),
		Plan:    &cabinet.Plan{Cabinets: []cabinet.Placed{wallCabinet("a", 0, 0, 600, 660)}},
		Choices: map[string]kitchen.Choice{},
	}
	addWall(k, 3600, ceiling)
	k.Room.Walls[0].Overheads = []survey.Overhead{soffit("s", 0, 0, 3600, 2100)}
	for _, edit := range edits {
		edit(k)
	}
	return settled(k)
}

func addWall(k *kitchen.Kitchen, long, ceiling int) {
	i := len(k.Room.Walls)
	k.Room.Groups[0].Walls = append(k.Room.Groups[0].Walls, i)
	k.Room.Walls = append(k.Room.Walls, survey.Wall{
		Index: i, Length: mm(long), Prev: -1, Next: -1,
		Floor: level.Level(at(0)), FoundFloor: level.Level(at(0)), RoomFloor: level.Level(at(0)),
		Ceiling: level.Level(at(ceiling)),
	})
}

// settled gives every member its pointer and finds the datum.
func settled(k *kitchen.Kitchen) *kitchen.Kitchen {
	for w := range k.Room.Walls {
		wall := &k.Room.Walls[w]
		wall.Pointer = "/survey/walls/" + count(w)
		for o := range wall.Overheads {
			p := &wall.Overheads[o]
			p.Index, p.Pointer = o, wall.Pointer+"/overheads/"+count(o)
			p.Inside.Pointer = p.Pointer + "/inside"
			for s := range p.Inside.Services {
				p.Inside.Services[s].Pointer = p.Inside.Pointer + "/services/" + count(s)
			}
		}
	}
	for i := range k.Plan.Cabinets {
		k.Plan.Cabinets[i].Index, k.Plan.Cabinets[i].Pointer = i, "/plan/cabinets/"+count(i)
	}
	for i := range k.Plan.Old {
		k.Plan.Old[i].Pointer = "/plan/old_cabinets/" + count(i)
	}
	k.Datums = kitchen.Datums(k.Room, k.Plan, nil)
	return k
}

func decided(k *kitchen.Kitchen) Decisions {
	found := fit.Check(k)
	return Decide(k, found, fit.Rows(k), fit.LowerRow(k, found))
}

// first is the room's first overhead.
func first(k *kitchen.Kitchen) *survey.Overhead { return &k.Room.Walls[0].Overheads[0] }

// on edits the room's first overhead.
func on(edit func(*survey.Overhead)) func(*kitchen.Kitchen) {
	return func(k *kitchen.Kitchen) { edit(first(k)) }
}

// empty says that somebody opened it and found nothing.
var empty = on(func(o *survey.Overhead) { o.Inside.Looked = survey.Opened })

// wantsHeight says that going to the ceiling is worth more to the client than
// taking an empty soffit down costs; wants says how much exactly.
var wantsHeight = wants(1000)

func wants(units int) func(*kitchen.Kitchen) {
	return func(k *kitchen.Kitchen) {
		k.Prices.Worth.ToCeiling = kitchen.Worthy{Amount: money.Amount(units) * money.Unit, Pointer: "/money/to_ceiling_worth"}
	}
}

func built(year int) func(*kitchen.Kitchen) {
	return func(k *kitchen.Kitchen) { k.Room.Built = year }
}

func code(c survey.CodeSet) func(*kitchen.Kitchen) {
	return func(k *kitchen.Kitchen) { k.Room.CodeSet = c }
}

// holding puts a service into the first overhead, 200 long from 100, with its
// underside at a height.
func holding(kind survey.ServiceKind, underside int, movable survey.Movable) func(*kitchen.Kitchen) {
	return on(func(o *survey.Overhead) {
		o.Inside.Looked = survey.Opened
		o.Inside.Services = append(o.Inside.Services, survey.Service{
			Kind: kind, From: mm(100), To: mm(300), Underside: at(underside), Movable: movable, Live: true,
		})
	})
}

// over shrinks the first overhead to a span.
func over(from, to int) func(*kitchen.Kitchen) {
	return on(func(o *survey.Overhead) { o.From, o.To = mm(from), mm(to) })
}

func under(height int) func(*kitchen.Kitchen) {
	return on(func(o *survey.Overhead) { o.Underside = level.Level(at(height)) })
}

// named reports whether a code is in the catalogue and its text finds all the
// values that it names.
func named(code string, params []finding.Param) (missing string) {
	rule, ok := rules.Of(code)
	if !ok {
		return code + " is not in the catalogue"
	}
	for _, name := range placeholders(rule.Says) {
		name := strings.TrimSuffix(name, "_says") // an option in words
		if !anyOf(params, func(p finding.Param) bool { return p.Name == name }) {
			return code + " names {" + name + "}"
		}
	}
	return ""
}

func placeholders(text string) []string {
	var out []string
	for i := 0; i < len(text); i++ {
		if text[i] != '{' {
			continue
		}
		end := i + 1
		for end < len(text) && text[end] != '}' {
			end++
		}
		out = append(out, text[i+1:end])
	}
	return out
}
