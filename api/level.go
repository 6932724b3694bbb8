package api

import (
	"github.com/go-json-experiment/json"
	"github.com/go-json-experiment/json/jsontext"
)

// Reading is one measured level. Exactly one of Height, Up, Down and AboveFloor
// is given.
type Reading struct {
	Height     Length `json:"height,omitzero" doc:"Above the survey's own zero."`
	Up         Length `json:"up,omitzero" doc:"Upwards from the laser line."`
	Down       Length `json:"down,omitzero" doc:"Downwards from the laser line."`
	AboveFloor Length `json:"above_floor,omitzero" doc:"Taped from the floor right there, as the floor was found."`
	Laser      string `json:"laser,omitempty" pattern:"^[A-Za-z0-9._-]{1,40}$" doc:"The laser set-up that 'up' and 'down' count from; default the wall's."`
	Tolerance  Length `json:"tolerance,omitzero" doc:"Half-width of this reading's doubt; default the survey's."`
}

// Level is a surveyed level: a bare length is above the floor right there, an
// object is a [Reading].
type Level struct {
	Reading
	// Bare is true when a length stood in place of an object; it is then in AboveFloor.
	Bare bool `json:"-"`
}

// IsZero reports whether the level was left out.
func (l Level) IsZero() bool { return l == Level{} }

// Given reports whether the level was sent.
func (l Level) Given() bool { return !l.IsZero() }

// UnmarshalJSONFrom reads either form. An empty object is no level.
func (l *Level) UnmarshalJSONFrom(dec *jsontext.Decoder) error {
	if dec.PeekKind() != '{' {
		l.Bare = true
		return l.AboveFloor.UnmarshalJSONFrom(dec)
	}
	if err := json.UnmarshalDecode(dec, &l.Reading); err != nil {
		return err
	}
	if l.Reading == (Reading{}) {
		return errForm
	}
	return nil
}

// UnmarshalJSON reads either form.
func (l *Level) UnmarshalJSON(data []byte) error { return strict(data, l) }

// MarshalJSONTo writes the form that was sent.
func (l Level) MarshalJSONTo(enc *jsontext.Encoder) error {
	if l.Bare {
		return l.AboveFloor.MarshalJSONTo(enc)
	}
	return json.MarshalEncode(enc, l.Reading)
}

// MarshalJSON writes the form that was sent.
func (l Level) MarshalJSON() ([]byte, error) { return json.Marshal(l) }
