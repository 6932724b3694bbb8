package kitchen

import (
	"railhead/internal/cabinet"
	"railhead/internal/length"
	"railhead/internal/money"
)

// Filling is what is to be proposed for the walls of a kitchen.
type Filling struct {
	Walls []int          // in order
	Kinds []cabinet.Kind // in order; the system makes each
	Best  int            // how many layouts are wanted

	LeastFiller  length.Length // a filler is at least this wide
	WallFiller   length.Length // beside a side wall
	CornerFiller length.Length // beside the run around an inside corner
	Panel        length.Length // thickness of a panel on a side that shows
	LeastOpen    length.Length // a stretch left open beside a new cabinet
	Closed       bool          // no holes are left in a row
	SideWalls    bool          // walls that join no other end at a side wall
	MostTall     int           // tall cabinets in the room
	Equal        EqualBeside   // gaps that must have equal neighbours

	Step    length.Length // cabinets stand on marks this far apart, or nearer
	Sizes   []SizePrice
	Weights FillWeights
}

// EqualBeside names gaps whose two neighbours must be equal.
type EqualBeside struct{ Window, Hood, DuctBox bool }

// SizePrice is what cabinets of a size cost and are preferred by.
type SizePrice struct {
	Kind   cabinet.Kind
	Width  length.Length
	Height length.Length // 0: every height
	Price  *money.Amount // nil: the weight of a cabinet
	Prefer money.Amount
}

// FillWeights are what things along a run are worth; none is below 0.
type FillWeights struct {
	Cabinet      money.Amount // each
	Filler       money.Amount // each
	FillerPerMM  money.Amount
	OpenPerMM    money.Amount
	Panel        money.Amount // each
	HeightChange money.Amount
	BaseLineMiss money.Amount
	Symmetry     money.Amount // gained at a window or a hood
	DuctPair     money.Amount // gained at a duct box
	CounterPerMM money.Amount // gained by base cabinets
}

// Asks reports whether cabinets of a kind are to be proposed.
func (f *Filling) Asks(k cabinet.Kind) bool {
	for _, have := range f.Kinds {
		if have == k {
			return true
		}
	}
	return false
}
