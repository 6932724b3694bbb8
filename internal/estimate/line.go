package estimate

import (
	"cmp"
	"strings"

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
	HoursCode  string       // of labour: the hours for one unit of the work
	Rate       money.Amount // likely; below zero where it is saved
	Spread     money.Spread // what the line comes to; of what may not come up, nothing at the least
	Cost       money.Spread // what it comes to if it comes up: its likely value is Quantity times Rate
	Mean       money.Amount // expected: the mean of Cost, times the chance that it comes up
	Deviation  money.Amount
	TaxPercent money.Quantity // percent, in thousandths
	Assumed    bool           // some rate of it was not given in the request
	Formula    string         // that the quantity is reckoned by, in the names of the inputs
	Inputs     []takeoff.Input
	merged     bool         // several lines told as one
	tax        money.Amount // of a merged line
	// If is the chance that the line comes up at all; Certain for work that does.
	If     belief.Chance
	State  contents.State // of an allowance: the contents it is for; Empty for what is behind
	Misfit bool           // of an allowance: that a taller row does not fit, instead of what is behind
	Of     string         // of an allowance: the unknown that it depends on
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

// String is the kind's name on the wire.
func (k Kind) String() string {
	return [...]string{"labour", "material", "allowance", "shared", "saving"}[k]
}

// Tax is the tax on what the line likely comes to.
func (l *Line) Tax() money.Amount {
	if l.merged {
		return l.tax
	}
	return l.Spread.Likely.Share(int64(l.TaxPercent), 100*int64(money.One))
}

// Pool is what makes a line dear or cheap together with others: a trade's hours,
// which one crew works at one wage, a rate, or an unknown that the line depends on.
// Lines of different pools are independent.
func (l *Line) Pool() string {
	switch {
	case l.Kind == Allowance:
		return cmp.Or(l.Of, l.Group)
	case l.hourly():
		return l.Trade.String()
	default:
		return l.RateCode
	}
}

// hourly reports whether the line is for a trade's hours.
func (l *Line) hourly() bool { return l.HoursCode != "" }

// work is the kind of work that the line is for.
func (l *Line) work() takeoff.Work { return takeoff.Work(strings.TrimPrefix(l.Code, prefixWork)) }
