package decode

import (
	"bytes"

	"github.com/go-json-experiment/json"
	"github.com/go-json-experiment/json/jsontext"
)

var strict = json.JoinOptions(
	json.RejectUnknownMembers(true),
	json.WithUnmarshalers(json.UnmarshalFromFunc(readInteger)),
)

// typed is the one strict decode: unknown and duplicate members, names in other
// case, bad UTF-8 and lone surrogates are errors.
func typed[T any](body []byte) (*T, error) {
	req := new(T)
	if err := json.Unmarshal(body, req, strict); err != nil {
		return nil, err
	}
	return req, nil
}

// readInteger reads a number that is whole, however it is written (1968, 1968.0,
// 1.968e3), as JSON schema has it. Zero is refused, since a decoded zero could
// not be told from an absent member; no integer of the contract may be zero.
func readInteger(dec *jsontext.Decoder, into *int) error {
	token, err := dec.ReadToken()
	if err != nil {
		return err
	}
	n, whole := wholeNumber(token.String())
	if token.Kind() != '0' || !whole || n == 0 {
		return errInteger
	}
	*into = n
	return nil
}

// largeBody is beyond what any ordinary room takes.
const largeBody = 64 << 10

// suspect reports whether a body should be looked at more closely before it is
// decoded. It may hold what a typed decode would take for an absent member: a
// null or an empty text, which the contract allows nowhere. Or it is so large
// that lists of next to nothing, a few bytes each, would fill the memory as Go values.
func suspect(body []byte) bool {
	return len(body) > largeBody || bytes.Contains(body, []byte("null")) || emptyText(body)
}

// emptyText finds two quotes in a row that are not an escaped quote at a text's end.
func emptyText(body []byte) bool {
	for at := 0; ; {
		next := bytes.Index(body[at:], []byte(`""`))
		if next < 0 {
			return false
		}
		at += next
		if at == 0 || body[at-1] != '\\' {
			return true
		}
		at += 2
	}
}
