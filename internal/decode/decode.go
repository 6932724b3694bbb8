package decode

import (
	"railhead/api"
)

// Decoder reads request bodies. It is safe for concurrent use.
type Decoder struct {
	shape     rule
	schema    *schema
	relations *relations
}

// New makes a decoder that explains refusals by the contract, given as OpenAPI 3.1 JSON.
func New(contract []byte) (*Decoder, error) {
	schema, err := requestSchema(contract)
	if err != nil {
		return nil, err
	}
	return &Decoder{shape: requestShape(), schema: schema, relations: newRelations()}, nil
}

// Decode reads a body. A refusal is nil when the body is good.
func (d *Decoder) Decode(body []byte) (*api.Request, *Refusal) {
	if req := d.typed(body); req != nil {
		return d.related(req, &Refusal{})
	}
	found := d.schema.walk(body)
	refusal := &Refusal{Faults: found.faults}
	if found.unusable {
		return nil, refusal
	}
	req, err := typed(found.rest)
	if err != nil {
		refusal.unreadable()
		return nil, refusal
	}
	refusal.holes = found.holes
	return d.related(req, refusal)
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

// related checks the relations between members, on top of what was found already.
func (d *Decoder) related(req *api.Request, refusal *Refusal) (*api.Request, *Refusal) {
	refusal.addRelations(d.relations.check(req))
	if len(refusal.Faults) == 0 {
		return req, nil
	}
	refusal.Rest = req
	return nil, refusal
}
