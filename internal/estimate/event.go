package estimate

import (
	"math"

	"railhead/internal/belief"
	"railhead/internal/contents"
	"railhead/internal/money"
)

// Event is what has to turn out so for some work to come up.
type Event struct {
	// Of names the unknown: contents that overheads share have one name, and so has
	// the ceiling behind an overhead. Of one unknown, one state turns out; different
	// unknowns know nothing of each other. Empty: the group's own.
	Of     string
	State  contents.State // of contents; Empty for what is behind
	Misfit bool           // that a taller row does not fit, instead of what is behind
	Chance belief.Chance
}

// certain is the event of work that comes up anyhow.
var certain = Event{Chance: belief.Certain}

// spread is what a cost comes to where it may not come up: nothing at the least,
// nothing most likely unless it comes up at least as likely as not, all of it at
// the most. Of a saving, nothing is saved at the least.
func (e Event) spread(cost money.Spread) money.Spread {
	if e.Chance >= belief.Certain {
		return cost
	}
	maybe := money.Spread{Low: min(0, cost.Low), High: max(0, cost.High)}
	if e.Chance >= belief.Certain/2 {
		maybe.Likely = cost.Likely
	}
	return maybe
}

// deviation is the standard deviation of a cost that may not come up.
func (e Event) deviation(cost money.Spread) money.Amount {
	if e.Chance >= belief.Certain {
		return cost.Deviation()
	}
	m := mix([]outcome{{chance(e.Chance), shape(cost)}})
	return whole(math.Sqrt(m.variance))
}

// chance is a chance as a fraction of one.
func chance(c belief.Chance) float64 { return float64(c) / float64(belief.Certain) }
