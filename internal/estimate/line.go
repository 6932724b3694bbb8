package estimate

import (
	"railhead/internal/belief"
	"railhead/internal/contents"
	"railhead/internal/money"
	"railhead/internal/takeoff"
)

// Line is one line of an estimate: quantity times rate.
type Line struct {
	Group      string // the overhead group; empty for what the room shares
	Pointer    string // the member of the request that it is about
	Kind       Kind
	Code       string // what it is for, in the catalogue of rules
	Trade      Trade
	Unit       string
	Quantity   money.Quantity // likely
	RateCode   string
	Rate       money.Amount // likely
	Spread     money.Spread
	Mean       money.Amount // expected: for work (low + 4·likely + high)/6
	Deviation  money.Amount
	TaxPercent money.Quantity // percent, in thousandths
	Assumed    bool           // some rate of it was not given in the request
	Inputs     []takeoff.Input
	// If is the chance that the line comes up at all; Certain for work that does.
	If    belief.Chance
	State contents.State // of an allowance: the contents it is for
}

// Kind is what sort of line it is.
type Kind int

// Kinds of lines.
const (
	Labour    Kind = iota
	Material       // and what is bought or paid by the piece
	Allowance      // for contents or surfaces nobody has seen: its mean is chance times cost
	Shared         // call-outs, minimum charges and setting up, shared by the room
	Saving         // what is not bought
)

// Trade is who does the work.
type Trade int

// Trades.
const (
	NoTrade Trade = iota // what is bought
	Helper               // strips out, carries, protects
	Carpenter
	Drywaller
	Painter
	Electrician
	Plumber
	DuctFitter
	Fitter // of the cabinets
	WasteHaul
	Site // setting up and protecting
	Trades
)

// String is the trade's name on the wire.
func (t Trade) String() string {
	return [...]string{
		"none", "helper", "carpenter", "drywaller", "painter", "electrician", "plumber", "duct_fitter", "cabinet_fitter", "waste", "site",
	}[t]
}
