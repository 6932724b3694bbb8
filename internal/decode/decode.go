package decode

import (
	"railhead/api"
)

// Decoder reads request bodies. It is safe for concurrent use.
type Decoder struct {
	shape  rule
	schema *schema
}

// New makes a decoder that explains refusals by the contract, given as OpenAPI 3.1 JSON.
func New(contract []byte) (*Decoder, error) {
	schema, err := requestSchema(contract)
	if err != nil {
		return nil, err
	}
	return &Decoder{shape: requestShape(), schema: schema}, nil
}

// Decode reads a body. A refusal is nil when the body is good.
func (d *Decoder) Decode(body []byte) (*api.Request, *Refusal) {
	if req := d.typed(body); req != nil {
		return req, nil
	}
	found := d.schema.walk(body)
	if found.unusable {
		return nil, &Refusal{Faults: found.faults}
	}
	req, err := typed(found.rest)
	if err == nil && len(found.faults) == 0 {
		return req, nil
	}
	refusal := &Refusal{Faults: found.faults, Rest: req, holes: found.holes}
	if err != nil {
		refusal.unreadable()
	}
	return nil, refusal
}

// typed reads a body that has nothing wrong with its shape; nil for any other.
func (d *Decoder) typed(body []byte) *api.Request {
	if suspect(body) {
		return nil
	}
	req, err := typed(body)
	if err != nil || !d.shape.holds(req) {
		return nil
	}
	return req
}
