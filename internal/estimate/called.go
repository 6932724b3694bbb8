package estimate

import (
	"slices"

	"railhead/internal/belief"
)

// Called is the chance that the lines of one overhead group call for each trade.
// It is certain where a line that comes up anyhow does. Of one unknown, the chances
// of the states that need the trade add up; different unknowns are independent.
func Called(lines []Line) [Trades]belief.Chance {
	var called [Trades]belief.Chance
	var maybe [Trades]calls
	for i := range lines {
		for _, t := range lines[i].needs() {
			switch {
			case t == NoTrade:
			case lines[i].If >= belief.Certain:
				called[t] = belief.Certain
			default:
				maybe[t].add(&lines[i])
			}
		}
	}
	for t := range called {
		called[t] = max(called[t], maybe[t].chance())
	}
	return called
}

// needs is who has to come for a line.
func (l *Line) needs() [2]Trade {
	if j := jobs[l.work()]; j != nil && j.dusty {
		return [2]Trade{l.Trade, Site}
	}
	return [2]Trade{l.Trade}
}

// calls are the states of unknowns in which a trade is needed.
type calls []call

type call struct {
	of unknownKey
	in []Event
}

// add counts a line's state once.
func (c *calls) add(l *Line) {
	key := l.unknown()
	i := slices.IndexFunc(*c, func(one call) bool { return one.of == key })
	if i < 0 {
		i = len(*c)
		*c = append(*c, call{of: key})
	}
	if !slices.ContainsFunc((*c)[i].in, func(e Event) bool { return e.State == l.State }) {
		(*c)[i].in = append((*c)[i].in, Event{State: l.State, Chance: l.If})
	}
}

// chance is the chance of any of them.
func (c calls) chance() belief.Chance {
	none := belief.Certain
	for _, unknown := range c {
		left := belief.Certain
		for _, e := range unknown.in {
			left -= e.Chance
		}
		none = times(none, max(0, left))
	}
	return none.Not()
}

// times is the chance that two independent things both are so, to the nearest
// billionth, half up.
func times(a, b belief.Chance) belief.Chance { return (a*b + belief.Certain/2) / belief.Certain }
