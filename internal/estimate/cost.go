package estimate

import (
	"slices"

	"railhead/internal/money"
)

// Cost is what lines come to together.
type Cost struct {
	money.Spread // the lines' own, added up
	Mean         money.Amount
	Deviation    money.Amount
	Tax          money.Amount
}

// CostOf adds up lines. Those of one trade's hours, or of one rate, are dear or
// cheap together; allowances that exclude each other do not come up together.
func CostOf(lines []Line) Cost {
	sure, unknowns := gather(lines)
	all := sure.moments()
	for i := range unknowns {
		all = all.plus(mix(unknowns[i].outcomes()))
	}
	cost := columns(lines)
	cost.Deviation = whole(all.deviation())
	return cost
}

// Beyond reports whether lines come to more than can be told rightly: amounts stop
// at the end of their range, and a sum that may have stopped there is none.
func Beyond(lines []Line) bool {
	sum := columns(lines)
	return slices.ContainsFunc([]money.Amount{sum.Low, sum.Likely, sum.High, sum.Mean, sum.Tax}, func(a money.Amount) bool {
		return max(a, a.Neg()) >= money.Most/10
	})
}

// columns adds up the columns of lines.
func columns(lines []Line) Cost {
	var c Cost
	for i := range lines {
		l := &lines[i]
		c.Spread = c.Spread.Plus(l.Spread)
		c.Mean, c.Tax = c.Mean.Plus(l.Mean), c.Tax.Plus(l.Tax())
	}
	return c
}

// Hours are the likely hours of each trade that come up anyhow.
func Hours(lines []Line) [Trades]money.Quantity {
	var hours [Trades]money.Quantity
	for i := range lines {
		if l := &lines[i]; l.hourly() && l.Kind == Labour {
			hours[l.Trade] = hours[l.Trade].Plus(l.Quantity)
		}
	}
	return hours
}
