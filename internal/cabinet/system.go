package cabinet

import "railhead/internal/length"

// Kind is a cabinet's kind.
type Kind int

// Kinds.
const (
	Wall Kind = iota // hung, off the floor
	Tall             // stands on legs, ends on the wall row's top line
	Base             // stands on legs, carries the counter
)

// String is the kind's name on the wire.
func (k Kind) String() string { return [...]string{"wall", "tall", "base"}[k] }

// System is a cabinet system's sizes and tolerances.
type System struct {
	ID            string // of a built-in; empty for one sent along
	Legs          length.Length
	LegTravel     *LegTravel // nil: not stated
	Wall          Sizes
	WallUnderside length.Length // of the wall row, above the datum
	Tall          Sizes
	Base          Sizes
	Counter       length.Length // thickness of the counter
	Rail          *Rail         // nil: screwed through hanging strips
	FitGap        length.Length
	SideClearance length.Length
}

// LegTravel is how far a leg winds from its nominal length.
type LegTravel struct{ Up, Down length.Length }

// Sizes are the sizes a system makes of one kind; empty where it makes none.
type Sizes struct {
	Heights, Widths, Depths []length.Length
	Corners                 []CornerSize
}

// CornerSize is a corner cabinet's size in plan.
type CornerSize struct {
	Shape      CornerShape
	Width      length.Length // along the wall that it stands on
	OtherWidth length.Length // along the other wall; 0 of a blind one
}

// Rail is how a system's cabinets hang.
type Rail struct {
	Drop        length.Length // from a cabinet's top down to the rail's lower edge
	Profile     length.Length // height of the rail
	Stock       []length.Length
	Kerf        length.Length
	HangerUp    length.Length
	HangerDown  length.Length // how far the hanger lets the cabinet hang low
	Lift        length.Length // room above the final place that hooking on takes
	EndInset    length.Length // furthest first fixing from a rail's end; 0 not stated
	LongestSpan length.Length // between fixings; 0 not stated
}

// Sizes is the sizes of one kind.
func (s *System) Sizes(k Kind) Sizes {
	switch k {
	case Wall:
		return s.Wall
	case Tall:
		return s.Tall
	default:
		return s.Base
	}
}

// Headroom is what a cabinet of one kind needs above its top, and whether the
// lift rules it: the larger of the fit gap and (lift − how far the hanger lets
// the cabinet hang low). Only what is hooked on a rail is lifted; a tall
// cabinet is slid in on its legs.
func (s *System) Headroom(k Kind) (need length.Length, byLift bool) {
	if s.Rail == nil || k != Wall {
		return s.FitGap, false
	}
	if low := s.Rail.Lift - s.Rail.HangerDown; low > s.FitGap {
		return low, true
	}
	return s.FitGap, false
}
