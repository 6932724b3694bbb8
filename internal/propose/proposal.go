package propose

import (
	"maps"

	"railhead/internal/cabinet"
	"railhead/internal/decide"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/layout"
	"railhead/internal/money"
)

// Proposal is what is proposed for a room.
type Proposal struct {
	Layouts   []Layout   // the best first; none behind a gate
	Once      *Layout    // the best once gates are open that somebody can open; nil where that is the first
	Overheads []Overhead // those that matter to what there is room for
	Stays     Stays
	Clashes   []layout.Clash // where there is no layout at all
	Empty     []Empty
	Unmet     []string // pointers of sinks and hobs under which no base cabinet can stand
	Skies     int      // skies that the room was filled under
	Proven    bool     // every sky was looked at, and every search finished
}

// Layout is one plan for the room.
type Layout struct {
	Kitchen *kitchen.Kitchen // with its plan: the cabinets that stay first
	Panels  []layout.Panel   // of cabinets of the plan
	Parts   []layout.Part
	Total   money.Amount
	Litres  money.Quantity
	Options map[string]kitchen.Option // by overhead group
	Gates   []Gate
	Proven  bool
	Blocked []int // of its cabinets that stay, those that do not fit
	// Stops are what new cabinets are held up by, and Hindered is whether some of that is
	// for what still hangs: a front that cannot open, a cabinet that cannot be hooked on.
	Stops    []finding.Finding
	Hindered bool
	Assumed  bool // some new cabinet reaches up to what nobody has seen
	Decided  decide.Decisions
	name     string // tells layouts apart by their cabinets
}

// Gate is a gate before a group's option.
type Gate struct {
	Group string
	decide.Gate
}

// Overhead is one overhead group with the best layout for each way to treat it.
type Overhead struct {
	Group   string
	Options []Option
}

// Option is one way to treat a group.
type Option struct {
	Option   kitchen.Option
	Possible bool
	Gates    []decide.Gate
	Layout   *Layout // nil where nobody can do it, or nothing fits then
}

// Part is a part of a layout's worth; nothing where it has none.
func (l *Layout) Part(name layout.PartName) layout.Part {
	for _, p := range l.Parts {
		if p.Name == name {
			return p
		}
	}
	return layout.Part{Name: name}
}

// Applied are the layout's options as a planner would choose them.
func (l *Layout) Applied() kitchen.AppliedOptions {
	out := kitchen.AppliedOptions{}
	for group, o := range l.Options {
		out[group] = kitchen.Applied{Option: o, By: kitchen.ByChoice, Spans: l.Kitchen.Choices[group].Spans}
	}
	return out
}

// Same reports whether two layouts have the same cabinets and options.
func (l *Layout) Same(o *Layout) bool { return l.name == o.name && maps.Equal(l.Options, o.Options) }

// HeldUp reports whether something does not fit or cannot be used.
func (l *Layout) HeldUp() bool { return l.Hindered || len(l.Blocked) > 0 }

// Cost is what a layout's options cost, expected, less what they are worth by
// themselves.
func (l *Layout) Cost() money.Amount { return l.Part(layout.Overheads).Worth.Neg() }

// Cabinets is what a layout is worth before that.
func (l *Layout) Cabinets() money.Amount { return l.Total.Plus(l.Cost()) }

// Empty is a row that was asked for and has no cabinet in the best layout.
type Empty struct {
	Wall    int
	Kind    cabinet.Kind
	Why     Why
	Pointer string // of the wall, or of the first thing that leaves no room
}

// Why is why a row stays empty.
type Why int

// Why rows stay empty.
const (
	NoRoom   Why = iota // nothing may stand anywhere
	TooShort            // no stretch is as long as the narrowest cabinet and what it keeps from its ends
	Unworthy            // none of its cabinets is worth it
)

// String is the reason's name in the catalogue of rules.
func (w Why) String() string { return [...]string{"no_room", "too_short", "empty"}[w] }
