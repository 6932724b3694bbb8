package survey

import (
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/money"
)

// CodeSet is the set of building codes that applies.
type CodeSet int

// Code sets.
const (
	CodeUnspecified CodeSet = iota // nobody said
	CodeNone                       // none of those known here
	CodeUSIRC                      // the US International Residential Code
)

// Room is a surveyed room.
type Room struct {
	Walls     []Wall
	Groups    []Group         // level groups, in order of their first wall
	Readings  []level.Reading // every measured number, by level.ReadingID
	Tolerance length.Length   // half-width of a reading's doubt, also sideways
	Built     int             // year; 0 unknown
	CodeSet   CodeSet
	Cleared   Cleared
	Local     Local
	Bench     *Bench
}

// Local is what local code says of old materials; years are 0 where it says nothing.
type Local struct {
	AsbestosTo int            // surfaces in houses up to this year are presumed to contain asbestos
	LeadBefore int            // paint in houses from before this year is presumed to contain lead
	LeadArea   money.Quantity // painted area in a room, in m², up to which a cut is minor
}

// Cleared says which hazards have been tested and dealt with.
type Cleared struct{ Asbestos, Lead bool }

// Bench is a permanent mark from which the laser line can be found again.
type Bench struct {
	Pointer string
	Wall    int
	At      length.Length
	Level   level.Height
	Says    string
}

// Group is a set of walls that are levelled together.
type Group struct {
	Walls       []int // indexes into Room.Walls, in order
	NotLevelled bool  // taped from one flat zero floor: nothing proves that it is level
}

// Backing is what stands behind a wall's finish.
type Backing int

// Backings.
const (
	BackingUnknown Backing = iota
	WoodStud
	SteelStud
	Masonry
	Board
)

// Wall is one wall with everything that was measured on it.
type Wall struct {
	Index      int
	ID         string
	Pointer    string // "/survey/walls/0"
	Length     length.Length
	Prev, Next int // walls joined at the left and right end by a 90° inside corner; −1 for none
	Group      int // index into Room.Groups
	Facing     *Facing
	Line       *level.Height // the wall's laser line; nil where no laser was used
	Backing    Backing
	Board      length.Length // thickness of the lining over the backing
	StudsKnown bool
	Studs      []length.Length // centres, in order
	FoundFloor level.Profile   // as found
	Floor      level.Profile   // under the cabinets, after the planned change
	RoomFloor  level.Profile   // in front of the cabinets, after the planned change
	Ceiling    level.Profile   // after the planned change
	Openings   []Opening
	Fixtures   []Fixture
	Overheads  []Overhead
}

// Facing is the opposite wall.
type Facing struct {
	Wall     int
	Distance length.Length
}

// OpeningKind is what an opening is.
type OpeningKind int

// Opening kinds.
const (
	Window OpeningKind = iota
	Door
	Passage
	Hatch
)

// Opening is a window, door, passage or hatch; From, To, Sill and Head are the
// clear opening, Casing the trim around it.
type Opening struct {
	ID, Pointer string
	Kind        OpeningKind
	From, To    length.Length
	ToFloor     bool // no sill: it reaches the floor
	Sill, Head  level.Height
	Casing      length.Length
}

// FixtureKind is what a fixture is.
type FixtureKind int

// Fixture kinds.
const (
	Socket FixtureKind = iota
	Switch
	Light
	Junction
	Valve
	GasValve
	Pipe
	Vent
	Panel
	OtherFixture
)

// String is the kind's name on the wire.
func (k FixtureKind) String() string {
	return [...]string{"socket", "switch", "light", "junction", "valve", "gas_valve", "pipe", "vent", "panel", "other"}[k]
}

// Fixture is a small thing on the wall; At and Level are its centre.
type Fixture struct {
	ID, Pointer   string
	Kind          FixtureKind
	At            length.Length
	Level         level.Height
	Width, Height length.Length
	Out           length.Length // how far it stands off the wall
}

// CeilingOver is what an overhead hangs from: the ceiling behind it where
// somebody has seen it, else its wall's.
func (r *Room) CeilingOver(o *Overhead) level.Profile {
	if o.Behind.CeilingLevel != nil {
		return level.Level(*o.Behind.CeilingLevel)
	}
	return r.Walls[o.Wall].Ceiling
}
