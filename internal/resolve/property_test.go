package resolve

import (
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/length"
	"railhead/internal/level"
)

// shell draws a wall whose floor and ceiling are read at random stations; the readings are heights over a line.
type shell struct {
	length         int
	at             []int
	floor, ceiling []int
}

func drawnShell(t *rapid.T) shell {
	s := shell{length: rapid.IntRange(1000, 6000).Draw(t, "length")}
	x := 0
	for x <= s.length {
		s.at = append(s.at, x)
		s.floor = append(s.floor, rapid.IntRange(-1230, -1170).Draw(t, "floor"))
		s.ceiling = append(s.ceiling, rapid.IntRange(1200, 1300).Draw(t, "ceiling"))
		x += rapid.IntRange(200, 2500).Draw(t, "run")
	}
	return s
}

// body is the room read from a line that is moved up by a length; numbers are written by the given unit.
func (s shell) body(moved int, units string) string {
	number := func(millimetres int) string {
		l := length.Length(millimetres) * length.Millimetre
		switch units {
		case "in":
			return fmt.Sprintf("%q", l.MM()+" mm") // few millimetres are whole decimals of an inch
		case "cm":
			text, _ := l.Decimal(length.CM)
			return text
		}
		return l.MM()
	}
	points := func(levels []int) string {
		var out []string
		for i, v := range levels {
			out = append(out, fmt.Sprintf(`{"at": %s, "up": %s}`, number(s.at[i]), number(v-moved)))
		}
		return "[" + strings.Join(out, ",") + "]"
	}
	return fmt.Sprintf(`{"units": %q, "survey": {"tolerance": %s, "walls": [{"id": "a", "length": %s, "floor": %s, "ceiling": %s}]}, "system": "demo-rail",
	  "plan": {"cabinets": [{"id": "c", "kind": "tall", "wall": "a", "from": %s, "width": %s, "height": %s}]}}`,
		units, number(2), number(s.length), points(s.floor), points(s.ceiling), number(100), number(600), number(2000))
}

// heights are the ceiling and the floor above the datum all along the wall, with their doubt.
func heights(t *rapid.T, body string) (out []string) {
	c, faults := Request(decode(t, body))
	if len(faults) > 0 {
		t.Fatalf("refused: %v", faults)
	}
	w := &c.Kitchen.Room.Walls[0]
	for x := length.Length(0); x <= w.Length; x += w.Length / 7 {
		for _, p := range []level.Profile{w.Ceiling, w.Floor} {
			h := c.Kitchen.HeightAbove(0, p.HeightAt(x, level.Right))
			out = append(out, fmt.Sprint(h.Value, level.DoubtOf(h.Terms, c.Kitchen.Room.Readings).Expanded))
		}
	}
	return out
}

func TestMovingTheLaserLineChangesNoHeight(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawnShell(t)
		moved := rapid.IntRange(-1000, 1000).Draw(t, "moved")
		if was, is := heights(t, s.body(0, "mm")), heights(t, s.body(moved, "mm")); fmt.Sprint(was) != fmt.Sprint(is) {
			t.Fatalf("line moved by %d:\n%v\n%v", moved, was, is)
		}
	})
}

func TestUnitsChangeNoExactValue(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawnShell(t)
		was := heights(t, s.body(0, "mm"))
		for _, units := range []string{"cm", "in"} {
			if is := heights(t, s.body(0, units)); fmt.Sprint(was) != fmt.Sprint(is) {
				t.Fatalf("in %s:\n%v\nin mm:\n%v", units, is, was)
			}
		}
	})
}

// What was taped from the floor and what was read from the line are one room.
func TestTapedFromTheFloorOrReadFromTheLine(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawnShell(t)
		body := s.body(0, "mm")
		for i := range s.at {
			was := fmt.Sprintf(`{"at": %d, "up": %d}`, s.at[i], s.ceiling[i])
			body = strings.Replace(body, was, fmt.Sprintf(`{"at": %d, "above_floor": %d}`, s.at[i], s.ceiling[i]-s.floor[i]), 1)
		}
		taped, _ := Request(decode(t, body))
		read, _ := Request(decode(t, s.body(0, "mm")))
		for x := length.Length(0); x <= read.Kitchen.Room.Walls[0].Length; x += 97 * length.Millimetre {
			a, b := taped.Kitchen.Room.Walls[0].Ceiling.At(x, level.Left), read.Kitchen.Room.Walls[0].Ceiling.At(x, level.Left)
			if !a.Equal(b) {
				t.Fatalf("at %s taped %s, read %s", x, a, b)
			}
		}
	})
}
