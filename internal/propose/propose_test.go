package propose

import (
	"slices"
	"strings"
	"testing"

	"github.com/go-json-experiment/json"

	"railhead/api"
	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/layout"
	"railhead/internal/length"
	"railhead/internal/resolve"
)

const mm = length.Millimetre

// proposed plans a room that is told as a request.
func proposed(t testing.TB, body string) *Proposal {
	t.Helper()
	var req api.LayoutRequest
	if err := json.Unmarshal([]byte(body), &req, json.RejectUnknownMembers(true)); err != nil {
		t.Fatal(err)
	}
	c, filling, faults := resolve.LayoutRequest(&req)
	if len(faults) > 0 {
		t.Fatalf("refused: %+v", faults)
	}
	return Propose(c.Kitchen, filling, nil)
}

// soffitRoom is a wall of 3.2 m under a soffit that was opened and is empty, so low that
// only a row of 500 fits under it; with other members of its wall, and of the body.
func soffitRoom(overhead, rest string) string {
	return `{"units": "mm", "system": "demo-rail", "survey": {"built": 1996, "tolerance": 0, "walls": [{"id": "w", "length": 3200,
		"floor": [{"at": 0, "height": 0}], "ceiling": [{"at": 0, "height": 2500}],
		"overheads": [{"id": "s", "kind": "soffit", "from": 0, "to": 3200, "depth": 360, "underside": [{"at": 0, "height": 2050}],
			"structure": "framed", "finish": "gypsum_board", "painted": "no", "textured": "no", "inside": {"looked": "opened"},
			"behind": {"ceiling": "continues", "wall": "finished"}` + overhead + `}]}]}` + rest + `}`
}

// heights are those of a layout's cabinets of a kind.
func heights(l *Layout, kind cabinet.Kind) (out []length.Length) {
	for _, c := range l.Kitchen.Plan.Cabinets {
		if c.Kind == kind {
			out = append(out, c.Height)
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

func option(t *testing.T, p *Proposal, group string, o kitchen.Option) Option {
	t.Helper()
	for _, one := range p.Overheads {
		for _, have := range one.Options {
			if one.Group == group && have.Option == o {
				return have
			}
		}
	}
	t.Fatalf("%s of %s is not told of: %+v", o, group, p.Overheads)
	return Option{}
}

func TestWhatIsWorthMoreComesDown(t *testing.T) {
	dear := proposed(t, soffitRoom("", ""))
	if got := dear.Layouts[0].Options["s"]; got != kitchen.Keep {
		t.Errorf("%s: 240 mm more height at 0.40 a litre are not worth a soffit's end, about a thousand", got)
	}
	if got := heights(&dear.Layouts[0], cabinet.Wall); !slices.Equal(got, []length.Length{500 * mm}) {
		t.Errorf("heights under a soffit at 2050: %v, want 500 alone, which ends at 1960", got)
	}
	cheap := proposed(t, soffitRoom("", `,"money": {"to_ceiling_worth": "3000"}`))
	first := cheap.Layouts[0]
	if !first.Options["s"].TakesDown() || !slices.Equal(heights(&first, cabinet.Wall), []length.Length{900 * mm}) {
		t.Errorf("going up to the ceiling is worth 3000: %v with %v", first.Options, heights(&first, cabinet.Wall))
	}
	if got := first.Part(layout.ToCeiling); got.Worth.Decimal() != "3000" {
		t.Errorf("the whole run goes up to the ceiling, worth %s", got.Worth.Decimal())
	}
	keep, down := option(t, cheap, "s", kitchen.Keep), option(t, cheap, "s", kitchen.RemoveClose)
	if keep.Layout == nil || down.Layout == nil || down.Layout.Litres <= keep.Layout.Litres {
		t.Errorf("taking it down gives more storage: %+v, %+v", keep, down)
	}
}

func TestWhatNobodyMayCutStays(t *testing.T) {
	p := proposed(t, soffitRoom(`,"may_cut": "no"`, `,"money": {"to_ceiling_worth": "3000"}`))
	if p.Layouts[0].Options["s"] != kitchen.Keep || p.Once != nil || p.Skies != 1 {
		t.Errorf("%v, once %v, %d skies", p.Layouts[0].Options, p.Once, p.Skies)
	}
	if down := option(t, p, "s", kitchen.RemoveOpen); down.Possible || down.Layout != nil {
		t.Errorf("taking it down: %+v", down)
	}
}

// A gate that somebody can open does not let a layout through, but it is told what
// would be best then.
func TestGatedLayoutsAreToldOfBesideTheOthers(t *testing.T) {
	body := strings.Replace(soffitRoom("", `,"money": {"to_ceiling_worth": "3000"}`), `"textured": "no"`, `"textured": "yes"`, 1)
	body = strings.Replace(body, `"built": 1996`, `"built": 1968`, 1) // a textured ceiling of that time may hold asbestos
	p := proposed(t, body)
	if len(p.Layouts) == 0 || p.Layouts[0].Options["s"] != kitchen.Keep {
		t.Fatalf("layouts %+v", p.Layouts)
	}
	if p.Once == nil || !p.Once.Options["s"].TakesDown() || len(p.Once.Gates) == 0 {
		t.Errorf("once the gates are open: %+v", p.Once)
	}
	for _, l := range p.Layouts {
		if len(l.Gates) > 0 {
			t.Errorf("a layout behind gates: %+v", l.Gates)
		}
	}
}

func TestAChoiceHolds(t *testing.T) {
	p := proposed(t, soffitRoom("", `,"choices": {"s": "remove_open"}`))
	for _, l := range p.Layouts {
		if l.Options["s"] != kitchen.RemoveOpen {
			t.Errorf("%v", l.Options)
		}
	}
	if got := p.Overheads; len(got) != 1 || len(got[0].Options) != 1 {
		t.Errorf("nothing but what was chosen is told of: %+v", got)
	}
}

func TestWhatStaysStays(t *testing.T) {
	p := proposed(t, soffitRoom("", `,"plan": {"cabinets": [
		{"id": "w1", "kind": "wall", "wall": "w", "from": 1000, "width": 600, "height": 340, "keep": true},
		{"id": "gone", "kind": "wall", "wall": "w", "from": 1600, "width": 600, "height": 340},
		{"id": "below", "kind": "base", "wall": "w", "from": 0, "width": 600, "height": 740}]}, "fill": {"kinds": ["wall"]}`))
	if got := p.Stays; !slices.Equal(got.Cabinets, []int{0, 2}) {
		t.Fatalf("cabinets %v stay: the one that is marked, and the one of a kind that is not asked for", got.Cabinets)
	}
	first := p.Layouts[0].Kitchen.Plan.Cabinets
	if first[0].ID != "w1" || first[0].From != 1000*mm || first[1].ID != "below" {
		t.Errorf("%+v", first)
	}
	for _, c := range first[2:] {
		if c.Kind != cabinet.Wall || c.ID == "w1" || c.From < 1600*mm && 1000*mm < c.To {
			t.Errorf("new: %+v", c)
		}
	}
}

// Heights are above the highest floor that the proposed cabinets stand on, not above
// the highest there is: a hump in the doorway does not take a row away.
func TestTheDatumIsThatOfItsOwnCabinets(t *testing.T) {
	body := `{"units": "mm", "system": "demo-rail", "survey": {"tolerance": 0, "walls": [{"id": "w", "length": 4000,
		"floor": [{"at": 0, "height": 0}, {"at": 3000, "height": 0}, {"at": 4000, "height": 30}],
		"ceiling": [{"at": 0, "height": 2365}],
		"openings": [{"id": "d", "kind": "door", "from": 3000, "to": 3900, "head": 2100}]}]},
		"fill": {"kinds": ["wall", "base"]}}`
	p := proposed(t, body)
	first := &p.Layouts[0]
	if level, _ := first.Kitchen.Datums[0].Level.Value.Whole(); level != 0 {
		t.Errorf("the datum is at %s, want the level floor under the cabinets", level)
	}
	if got := heights(first, cabinet.Wall); !slices.Contains(got, 900*mm) {
		t.Errorf("heights %v: 1460 + 900 and the fit gap of 2 go under 2365 over a datum of 0", got)
	}
}

func TestOneEvenLineIsAimedAt(t *testing.T) {
	room := func(worth string) string {
		return `{"units": "mm", "system": "demo-rail", "survey": {"tolerance": 0, "walls": [{"id": "w", "length": 3600,
		"floor": [{"at": 0, "height": 0}], "ceiling": [{"at": 0, "height": 2500}],
		"overheads": [{"id": "b", "kind": "beam", "from": 0, "to": 1200, "depth": 360, "underside": [{"at": 0, "height": 2130}], "may_cut": "no"}]}]},
		"money": {"even_line_worth": "` + worth + `"}, "fill": {"kinds": ["wall"], "best": 1}}`
	}
	if got := heights(&proposed(t, room("0")).Layouts[0], cabinet.Wall); len(got) != 2 {
		t.Errorf("heights %v: 660 under the beam and 900 beside it hold the most", got)
	}
	even := proposed(t, room("500")).Layouts[0]
	if got := heights(&even, cabinet.Wall); len(got) != 1 || even.Part(layout.EvenLine).Worth.Decimal() != "500" {
		t.Errorf("heights %v, though one line is worth 500", got)
	}
}

func TestSkies(t *testing.T) {
	some := func(n int) (out []group) {
		for range n {
			out = append(out, group{states: []state{asFound, cut, gone}})
		}
		return out
	}
	for _, c := range []struct {
		groups, want int
		all          bool
	}{{0, 1, true}, {1, 3, true}, {4, 81, true}, {5, 3 + 5*2*3, false}, {40, mostSkies, false}} {
		got, all := skies(some(c.groups))
		if len(got) != c.want || all != c.all {
			t.Errorf("%d groups: %d skies, all %v; want %d, %v", c.groups, len(got), all, c.want, c.all)
		}
	}
}

// How many layouts are asked for changes none of those that come first.
func TestMoreLayoutsBeginTheSame(t *testing.T) {
	body := soffitRoom("", `,"choices": {"s": {"option": "open_part", "spans": [{"wall": "w", "from": 600, "to": 1500}]}}, "fill": {"kinds": ["wall", "base"], "best": 1}`)
	one, many := proposed(t, body), proposed(t, strings.Replace(body, `"best": 1`, `"best": 12`, 1))
	if one.Layouts[0].Total != many.Layouts[0].Total {
		t.Errorf("alone the best is worth %s, among twelve %s", one.Layouts[0].Total.Decimal(), many.Layouts[0].Total.Decimal())
	}
}

func TestWhyARowStaysEmpty(t *testing.T) {
	for _, c := range []struct {
		name, length, fill string
		want               Why
	}{
		{"a wall shorter than any cabinet", "250", `{"kinds": ["base"]}`, TooShort},
		{"all of it kept free at its ends", "3000", `{"kinds": ["base"], "wall_ends": "side_wall", "wall_filler": 1400}`, TooShort},
		{"cabinets that cost more than they hold", "3000", `{"kinds": ["base"], "weights": {"cabinet": 900}}`, Unworthy},
		{"a ceiling below every wall cabinet", "3000", `{"kinds": ["wall"]}`, NoRoom},
	} {
		ceiling := "2500"
		if c.want == NoRoom {
			ceiling = "1700"
		}
		p := proposed(t, `{"units": "mm", "system": "demo-rail", "survey": {"walls": [{"id": "w", "length": `+c.length+`,
			"floor": [{"at": 0, "height": 0}], "ceiling": [{"at": 0, "height": `+ceiling+`}]}]}, "fill": `+c.fill+`}`)
		if len(p.Empty) != 1 || p.Empty[0].Why != c.want {
			t.Errorf("%s: %+v, want %s", c.name, p.Empty, c.want)
		}
	}
}

// Under a soffit around the corner a cabinet fits once its footprint is cut free, but its
// door does not open: such a plan is told only where nothing else was found, with what
// holds it up.
func TestWhatHoldsAPlanUpIsTold(t *testing.T) {
	p := proposed(t, `{"units": "mm", "system": "demo-rail", "survey": {"tolerance": 0, "built": 1996, "walls": [
		{"id": "a", "length": 2000, "joins_next": true, "floor": [{"at": 0, "height": 0}], "ceiling": [{"at": 0, "height": 2500}]},
		{"id": "b", "length": 2000, "floor": [{"at": 0, "height": 0}], "ceiling": [{"at": 0, "height": 2500}],
		 "overheads": [{"id": "s", "kind": "soffit", "from": 0, "to": 2000, "depth": 250, "underside": [{"at": 0, "height": 2200}],
			"structure": "framed", "finish": "gypsum_board", "painted": "no", "textured": "no", "inside": {"looked": "opened"}}]}]},
		"choices": {"s": "trim"}, "fill": {"walls": ["a"], "kinds": ["wall"], "best": 1}}`)
	for _, l := range p.Layouts {
		if l.Hindered && len(l.Stops) == 0 {
			t.Errorf("held up by nothing: %+v", l.Stops)
		}
	}
	if len(p.Layouts) == 0 {
		t.Error("nothing is proposed")
	}
}
