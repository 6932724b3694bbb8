package api

import (
	"github.com/go-json-experiment/json"
	"github.com/go-json-experiment/json/jsontext"
)

// System is a cabinet system: a built-in's id, or its parameters.
type System struct {
	ID     string        `json:"-"`
	Inline *InlineSystem `json:"-"`
}

// UnmarshalJSONFrom reads an id or an object.
func (s *System) UnmarshalJSONFrom(dec *jsontext.Decoder) error {
	if dec.PeekKind() == '"' {
		return json.UnmarshalDecode(dec, &s.ID)
	}
	s.Inline = &InlineSystem{}
	return json.UnmarshalDecode(dec, s.Inline)
}

// UnmarshalJSON reads an id or an object.
func (s *System) UnmarshalJSON(data []byte) error { return strict(data, s) }

// MarshalJSONTo writes the form that was sent.
func (s System) MarshalJSONTo(enc *jsontext.Encoder) error {
	if s.Inline != nil {
		return json.MarshalEncode(enc, s.Inline)
	}
	return enc.WriteToken(jsontext.String(s.ID))
}

// MarshalJSON writes the form that was sent.
func (s System) MarshalJSON() ([]byte, error) { return json.Marshal(s) }

// InlineSystem holds the parameters of a cabinet system.
type InlineSystem struct {
	Units         string       `json:"units,omitempty" enum:"mm,cm,in" doc:"The unit of this object's numbers; default the request's."`
	Legs          Length       `json:"legs" doc:"Nominal leg or plinth height."`
	LegTravel     *LegTravel   `json:"leg_travel,omitzero" doc:"How far the legs wind."`
	Wall          *WallSizes   `json:"wall,omitzero" doc:"Sizes of wall cabinets."`
	Tall          *TallSizes   `json:"tall,omitzero" doc:"Sizes of tall cabinets."`
	Base          *BaseSizes   `json:"base,omitzero" doc:"Sizes of base cabinets."`
	Rail          *RailSystem  `json:"rail,omitzero" doc:"Absent: cabinets are screwed through hanging strips."`
	FitGap        Length       `json:"fit_gap" doc:"What is left open above a cabinet so that it can be slid in."`
	SideClearance Length       `json:"side_clearance,omitzero" doc:"Play to the sides when a cabinet is slid in; default 0."`
	Mass          *MassPerArea `json:"mass,omitzero" doc:"What cabinets weigh."`
}

// LegTravel is how far a leg winds from its nominal length.
type LegTravel struct {
	Up   Length `json:"up" doc:"Longest minus nominal."`
	Down Length `json:"down" doc:"Nominal minus shortest."`
}

// WallSizes are the sizes of wall cabinets.
type WallSizes struct {
	Heights   []Length     `json:"heights" minItems:"1" maxItems:"50" doc:"Carcass heights on offer."`
	Widths    []Length     `json:"widths,omitempty" maxItems:"50" doc:"Widths on offer."`
	Depths    []Length     `json:"depths" minItems:"1" maxItems:"20" doc:"Depths on offer."`
	Corners   []CornerSize `json:"corners,omitempty" maxItems:"20" doc:"Corner cabinets on offer."`
	Underside Length       `json:"underside" doc:"The wall row's underside above the datum."`
}

// TallSizes are the sizes of tall cabinets.
type TallSizes struct {
	Heights []Length     `json:"heights" minItems:"1" maxItems:"50" doc:"Carcass heights on offer."`
	Widths  []Length     `json:"widths,omitempty" maxItems:"50" doc:"Widths on offer."`
	Depths  []Length     `json:"depths" minItems:"1" maxItems:"20" doc:"Depths on offer."`
	Corners []CornerSize `json:"corners,omitempty" maxItems:"20" doc:"Corner cabinets on offer."`
}

// BaseSizes are the sizes of base cabinets and the counter on them.
type BaseSizes struct {
	Heights []Length     `json:"heights" minItems:"1" maxItems:"50" doc:"Carcass heights on offer."`
	Widths  []Length     `json:"widths,omitempty" maxItems:"50" doc:"Widths on offer."`
	Depths  []Length     `json:"depths" minItems:"1" maxItems:"20" doc:"Depths on offer."`
	Corners []CornerSize `json:"corners,omitempty" maxItems:"20" doc:"Corner cabinets on offer."`
	Counter Length       `json:"counter,omitzero" doc:"Thickness of the counter."`
}

// CornerSize is the size of a corner cabinet in plan; its heights and depths are those
// of its kind.
type CornerSize struct {
	Shape      string `json:"shape" enum:"l,diagonal,blind" doc:"Its plan."`
	Width      Length `json:"width" doc:"Width along the wall that it stands on."`
	OtherWidth Length `json:"other_width,omitzero" doc:"Width along the other wall. Needed but for a blind one, which reaches along its own wall only: the run around the corner begins at its depth and the corner's filler."`
}

// RailSystem is how cabinets hang.
type RailSystem struct {
	Drop        Length   `json:"drop" doc:"From a cabinet's top down to the rail's lower edge."`
	Profile     Length   `json:"profile,omitzero" doc:"Height of the rail's profile."`
	Stock       []Length `json:"stock,omitempty" maxItems:"10" doc:"Lengths the rail is bought in."`
	Kerf        Length   `json:"kerf,omitzero" doc:"Width of the saw's cut."`
	HangerUp    Length   `json:"hanger_up,omitzero" doc:"How far the hanger lifts the cabinet from its nominal place."`
	HangerDown  Length   `json:"hanger_down,omitzero" doc:"How far the hanger lets the cabinet hang low."`
	Lift        Length   `json:"lift,omitzero" doc:"Room above the cabinet's final place that it takes to hook it on."`
	EndInset    Length   `json:"end_inset,omitzero" doc:"Furthest that the first fixing may be from a rail's end."`
	LongestSpan Length   `json:"longest_span,omitzero" doc:"Longest distance between two fixings."`
}

// MassPerArea gives cabinets' masses in kilograms per square metre of front.
type MassPerArea struct {
	WallPerM2Front Amount `json:"wall_per_m2_front,omitzero" doc:"Wall cabinets."`
	TallPerM2Front Amount `json:"tall_per_m2_front,omitzero" doc:"Tall cabinets."`
	BasePerM2Front Amount `json:"base_per_m2_front,omitzero" doc:"Base cabinets."`
}
