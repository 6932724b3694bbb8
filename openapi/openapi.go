// Package openapi holds the committed contract, as it is served. The documents
// are written from the code; a test fails where they differ from it:
//
//	go test ./internal/httpapi -run TestContractIsUpToDate -update
package openapi

import _ "embed"

// JSON is the contract in OpenAPI 3.1.
//
//go:embed openapi.json
var JSON []byte

// YAML is the contract in OpenAPI 3.1, as YAML.
//
//go:embed openapi.yaml
var YAML []byte

// JSON30 is the contract in OpenAPI 3.0, for tools that have not moved on.
//
//go:embed openapi-3.0.json
var JSON30 []byte
