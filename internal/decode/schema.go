package decode

import (
	"bytes"
	"fmt"

	"github.com/santhosh-tekuri/jsonschema/v6"
)

// schema is the contract's schema of a body, compiled once.
type schema struct{ root *jsonschema.Schema }

const contractURL = "contract.json"

// Contract is what bodies are held against. Types share what they are made of, so it is
// read once for all of them. It is for one goroutine.
type Contract struct{ compiler *jsonschema.Compiler }

// Read reads the contract, given as OpenAPI 3.1 JSON.
func Read(contract []byte) (*Contract, error) {
	document, err := jsonschema.UnmarshalJSON(bytes.NewReader(contract))
	if err != nil {
		return nil, fmt.Errorf("read the contract: %w", err)
	}
	compiler := jsonschema.NewCompiler()
	compiler.DefaultDraft(jsonschema.Draft2020)
	if err := compiler.AddResource(contractURL, document); err != nil {
		return nil, fmt.Errorf("read the contract: %w", err)
	}
	return &Contract{compiler}, nil
}

// schema is the schema of a wire type, which is described under its name.
func (c *Contract) schema(name string) (*schema, error) {
	root, err := c.compiler.Compile(contractURL + "#/components/schemas/" + name)
	if err != nil {
		return nil, fmt.Errorf("compile the contract: %w", err)
	}
	return &schema{root}, nil
}

// plain follows references.
func plain(s *jsonschema.Schema) *jsonschema.Schema {
	for s.Ref != nil {
		s = s.Ref
	}
	return s
}

// forms are the schemas that a value may follow, one for each of its JSON types.
func forms(s *jsonschema.Schema) []*jsonschema.Schema {
	if len(s.OneOf) == 0 {
		return []*jsonschema.Schema{s}
	}
	var all []*jsonschema.Schema
	for _, form := range s.OneOf {
		all = append(all, forms(plain(form))...)
	}
	return all
}

// ofType picks the form that takes values of a JSON type; nil where none does.
func ofType(s *jsonschema.Schema, name string) *jsonschema.Schema {
	for _, form := range forms(plain(s)) {
		for _, t := range types(form) {
			if t == name || t == "integer" && name == "number" {
				return form
			}
		}
	}
	return nil
}

func types(s *jsonschema.Schema) []string {
	if s.Types == nil {
		return nil
	}
	return s.Types.ToStrings()
}
