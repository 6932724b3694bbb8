package assess

import (
	"context"
	"encoding/json"
	"strings"
	"testing"

	"railhead/api"
)

// merged applies RFC 7396 merge patches to a JSON text.
func merged(t testing.TB, base string, patches ...string) string {
	t.Helper()
	target := decoded(t, base)
	for _, p := range patches {
		target = patch(target, decoded(t, p))
	}
	out, err := json.Marshal(target)
	if err != nil {
		t.Fatal(err)
	}
	return string(out)
}

func decoded(t testing.TB, text string) any {
	t.Helper()
	var out any
	dec := json.NewDecoder(strings.NewReader(text))
	dec.UseNumber()
	if err := dec.Decode(&out); err != nil {
		t.Fatalf("%v in %s", err, text)
	}
	return out
}

func patch(target, p any) any {
	fields, ok := p.(map[string]any)
	if !ok {
		return p
	}
	object, ok := target.(map[string]any)
	if !ok {
		object = map[string]any{}
	}
	for name, value := range fields {
		if value == nil {
			delete(object, name)
		} else {
			object[name] = patch(object[name], value)
		}
	}
	return object
}

// request reads a body into the wire type.
func request(t testing.TB, body string) *api.Request {
	t.Helper()
	var req api.Request
	if err := json.Unmarshal([]byte(body), &req); err != nil {
		t.Fatalf("%v in %s", err, body)
	}
	return &req
}

// answer assesses a body that must be good.
func answer(t testing.TB, body string) *api.Assessment {
	t.Helper()
	out, faults := Assess(context.Background(), request(t, body), All)
	if len(faults) > 0 {
		t.Fatalf("refused: %+v", faults)
	}
	return out
}

// fitOf finds one cabinet's fit.
func fitOf(t testing.TB, a *api.Assessment, id string) api.Fit {
	t.Helper()
	for _, f := range a.Fit {
		if f.Cabinet == id {
			return f
		}
	}
	t.Fatalf("no fit of cabinet %q", id)
	return api.Fit{}
}

// plain is a level room with one 3.6 m wall and nothing in it, in the invented
// rail-hung system: its 660 row ends at 2120, and the 900 row at 2360.
const plain = `{
	"units": "mm",
	"survey": {"tolerance": 0.1, "walls": [{"id": "w", "length": 3600, "floor": [{"at": 0, "height": 0}], "ceiling": [{"at": 0, "height": 2500}]}]},
	"system": {"units": "mm", "legs": 120, "leg_travel": {"up": 20, "down": 30},
		"wall": {"heights": [340, 500, 660, 900], "widths": [300, 400, 600, 800], "depths": [360], "underside": 1460},
		"tall": {"heights": [1840, 2000, 2240], "widths": [400, 600], "depths": [600]},
		"base": {"heights": [740], "widths": [300, 400, 600, 800], "depths": [600], "counter": 40},
		"rail": {"drop": 64, "profile": 32, "stock": [2400], "kerf": 3, "hanger_up": 12, "hanger_down": 8, "lift": 10, "end_inset": 40, "longest_span": 610},
		"fit_gap": 2, "side_clearance": 3},
	"plan": {"counter": 900, "least_counter": 900, "cabinets": [{"id": "a", "kind": "wall", "wall": "w", "from": 600, "width": 600, "height": 660}]}
}`

// wall patches the plain room's one wall.
func wall(members string) string {
	return `{"survey": {"walls": [{"id": "w", "length": 3600, "floor": [{"at": 0, "height": 0}], "ceiling": [{"at": 0, "height": 2500}], ` + members + `}]}}`
}

// soffit is an overhead along the plain room's wall.
func soffit(members string) string {
	return wall(`"overheads": [{"id": "s", "kind": "soffit", "from": 0, "to": 3600, "depth": 330, "structure": "framed", ` + members + `}]`)
}
