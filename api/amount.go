package api

import (
	"bytes"
	"encoding/json"
)

// Amount is an exact decimal in a request (money, a probability, hours), sent as a string or
// as a number and kept as text. The zero Amount is an absent one.
type Amount struct {
	Text   string
	Quoted bool
}

// IsZero reports whether the amount was left out.
func (a Amount) IsZero() bool { return a == Amount{} }

// Given reports whether the amount was sent.
func (a Amount) Given() bool { return !a.IsZero() }

// UnmarshalJSON keeps the decimal's text.
func (a *Amount) UnmarshalJSON(data []byte) error {
	data = bytes.TrimSpace(data)
	if len(data) > 0 && data[0] == '"' {
		a.Quoted = true
		return json.Unmarshal(data, &a.Text)
	}
	*a = Amount{Text: string(data)}
	return nil
}

// MarshalJSON writes the amount the way it was sent.
func (a Amount) MarshalJSON() ([]byte, error) {
	if a.Quoted {
		return json.Marshal(a.Text)
	}
	return []byte(a.Text), nil
}

// Rate replaces one built-in rate: a single amount, or a spread.
type Rate struct {
	Low        Amount `json:"low,omitzero"`
	Likely     Amount `json:"likely"`
	High       Amount `json:"high,omitzero"`
	TaxPercent Amount `json:"tax_percent,omitzero"`
	// Bare is true when a single amount stood in place of an object; it is then in Likely.
	Bare bool `json:"-"`
}

// UnmarshalJSON reads either form.
func (r *Rate) UnmarshalJSON(data []byte) error {
	data = bytes.TrimSpace(data)
	if len(data) == 0 || data[0] != '{' {
		r.Bare = true
		return r.Likely.UnmarshalJSON(data)
	}
	type plain Rate
	return strictObject(data, (*plain)(r))
}

// MarshalJSON writes the form that was sent.
func (r Rate) MarshalJSON() ([]byte, error) {
	if r.Bare {
		return r.Likely.MarshalJSON()
	}
	type plain Rate
	return json.Marshal(plain(r))
}

// UnmarshalJSON reads an option's name, or an object with spans.
func (c *Choice) UnmarshalJSON(data []byte) error {
	data = bytes.TrimSpace(data)
	if len(data) > 0 && data[0] == '"' {
		c.Bare = true
		return json.Unmarshal(data, &c.Option)
	}
	type plain Choice
	return strictObject(data, (*plain)(c))
}

// MarshalJSON writes the form that was sent.
func (c Choice) MarshalJSON() ([]byte, error) {
	if c.Bare {
		return json.Marshal(c.Option)
	}
	type plain Choice
	return json.Marshal(plain(c))
}

func strictObject(data []byte, into any) error {
	dec := json.NewDecoder(bytes.NewReader(data))
	dec.DisallowUnknownFields()
	return dec.Decode(into)
}
