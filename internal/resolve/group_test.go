package resolve

import (
	"fmt"
	"testing"

	"railhead/internal/length"
)

const fourWalls = `{"units": "mm", "survey": {"tolerance": 1, "walls": [
  {"id": "a", "length": 3000, "floor": [{"at": 0, "down": 1200}], "ceiling": [{"at": 0, "up": 1300}]},
  {"id": "b", "length": 2000, "floor": [{"at": 0, "down": 1210}], "ceiling": [{"at": 0, "up": 1300}]},
  {"id": "c", "length": 3000, "floor": [{"at": 0, "down": 1190}], "ceiling": [{"at": 0, "up": 1300}]},
  {"id": "d", "length": 2000, "floor": [{"at": 0, "down": 1205}], "ceiling": [{"at": 0, "up": 1300}]}]}, "system": "demo-rail"}`

func joins(i int) change { return change{fmt.Sprintf("/survey/walls/%d/joins_next", i), "true"} }
func with(i int, id string) change {
	return change{fmt.Sprintf("/survey/walls/%d/level_with", i), `"` + id + `"`}
}

func TestLevelGroups(t *testing.T) {
	for _, c := range []struct {
		name    string
		changes []change
		groups  string
		corners string
	}{
		{"four runs that do not join", nil, "[[0] [1] [2] [3]]", "[-1 -1] [-1 -1] [-1 -1] [-1 -1]"},
		{"an L and two runs", []change{joins(0)}, "[[0 1] [2] [3]]", "[-1 1] [0 -1] [-1 -1] [-1 -1]"},
		{"a U", []change{joins(0), joins(1)}, "[[0 1 2] [3]]", "[-1 1] [0 2] [1 -1] [-1 -1]"},
		{"a closed room", []change{joins(0), joins(1), joins(2), joins(3)}, "[[0 1 2 3]]", "[3 1] [0 2] [1 3] [2 0]"},
		{"a U that starts with its second wall", []change{joins(3), joins(0)}, "[[0 1 3] [2]]", "[3 1] [0 -1] [-1 -1] [-1 0]"},
		{"two runs levelled together", []change{with(3, "a")}, "[[0 3] [1] [2]]", "[-1 -1] [-1 -1] [-1 -1] [-1 -1]"},
		{"tied to a wall of an L", []change{joins(0), with(3, "b")}, "[[0 1 3] [2]]", "[-1 1] [0 -1] [-1 -1] [-1 -1]"},
		{"a chain of ties", []change{with(0, "b"), with(1, "c")}, "[[0 1 2] [3]]", "[-1 -1] [-1 -1] [-1 -1] [-1 -1]"},
		{"ties in a ring", []change{with(0, "b"), with(1, "a")}, "[[0 1] [2] [3]]", "[-1 -1] [-1 -1] [-1 -1] [-1 -1]"},
	} {
		t.Run(c.name, func(t *testing.T) {
			room := resolved(t, changed(t, fourWalls, c.changes...)).Kitchen.Room
			groups, corners := [][]int{}, ""
			for _, g := range room.Groups {
				groups = append(groups, g.Walls)
			}
			for i, w := range room.Walls {
				if i > 0 {
					corners += " "
				}
				corners += fmt.Sprint([]int{w.Prev, w.Next})
				if g := room.Groups[w.Group].Walls; !contains(g, i) {
					t.Errorf("wall %d is not in its group %v", i, g)
				}
			}
			if got := fmt.Sprint(groups); got != c.groups || corners != c.corners {
				t.Errorf("groups %s, corners %s; want %s, %s", got, corners, c.groups, c.corners)
			}
		})
	}
}

func contains(list []int, n int) bool {
	for _, m := range list {
		if m == n {
			return true
		}
	}
	return false
}

func TestThreeWallsDoNotCloseARoom(t *testing.T) {
	three := changed(t, fourWalls, change{"/survey/walls", `[
	  {"id": "a", "length": 3000, "floor": [{"at": 0, "down": 1200}], "ceiling": [{"at": 0, "up": 1300}], "joins_next": true},
	  {"id": "b", "length": 2000, "floor": [{"at": 0, "down": 1200}], "ceiling": [{"at": 0, "up": 1300}], "joins_next": true},
	  {"id": "c", "length": 3000, "floor": [{"at": 0, "down": 1200}], "ceiling": [{"at": 0, "up": 1300}], "joins_next": true}]`})
	sameLines(t, "refused", refused(t, three), []string{"survey.wall.joins_nothing /survey/walls/2/joins_next"})
}

func TestDatumsOfTheRequest(t *testing.T) {
	const base = `{"id": "k", "kind": "base", "wall": "b", "from": 200, "width": 600, "height": 740}`
	const corner = `{"id": "k", "kind": "base", "wall": "b", "from": 0, "width": 600, "height": 740}`
	for _, c := range []struct {
		name    string
		changes []change
		want    string
	}{
		{"one a run", nil, "0:-1200:all_walls 1:-1210:all_walls 2:-1190:all_walls 3:-1205:all_walls"},
		{"one for the walls that join, under what stands there", []change{joins(0), joins(1), joins(2), {"/plan/cabinets", "[" + base + "]"}}, "1:-1210:floor_standing"},
		{"in the corner its flank meets the higher floor along the wall before", []change{joins(0), joins(1), joins(2), {"/plan/cabinets", "[" + corner + "]"}}, "0:-1200:floor_standing"},
		{"set by the planner for the whole group", []change{joins(0), joins(1), joins(2), {"/plan/datums", `[{"wall": "c", "at": 100, "level": {"down": 1199}}]`}}, "2:-1199:given"},
		{"set from the floor right there", []change{joins(0), joins(1), joins(2), {"/plan/datums", `[{"wall": "d", "at": 100, "level": 2}]`}}, "3:-1203:given"},
		{"a new floor under the cabinets moves it", []change{joins(0), joins(1), joins(2), {"/plan/cabinets", "[" + base + "]"}, {"/plan/floor_change", "14"}}, "1:-1196:floor_standing"},
		{"a new floor up to the plinth does not", []change{joins(0), joins(1), joins(2), {"/plan/cabinets", "[" + base + "]"}, {"/plan/floor_change", "14"}, {"/plan/floor_under_cabinets", "false"}},
			"1:-1210:floor_standing"},
		{"an old floor out lowers it", []change{joins(0), joins(1), joins(2), {"/plan/floor_change", "-22"}}, "2:-1212:all_walls"},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := ""
			for i, d := range resolved(t, changed(t, fourWalls, c.changes...)).Kitchen.Datums {
				if i > 0 {
					got += " "
				}
				v, _ := d.Level.Value.Whole()
				got += fmt.Sprintf("%d:%s:%s", d.Wall, v.MM(), d.By)
			}
			if got != c.want {
				t.Errorf("datums %s, want %s", got, c.want)
			}
		})
	}
}

func TestChangesBeforeFitting(t *testing.T) {
	w := resolved(t, changed(t, plainRoom, change{"/plan/floor_change", "14"}, change{"/plan/ceiling_change", "-25"},
		change{"/plan/floor_under_cabinets", "false"})).Kitchen.Room.Walls[0]
	for _, c := range []struct {
		name string
		got  length.Exact
		want int
	}{
		{"the floor as found", w.FoundFloor.At(0, 1), -1200},
		{"the floor under the cabinets", w.Floor.At(0, 1), -1200},
		{"the floor in front of them", w.RoomFloor.At(0, 1), -1186},
		{"the ceiling with its new board", w.Ceiling.At(0, 1), 1275},
	} {
		if c.got.CmpLength(length.Length(c.want)*length.Millimetre) != 0 {
			t.Errorf("%s is at %s, want %d", c.name, c.got, c.want)
		}
	}
}
