package resolve

import (
	"testing"

	"railhead/internal/cabinet"
	"railhead/internal/length"
)

// Sizes and clearances that are assumed are facts of the trade without a document, but what a range asks for: 30 in
// (762 mm) up to what can burn, IRC M1901.1 and fuel gas G2447.5 (from memory).
func TestAppliances(t *testing.T) {
	for _, c := range []struct {
		name, appliance string
		changes         []change
		want            string // underside, top, depth, left, right, above
		assumed         []string
	}{
		{"a fridge of ordinary size", `"kind": "fridge"`, nil, "- 1800 650 13 13 25", []string{
			"assume.appliance.fridge_depth 650 /plan/appliances/0/depth", "assume.appliance.fridge_height 1800 /plan/appliances/0/height",
			"assume.appliance.fridge_beside 13 /plan/appliances/0/clearance/left", "assume.appliance.fridge_above 25 /plan/appliances/0/clearance/above"}},
		{"a fridge by its instructions", `"kind": "fridge", "height": 1750, "depth": 700, "clearance": {"left": 0, "right": 20, "above": 100}`, nil, "- 1750 700 0 20 100", nil},
		{"a range up to the counter", `"kind": "range", "depth": 600`, nil, "- 900 600 0 0 762", []string{"assume.appliance.range_above 762 /plan/appliances/0/clearance/above"}},
		{"a range that cooking tells of", `"kind": "range", "depth": 600`, []change{{"/plan/cooking", `{"wall": "a", "from": 100, "to": 700, "energy": "gas"}`}}, "- 900 600 0 0 0", nil},
		{"a range beside the cooking", `"kind": "range", "depth": 600`, []change{{"/plan/cooking", `{"wall": "a", "from": 600, "to": 1200, "energy": "gas"}`}}, "- 900 600 0 0 762",
			[]string{"assume.appliance.range_above 762 /plan/appliances/0/clearance/above"}},
		{"a dishwasher under the counter", `"kind": "dishwasher", "depth": 600`, []change{{"/plan/counter", "950"}}, "- 950 600 0 0 0", nil},
		{"where no counter is known", `"kind": "dishwasher", "depth": 600`, []change{{"/system", `{"legs": 100, "fit_gap": 2}`}}, "- 900 600 0 0 0",
			[]string{"assume.appliance.counter 900 /plan/counter"}},
		{"a sink in the counter", `"kind": "sink"`, nil, "- 900 600 0 0 450", []string{
			"assume.appliance.sink_depth 600 /plan/appliances/0/depth", "assume.appliance.sink_above 450 /plan/appliances/0/clearance/above"}},
		{"a hood up to the ceiling", `"kind": "hood", "depth": 500`, nil, "1510 100000 500 0 0 0", []string{"assume.appliance.hood_underside 1510 /plan/appliances/0/underside"}},
		{"a hood where cooking says", `"kind": "hood", "depth": 500, "height": 60`, []change{{"/plan/cooking", `{"wall": "a", "from": 0, "to": 600, "energy": "gas", "hood": {"kind": "ducted", "underside": 1600}}`}},
			"1600 1660 500 0 0 0", nil},
		{"a boiler on the wall", `"kind": "other", "depth": 400, "underside": 1300, "height": 700, "clearance": {"above": 300}`, nil, "1300 2000 400 0 0 300", nil},
		{"a radiator on the floor", `"kind": "other", "depth": 100, "height": 600`, nil, "- 600 100 0 0 0", nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			body := changed(t, plainRoom, append([]change{{"/plan/counter", "900"}, {"/plan/appliances", `[{"id": "x", "wall": "a", "from": 0, "width": 600, ` + c.appliance + `}]`}}, c.changes...)...)
			if c.changes != nil && c.changes[0].pointer == "/system" {
				body = changed(t, body, change{"/plan/counter", ""})
			}
			got := resolved(t, body)
			a := got.Kitchen.Plan.Appliances[0]
			under := "-"
			if a.Hangs {
				under = a.Underside.MM()
			}
			told := under + " " + a.Top.MM() + " " + a.Depth.MM() + " " + a.Left.Need.MM() + " " + a.Right.Need.MM() + " " + a.Above.Need.MM()
			if told != c.want || a.From != 0 || a.To != 600*length.Millimetre || a.ID != "x" {
				t.Errorf("%s, want %s", told, c.want)
			}
			var assumed []string
			for _, line := range assumptions(got) {
				if len(line) > len("assume.appliance.") && line[:len("assume.appliance.")] == "assume.appliance." {
					assumed = append(assumed, line)
				}
			}
			sameLines(t, "assumed", assumed, c.assumed)
		})
	}
}

func TestClearancesKnowWhoStatedThem(t *testing.T) {
	body := changed(t, plainRoom, change{"/plan/appliances", `[{"id": "x", "kind": "fridge", "wall": "a", "from": 0, "width": 600, "clearance": {"left": 0}}]`})
	a := resolved(t, body).Kitchen.Plan.Appliances[0]
	if !a.Left.Stated || a.Left.Need != 0 || a.Right.Stated || a.Right.Need != 13*length.Millimetre {
		t.Errorf("left %+v as the request has it, right %+v assumed", a.Left, a.Right)
	}
}

func TestAppliancesInOnePlace(t *testing.T) {
	body := changed(t, plainRoom, change{"/plan/appliances", `[
		{"id": "r", "kind": "range", "wall": "a", "from": 0, "width": 600}, {"id": "h", "kind": "hood", "wall": "a", "from": 0, "width": 600},
		{"id": "f", "kind": "fridge", "wall": "a", "from": 590, "width": 600}, {"id": "d", "kind": "dishwasher", "wall": "a", "from": 1190, "width": 600}]`})
	var got []string
	for _, f := range resolved(t, body).Findings {
		worded(t, f.Code, f.Params, f.Need, f.Have)
		got = append(got, f.Code+" "+f.Pointer)
	}
	sameLines(t, "findings", got, []string{"plan.appliance.overlap /plan/appliances/2"})
}

func TestCabinetsThatStay(t *testing.T) {
	body := changed(t, plainRoom, change{"/plan/cabinets", `[{"id": "a", "kind": "base", "wall": "a", "from": 0, "width": 600, "height": 740, "keep": true},
		{"id": "b", "kind": "base", "wall": "a", "from": 600, "width": 600, "height": 740}]`})
	if c := resolved(t, body).Kitchen.Plan.Cabinets; !c[0].Keep || c[1].Keep || c[0].Kind != cabinet.Base {
		t.Errorf("stays %v, %v; want the first only", c[0].Keep, c[1].Keep)
	}
}
