package cabinet

import "railhead/internal/length"

// ApplianceKind is what an appliance is.
type ApplianceKind int

// Kinds of appliances.
const (
	Fridge ApplianceKind = iota
	Range
	Dishwasher
	Sink       // lies in the counter, over one base cabinet
	HoodOnWall // a hood that is not told under cooking
	OtherAppliance
)

// String is the kind's name on the wire.
func (k ApplianceKind) String() string {
	return [...]string{"fridge", "range", "dishwasher", "sink", "hood", "other"}[k]
}

// Appliance is an appliance in its place along a wall.
type Appliance struct {
	ID, Pointer string
	Kind        ApplianceKind
	Wall        int
	From, To    length.Length
	Depth       length.Length
	Hangs       bool          // off the floor
	Underside   length.Length // above the datum, of what hangs
	Top         length.Length // above the datum; [length.Max] where it goes on up to the ceiling

	// What is to be left free beside it and above it.
	Left, Right, Above Clearance
}

// Clearance is a length to be left free.
type Clearance struct {
	Need   length.Length
	Stated bool // in the request; else it is a generic value of the trade
}

// Low is where it begins, above the datum; of what stands, below every floor.
func (a *Appliance) Low() length.Length {
	if a.Hangs {
		return a.Underside
	}
	return -length.Max
}

// Patch is the floor area that it takes up.
func (a *Appliance) Patch() Patch { return Patch{a.Wall, a.From, a.To, 0, a.Depth, true} }

// Beside is the floor area on one side of it that is to be left free; empty
// where nothing is.
func (a *Appliance) Beside(right bool) Patch {
	p := a.Patch()
	if right {
		p.From, p.To = p.To, p.To+a.Right.Need
	} else {
		p.From, p.To = p.From-a.Left.Need, p.From
	}
	return p
}

// InWayOf reports whether it takes the place of cabinets of a kind where their
// heights meet: a sink lies over base cabinets.
func (a *Appliance) InWayOf(k Kind) bool { return a.Kind != Sink || k != Base }
