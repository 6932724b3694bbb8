package api

import (
	"github.com/go-json-experiment/json"
	"github.com/go-json-experiment/json/jsontext"
)

// Length is a length as it stands in a request: a JSON number in the request's
// units, or a string that says its own unit. It keeps the text as sent, because
// the unit of a number is known only once the whole body is read; a text that
// means no length is refused by the checks, with its pointer.
//
// The zero Length is an absent one.
type Length struct {
	// Text is the number's digits, or the string's content.
	Text string
	// Quoted is true for a JSON string.
	Quoted bool
}

// Number is a length given as a number in the request's units.
func Number(text string) Length { return Length{Text: text} }

// Quoted is a length given as a string with its own unit.
func Quoted(text string) Length { return Length{Text: text, Quoted: true} }

// IsZero reports whether the length was left out.
func (l Length) IsZero() bool { return l == Length{} }

// Given reports whether the length was sent.
func (l Length) Given() bool { return !l.IsZero() }

// UnmarshalJSONFrom keeps the text of a number or of a string.
func (l *Length) UnmarshalJSONFrom(dec *jsontext.Decoder) (err error) {
	l.Text, l.Quoted, err = readText(dec)
	return err
}

// UnmarshalJSON keeps the text of a number or of a string.
func (l *Length) UnmarshalJSON(data []byte) error { return strict(data, l) }

// MarshalJSONTo writes the length the way it was sent.
func (l Length) MarshalJSONTo(enc *jsontext.Encoder) error {
	return writeText(enc, l.Text, l.Quoted)
}

// MarshalJSON writes the length the way it was sent.
func (l Length) MarshalJSON() ([]byte, error) { return json.Marshal(l) }
