package decode

import "reflect"

// Decoder reads the bodies of one wire type. It is safe for concurrent use.
type Decoder[T any] struct {
	shape  rule
	schema *schema
}

// New makes a decoder that explains refusals by the contract, in which a wire type is
// described under its own name.
func New[T any](contract *Contract) (*Decoder[T], error) {
	t := reflect.TypeFor[T]()
	schema, err := contract.schema(t.Name())
	if err != nil {
		return nil, err
	}
	return &Decoder[T]{shape: typeRule(t), schema: schema}, nil
}

// Decode reads a body. A refusal is nil when the body is good.
func (d *Decoder[T]) Decode(body []byte) (*T, *Refusal[T]) {
	if req := d.typed(body); req != nil {
		return req, nil
	}
	found := d.schema.walk(body)
	if found.unusable {
		return nil, &Refusal[T]{Faults: found.faults}
	}
	req, err := typed[T](found.rest)
	if err == nil && len(found.faults) == 0 {
		return req, nil
	}
	refusal := &Refusal[T]{Faults: found.faults, Rest: req, holes: found.holes}
	if err != nil {
		refusal.unreadable()
	}
	return nil, refusal
}

// typed reads a body that has nothing wrong with its shape; nil for any other.
func (d *Decoder[T]) typed(body []byte) *T {
	if suspect(body) {
		return nil
	}
	req, err := typed[T](body)
	if err != nil || !d.holds(req) {
		return nil
	}
	return req
}

// holds reports whether a body's members are as their tags say.
func (d *Decoder[T]) holds(req *T) bool { return d.shape(reflect.ValueOf(req).Elem()) }
