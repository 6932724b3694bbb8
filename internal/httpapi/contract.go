package httpapi

import (
	"bytes"
	"encoding/json"

	"github.com/danielgtaylor/huma/v2"
	"github.com/danielgtaylor/huma/v2/yaml"
)

// contractVersion is the version of the contract, not of the program.
const contractVersion = "1.0.0"

const about = `Checks modular kitchen cabinets, hung on a rail or screwed through hanging strips, against a surveyed room.

One request describes the room, the cabinet system and the plan. The answer says what fits and by how much, where the
rails and the cuts go, and whether each soffit, lowered ceiling or box is kept, trimmed or taken down, with the reasons.

Lengths in a request are numbers in its units or texts with their own unit; lengths in an answer are exact millimetres,
inches and a mark on the tape. Equal requests give byte-equal answers for one edition. Nothing is kept.
Answers may gain members and enum values within v1; codes and params are stable, sentences are not.`

// contract describes the service in OpenAPI 3.1.
func contract() huma.Config {
	registry := huma.NewMapRegistry("#/components/schemas/", huma.DefaultSchemaNamer)
	return huma.Config{
		OpenAPI: &huma.OpenAPI{
			OpenAPI:    "3.1.0",
			Info:       &huma.Info{Title: "railhead", Version: contractVersion, Description: about},
			Servers:    []*huma.Server{{URL: "/", Description: "This service"}},
			Components: &huma.Components{Schemas: registry},
			Tags: []*huma.Tag{
				{Name: tagAssess, Description: "A surveyed room and a plan in, answers out."},
				{Name: tagLayouts, Description: "A surveyed room in, cabinets for its walls out."},
				{Name: tagSystems, Description: "The built-in cabinet systems."},
			},
		},
		Formats:                      map[string]huma.Format{"application/json": jsonFormat, "json": jsonFormat},
		DefaultFormat:                "application/json",
		RejectUnknownQueryParameters: true,
	}
}

// Documents are the forms of the contract that are committed and served.
type Documents struct {
	JSON, YAML, JSON30 []byte
}

// documents writes the contract in its three forms.
func documents(o *huma.OpenAPI) (d Documents, err error) {
	if d.JSON, err = indented(o.MarshalJSON()); err != nil {
		return d, err
	}
	var y bytes.Buffer
	if err = yaml.Convert(&y, bytes.NewReader(d.JSON)); err != nil {
		return d, err
	}
	d.YAML = y.Bytes()
	old, err := o.Downgrade()
	if err != nil {
		return d, err
	}
	d.JSON30, err = indented(for30(old))
	return d, err
}

func indented(document []byte, err error) ([]byte, error) {
	if err != nil {
		return nil, err
	}
	var out bytes.Buffer
	err = json.Indent(&out, document, "", "  ")
	out.WriteByte('\n')
	return out.Bytes(), err
}

// for30 takes out what OpenAPI 3.0 does not have: keywords beside a
// reference, patterns for the names of a map, and lists of examples.
func for30(document []byte) ([]byte, error) {
	var tree any
	if err := json.Unmarshal(document, &tree); err != nil {
		return nil, err
	}
	simplify(tree)
	return json.Marshal(tree)
}

func simplify(tree any) {
	switch at := tree.(type) {
	case []any:
		for _, item := range at {
			simplify(item)
		}
	case map[string]any:
		delete(at, "propertyNames")
		if examples, ok := at["examples"].([]any); ok {
			delete(at, "examples")
			at["example"] = examples[0]
		}
		if ref, ok := at["$ref"].(string); ok && len(at) > 1 {
			delete(at, "$ref")
			at["allOf"] = []any{map[string]any{"$ref": ref}}
		}
		for _, item := range at {
			simplify(item)
		}
	}
}
