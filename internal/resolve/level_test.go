package resolve

import (
	"fmt"
	"strings"
	"testing"

	"railhead/internal/length"
	"railhead/internal/level"
)

// The published level books as laser set-ups: what a staff reads is how far a point lies down from the line, and a line is
// as far over the first as backsights less foresights at the change points say. Levels come out as differences to the
// first point; where a book starts is of no account.
func TestLevelBooksAsLaserSetUps(t *testing.T) {
	books := map[string][][]string{}
	for _, row := range published(t, "level-books.txt") {
		books[row[0]] = append(books[row[0]], row)
	}
	for name, book := range books {
		var lasers, floor []string
		above, setUp := length.Length(0), ""
		for i, row := range book {
			if row[1] != setUp {
				if setUp != "" {
					above += metres(t, row[2]) - metres(t, book[i-1][2])
				}
				setUp = row[1]
				lasers = append(lasers, fmt.Sprintf(`{"id": "L%s", "above": "%s mm"}`, setUp, above.MM()))
			}
			floor = append(floor, fmt.Sprintf(`{"at": %d, "down": "%s m", "laser": "L%s"}`, i, row[2], row[1]))
		}
		c := resolved(t, changed(t, plainRoom, change{"/survey/lasers", "[" + strings.Join(lasers, ",") + "]"},
			change{wallA + "/ceiling/0/up", `"9 m"`}, change{wallA + "/floor", "[" + strings.Join(floor, ",") + "]"}))
		points := c.Kitchen.Room.Walls[0].FoundFloor.Points()
		for i, row := range book {
			got := points[i].Height.Value.Sub(points[0].Height.Value)
			if want := metres(t, row[3]) - metres(t, book[0][3]); got.CmpLength(want) != 0 {
				t.Errorf("book %s, reading %d: %s over the first point, want %s", name, i+1, got, want)
			}
		}
	}
}

// mark reads one level on a wall whose floor falls from 0 at its left end to −30 at 3000, and is its height above the
// survey's zero.
func markLevel(t *testing.T, level string) string {
	t.Helper()
	c := resolved(t, changed(t, `{"units": "mm", "survey": {"laser_height": 1200, "tolerance": 1, "lasers": [{"id": "A"}, {"id": "B", "above": 30}],
	  "walls": [{"id": "a", "length": 3000, "floor": [{"at": 0, "height": 0}, {"at": 3000, "down": 1230}], "ceiling": [{"at": 0, "height": 2500}],
	  "points": [{"id": "p", "kind": "socket", "at": 1000, "level": 0}]}]}, "system": "demo-rail"}`, change{wallA + "/points/0/level", level}))
	h, whole := c.Kitchen.Room.Walls[0].Fixtures[0].Level.Value.Whole()
	if !whole {
		t.Fatal("not a whole number of nanometres")
	}
	return h.MM()
}

func TestEveryWayToReadALevel(t *testing.T) {
	for _, c := range []struct{ name, level, want string }{
		{"a bare length is above the floor right there", `300`, "290"},
		{"taped from the floor right there", `{"above_floor": 300}`, "290"},
		{"above the survey's zero", `{"height": 290}`, "290"},
		{"down from the first line", `{"down": 910}`, "290"},
		{"up from the first line", `{"up": 10}`, "1210"},
		{"up from the second line", `{"up": 10, "laser": "B"}`, "1240"},
		{"a length with its own unit", `{"down": "91 cm"}`, "290"},
		{"a negative reading goes the other way", `{"up": -910}`, "290"},
	} {
		if got := markLevel(t, c.level); got != c.want {
			t.Errorf("%s: %s, want %s", c.name, got, c.want)
		}
	}
}

// reads are the members that a height rests on, with their weights.
func reads(c *Case, h level.Height) string {
	var out []string
	for _, term := range h.Terms {
		out = append(out, term.Weight.RatString()+" "+c.Kitchen.Room.Readings[term.Reading].Pointer)
	}
	return strings.Join(out, ", ")
}

func TestWhatAHeightRestsOn(t *testing.T) {
	c := resolved(t, `{"units": "mm", "survey": {"laser_height": 1200, "tolerance": 1, "lasers": [{"id": "A"}, {"id": "B", "above": 30, "tolerance": 3}],
	  "walls": [{"id": "a", "length": 3000, "laser": "B", "floor": [{"at": 0, "height": 0}, {"at": 2000, "down": 1230, "tolerance": 2}],
	    "ceiling": [{"at": 0, "up": 1300}, {"at": 500, "up": 1300, "laser": "A"}, {"at": 1000, "above_floor": 2500}]}]}, "system": "demo-rail"}`)
	ceiling := c.Kitchen.Room.Walls[0].Ceiling.Points()
	for _, want := range []struct {
		name, reads string
		point       int
	}{
		{"from the second line: the line's height, the tie and the reading", "1 /survey/laser_height, 1 /survey/lasers/1/above, 1 /survey/walls/0/ceiling/0/up", 0},
		{"from the first line: no tie", "1 /survey/laser_height, 1 /survey/walls/0/ceiling/1/up", 1},
		{"taped between two floor points: half of each, and the tape", "1/2 /survey/walls/0/floor/0/height, 1/2 /survey/laser_height, " +
			"1/2 /survey/lasers/1/above, 1/2 /survey/walls/0/floor/1/down, 1 /survey/walls/0/ceiling/2/above_floor", 2},
	} {
		if got := reads(c, ceiling[want.point].Height); got != want.reads {
			t.Errorf("%s: %s, want %s", want.name, got, want.reads)
		}
	}
	for _, r := range c.Kitchen.Room.Readings {
		want := map[string]string{"/survey/lasers/1/above": "3", "/survey/walls/0/floor/1/down": "2"}[r.Pointer]
		if want == "" {
			want = "1"
		}
		if r.HalfWidth.MM() != want {
			t.Errorf("%s within %s, want %s", r.Pointer, r.HalfWidth, want)
		}
	}
}

func TestTheLinesHeightIsReadOnlyWhereItMatters(t *testing.T) {
	c := resolved(t, changed(t, plainRoom, change{"/survey/laser_height", "1234"}))
	if got := reads(c, c.Kitchen.Room.Walls[0].Ceiling.Points()[0].Height); got != "1 /survey/walls/0/ceiling/0/up" {
		t.Errorf("without a height the line's own height weighs nothing: %s", got)
	}
}

func TestALevelTapedAtAFloorStep(t *testing.T) {
	c := resolved(t, changed(t, plainRoom, change{wallA + "/floor", `[{"at": 1000, "down": 1200}, {"at": 1000, "down": 1050}]`},
		change{wallA + "/ceiling", `[{"at": 1000, "above_floor": 2400}, {"at": 1000, "above_floor": 2250}, {"at": 2000, "above_floor": 2250}]`},
		change{wallA + "/points", `[{"id": "p", "kind": "valve", "at": 1000, "level": 100}]`}))
	w := c.Kitchen.Room.Walls[0]
	for i, want := range []length.Length{1200, 1200, 1200} {
		if got := w.Ceiling.Points()[i].Height.Value; got.CmpLength(want*length.Millimetre) != 0 {
			t.Errorf("point %d of a ceiling that is level over the step: %s, want %d", i, got, want)
		}
	}
	if got := w.Fixtures[0].Level.Value; got.CmpLength(-1100*length.Millimetre) != 0 {
		t.Errorf("one level taped right on the step: %s, want −1100 from the lower side", got)
	}
}

func TestLaserLinesOfWalls(t *testing.T) {
	for _, c := range []struct {
		name, body string
		changes    []change
		want       []string
	}{
		{"one unnamed line", plainRoom, nil, []string{"0"}},
		{"two set-ups", denseRoom, nil, []string{"0", "100"}},
		{"no line, no laser", plainRoom, []change{{wallA + "/floor/0", `{"at": 0, "height": 0}`}, {wallA + "/ceiling/0", `{"at": 0, "height": 2500}`}}, []string{""}},
		{"a line over the survey's zero", plainRoom, []change{{"/survey/laser_height", "1203"}, {wallA + "/ceiling/0", `{"at": 0, "height": 2500}`}}, []string{"1203"}},
	} {
		got := resolved(t, changed(t, c.body, c.changes...))
		for i, want := range c.want {
			line := got.Kitchen.Room.Walls[i].Line
			if (line == nil) != (want == "") {
				t.Errorf("%s, wall %d: line %v", c.name, i, line)
			} else if line != nil {
				if v, _ := line.Value.Whole(); v.MM() != want {
					t.Errorf("%s, wall %d: line at %s, want %s", c.name, i, v.MM(), want)
				}
			}
		}
	}
}
