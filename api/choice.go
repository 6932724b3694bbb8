package api

import (
	"github.com/go-json-experiment/json"
	"github.com/go-json-experiment/json/jsontext"
)

// Choice is what the planner decided about one overhead (or one part_of group):
// an option's name, or an object with spans.
type Choice struct {
	Option string       `json:"option" enum:"keep,trim,open_part,remove_taller,remove_close,remove_open,move" doc:"What is done with the overhead."`
	Spans  []ChoiceSpan `json:"spans,omitempty" maxItems:"50" doc:"For open_part: the spans to open; default the spans over the cabinets in the way."`
	// Bare is true when the option's name stood in place of an object.
	Bare bool `json:"-"`
}

// ChoiceSpan is a stretch of wall.
type ChoiceSpan struct {
	Wall string `json:"wall" pattern:"^[A-Za-z0-9._-]{1,40}$" doc:"The wall it lies on."`
	From Length `json:"from" doc:"Its left end."`
	To   Length `json:"to" doc:"Its right end."`
}

// UnmarshalJSONFrom reads an option's name, or an object with spans.
func (c *Choice) UnmarshalJSONFrom(dec *jsontext.Decoder) error {
	if dec.PeekKind() == '"' {
		c.Bare = true
		return json.UnmarshalDecode(dec, &c.Option)
	}
	type plain Choice
	return json.UnmarshalDecode(dec, (*plain)(c))
}

// UnmarshalJSON reads an option's name, or an object with spans.
func (c *Choice) UnmarshalJSON(data []byte) error { return strict(data, c) }

// MarshalJSONTo writes the form that was sent.
func (c Choice) MarshalJSONTo(enc *jsontext.Encoder) error {
	if c.Bare {
		return enc.WriteToken(jsontext.String(c.Option))
	}
	type plain Choice
	return json.MarshalEncode(enc, plain(c))
}

// MarshalJSON writes the form that was sent.
func (c Choice) MarshalJSON() ([]byte, error) { return json.Marshal(c) }
