package cabinet

import (
	"railhead/internal/length"
	"railhead/internal/level"
)

// Plan is what is to be built.
type Plan struct {
	Counter       length.Length // top of the counter above the datum
	LeastCounter  length.Length // lowest counter that is accepted
	RowShift      length.Length
	FloorChange   length.Length // of the room's floor, upwards positive
	CeilingChange length.Length // of the room's ceiling, upwards positive
	Cooking       *Cooking
	Cabinets      []Placed
	Fillers       []Filler
	Appliances    []Appliance
	Old           []Old
}

// Placed is one cabinet of the plan in its place.
type Placed struct {
	ID, Pointer string
	Index       int
	Kind        Kind
	Wall        int
	From, To    length.Length
	Depth       length.Length
	Height      length.Length // of the carcass
	Underside   length.Length // above the datum; of a standing cabinet: the carcass on its legs
	Top         length.Length // above the datum
	OwnLevel    bool          // its top or underside was given: row_shift does not move it
	Door        *Door
	Corner      *Corner
	Upright     bool // a tall carcass that is put together standing
	Keep        bool // it stays where cabinets are proposed
}

// Width is its extent along its wall.
func (p *Placed) Width() length.Length { return p.To - p.From }

// Stands reports whether it stands on the floor.
func (p *Placed) Stands() bool { return p.Kind != Wall }

// Swap exchanges a cabinet for another height of the system.
type Swap struct {
	Cabinet *Placed
	Height  length.Length
	Top     length.Length // above the datum: where it would then end
}

// Opens is how a front opens.
type Opens int

// Ways to open; the side is the hinges'.
const (
	OpensNot Opens = iota
	OpensLeft
	OpensRight
	OpensPair
	OpensUp
	OpensDrawer
)

// Door is a cabinet's front.
type Door struct {
	Opens     Opens
	Rise      length.Length // of a lift-up front above the cabinet's top
	Thickness length.Length
	Pull      length.Length
}

// HingesLeft and HingesRight report whether a door swings about that side.
func (d *Door) HingesLeft() bool  { return d.Opens == OpensLeft || d.Opens == OpensPair }
func (d *Door) HingesRight() bool { return d.Opens == OpensRight || d.Opens == OpensPair }

// CornerShape is a corner cabinet's floor area.
type CornerShape int

// Corner shapes.
const (
	CornerL CornerShape = iota
	CornerDiagonal
	CornerBlind
)

// String is the shape's name on the wire.
func (s CornerShape) String() string { return [...]string{"l", "diagonal", "blind"}[s] }

// Corner makes a cabinet reach along a joined wall.
type Corner struct {
	OtherWall  int
	OtherWidth length.Length
	Shape      CornerShape
	AtRight    bool // it stands in its wall's right corner
}

// Filler closes a gap beside cabinets.
type Filler struct {
	Pointer  string
	Kind     Kind
	AnyKind  bool // nobody said which row it belongs to
	Wall     int
	From, To length.Length
}

// Old is a cabinet of the kitchen that goes.
type Old struct {
	ID, Pointer string
	Kind        Kind
	Wall        int
	From, To    length.Length
	Depth       length.Length
	Top         level.Height
}

// Energy is what a cooking appliance burns.
type Energy int

// Energies.
const (
	Gas Energy = iota
	Electric
	Induction
)

// Cooking is the cooking appliance.
type Cooking struct {
	Pointer   string
	Wall      int
	From, To  length.Length
	Surface   length.Length // above the datum
	Energy    Energy
	Clearance length.Length // from its instructions; 0 not stated
	Hood      *Hood
}

// HoodKind is how a hood gets rid of the air.
type HoodKind int

// Hood kinds.
const (
	Ducted HoodKind = iota
	Recirculating
	Downdraft
)

// Hood is the cooker hood.
type Hood struct {
	Kind      HoodKind
	DuctBox   string        // id of the duct box its duct runs in; empty for none
	Underside length.Length // above the datum; 0 not stated
	Clearance length.Length // over the cooking surface, from its instructions; 0 not stated
	Protected bool
	Moves     bool // it does not stay where the old one was
}
