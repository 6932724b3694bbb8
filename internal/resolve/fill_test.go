package resolve

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/go-json-experiment/json"

	"railhead/api"
	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/money"
)

// filled is the case of a body of layouts, and what is to be proposed for it.
func filled(t testing.TB, text string) (*Case, *kitchen.Filling) {
	t.Helper()
	c, filling, faults := LayoutRequest(decodeLayout(t, text))
	for _, f := range faults {
		t.Errorf("refused: %s %s", f.Code, f.Pointer)
	}
	if c == nil || filling == nil {
		t.FailNow()
	}
	return c, filling
}

func decodeLayout(t failing, text string) *api.LayoutRequest {
	t.Helper()
	var req api.LayoutRequest
	if err := json.Unmarshal([]byte(text), &req, json.RejectUnknownMembers(true)); err != nil {
		t.Fatal(err)
	}
	return &req
}

// refusedFill is what is wrong with a body of layouts.
func refusedFill(t *testing.T, text string) (out []string) {
	t.Helper()
	_, _, faults := LayoutRequest(decodeLayout(t, text))
	for _, f := range faults {
		worded(t, f.Code, f.Params, nil, nil)
		out = append(out, f.Code+" "+f.Pointer)
	}
	return out
}

// Where nothing is said of layouts, all walls are filled with all that the system makes. Lengths are common practice, no
// source; worths are from memory.
func TestNothingSaidOfLayouts(t *testing.T) {
	const mm, in = length.Millimetre, length.Inch
	usual := kitchen.FillWeights{
		Cabinet: euros(4000), Filler: euros(1500), FillerPerMM: euros(30), OpenPerMM: euros(10), Panel: euros(3000),
		HeightChange: euros(1500), BaseLineMiss: euros(1000), Symmetry: euros(2000), DuctPair: euros(10000), CounterPerMM: euros(15),
	}
	for _, c := range []struct {
		name, units string
		want        kitchen.Filling
	}{
		{"in millimetres", "mm", kitchen.Filling{LeastFiller: 20 * mm, WallFiller: 20 * mm, CornerFiller: 60 * mm, LeastOpen: 150 * mm, Step: mm}},
		{"in centimetres", "cm", kitchen.Filling{LeastFiller: 20 * mm, WallFiller: 20 * mm, CornerFiller: 60 * mm, LeastOpen: 150 * mm, Step: mm}},
		{"in inches", "in", kitchen.Filling{LeastFiller: in * 3 / 4, WallFiller: in * 3 / 4, CornerFiller: in * 9 / 4, LeastOpen: 6 * in, Step: in / 16}},
	} {
		c.want.Walls, c.want.Kinds = []int{0}, []cabinet.Kind{cabinet.Wall, cabinet.Tall, cabinet.Base}
		c.want.Best, c.want.MostTall, c.want.Weights = 3, 2, usual
		for _, fill := range []string{"", "{}"} {
			_, got := filled(t, changed(t, plainRoom, change{"/units", fmt.Sprintf("%q", c.units)}, change{"/survey/walls/0/length", `"3 m"`},
				change{"/survey/walls/0/ceiling/0/up", `"1300 mm"`}, change{"/survey/walls/0/floor/0/down", `"1200 mm"`}, change{"/fill", fill}))
			if fmt.Sprintf("%+v", *got) != fmt.Sprintf("%+v", c.want) {
				t.Errorf("%s, %q:\n%+v\nwant\n%+v", c.name, fill, *got, c.want)
			}
		}
	}
}

func TestEverythingSaidOfLayouts(t *testing.T) {
	const mm = length.Millimetre
	c, got := filled(t, wholeBody(t))
	price, other := euros(12050), euros(18000)
	want := kitchen.Filling{
		Walls: []int{0, 1}, Kinds: []cabinet.Kind{cabinet.Wall, cabinet.Tall, cabinet.Base}, Best: 5,
		LeastFiller: 20 * mm, WallFiller: 25 * mm, CornerFiller: 60 * mm, Panel: 18 * mm, LeastOpen: 6 * length.Inch, SideWalls: true, MostTall: 1,
		Equal: kitchen.EqualBeside{Window: true, Hood: true, DuctBox: true}, Step: mm,
		Weights: kitchen.FillWeights{
			Cabinet: euros(4000), Filler: euros(500), FillerPerMM: euros(10), OpenPerMM: euros(10), Panel: euros(3000),
			HeightChange: euros(1500), BaseLineMiss: euros(1000), Symmetry: euros(2000), DuctPair: euros(10000), CounterPerMM: euros(15),
		},
	}
	sizes := got.Sizes
	got.Sizes = nil
	if fmt.Sprintf("%+v", *got) != fmt.Sprintf("%+v", want) {
		t.Errorf("\n%+v\nwant\n%+v", *got, want)
	}
	if len(sizes) != 2 || *sizes[0].Price != price || *sizes[1].Price != other {
		t.Fatalf("%+v", sizes)
	}
	sizes[0].Price, sizes[1].Price = nil, nil
	if sizes[0] != (kitchen.SizePrice{Kind: cabinet.Wall, Width: 600 * mm, Height: 660 * mm, Prefer: euros(500)}) || sizes[1] != (kitchen.SizePrice{Kind: cabinet.Base, Width: 800 * mm}) {
		t.Errorf("%+v", sizes)
	}
	for _, a := range assumptions(c) {
		if strings.Contains(a, "/fill") {
			t.Errorf("assumed, though it was said: %s", a)
		}
	}
	for _, p := range c.Kitchen.Plan.Cabinets {
		if p.Keep != (p.ID == "t") {
			t.Errorf("%s stays: %v", p.ID, p.Keep)
		}
	}
}

// fillAssumptions are the assumptions that a request for layouts could replace under a member.
func fillAssumptions(c *Case, member string) (out []string) {
	for _, a := range assumptions(c) {
		if strings.Contains(a, " "+member) {
			out = append(out, a)
		}
	}
	return out
}

// Each default that matters is told, with the member that replaces it.
func TestWhatLayoutsTakeForGranted(t *testing.T) {
	widths := []string{"assume.fill.least_filler 20 /fill/least_filler", "assume.fill.panel_thickness 0 /fill/panel", "assume.fill.least_open 150 /fill/least_open"}
	corner := []string{widths[0], "assume.fill.corner_filler 60 /fill/corner_filler", widths[1], widths[2]}
	tall := "assume.fill.most_tall 2 /fill/most_tall"
	worths := map[string]string{"cabinet": "40", "filler": "15", "filler_per_mm": "0.3", "open_per_mm": "0.1", "panel": "30", "height_change": "15",
		"base_line_miss": "10", "symmetry": "20", "duct_pair": "100", "counter_per_mm": "0.15"}
	with := func(lines []string, names ...string) []string {
		lines = slices.Clone(lines)
		for _, name := range names {
			lines = append(lines, "assume.fill."+name+" "+worths[name]+" /fill/weights/"+name)
		}
		return lines
	}
	for _, c := range []struct {
		name, room, fill string
		want             []string
	}{
		{"nothing is said", plainRoom, "{}", with(append(slices.Clone(widths), tall), "cabinet", "filler", "filler_per_mm", "open_per_mm", "panel", "height_change", "base_line_miss", "symmetry", "counter_per_mm")},
		{"a corner, and a duct box", wholeBody(t), "{}", with(append(slices.Clone(corner), tall), "cabinet", "filler", "filler_per_mm", "open_per_mm", "panel", "height_change", "base_line_miss", "symmetry", "duct_pair", "counter_per_mm")},
		{"panels of a thickness", plainRoom, `{"panel": 18}`, with(append(slices.Delete(slices.Clone(widths), 1, 2), tall), "cabinet", "filler", "filler_per_mm", "open_per_mm", "panel", "height_change", "base_line_miss", "symmetry", "counter_per_mm")},
		{"no tall ones", plainRoom, `{"kinds": ["wall", "base"]}`, with(widths, "cabinet", "filler", "filler_per_mm", "open_per_mm", "panel", "height_change", "base_line_miss", "symmetry", "counter_per_mm")},
		{"a base row", plainRoom, `{"kinds": ["base"]}`, with(widths, "cabinet", "filler", "filler_per_mm", "open_per_mm", "panel", "height_change", "counter_per_mm")},
		{"a wall row without holes", wholeBody(t), `{"kinds": ["wall"], "closed": true}`, with(corner[:3], "cabinet", "filler", "filler_per_mm", "open_per_mm", "panel", "height_change", "base_line_miss", "symmetry", "duct_pair")},
	} {
		got, _ := filled(t, changed(t, c.room, change{"/fill", c.fill}))
		sameLines(t, c.name, fillAssumptions(got, "/fill/"), append([]string{"assume.fill.wall_ends as_surveyed /fill/wall_ends"}, c.want...))
		for _, a := range got.Assumptions {
			worded(t, a.Code, []finding.Param{a.Value}, nil, nil)
		}
	}
}

// What is proposed is weighed in money, so that what money is taken for is told; of a plan without overheads it is not.
func TestMoneyOfLayouts(t *testing.T) {
	got, _ := filled(t, plainRoom)
	sameLines(t, "layouts", fillAssumptions(got, "/money/"), []string{"assume.money.currency EUR /money/currency", "assume.money.litre 0.4 /money/storage_per_litre"})
	sameLines(t, "an assessment", fillAssumptions(resolved(t, plainRoom), "/money/"), nil)
}

// Worths that nobody gives are euros of the built-in rates; those that are given are the currency's own.
func TestWorthsInOtherMoney(t *testing.T) {
	for _, c := range []struct {
		money           string
		cabinet, filler money.Amount
	}{
		{`{"currency": "JPY"}`, euros(640000), euros(700)},
		{`{"currency": "USD"}`, euros(4400), euros(700)},
		{`{"currency": "KWD", "per_euro": "0.3"}`, euros(1200), euros(700)},
	} {
		_, got := filled(t, changed(t, plainRoom, change{"/money", c.money}, change{"/fill/weights/filler", `"7"`}))
		if got.Weights.Cabinet != c.cabinet || got.Weights.Filler != c.filler {
			t.Errorf("%s: %s a cabinet, %s a filler", c.money, got.Weights.Cabinet.Decimal(), got.Weights.Filler.Decimal())
		}
	}
}

func TestWallsAndKindsToFill(t *testing.T) {
	const noWidths = `{"legs": 100, "fit_gap": 2, "wall": {"heights": [660], "depths": [360], "underside": 1460}, "base": {"heights": [740], "widths": [600], "depths": [600]}}`
	for _, c := range []struct {
		name, fill, system string
		walls              []int
		kinds              []cabinet.Kind
		without            []string
	}{
		{"one wall of four", `{"walls": ["c"]}`, "", []int{2}, []cabinet.Kind{cabinet.Wall, cabinet.Tall, cabinet.Base}, nil},
		{"walls and kinds in any order", `{"walls": ["d", "a"], "kinds": ["base", "wall"]}`, "", []int{0, 3}, []cabinet.Kind{cabinet.Wall, cabinet.Base}, nil},
		{"what the system makes", "{}", noWidths, []int{0, 1, 2, 3}, []cabinet.Kind{cabinet.Base}, []string{"layouts not_assessed.no_widths /system/wall/widths"}},
		{"what has widths is asked for", `{"kinds": ["base"]}`, noWidths, []int{0, 1, 2, 3}, []cabinet.Kind{cabinet.Base}, nil},
		{"a system that makes nothing", "{}", `{"legs": 100, "fit_gap": 2}`, []int{0, 1, 2, 3}, nil, []string{"layouts not_assessed.no_sizes /system"}},
	} {
		changes := []change{{"/fill", c.fill}}
		if c.system != "" {
			changes = append(changes, change{"/system", c.system})
		}
		got, f := filled(t, changed(t, fourWalls, changes...))
		if !slices.Equal(f.Walls, c.walls) || !slices.Equal(f.Kinds, c.kinds) {
			t.Errorf("%s: walls %v, kinds %v", c.name, f.Walls, f.Kinds)
		}
		sameLines(t, c.name, layoutsWithout(t, got), c.without)
	}
	sameLines(t, "a kind asked for that has no widths", refusedFill(t, changed(t, fourWalls, change{"/system", noWidths}, change{"/fill", `{"kinds": ["wall", "tall"]}`})),
		[]string{"fill.kind.no_widths /system/wall/widths", "fill.kind.not_made /fill/kinds/1"})
}

// layoutsWithout is what nothing comes of in layouts.
func layoutsWithout(t *testing.T, c *Case) (out []string) {
	t.Helper()
	for _, n := range c.NotAssessed {
		if n.Part == "layouts" {
			worded(t, n.Code, nil, nil, nil)
			out = append(out, n.Part+" "+n.Code+" "+n.Pointer)
		}
	}
	return out
}

// Whatever is said and rests on nothing is listed.
func TestWhatNothingRestsOn(t *testing.T) {
	got, f := filled(t, changed(t, plainRoom, change{"/fill", `{"kinds": ["base"], "closed": true, "least_open": 200, "most_tall": 2, "equal_beside": ["hood"],
	  "prices": [{"kind": "base", "width": 600, "price": 100}, {"kind": "wall", "width": 600, "prefer": 1}],
	  "weights": {"open_per_mm": 1, "symmetry": 5, "base_line_miss": 0, "duct_pair": 9, "counter_per_mm": 1}}`}))
	sameLines(t, "base cabinets", layoutsWithout(t, got), []string{
		"layouts not_assessed.unused /fill/equal_beside",
		"layouts not_assessed.unused /fill/least_open",
		"layouts not_assessed.unused /fill/most_tall",
		"layouts not_assessed.unused /fill/prices/1",
		"layouts not_assessed.unused /fill/weights/base_line_miss",
		"layouts not_assessed.unused /fill/weights/symmetry",
		"layouts not_assessed.unused /fill/weights/duct_pair",
	})
	if f.MostTall != 0 {
		t.Errorf("%d tall cabinets, and none are asked for", f.MostTall)
	}
}

// No two prices are for the same cabinet; one for every height is for each of them.
func TestPricesOfSizes(t *testing.T) {
	for _, c := range []struct{ name, prices, want string }{
		{"each size once", `[{"kind": "wall", "width": 600, "height": 660, "price": 1}, {"kind": "wall", "width": 600, "height": 900, "price": 2}, {"kind": "base", "width": 600}, {"kind": "tall", "width": 600}]`, ""},
		{"the same size", `[{"kind": "wall", "width": 600}, {"kind": "base", "width": 300}, {"kind": "wall", "width": "60 cm"}]`, "fill.price.twice /fill/prices/2"},
		{"one height of every height", `[{"kind": "wall", "width": 600, "height": 660}, {"kind": "wall", "width": 600}]`, "fill.price.twice /fill/prices/1"},
		{"a corner cabinet", `[{"kind": "base", "width": 900, "price": 400}, {"kind": "base", "width": 1000, "price": 300}]`, ""},
		{"a width of another kind", `[{"kind": "tall", "width": 800}]`, "fill.price.off_list /fill/prices/0/width"},
		{"a height of another kind", `[{"kind": "base", "width": 600, "height": 660}]`, "fill.price.off_list /fill/prices/0/height"},
		{"for nothing at all", `[{"kind": "base", "width": 600, "price": 0, "prefer": "0.0"}]`, ""},
	} {
		var want []string
		if c.want != "" {
			want = []string{c.want}
		}
		sameLines(t, c.name, refusedFill(t, changed(t, plainRoom, change{"/fill", `{"prices": ` + c.prices + `}`})), want)
	}
}

func TestEverythingWrongWithLayoutsIsSaidAtOnce(t *testing.T) {
	sameLines(t, "refused", refusedFill(t, changed(t, fourWalls, change{"/fill", `{"walls": ["a", "x", "a"], "kinds": ["wall", "loft", "wall"], "equal_beside": ["hood", "hood", "sea"],
	  "wall_ends": "side_wall", "least_filler": -1, "wall_filler": "3 bananas", "corner_filler": "200 m", "panel": "-1/4 in", "least_open": -2,
	  "prices": [{"kind": "wall", "width": 601, "height": 0, "price": "x", "prefer": -1}, {"kind": "roof"}],
	  "weights": {"cabinet": -1, "filler_per_mm": "0.00001", "duct_pair": 1e10, "symmetry": "?"}}`})), []string{
		"ref.unknown /fill/walls/1",
		"fill.wall.twice /fill/walls/2",
		"body.value.not_allowed /fill/kinds/1",
		"fill.kind.twice /fill/kinds/2",
		"fill.equal.twice /fill/equal_beside/1",
		"body.value.not_allowed /fill/equal_beside/2",
		"fill.length.negative /fill/least_filler",
		"length.text.syntax /fill/wall_filler",
		"length.value.out_of_range /fill/corner_filler",
		"fill.length.negative /fill/panel",
		"fill.length.negative /fill/least_open",
		"fill.length.not_positive /fill/prices/0/height",
		"fill.amount.syntax /fill/prices/0/price",
		"fill.amount.negative /fill/prices/0/prefer",
		"fill.price.off_list /fill/prices/0/width",
		"body.value.not_allowed /fill/prices/1/kind",
		"body.member.missing /fill/prices/1/width",
		"fill.amount.negative /fill/weights/cabinet",
		"fill.amount.too_fine /fill/weights/filler_per_mm",
		"fill.amount.syntax /fill/weights/symmetry",
		"fill.amount.too_large /fill/weights/duct_pair",
	})
}

// A request without a body is refused for what it lacks, as any other is.
func TestNoRequestAtAll(t *testing.T) {
	_, _, faults := LayoutRequest(nil)
	_, plain := Request(nil)
	if len(faults) == 0 || fmt.Sprint(faults) != fmt.Sprint(plain) {
		t.Errorf("%v, and %v", faults, plain)
	}
}
