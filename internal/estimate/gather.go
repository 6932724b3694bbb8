package estimate

import (
	"slices"

	"railhead/internal/belief"
	"railhead/internal/contents"
	"railhead/internal/money"
)

// pool is lines that are dear or cheap together: a trade's hours, which one crew
// works at one wage, or what is paid at one rate. Their deviations add up, as
// their spreads do; those of different pools are independent.
type pool struct {
	trade  Trade
	rate   string
	spread money.Spread
}

// pools gathers lines.
type pools []pool

func (p *pools) add(l *Line) {
	trade, rate := NoTrade, l.RateCode
	if l.hourly() {
		trade, rate = l.Trade, ""
	}
	i := slices.IndexFunc(*p, func(q pool) bool { return q.trade == trade && q.rate == rate })
	if i < 0 {
		i = len(*p)
		*p = append(*p, pool{trade: trade, rate: rate})
	}
	(*p)[i].spread = (*p)[i].spread.Plus(l.Cost)
}

func (p pools) moments() moments {
	var sum moments
	for _, pool := range p {
		sum = sum.plus(shape(pool.spread))
	}
	return sum
}

// unknown is what several allowances depend on together.
type unknown struct {
	key    unknownKey
	states []state
}

// unknownKey tells unknowns apart. Whether a trade is called is one of its own: it
// is not tied to what calls for it, since a call is little beside the work itself.
type unknownKey struct {
	of       string
	contents bool // or what is behind
	shared   Trade
}

// unknown is what a line depends on.
func (l *Line) unknown() unknownKey {
	switch {
	case l.Kind == Shared:
		return unknownKey{shared: l.Trade}
	case l.Of == "":
		return unknownKey{of: l.Group, contents: l.State != contents.Empty}
	default:
		return unknownKey{of: l.Of, contents: l.State != contents.Empty}
	}
}

// state is one way in which it may turn out, with what comes up then.
type state struct {
	state  contents.State
	chance belief.Chance
	pools  pools
}

// gather sorts lines into what is certain and what depends on something.
func gather(lines []Line) (sure pools, unknowns []unknown) {
	for i := range lines {
		l := &lines[i]
		if l.If >= belief.Certain {
			sure.add(l)
		} else {
			unknowns = file(unknowns, l)
		}
	}
	return sure, unknowns
}

// file adds a line that may not come up to its unknown.
func file(unknowns []unknown, l *Line) []unknown {
	key := l.unknown()
	i := slices.IndexFunc(unknowns, func(u unknown) bool { return u.key == key })
	if i < 0 {
		i = len(unknowns)
		unknowns = append(unknowns, unknown{key: key})
	}
	unknowns[i].add(l)
	return unknowns
}

func (u *unknown) add(l *Line) {
	i := slices.IndexFunc(u.states, func(s state) bool { return s.state == l.State })
	if i < 0 {
		i = len(u.states)
		u.states = append(u.states, state{state: l.State, chance: l.If})
	}
	u.states[i].pools.add(l)
}

func (u *unknown) outcomes() []outcome {
	out := make([]outcome, len(u.states), len(u.states)+1)
	for i := range u.states {
		out[i] = outcome{chance(u.states[i].chance), u.states[i].pools.moments()}
	}
	return out
}
