package hazard

import (
	"testing"

	"railhead/internal/length"
	"railhead/internal/survey"
)

// 29 CFR 1926.1101(b) (F): surfacing material in buildings of 1980 or older is
// presumed to contain asbestos; plain wallboard is not on the list. Directive
// 1999/77/EC (F, summary read): the last uses ended on 1 January 2005.
func TestAsbestosYears(t *testing.T) {
	textured := survey.Overhead{Finish: "gypsum_board", Textured: survey.Yes}
	plaster := survey.Overhead{Finish: "plaster", Textured: survey.No}
	plain := survey.Overhead{Finish: "gypsum_board", Textured: survey.No}
	cases := []struct {
		name string
		code survey.CodeSet
		year int
		o    survey.Overhead
		want Suspicion
	}{
		{"1980, textured", survey.CodeUSIRC, 1980, textured, Presumed},
		{"1981, textured", survey.CodeUSIRC, 1981, textured, Unsuspected},
		{"1980, plaster", survey.CodeUSIRC, 1980, plaster, Presumed},
		{"1981, plaster", survey.CodeUSIRC, 1981, plaster, Unsuspected},
		{"1980, plain wallboard", survey.CodeUSIRC, 1980, plain, Possible},
		{"1981, plain wallboard", survey.CodeUSIRC, 1981, plain, Unsuspected},
		{"year unknown, textured", survey.CodeUSIRC, 0, textured, Presumed},
		{"year unknown, plain wallboard", survey.CodeUSIRC, 0, plain, Possible},
		{"1980, textured, code set unsaid", survey.CodeUnspecified, 1980, textured, Presumed},
		{"1981, textured, code set unsaid", survey.CodeUnspecified, 1981, textured, Unsuspected},
		{"2004, no code set known here", survey.CodeNone, 2004, textured, Possible},
		{"2005, no code set known here", survey.CodeNone, 2005, textured, Unsuspected},
		{"year unknown, no code set known here", survey.CodeNone, 0, plain, Possible},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			room := &survey.Room{CodeSet: c.code, Built: c.year}
			if got := Asbestos(room, &c.o); got != c.want {
				t.Errorf("got %v, want %v", got, c.want)
			}
			room.Cleared.Asbestos = true
			if got := Asbestos(room, &c.o); got != Unsuspected {
				t.Errorf("tested, but %v", got)
			}
		})
	}
}

// 40 CFR 745.83 with 745.103 (F): target housing was built before 1978.
func TestLeadYears(t *testing.T) {
	cases := []struct {
		name    string
		code    survey.CodeSet
		year    int
		painted survey.Tri
		want    Suspicion
	}{
		{"1977, painted", survey.CodeUSIRC, 1977, survey.Yes, Presumed},
		{"1978, painted", survey.CodeUSIRC, 1978, survey.Yes, Unsuspected},
		{"1977, perhaps painted", survey.CodeUSIRC, 1977, survey.Unknown, Presumed},
		{"1977, not painted", survey.CodeUSIRC, 1977, survey.No, Unsuspected},
		{"1977, code set unsaid", survey.CodeUnspecified, 1977, survey.Yes, Presumed},
		{"year unknown", survey.CodeUSIRC, 0, survey.Yes, Possible},
		{"1977, no code set known here", survey.CodeNone, 1977, survey.Yes, Possible},
		{"1978, no code set known here", survey.CodeNone, 1978, survey.Yes, Unsuspected},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			room, o := &survey.Room{CodeSet: c.code, Built: c.year}, &survey.Overhead{Painted: c.painted}
			if got := Lead(room, o); got != c.want {
				t.Errorf("got %v, want %v", got, c.want)
			}
			room.Cleared.Lead = true
			if got := Lead(room, o); got != Unsuspected {
				t.Errorf("tested, but %v", got)
			}
		})
	}
}

// 40 CFR 745.83 (F): up to 6 ft² of paint in a room is minor repair; 6 ft² are
// 864 in² (C). The faces are those of the published checks: 24 × 36 in is 6 ft²
// and not over, 24 × 37 in and a full 12 × 120 in face are over.
func TestSixSquareFeet(t *testing.T) {
	in := func(a, b int) Area { return AreaOf(length.Length(a)*length.Inch, length.Length(b)*length.Inch) }
	cases := []struct {
		name string
		area Area
		over bool
		feet string
	}{
		{"nothing", Area{}, false, "0.0"},
		{"a strip of 1 × 36 in is a quarter of a square foot", in(1, 36), false, "0.3"},
		{"24 × 36 in", in(24, 36), false, "6.0"},
		{"a square nanometre more", in(24, 36).Add(AreaOf(1, 1)), true, "6.1"},
		{"24 × 37 in", in(24, 37), true, "6.2"},
		{"12 × 120 in", in(12, 120), true, "10.0"},
		{"two of 3 ft²", in(12, 36).Add(in(36, 12)), false, "6.0"},
		{"100 m × 100 m, as far as lengths go (C: 107 639.104 ft²)", AreaOf(length.Max, length.Max), true, "107639.2"},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			if got := c.area.BeyondMinorRepair(); got != c.over {
				t.Errorf("beyond minor repair: %v, want %v", got, c.over)
			}
			if got := c.area.SquareFeet(); got != c.feet {
				t.Errorf("%s ft², want %s ft²", got, c.feet)
			}
		})
	}
}

// What somebody has looked into.
func TestSeenAll(t *testing.T) {
	span := func(from, to length.Length) survey.Span { return survey.Span{From: from, To: to} }
	cases := []struct {
		name   string
		looked survey.Looked
		seen   []survey.Span
		want   bool
	}{
		{"nobody looked", survey.NotLooked, nil, false},
		{"nobody looked, whatever is said to be seen", survey.NotLooked, []survey.Span{span(10, 50)}, false},
		{"opened", survey.Opened, nil, true},
		{"opened over a part", survey.Opened, []survey.Span{span(10, 30)}, false},
		{"a probe hole", survey.ProbeHole, nil, false},
		{"a probe hole with sight from end to end", survey.ProbeHole, []survey.Span{span(10, 50)}, true},
		{"two stretches that meet, in any order", survey.ProbeHole, []survey.Span{span(30, 50), span(10, 30)}, true},
		{"a blind stretch between", survey.ProbeHole, []survey.Span{span(10, 29), span(30, 50)}, false},
		{"the last of it unseen", survey.Opened, []survey.Span{span(10, 49)}, false},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			o := &survey.Overhead{From: 10, To: 50, Inside: survey.Inside{Looked: c.looked, Seen: c.seen}}
			if got := SeenAll(o); got != c.want {
				t.Errorf("got %v", got)
			}
		})
	}
}
