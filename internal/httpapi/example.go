package httpapi

import (
	"encoding/json"
	"reflect"

	"github.com/danielgtaylor/huma/v2"

	"railhead/api"
)

// bodyForm is a form of body that paths read.
type bodyForm struct {
	of            reflect.Type
	says, example string
}

var (
	requestForm = bodyForm{reflect.TypeFor[api.Request](), "The room, the system and the plan.", exampleRoom}
	layoutForm  = bodyForm{reflect.TypeFor[api.LayoutRequest](), "The room, the system, what is planned already, and what is to be proposed.", exampleLayout}
)

var bodyForms = []bodyForm{requestForm, layoutForm}

// described is the body in the contract.
func (f bodyForm) described(r huma.Registry) *huma.RequestBody {
	var example any
	if err := json.Unmarshal([]byte(f.example), &example); err != nil {
		panic(err) // a constant of the program
	}
	return &huma.RequestBody{
		Required: true, Description: f.says,
		Content: map[string]*huma.MediaType{"application/json": {Schema: r.Schema(f.of, true, ""), Example: example}},
	}
}

// The examples stand in the contract; tests post them.

const exampleRoom = `{
  "units": "mm",
  "survey": {
    "built": 1974,
    "walls": [{
      "id": "sink-side", "length": 2400,
      "floor": [{"at": 0, "down": 1203}, {"at": 2400, "down": 1208}],
      "ceiling": [{"at": 0, "up": 1297}, {"at": 2400, "up": 1299}],
      "overheads": [{
        "id": "s1", "kind": "soffit", "from": 0, "to": 2400, "depth": 330, "structure": "framed",
        "underside": [{"at": 0, "up": 912}, {"at": 2400, "up": 909}]
      }]
    }]
  },
  "system": "demo-rail",
  "plan": {
    "cabinets": [
      {"id": "a", "kind": "wall", "wall": "sink-side", "from": 0, "width": 600, "height": 660},
      {"id": "b", "kind": "wall", "wall": "sink-side", "from": "60 cm", "width": 800, "height": 660}
    ]
  }
}`

const exampleLayout = `{
  "units": "mm",
  "survey": {
    "built": 1974,
    "walls": [{
      "id": "sink-side", "length": 2400,
      "floor": [{"at": 0, "down": 1203}, {"at": 2400, "down": 1208}],
      "ceiling": [{"at": 0, "up": 1297}, {"at": 2400, "up": 1299}],
      "openings": [{"id": "w1", "kind": "window", "from": 900, "to": 1500, "sill": 1050, "head": 2050}],
      "overheads": [{
        "id": "s1", "kind": "soffit", "from": 0, "to": 2400, "depth": 330, "structure": "framed",
        "underside": [{"at": 0, "up": 912}, {"at": 2400, "up": 909}]
      }]
    }]
  },
  "system": "demo-rail",
  "fill": {"kinds": ["wall", "base"], "best": 2, "least_filler": 20, "equal_beside": ["window"], "weights": {"filler_per_mm": "0.1"}}
}`
