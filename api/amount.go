package api

import (
	"github.com/go-json-experiment/json"
	"github.com/go-json-experiment/json/jsontext"
)

// Amount is an exact decimal in a request (money, a probability, hours), sent as a string or
// as a number and kept as text. The zero Amount is an absent one.
type Amount struct {
	// Text is the number's digits, or the string's content.
	Text string
	// Quoted is true for a JSON string.
	Quoted bool
}

// IsZero reports whether the amount was left out.
func (a Amount) IsZero() bool { return a == Amount{} }

// Given reports whether the amount was sent.
func (a Amount) Given() bool { return !a.IsZero() }

// UnmarshalJSONFrom keeps the decimal's text.
func (a *Amount) UnmarshalJSONFrom(dec *jsontext.Decoder) (err error) {
	a.Text, a.Quoted, err = readText(dec)
	return err
}

// UnmarshalJSON keeps the decimal's text.
func (a *Amount) UnmarshalJSON(data []byte) error { return strict(data, a) }

// MarshalJSONTo writes the amount the way it was sent.
func (a Amount) MarshalJSONTo(enc *jsontext.Encoder) error {
	return writeText(enc, a.Text, a.Quoted)
}

// MarshalJSON writes the amount the way it was sent.
func (a Amount) MarshalJSON() ([]byte, error) { return json.Marshal(a) }
