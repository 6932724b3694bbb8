package httpapi

import (
	"encoding/json"

	"github.com/danielgtaylor/huma/v2"

	"railhead/api"
)

// exampleRoom stands in the contract as an example of a request. A test posts it.
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

// requestBody describes the body that an operation reads.
func requestBody(r huma.Registry) *huma.RequestBody {
	var example any
	if err := json.Unmarshal([]byte(exampleRoom), &example); err != nil {
		panic(err) // a constant of the program
	}
	return &huma.RequestBody{
		Required: true, Description: "The room, the system and the plan.",
		Content: map[string]*huma.MediaType{"application/json": {Schema: object[api.Request](r), Example: example}},
	}
}
