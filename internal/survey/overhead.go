package survey

import (
	"railhead/internal/belief"
	"railhead/internal/length"
	"railhead/internal/level"
)

// OverheadKind is what hangs under the ceiling.
type OverheadKind int

// Overhead kinds.
const (
	Soffit OverheadKind = iota
	ClosedGap
	LoweredCeiling
	Beam
	DuctBox
)

// String is the kind's name on the wire.
func (k OverheadKind) String() string {
	return [...]string{"soffit", "closed_gap", "lowered_ceiling", "beam", "duct_box"}[k]
}

// Structure is what an overhead is made of.
type Structure int

// Structures.
const (
	StructureUnknown Structure = iota
	Framed
	Solid
	Bearing
)

// String is the structure's name on the wire.
func (s Structure) String() string { return [...]string{"unknown", "framed", "solid", "bearing"}[s] }

// MayCut says whether an overhead may be cut.
type MayCut int

// May it be cut?
const (
	CutAsk MayCut = iota // somebody has to find out first
	CutYes
	CutNo
)

// Tri is yes, no or unknown.
type Tri int

// The three answers.
const (
	Unknown Tri = iota
	Yes
	No
)

// Carrier is what holds a closed gap up.
type Carrier int

// Carriers.
const (
	CarrierUnknown Carrier = iota
	CarriedByOldCabinets
	CarriedByCeiling
	CarriedByBoth
)

// EndKind is what an overhead's end meets.
type EndKind int

// Ends.
const (
	EndOpen EndKind = iota // free: the end face is seen and is cut with the rest
	EndWall
	EndCorner // it goes on around an inside corner
	EndCabinet
)

// String is the end's name on the wire.
func (e EndKind) String() string { return [...]string{"open", "wall", "corner", "cabinet"}[e] }

// HungFrom is what an overhead's framing hangs from.
type HungFrom int

// What framing hangs from.
const (
	HungUnknown HungFrom = iota
	HungJoists
	HungTrusses
	HungSlab
	HungWall
)

// Overhead is anything under the ceiling that competes with cabinets; it fills
// From..To × Out..Out+Depth from its underside up to the ceiling.
type Overhead struct {
	ID, Pointer string
	Wall, Index int    // which of its wall's overheads
	Group       string // part_of where given, else the id: what is decided together
	Kind        OverheadKind
	From, To    length.Length
	Out, Depth  length.Length
	Underside   level.Profile
	Structure   Structure
	Finish      string // as on the wire; "unknown" where nobody said
	Painted     Tri
	Textured    Tri
	MayCut      MayCut
	Carrier     Carrier // of a closed gap
	Make        Make
	Left, Right EndKind
	Behind      Behind
	Inside      Inside
	Duct        *Duct
}

// Face is the distance from the wall to its front.
func (o *Overhead) Face() length.Length { return o.Out + o.Depth }

// GoesWithOldCabinets reports whether it disappears with the old kitchen, so
// that it is never in a new cabinet's way.
func (o *Overhead) GoesWithOldCabinets() bool {
	return o.Kind == ClosedGap && o.Carrier == CarriedByOldCabinets
}

// Make is how an overhead is built, from its underside up.
type Make struct {
	Lining       length.Length
	BottomMember length.Length
	NewBottom    length.Length // board under the new bottom after a cut; 0 for none
	LeastStub    length.Length // least height that may be left hanging
	LeastRun     length.Length // least uncut length along the wall between two cuts
	HungFrom     HungFrom
	Spacing      length.Length // of its framing; 0 not stated
}

// Behind is what is known of what an overhead hides.
type Behind struct {
	Ceiling      Tri           // whether the ceiling's board continues
	CeilingLevel *level.Height // where seen
	Wall         Tri           // whether the wall is finished
}

// Looked is how far somebody looked into an overhead.
type Looked int

// How far somebody looked.
const (
	NotLooked Looked = iota
	ProbeHole
	Opened
)

// Inside is what is known of an overhead's contents.
type Inside struct {
	Pointer  string
	Looked   Looked
	Hints    []string // as on the wire
	Seen     []Span
	Services []Service
	// Priors are the odds of what is inside as the request gives them, by state of
	// contents; nil where it gives none.
	Priors []belief.Chance
	// SharesWith is the id of the overhead that its contents run on into; empty for none.
	SharesWith string
	BathAway   *length.Length // to the nearest bath or toilet; nil where nobody said
}

// ServiceKind is what runs inside.
type ServiceKind int

// Service kinds.
const (
	Wire ServiceKind = iota
	Cable
	PipeRun
	Gas
	Sprinkler
	DuctRun
	StructureInside
)

// String is the kind's name on the wire.
func (k ServiceKind) String() string {
	return [...]string{"wire", "cable", "pipe", "gas", "sprinkler", "duct", "structure"}[k]
}

// Movable is how easily a service can be moved.
type Movable int

// How movable.
const (
	MovableUnknown Movable = iota
	MovableEasily
	MovableWithWork
	NotMovable
)

// Service is one thing that runs inside an overhead.
type Service struct {
	Pointer   string
	Kind      ServiceKind
	From, To  length.Length
	Underside level.Height
	Clearance length.Length // what must stay free around it
	Movable   Movable
	Live      bool // every wire counts as live until proved dead
}

// Duct is what is known of the duct in a box.
type Duct struct {
	Diameter length.Length // 0 unknown
	Exits    string
}
