package assess

import (
	"slices"
	"strings"
	"testing"

	"railhead/api"
)

// A wall of 3 m with a window, in which rows can be asked for what cannot be had.
const windowWall = `{"units": "mm", "system": "demo-rail", "survey": {"walls": [{"id": "w", "length": 3000,
	"floor": [{"at": 0, "height": 0}], "ceiling": [{"at": 0, "height": 2500}],
	"openings": [{"id": "win", "kind": "window", "from": 200, "to": 1400, "sill": 1050, "head": 2050, "casing": 50}]}]}}`

// What is said to have to be given up is given up, one by one where one is enough, and
// then there are layouts.
func TestWhatToGiveUpIsEnough(t *testing.T) {
	for _, c := range []struct {
		name, ask string
		code      string
		pointer   string
		without   string // patch that gives it up
	}{
		{"equal cabinets beside a window that leaves 150 mm", `{"fill": {"equal_beside": ["window"]}}`,
			"layout.relax.equal", "/survey/walls/0/openings/0", `{"fill": {"equal_beside": null}}`},
		{"330 mm between two dishwashers that may not stay open", `{"fill": {"closed": true, "least_filler": 200, "kinds": ["base"]}, "plan": {"appliances": [
			{"id": "d", "kind": "dishwasher", "wall": "w", "from": 0, "width": 600}, {"id": "e", "kind": "dishwasher", "wall": "w", "from": 930, "width": 600}]}}`,
			"layout.relax.closed", "/fill/closed", `{"fill": {"closed": null}}`},
		{"a sink wider than any cabinet", `{"fill": {"kinds": ["base"]}, "plan": {"appliances": [{"id": "k", "kind": "sink", "wall": "w", "from": 1000, "width": 900}]}}`,
			"layout.relax.whole", "/plan/appliances/0", `{"plan": {"appliances": null}}`},
	} {
		t.Run(c.name, func(t *testing.T) {
			body := merged(t, windowWall, c.ask)
			a := layouts(t, body)
			if len(a.Layouts) != 0 || len(a.Relax) == 0 {
				t.Fatalf("%d layouts, relax %+v", len(a.Layouts), a.Relax)
			}
			i := slices.IndexFunc(a.Relax, func(r api.Relax) bool { return r.Code == c.code })
			if i < 0 || !a.Relax[i].Alone || a.Relax[i].Pointer != c.pointer || strings.Contains(a.Relax[i].Says, "{") {
				t.Fatalf("relax %+v, want %s at %s", a.Relax, c.code, c.pointer)
			}
			if given := layouts(t, merged(t, body, c.without)); len(given.Layouts) == 0 {
				t.Errorf("given up, and there is still none: %+v", given.Relax)
			}
		})
	}
}
