package api

import (
	"errors"

	"github.com/go-json-experiment/json"
	"github.com/go-json-experiment/json/jsontext"
)

// The types that take more than one JSON form read themselves token by token
// from the decoder they are given, so that its options (unknown members,
// duplicate names, invalid text) hold inside them too. Their UnmarshalJSON is
// for callers who use encoding/json, and is just as strict.

// errForm says that a value has a JSON form that its type does not take. Where
// and why is worked out by whoever explains a refused body.
var errForm = errors.New("this JSON form is not allowed here")

// strict decodes one value with unknown members refused.
func strict(data []byte, into any) error {
	return json.Unmarshal(data, into, json.RejectUnknownMembers(true))
}

// readText reads a number's digits or a string's content.
func readText(dec *jsontext.Decoder) (text string, quoted bool, err error) {
	token, err := dec.ReadToken()
	if err != nil {
		return "", false, err
	}
	switch token.Kind() {
	case '0':
		return token.String(), false, nil
	case '"':
		return token.String(), true, nil
	}
	return "", false, errForm
}

// writeText writes what readText read.
func writeText(enc *jsontext.Encoder, text string, quoted bool) error {
	if quoted {
		return enc.WriteToken(jsontext.String(text))
	}
	return enc.WriteValue(jsontext.Value(text))
}
