package resolve

import (
	"fmt"
	"strings"
	"testing"

	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/money"
	"railhead/internal/survey"
)

func TestUndersideAndTop(t *testing.T) {
	for _, c := range []struct {
		name, cabinet string
		changes       []change
		want          string
	}{
		{"a wall cabinet hangs in the system's row", `"kind": "wall", "width": 600, "height": 660`, nil, "1460 2120"},
		{"a tall one stands on its legs", `"kind": "tall", "width": 600, "height": 2000`, nil, "120 2120"},
		{"so does a base cabinet", `"kind": "base", "width": 600, "height": 740`, nil, "120 860"},
		{"the whole row moved down", `"kind": "wall", "width": 600, "height": 660`, []change{{"/plan/row_shift", "-8"}}, "1452 2112"},
		{"and its tall cabinets with it", `"kind": "tall", "width": 600, "height": 2000`, []change{{"/plan/row_shift", "-8"}}, "112 2112"},
		{"its own underside is not moved", `"kind": "wall", "width": 600, "height": 660, "underside": 1500`, []change{{"/plan/row_shift", "-8"}}, "1500 2160"},
		{"its own top is not moved", `"kind": "wall", "width": 600, "height": 660, "top": 2200`, []change{{"/plan/row_shift", "-8"}}, "1540 2200"},
		{"a tall one by its top", `"kind": "tall", "width": 600, "height": 2000, "top": 2110`, nil, "110 2110"},
		{"a wall cabinet on the counter", `"kind": "wall", "width": 600, "height": 1220, "underside": 0`, nil, "0 1220"},
	} {
		body := changed(t, plainRoom, change{"/plan/cabinets", `[{"id": "c", "wall": "a", "from": 0, ` + c.cabinet + `}]`})
		p := resolved(t, changed(t, body, c.changes...)).Kitchen.Plan.Cabinets[0]
		if got := p.Underside.MM() + " " + p.Top.MM(); got != c.want {
			t.Errorf("%s: %s, want %s", c.name, got, c.want)
		}
		if own := strings.Contains(c.cabinet, "underside") || strings.Contains(c.cabinet, "top"); p.OwnLevel != own {
			t.Errorf("%s: placed by itself %v, want %v", c.name, p.OwnLevel, own)
		}
	}
}

func TestDefaultsOfACabinet(t *testing.T) {
	const inch = `{"units": "in", "survey": {"walls": [{"id": "a", "length": 120, "floor": [{"at": 0, "down": 48}], "ceiling": [{"at": 0, "up": 48}]}]},
	  "system": "face-frame-inch", "plan": {"cabinets": [{"id": "c", "kind": "wall", "wall": "a", "from": "-1/2 in", "width": 30, "height": 30, "door": {"opens": "pair"}}]}}`
	c := resolved(t, inch)
	p := c.Kitchen.Plan.Cabinets[0]
	if p.Depth != 12*length.Inch || p.From != -length.Inch/2 || p.Width() != 30*length.Inch {
		t.Errorf("depth %s, from %s, width %s; want 12 in deep, 1/2 in off the wall's end", p.Depth, p.From, p.Width())
	}
	if *p.Door != (cabinet.Door{Opens: cabinet.OpensPair, Thickness: length.Inch * 3 / 4, Pull: length.Inch * 3 / 2}) {
		t.Errorf("door %+v", *p.Door)
	}
	sameLines(t, "assumptions", assumptions(c), []string{
		"assume.survey.tolerance 1.5875 /survey/tolerance",
		"assume.plan.floor_change 0 /plan/floor_change",
		"assume.plan.ceiling_change 0 /plan/ceiling_change",
		"assume.plan.counter 914.4 /plan/counter",
		"assume.plan.least_counter 860 /plan/least_counter",
		"assume.door.thickness 19.05 /plan/cabinets/0/door/thickness",
		"assume.door.pull 38.1 /plan/cabinets/0/door/pull",
	})
}

func TestTheCounter(t *testing.T) {
	const bases = `{"legs": 100, "fit_gap": 2, "base": {"heights": [400, 720, 770], "depths": [600], "counter": 40}}`
	for _, c := range []struct {
		name           string
		changes        []change
		counter, least string
	}{
		{"on the system's only base cabinets", nil, "900", "860"},
		{"up and down with the row", []change{{"/plan/row_shift", "-10"}}, "890", "860"},
		{"as planned", []change{{"/plan/counter", "950"}, {"/plan/least_counter", "900"}}, "950", "900"},
		{"planned lower than appliances are high", []change{{"/plan/counter", "800"}}, "800", "800"},
		{"of several base cabinets, those nearest to the ordinary counter", []change{{"/system", bases}}, "910", "860"},
		{"of several, the planned ones", []change{{"/system", bases}, {"/plan/cabinets", `[{"id": "b", "kind": "base", "wall": "a", "from": 0, "width": 600, "height": 720}]`}}, "860", "860"},
		{"no base cabinets, no counter", []change{{"/system", `{"legs": 100, "fit_gap": 2}`}}, "0", "860"},
	} {
		p := resolved(t, changed(t, plainRoom, c.changes...)).Kitchen.Plan
		if p.Counter.MM() != c.counter || p.LeastCounter.MM() != c.least {
			t.Errorf("%s: counter %s, least %s; want %s, %s", c.name, p.Counter.MM(), p.LeastCounter.MM(), c.counter, c.least)
		}
	}
}

func TestCornerCabinets(t *testing.T) {
	corner := func(wall string, from int, other, shape string) string {
		return fmt.Sprintf(`[{"id": "k", "kind": "base", "wall": %q, "from": %d, "width": 900, "height": 740, "corner": {"other_wall": %q, "other_width": 900, "shape": %q}}]`, wall, from, other, shape)
	}
	for _, c := range []struct {
		name, cabinets, refused string
		atRight                 bool
	}{
		{"in its wall's right corner", corner("a", 2100, "b", "l"), "", true},
		{"in its wall's left corner", corner("b", 0, "a", "l"), "", false},
		{"within the side clearance of it", corner("a", 2097, "b", "diagonal"), "", true},
		{"standing off the corner", corner("a", 2096, "b", "diagonal"), "plan.corner.not_in_corner /plan/cabinets/0/from", true},
		{"pulled past the corner", corner("a", 2104, "b", "l"), "plan.corner.not_in_corner /plan/cabinets/0/from", true},
		{"a blind one is pulled out of the corner", corner("a", 2000, "b", "blind"), "", true},
		{"around no corner", corner("b", 1100, "c", "l"), "plan.corner.not_joined /plan/cabinets/0/corner/other_wall", false},
	} {
		body := changed(t, fourWalls, joins(0), change{"/plan/cabinets", c.cabinets})
		if c.refused != "" {
			sameLines(t, c.name, refused(t, body), []string{c.refused})
			continue
		}
		if got := resolved(t, body).Kitchen.Plan.Cabinets[0].Corner; got == nil || got.AtRight != c.atRight {
			t.Errorf("%s: %+v, want at the right %v", c.name, got, c.atRight)
		}
	}
}

func TestOldCabinetsFillersAndCooking(t *testing.T) {
	k := resolved(t, contractRoom).Kitchen
	old := k.Plan.Old[0]
	floor := k.Room.Walls[0].FoundFloor.HeightAt(600*length.Millimetre, 0)
	if top := old.Top.Value.Sub(floor.Value); top.CmpLength(2100*length.Millimetre) != 0 || old.Depth != 320*length.Millimetre {
		t.Errorf("old cabinet %s over the floor in its middle, %s deep; want 2100 and 320", top, old.Depth)
	}
	if c := k.Plan.Cooking; c.Surface != 910*length.Millimetre || c.Hood.DuctBox != "d1" || c.Energy != cabinet.Gas {
		t.Errorf("cooking %+v", c)
	}
	k = resolved(t, changed(t, contractRoom, change{"/plan/cooking/surface", ""}, change{"/plan/old_cabinets/0/depth", ""},
		change{"/plan/fillers", `[{"wall": "long", "from": 600, "width": 20}, {"id": "f", "kind": "tall", "wall": "long", "from": 2980, "width": 20}]`})).Kitchen
	if k.Plan.Cooking.Surface != 900*length.Millimetre || k.Plan.Old[0].Depth != 320*length.Millimetre {
		t.Errorf("cooking surface %s, old depth %s: want the counter, 900, and 320", k.Plan.Cooking.Surface, k.Plan.Old[0].Depth)
	}
	if f := k.Plan.Fillers; !f[0].AnyKind || f[1].AnyKind || f[1].Kind != cabinet.Tall || f[1].To != 3000*length.Millimetre {
		t.Errorf("fillers %+v", f)
	}
}

func TestASystemSentAlong(t *testing.T) {
	const inches = `{"units": "in", "legs": 4, "leg_travel": {"up": 1, "down": "1/2 in"}, "fit_gap": "1/16 in", "side_clearance": "1 mm",
	  "wall": {"heights": [40, 30, 15, 30], "widths": [15, 12], "depths": [15], "underside": 54},
	  "tall": {"heights": [80, 90], "depths": [24]}, "base": {"heights": [30], "depths": [24], "counter": 1.5},
	  "rail": {"drop": "2 5/16 in", "stock": [84, 78], "kerf": 0.125, "lift": "3/8 in", "end_inset": 0, "longest_span": 24}}`
	c := resolved(t, changed(t, plainRoom, change{"/system", inches}, change{"/plan/cabinets", `[{"id": "c", "kind": "wall", "wall": "a", "from": 0, "width": 304.8, "height": "30 in"}]`}))
	s := c.Kitchen.System
	if fmt.Sprint(s.Wall.Heights) != fmt.Sprint([]length.Length{15 * length.Inch, 30 * length.Inch, 40 * length.Inch}) {
		t.Errorf("heights %v: want them in order, each once", s.Wall.Heights)
	}
	if s.Legs != 4*length.Inch || s.SideClearance != length.Millimetre || s.LegTravel.Down != length.Inch/2 || s.Rail.Drop != length.Inch*37/16 {
		t.Errorf("system %+v", s)
	}
	if fmt.Sprint(s.Rail.Stock) != fmt.Sprint([]length.Length{78 * length.Inch, 84 * length.Inch}) {
		t.Errorf("stock %v", s.Rail.Stock)
	}
	if p := c.Kitchen.Plan.Cabinets[0]; p.Top != 84*length.Inch {
		t.Errorf("top %s: numbers of the plan are the request's, those of the system its own", p.Top)
	}
	sameLines(t, "findings", findings(c), []string{"survey.profile.sparse /survey/walls/0/ceiling"})
}

func TestChoicesAndWorth(t *testing.T) {
	c := resolved(t, changed(t, contractRoom, change{"/choices", `{"s": {"option": "open_part", "spans": [{"wall": "long", "from": 600, "to": 1200}]}, "d1": "move"}`})).Kitchen
	want := kitchen.Choice{Option: kitchen.OpenPart, Pointer: "/choices/s", Spans: []survey.WallSpan{{Wall: 0, From: 600 * length.Millimetre, To: 1200 * length.Millimetre}}}
	if fmt.Sprint(c.Choices["s"]) != fmt.Sprint(want) || c.Choices["d1"].Option != kitchen.Move || len(c.Choices) != 2 {
		t.Errorf("choices %+v", c.Choices)
	}
	if got := c.Prices.Worth.ToCeiling; got.Amount != 300*money.Unit || got.Pointer != "/money/to_ceiling_worth" {
		t.Errorf("worth %+v", got)
	}
	for _, amount := range []string{"0", `"0.00"`, "0e5"} {
		if w := resolved(t, changed(t, contractRoom, change{"/money/to_ceiling_worth", amount})).Kitchen.Prices.Worth.ToCeiling; w.Amount > 0 {
			t.Errorf("%s is no worth", amount)
		}
	}
}

func TestAssumptionsAndQuestionsHaveWords(t *testing.T) {
	for _, body := range []string{plainRoom, contractRoom, aCorner} {
		c := resolved(t, body)
		for _, a := range c.Assumptions {
			worded(t, a.Code, []finding.Param{a.Value}, nil, nil)
		}
		for _, q := range c.Questions {
			worded(t, q.Code, q.Params, nil, nil)
		}
		for _, n := range c.NotAssessed {
			worded(t, n.Code, nil, nil, nil)
		}
	}
}

// Whatever is taken in and not used is listed.
func TestWhatIsNotAssessed(t *testing.T) {
	sameLines(t, "plain room", notAssessed(resolved(t, plainRoom)), []string{
		"job_order not_assessed.job_order ",
		"loads not_assessed.loads ",
	})
	c := resolved(t, changed(t, contractRoom,
		change{"/system", `{"legs": 120, "fit_gap": 2, "wall": {"heights": [660], "depths": [360], "underside": 1460}, "tall": {"heights": [2000], "depths": [600]}, "rail": {"drop": 64}, "mass": {"wall_per_m2_front": 24}}`},
		change{"/plan/counter", ""}, change{soffit + "/inside/priors", `{"empty": 1}`}))
	sameLines(t, "not assessed", notAssessed(c), []string{
		"job_order not_assessed.job_order ",
		"loads not_assessed.loads /system/mass",
		"legs plan.legs.no_travel /system",
		"rail_stock not_assessed.rail_stock /system/rail/stock",
		"work_zone not_assessed.no_counter /plan/counter",
		"air not_assessed.air /plan/cooking/hood/airflow",
		"footprint not_assessed.member /plan/old_cabinets/0/top",
		"loads not_assessed.loads /survey/walls/0/board",
		"air not_assessed.air " + ductBox + "/duct",
	})
	if got := strings.Join(questions(c), "\n"); !strings.Contains(got, "ask.system.stock /system/rail/stock") {
		t.Errorf("the rail's stock is asked for, got\n%s", got)
	}
}

func TestTheTapesStep(t *testing.T) {
	for _, c := range []struct{ units, tape, want string }{
		{"mm", "", "1"}, {"cm", "", "1"}, {"in", "", "1.5875"}, {"mm", "0.5", "0.5"}, {"in", `"1/32 in"`, "0.79375"}, {"cm", "10", "100"},
	} {
		req := decode(t, changed(t, plainRoom, change{"/tape", c.tape}))
		req.Units = c.units
		b := newBody(req, nil, guesses[0])
		b.head()
		if b.out.Tape.MM() != c.want || len(b.faults) > 0 {
			t.Errorf("%s, %s: step %s, want %s", c.units, c.tape, b.out.Tape.MM(), c.want)
		}
	}
	for _, tape := range []string{"0", "-1", "100.000001"} {
		sameLines(t, tape, refused(t, changed(t, plainRoom, change{"/tape", tape})), []string{"request.tape.not_sensible /tape"})
	}
}
