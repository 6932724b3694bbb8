package kitchen

import (
	"testing"

	"railhead/internal/cabinet"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

func mm(n int) length.Length { return length.Length(n) * length.Millimetre }

func path(t *testing.T, pairs ...int) level.Profile {
	t.Helper()
	var points []level.Point
	for i := 0; i < len(pairs); i += 2 {
		points = append(points, level.Point{At: mm(pairs[i]), Height: level.Read(level.ReadingID(i/2), mm(pairs[i+1]))})
	}
	p, fault := level.NewProfile(points)
	if fault != nil {
		t.Fatal(fault)
	}
	return p
}

// twoRuns is a room of two walls that do not join: one falls from 10 to 0, the other rises to 40.
func twoRuns(t *testing.T) *survey.Room {
	return &survey.Room{
		Walls: []survey.Wall{
			{Index: 0, Length: mm(3000), Prev: -1, Next: -1, Group: 0, Floor: path(t, 0, 10, 3000, 0)},
			{Index: 1, Length: mm(2000), Prev: -1, Next: -1, Group: 1, Floor: path(t, 0, 20, 2000, 40)},
		},
		Groups: []survey.Group{{Walls: []int{0}}, {Walls: []int{1}}},
	}
}

func placed(kind cabinet.Kind, wall, from, to int) cabinet.Placed {
	return cabinet.Placed{Kind: kind, Wall: wall, From: mm(from), To: mm(to), Depth: mm(600)}
}

func TestWhichRuleGivesTheDatum(t *testing.T) {
	base, wall := placed(cabinet.Base, 0, 1500, 2100), placed(cabinet.Wall, 0, 600, 1200)
	for _, c := range []struct {
		name     string
		cabinets []cabinet.Placed
		given    Given
		by       survey.Rule
		at       int
		level    string
	}{
		{"set by the planner", []cabinet.Placed{base}, Given{0: {Wall: 0, At: mm(70), Level: level.Fixed(mm(3).Exact()), By: survey.ByGiven}},
			survey.ByGiven, 70, "3"},
		{"under the base cabinet only", []cabinet.Placed{wall, base}, nil, survey.ByFloorStanding, 1500, "5"},
		{"under a tall cabinet", []cabinet.Placed{wall, placed(cabinet.Tall, 0, 2400, 3000)}, nil, survey.ByFloorStanding, 2400, "2"},
		{"wall cabinets alone: along their wall", []cabinet.Placed{wall}, nil, survey.ByPlannedWalls, 0, "10"},
		{"nothing planned here: along all walls of the group", []cabinet.Placed{placed(cabinet.Base, 1, 0, 600)}, nil, survey.ByAllWalls, 0, "10"},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := Datums(twoRuns(t), &cabinet.Plan{Cabinets: c.cabinets}, c.given)[0]
			value, _ := got.Level.Value.Whole()
			if got.By != c.by || got.At != mm(c.at) || value.MM() != c.level || got.Wall != 0 {
				t.Errorf("datum %s at %s by %s, want %s at %d by %s", value, got.At, got.By, c.level, c.at, c.by)
			}
		})
	}
}

func TestTwoRunsHaveTheirOwnDatums(t *testing.T) {
	k := &Kitchen{Room: twoRuns(t), Plan: &cabinet.Plan{Cabinets: []cabinet.Placed{
		placed(cabinet.Base, 0, 0, 600), placed(cabinet.Base, 1, 0, 600),
	}}}
	k.Datums = Datums(k.Room, k.Plan, nil)
	ceiling := mm(2500).Exact()
	if h := k.Above(0, ceiling); h.CmpLength(mm(2490)) != 0 {
		t.Errorf("one ceiling is %s above the first run's datum, want 2490", h)
	}
	if h := k.Above(1, ceiling); h.CmpLength(mm(2474)) != 0 {
		t.Errorf("and %s above the second's, want 2474: 2500 less the 26 at the cabinet's far end", h)
	}
	if fall := k.Datums[1].Fall; fall.CmpLength(mm(20)) != 0 {
		t.Errorf("fall of the second run %s, want 20", fall)
	}
}

func TestAnLCabinetStandsOnBothWalls(t *testing.T) {
	room := twoRuns(t)
	room.Walls[0].Next, room.Walls[1].Prev, room.Walls[1].Group = 1, 0, 0
	room.Groups = []survey.Group{{Walls: []int{0, 1}}}
	corner := placed(cabinet.Base, 0, 2100, 3000)
	corner.Corner = &cabinet.Corner{OtherWall: 1, OtherWidth: mm(900), AtRight: true}
	d := Datums(room, &cabinet.Plan{Cabinets: []cabinet.Placed{corner}}, nil)[0]
	if value, _ := d.Level.Value.Whole(); d.Wall != 1 || d.At != mm(900) || value != mm(29) {
		t.Errorf("datum on wall %d at %s: %s; want the far end of its other leg, wall 1 at 900: 29", d.Wall, d.At, value)
	}
}

func TestHeightsAboveTheDatumKeepTheirReadings(t *testing.T) {
	k := &Kitchen{Room: twoRuns(t), Plan: &cabinet.Plan{Cabinets: []cabinet.Placed{placed(cabinet.Base, 0, 0, 600)}}}
	k.Datums = Datums(k.Room, k.Plan, nil)
	over := k.Room.Walls[0].Floor.HeightAt(0, level.Right).Add(level.Read(5, mm(2400)))
	h := k.HeightAbove(0, over)
	if d := level.DoubtOf(h.Terms, make([]level.Reading, 6)); h.Value.CmpLength(mm(2400)) != 0 || d.Largest != -1 {
		t.Errorf("a height taped where the datum lies is %s, doubt %+v", h.Value, d)
	}
}

func TestGroupsOfOverheads(t *testing.T) {
	room := twoRuns(t)
	room.Walls[0].Overheads = []survey.Overhead{{ID: "a", Group: "s"}, {ID: "b", Group: "b"}}
	room.Walls[1].Overheads = []survey.Overhead{{ID: "c", Group: "s"}, {ID: "g", Group: "g", Kind: survey.ClosedGap, Carrier: survey.CarriedByOldCabinets}}
	k := &Kitchen{Room: room}
	groups := k.Groups()
	if len(groups) != 3 || groups[0].ID != "s" || len(groups[0].Parts) != 2 || groups[1].ID != "b" || groups[2].ID != "g" {
		t.Errorf("groups %+v: want s with its parts on both walls, then b, then g", groups)
	}
	sky := k.Found()
	if len(sky.Hung) != 3 || len(sky.Gone) != 1 || sky.Gone[0].Overhead.ID != "g" {
		t.Errorf("as found %d hang and %d are gone; the gap on the old cabinets goes with them", len(sky.Hung), len(sky.Gone))
	}
}

func TestACutRaisesWhatHungLower(t *testing.T) {
	o := &survey.Overhead{Underside: path(t, 0, 2100, 1000, 2140)}
	cut := mm(2120).Exact()
	for _, c := range []struct {
		name           string
		h              Hung
		from, to, want int
	}{
		{"as found", Hung{Overhead: o}, 0, 1000, 2100},
		{"cut where it hung lower", Hung{Overhead: o, Cut: &cut}, 0, 1000, 2120},
		{"untouched where it was higher", Hung{Overhead: o, Cut: &cut}, 750, 1000, 2130},
	} {
		if got, _ := c.h.Lowest(mm(c.from), mm(c.to)); got.CmpLength(mm(c.want)) != 0 {
			t.Errorf("%s: %s, want %d", c.name, got, c.want)
		}
	}
}
