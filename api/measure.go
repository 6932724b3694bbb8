package api

import "github.com/go-json-experiment/json/jsontext"

// Decimal is an exact decimal number written into JSON as a bare number.
type Decimal string

// MarshalJSONTo writes the digits as they are.
func (d Decimal) MarshalJSONTo(enc *jsontext.Encoder) error {
	return enc.WriteValue(jsontext.Value(d))
}

// MarshalJSON writes the digits as they are.
func (d Decimal) MarshalJSON() ([]byte, error) { return []byte(d), nil }

// UnmarshalJSON keeps the digits as they are.
func (d *Decimal) UnmarshalJSON(data []byte) error {
	*d = Decimal(data)
	return nil
}

// Measure is a length in an answer.
type Measure struct {
	MM      Decimal `json:"mm" doc:"Exact, in millimetres; the authoritative value."`
	Inches  Decimal `json:"in" doc:"In inches, rounded to 6 places."`
	Tape    string  `json:"tape" doc:"The mark on a tape, in the request's units and step, rounded to the safe side."`
	TapeOff Decimal `json:"tape_off,omitzero" doc:"Millimetres from the exact value to the mark; absent where the mark is exact."`
}
