package length

import (
	"testing"

	"pgregory.net/rapid"
)

// Millimetres on an inch tape, to the nearest mark (C: computed from 25.4 mm to the inch).
func TestPublishedMarksOnAnInchTape(t *testing.T) {
	for _, c := range []struct {
		mm    string
		parts Length
		want  string
	}{
		{"600 mm", 16, "23 5/8 in"}, {"720 mm", 16, "28 3/8 in"}, {"18 mm", 16, "11/16 in"}, {"19 mm", 16, "3/4 in"},
		{"100 mm", 16, "3 15/16 in"}, {"2440 mm", 16, "96 1/16 in"}, {"12.7 mm", 16, "1/2 in"}, {"304.8 mm", 16, "12 in"},
		{"720 mm", 32, "28 11/32 in"}, {"18 mm", 32, "23/32 in"},
		{"609.6 mm", 16, "24 in"}, {"762 mm", 16, "30 in"}, {"2133.6 mm", 16, "84 in"}, {"2438.4 mm", 16, "96 in"},
		{"1.5875 mm", 16, "1/16 in"}, {"0.396875 mm", 64, "1/64 in"},
	} {
		if got, _ := must(t, c.mm).Tape(IN, Inch/c.parts, Nearest); got != c.want {
			t.Errorf("%s in 1/%d is %s, want %s", c.mm, c.parts, got, c.want)
		}
	}
	for mm, want := range map[string]string{"600 mm": "600.075", "720 mm": "720.725"} { // the marks themselves, in mm (C)
		if _, mark := must(t, mm).Tape(IN, Inch/16, Nearest); mark.MM() != want {
			t.Errorf("the mark for %s is at %s mm, want %s", mm, mark.MM(), want)
		}
	}
}

func TestTapeMarks(t *testing.T) {
	for name, c := range map[string]struct {
		length string
		unit   Unit
		step   Length
		d      Direction
		text   string
		mark   string
	}{
		"on the mark":                       {"31 5/8 in", IN, 0, Down, "31 5/8 in", "803.275"},
		"the step of the unit, inches":      {"31.63 in", IN, 0, Down, "31 5/8 in", "803.275"},
		"the step of the unit, up":          {"31.63 in", IN, 0, Up, "31 11/16 in", "804.8625"},
		"the step of the unit, millimetres": {"803.275 mm", MM, 0, Nearest, "803 mm", "803"},
		"the step of the unit, centimetres": {"803.275 mm", CM, 0, Nearest, "80.3 cm", "803"},
		"half millimetres":                  {"803.275 mm", MM, Millimetre / 2, Nearest, "803.5 mm", "803.5"},
		"nothing":                           {"0 mm", IN, 0, Nearest, "0 in", "0"},
		"next to nothing":                   {"0.1 mm", IN, 0, Down, "0 in", "0"},
		"an overlap goes down":              {"-30 mm", IN, 0, Down, "-1 3/16 in", "-30.1625"},
		"an overlap under an inch":          {"-5/8 in", IN, 0, Nearest, "-5/8 in", "-15.875"},
		"whole inches":                      {"31 5/8 in", IN, Inch, Up, "32 in", "812.8"},
		"three sixteenths at a time":        {"31 5/8 in", IN, 3 * Inch / 16, Down, "31 1/2 in", "800.1"},
		"tenths of an inch":                 {"31 5/8 in", IN, Inch / 10, Down, "31.6 in", "802.64"},
		"an inch tape read in millimetres":  {"31 5/8 in", IN, Millimetre, Down, "803 mm", "803"},
		"a metric tape with inch steps":     {"31 5/8 in", MM, Inch / 16, Down, "803.275 mm", "803.275"},
	} {
		t.Run(name, func(t *testing.T) {
			text, mark := must(t, c.length).Tape(c.unit, c.step, c.d)
			if text != c.text || mark.MM() != c.mark {
				t.Errorf("%q at %s mm, want %q at %s", text, mark.MM(), c.text, c.mark)
			}
		})
	}
}

func TestTapeTextIsTheMark(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := Length(rapid.Int64Range(-int64(Max-Metre), int64(Max-Metre)).Draw(t, "l"))
		u := Unit(rapid.IntRange(0, 2).Draw(t, "unit"))
		step := rapid.OneOf(positive(), rapid.SampledFrom([]Length{
			Inch / 64, Inch / 32, Inch / 16, Inch / 8, Inch, Foot, Inch / 10, Millimetre, Millimetre / 10, Centimetre,
		})).Draw(t, "step")
		d := Direction(rapid.IntRange(0, 2).Draw(t, "direction"))
		text, mark := l.Tape(u, step, d)
		if back, err := Parse(text); err != nil || back != mark {
			t.Fatalf("%q is read as %d (%v), the mark is %d", text, back, err, mark)
		}
		if mark != l.RoundTo(step, d) {
			t.Fatalf("%d by %d, direction %d: marked %d", l, step, d, mark)
		}
		if again, same := mark.Tape(u, step, d); again != text || same != mark {
			t.Fatalf("%q marked again is %q", text, again)
		}
	})
}
