package decide

import (
	"railhead/internal/fit"
	"railhead/internal/kitchen"
)

// Decide says what to do with each overhead group of a kitchen: found are its
// cabinets in the room as found, rows the system's rows against the room, and
// lower is lowering the rows (nil where that helps nothing).
func Decide(k *kitchen.Kitchen, found []fit.Result, rows []fit.Row, lower *fit.Lower) Decisions {
	return Decisions{Lower: lower}
}

// Applied is what holds for each group: the choice, else the advice, else,
// where the advice is gated, that it stays.
func (d Decisions) Applied(k *kitchen.Kitchen) kitchen.AppliedOptions {
	out := kitchen.AppliedOptions{}
	for _, a := range d.Advice {
		out[a.Group] = applied(k, a)
	}
	return out
}

func applied(k *kitchen.Kitchen, a Advised) kitchen.Applied {
	if c, ok := k.Choices[a.Group]; ok {
		return kitchen.Applied{Option: c.Option, By: kitchen.ByChoice, Spans: c.Spans}
	}
	if a.Gated {
		return kitchen.Applied{Option: kitchen.Keep, By: kitchen.ByDefault}
	}
	return kitchen.Applied{Option: a.Option, By: kitchen.ByAdvice}
}
