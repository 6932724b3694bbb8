package api

import (
	"github.com/go-json-experiment/json"
	"github.com/go-json-experiment/json/jsontext"
)

// Rate replaces one built-in rate: a single amount, or a spread.
type Rate struct {
	Low        Amount `json:"low,omitzero" doc:"Least that it may come to."`
	Likely     Amount `json:"likely" doc:"What it most likely comes to."`
	High       Amount `json:"high,omitzero" doc:"Most that it may come to."`
	TaxPercent Amount `json:"tax_percent,omitzero" doc:"Tax on top, in percent."`
	// Bare is true when a single amount stood in place of an object; it is then in Likely.
	Bare bool `json:"-"`
}

// UnmarshalJSONFrom reads either form.
func (r *Rate) UnmarshalJSONFrom(dec *jsontext.Decoder) error {
	if dec.PeekKind() != '{' {
		r.Bare = true
		return r.Likely.UnmarshalJSONFrom(dec)
	}
	type plain Rate
	return json.UnmarshalDecode(dec, (*plain)(r))
}

// UnmarshalJSON reads either form.
func (r *Rate) UnmarshalJSON(data []byte) error { return strict(data, r) }

// MarshalJSONTo writes the form that was sent.
func (r Rate) MarshalJSONTo(enc *jsontext.Encoder) error {
	if r.Bare {
		return r.Likely.MarshalJSONTo(enc)
	}
	type plain Rate
	return json.MarshalEncode(enc, plain(r))
}

// MarshalJSON writes the form that was sent.
func (r Rate) MarshalJSON() ([]byte, error) { return json.Marshal(r) }
