package fill

import (
	"cmp"
	"slices"
	"strings"
	"testing"

	"railhead/internal/length"
	"railhead/internal/money"
)

// sizes are widths at a height in millimetres, worth a unit of money for each 10 mm of width and 100 mm of height.
func sizes(height int, widths ...int) []Size {
	var out []Size
	for _, w := range widths {
		out = append(out, Size{span(w, mm), span(height, mm), money.Amount(w*height/1000) * unit})
	}
	return out
}

// usual is what nobody wants, at prices that make a filler better than a hole and worse than a cabinet.
func usual() Weights {
	return Weights{
		Cabinet: 5 * unit, Filler: 10 * unit, FillerPerGrid: 10 * unit, Panel: 40 * unit, OpenPerGrid: 30 * unit,
		HeightChange: 20 * unit, LineMiss: 2 * unit,
	}
}

// row is a row of 5 cm steps between two walls that cabinets may touch.
func row(long int, of []Size) Run {
	return Run{
		Length: span(long, mm), Grid: 50 * mm, Sizes: of, Weights: usual(),
		LeastFiller: 50 * mm, LeastOpen: 300 * mm,
	}
}

func (r Run) with(change func(*Run)) *Run {
	change(&r)
	return &r
}

// Widths 300, 400, 500, 600, 800, 1000, 1200 and heights 400 to 700: metric data sheet of kitchen sizes
// (firstinarchitecture.co.uk, metric data 09, looked up).
var metric = []int{300, 400, 500, 600, 800, 1000, 1200}

// named is a run with its name, and what is best where that is told.
type named struct {
	name string
	run  *Run
	want string
}

// cases are runs of the trade, with what is best as it follows by hand from the prices. From left to right: f a filler,
// p a panel, o an open stretch, w a new cabinet, s one that stays, each by width; w and s by height, too.
var cases = []named{
	{"the widths fill the wall", row(3000, sizes(700, 600, 1000)).with(func(*Run) {}),
		"w1000x700 w1000x700 w1000x700"},
	{"fewer cabinets where they are worth the same", row(2400, sizes(700, metric...)).with(func(*Run) {}),
		"w1200x700 w1200x700"},
	{"fillers beside both walls, for doors and pulls", row(3100, sizes(700, 600)).with(func(r *Run) {
		r.Ends = [2]End{{Least: 50 * mm}, {Least: 50 * mm}}
	}), "f50 w600x700 w600x700 w600x700 w600x700 w600x700 f50"},
	{"a wall 50 mm short of that", row(3050, sizes(700, 600)).with(func(r *Run) {
		r.Ends = [2]End{{Least: 50 * mm}, {Least: 50 * mm}}
	}), "f50 w600x700 w600x700 w600x700 w600x700 f600"},
	{"what is left goes into one filler", row(1900, sizes(700, 600)).with(func(*Run) {}),
		"w600x700 w600x700 w600x700 f100"},
	{"no filler narrower than it can be cut", row(1850, sizes(700, 400, 600)).with(func(r *Run) {
		r.LeastFiller = 100 * mm
	}), "w600x700 w600x700 w400x700 f250"},
	{"a free end shows a side", row(1250, sizes(700, 600)).with(func(r *Run) {
		r.Panel, r.Ends[1].Open = 50*mm, true
	}), "w600x700 w600x700 p50"},
	{"and a wall goes on there", row(700, sizes(700, 600)).with(func(r *Run) {
		r.Panel, r.Ends[1].Open, r.LeastFiller = 50*mm, true, 200*mm
	}), "w600x700 p50 o50"},
	{"lower cabinets under a lowered part", row(3600, append(sizes(700, 600), sizes(500, 600)...)).with(func(r *Run) {
		r.Limits = []Limit{{From: 1200 * mm, To: 2400 * mm, Height: 550 * mm}}
	}), "w600x700 w600x700 w600x500 w600x500 w600x700 w600x700"},
	{"a lowered part a little off the joints", row(3600, append(sizes(700, 600), sizes(500, 600)...)).with(func(r *Run) {
		r.Limits = []Limit{{From: 1250 * mm, To: 2350 * mm, Height: 550 * mm}}
	}), "w600x700 w600x700 w600x500 w600x500 w600x700 w600x700"},
	{"all lower where changes of height cost more than is stored", row(3600, append(sizes(700, 600), sizes(500, 600)...)).with(func(r *Run) {
		r.Limits = []Limit{{From: 1200 * mm, To: 2400 * mm, Height: 550 * mm}}
		r.Weights.HeightChange = 500 * unit
	}), "w600x500 w600x500 w600x500 w600x500 w600x500 w600x500"},
	{"cabinets on both sides of a window", row(3600, sizes(700, 400, 600)).with(func(r *Run) {
		r.Limits = []Limit{{From: 1400 * mm, To: 2600 * mm, Sides: [2]End{{Open: true}, {Open: true}}}}
	}), "w600x700 w400x700 w400x700 p0 p0 w600x700 w400x700"},
	{"equal neighbours of a window", row(3600, sizes(700, 400, 600)).with(func(r *Run) {
		r.Limits = []Limit{{From: 1400 * mm, To: 2600 * mm, Sides: [2]End{{Open: true}, {Open: true}}}}
		r.Pairs = []Pair{{From: 1400 * mm, To: 2600 * mm, Must: true}}
	}), "w600x700 w400x700 w400x700 p0 p0 w400x700 w600x700"},
	{"equal neighbours of a duct box, where they are worth it", row(2900, sizes(700, 500, 600, 800)).with(func(r *Run) {
		r.Limits = []Limit{{From: 1300 * mm, To: 1600 * mm}}
		r.Pairs = []Pair{{From: 1300 * mm, To: 1600 * mm, Worth: 10 * unit}}
	}), "w800x700 w500x700 w500x700 w800x700"},
	{"a cabinet that stays between new ones", row(2700, sizes(700, 300, 600)).with(func(r *Run) {
		r.Fixed = []Piece{{At: 900 * mm, Width: 450 * mm, Height: 700 * mm}}
	}), "w600x700 w300x700 s450x700 w600x700 w600x700 f150"},
	{"joints on the lines of the base cabinets", row(2700, sizes(700, 300, 600, 900)).with(func(r *Run) {
		r.Lines = []length.Length{300 * mm, 900 * mm, 1800 * mm}
		r.Weights.LineMiss = 20 * unit
	}), "w900x700 w900x700 w900x700"},
	{"a line where nothing else is on so fine a grid", row(1000, sizes(700, 400)).with(func(r *Run) {
		r.Grid, r.Lines, r.Weights.LineMiss = 25*mm, []length.Length{475 * mm}, 20*unit
		r.Ends = [2]End{{Least: 50 * mm}, {Least: 50 * mm}}
	}), "f75 w400x700 w400x700 f125"},
	{"a row of five feet in inches", (Run{
		Length: 60 * length.Inch, Grid: length.Inch / 2, LeastFiller: length.Inch, LeastOpen: length.Foot,
		Sizes:   []Size{{24 * length.Inch, 30 * length.Inch, 24 * unit}, {36 * length.Inch, 30 * length.Inch, 36 * unit}, {33 * length.Inch, 30 * length.Inch, 33 * unit}},
		Ends:    [2]End{{Least: 3 * length.Inch / 2}, {Least: 3 * length.Inch / 2}},
		Weights: Weights{Filler: unit, FillerPerGrid: unit, OpenPerGrid: 4 * unit, Panel: 3 * unit},
	}).with(func(*Run) {}), "f1.5in w33inx30in w24inx30in f1.5in"},
	{"a sink between a dishwasher and a glazed door", row(3000, sizes(700, 300, 500, 600)).with(func(r *Run) {
		r.Limits = []Limit{{From: 1200 * mm, To: 1800 * mm}, window(2600, 3000)}
		r.Whole = []Span{{1950 * mm, 2350 * mm}} // a 300 and a 500 would have their joint under it, in either order
	}), "w600x700 w600x700 f150 w600x700 p0 o50"},
	{"two sinks", row(2400, sizes(700, 300, 600, 900)).with(func(r *Run) {
		r.Whole = []Span{{200 * mm, 700 * mm}, {1500 * mm, 2100 * mm}}
	}), "w900x700 w600x700 w900x700"},
	{"a sink over a cabinet that stays", row(2700, sizes(700, 300, 600)).with(func(r *Run) {
		r.Fixed = []Piece{{At: 900 * mm, Width: 450 * mm, Height: 700 * mm}}
		r.Whole = []Span{{900 * mm, 1350 * mm}}
	}), "w600x700 w300x700 s450x700 w600x700 w600x700 f150"},
	{"a sink that reaches a little beyond a step", row(1200, sizes(700, 500, 600, 700)).with(func(r *Run) {
		r.Whole = []Span{{175 * mm, 601 * mm}}
	}), "w700x700 w500x700"},
	{"a sink and its drainer in one cabinet", row(1200, sizes(700, 300, 400, 600, 800)).with(func(r *Run) {
		r.Whole = []Span{{100 * mm, 500 * mm}, {400 * mm, 800 * mm}}
	}), "w800x700 w400x700"},
	{"a sink and a hob that meet, in two", row(1200, sizes(700, 600)).with(func(r *Run) {
		r.Whole = []Span{{100 * mm, 600 * mm}, {600 * mm, 1100 * mm}}
	}), "w600x700 w600x700"},
	{"the filler goes where the sink is not", row(700, sizes(700, 600)).with(func(r *Run) {
		r.Whole = []Span{{500 * mm, 650 * mm}}
	}), "f100 w600x700"},
	{"a sink where nothing else is on so fine a grid", row(700, sizes(700, 500)).with(func(r *Run) {
		r.Grid, r.Whole = 25*mm, []Span{{75 * mm, 575 * mm}}
	}), "f75 w500x700 f125"},
	{"nothing fits", row(250, sizes(700, 300, 600)).with(func(*Run) {}), "o250"},
	{"nothing may stand", row(600, sizes(700, 600)).with(func(r *Run) {
		r.Limits = []Limit{{From: 0, To: 600 * mm}}
	}), ""},
	{"a gap between cabinets that stay is as narrow as it is", row(1250, sizes(700, 600)).with(func(r *Run) {
		r.Fixed = []Piece{{At: 0, Width: 600 * mm, Height: 700 * mm}, {At: 650 * mm, Width: 600 * mm, Height: 700 * mm}}
		r.LeastFiller = 100 * mm
	}), "s600x700 o50 s600x700"},
}

func TestCases(t *testing.T) {
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			got := fill(t, c.run)[0]
			readAnswer(t, c.run, got)
			if text := describe(c.run, got); text != c.want {
				t.Errorf("got %q (%v)\n%+v", text, got.Worth, got.Parts)
			}
		})
	}
}

// describe is an answer as the cases write it.
func describe(r *Run, a Answer) string {
	type at struct {
		from, order length.Length
		text        string
	}
	var all []at
	in := func(l length.Length) string {
		if r.Grid%length.Inch == 0 || length.Inch%r.Grid == 0 {
			return money.Decimal(int64(l), int64(length.Inch)) + "in"
		}
		return l.MM()
	}
	spans := func(sign string, of []Span) {
		for _, s := range of {
			all = append(all, at{s.From, s.To, sign + in(s.To-s.From)})
		}
	}
	spans("f", a.Fillers)
	spans("p", a.Panels)
	spans("o", a.Open)
	for _, p := range a.Pieces {
		sign := "w"
		if p.Size == Stays {
			sign = "s"
		}
		all = append(all, at{p.At, p.At + p.Width, sign + in(p.Width) + "x" + in(p.Height)})
	}
	slices.SortStableFunc(all, func(a, b at) int {
		return cmp.Or(cmp.Compare(a.from, b.from), cmp.Compare(a.order, b.order))
	})
	var words []string
	for _, one := range all {
		words = append(words, one.text)
	}
	return strings.Join(words, " ")
}
