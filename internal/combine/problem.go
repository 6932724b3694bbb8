package combine

import (
	"railhead/internal/belief"
	"railhead/internal/money"
)

// Problem is a number of things of which each is done in exactly one way.
type Problem struct {
	Things []Thing
	Trades []Trade // whose charges are shared by all that call for them
	Joints []Joint // what bears on several things
	Even   Even
}

// Thing is one thing to be done, with its ways in the order in which ties are
// broken: the first of equals wins, first thing first.
type Thing struct{ Ways []Way }

// Way is one way to do a thing.
type Way struct {
	// Worth is what it is worth, less what it costs by itself: all but the labour
	// of trades that stand in Calls.
	Worth   money.Amount
	Calls   []Call // at most one for each trade, in order of trade
	Line    Line
	Effects []Effect // at most one for each joint, in order of joint
}

// Call is a trade that a way needs.
type Call struct {
	Trade  int
	Chance belief.Chance // that it is needed at all; independent between things
	Labour money.Amount  // what its labour is expected to come to; less than nothing is nothing
}

// Trade is what a trade charges beside its labour: to come at all, and the least
// that it comes for. Things that call for it share both: with C the chance that
// any of them needs it, they pay CallOut·C + the larger of their labour and
// Minimum·C. Charges of less than nothing are nothing.
type Trade struct{ CallOut, Minimum money.Amount }

// Line is the level at which a way leaves the tops under a thing.
type Line int

// Lines that are no level. Any positive number is one.
const (
	NoLine  Line = 0  // nothing stands under it
	Several Line = -1 // what stands under it ends at several levels
)

// Even is what it is worth that everything ends at one line: what the things
// leave, and Others, where what stands under no thing ends.
type Even struct {
	Worth  money.Amount
	Others Line
}

// Effect is what a way does to a joint: how high it lets it go, and whether it
// wants it as high as it can.
type Effect struct {
	Joint int
	Limit uint8
	Wish  bool
}

// Joint is something that several things bear on: the lowest limit holds, and
// one wish is a wish.
type Joint struct {
	Unlimited uint8 // the limit while no thing bears on it
	// Outcome may be asked for any limit that stands in an effect or in Unlimited,
	// and answers the same each time. Without it the joint is worth nothing.
	Outcome func(limit uint8, wish bool) (worth money.Amount, possible bool)
}
