package estimate

import (
	"railhead/internal/belief"
	"railhead/internal/money"
	"railhead/internal/takeoff"
)

// Price is the lines of work that is done anyhow: of each item its hours, and what
// goes into it or is paid for it by the piece.
func (b *Book) Price(group string, items []takeoff.Item) []Line {
	return b.PriceAt(group, items, certain)
}

// PriceAt is the lines of work that comes up with a chance; none where it cannot.
// Their means add up, to the last place, to the event's chance of what Sum tells
// for each trade and for what is bought.
func (b *Book) PriceAt(group string, items []takeoff.Item, e Event) []Line {
	if e.Chance <= 0 {
		return nil
	}
	p := pricing{b, group, e, make([]Line, 0, 2*len(items)), Sum{}}
	for item, j := range jobsOf(items) {
		if j.hours != none {
			p.labour(item, j)
		}
		if j.material != none {
			p.material(item, j)
		}
	}
	return p.lines
}

// pricing is lines on their way.
type pricing struct {
	book  *Book
	group string
	event Event
	lines []Line
	sum   Sum // of the lines so far, as if the event were certain
}

// labour adds the line of an item's hours.
func (p *pricing) labour(item *takeoff.Item, j *job) {
	wage, hours := &p.book.rates[j.wage], &p.book.rates[j.hours]
	p.add(&p.sum.Labour[j.trade], Line{
		Pointer: item.Pointer, Kind: Labour, Code: j.code, Trade: j.trade,
		Unit: "h", Quantity: taken(item.Quantity, hours.Likely), RateCode: j.wageCode, HoursCode: j.hoursCode,
		Rate: wage.Likely, Cost: labour(item.Quantity, hours, wage), TaxPercent: wage.Tax,
		Assumed: !wage.Given || !hours.Given, Formula: "quantity*hours_per_unit, quantity = " + item.Formula, Inputs: formula(item, hours.Likely),
	})
}

// material adds the line of what goes into an item or is paid for it.
func (p *pricing) material(item *takeoff.Item, j *job) {
	rate := p.book.rates[j.material]
	line := Line{
		Pointer: item.Pointer, Kind: Material, Code: j.code, Trade: j.paid,
		Unit: item.Work.Unit(), Quantity: item.Quantity, RateCode: j.materialCode,
		Rate: rate.Likely, Cost: material(item.Quantity, &rate, j), TaxPercent: rate.Tax,
		Assumed: !rate.Given, Formula: item.Formula, Inputs: item.Inputs,
	}
	if j.saved {
		line.Kind, line.Rate = Saving, -rate.Likely
	}
	p.add(&p.sum.Bought, line)
}

// add completes a line and adds it. Of the means that go into one sum, each is the
// chance of the sum with it less that of the sum without it, so that what rounding
// takes does not pile up.
func (p *pricing) add(sum *money.Amount, line Line) {
	before := p.event.Chance.Of(*sum)
	*sum = sum.Plus(line.Cost.Mean())
	line.Group, line.If = p.group, p.event.Chance
	line.Spread, line.Deviation = p.event.spread(line.Cost), p.event.deviation(line.Cost)
	line.Mean = p.event.Chance.Of(*sum).Minus(before)
	if p.event.Chance < belief.Certain {
		line.Kind, line.State, line.Misfit, line.Of = Allowance, p.event.State, p.event.Misfit, p.event.Of
	}
	p.lines = append(p.lines, line)
}

// labour is what a quantity of work costs in hours: low where both the hours and
// the wage are.
func labour(q money.Quantity, hours, wage *Rate) money.Spread {
	return money.Spread{
		Low:    wage.Low.Times(taken(q, hours.Low)),
		Likely: wage.Likely.Times(taken(q, hours.Likely)),
		High:   wage.High.Times(taken(q, hours.High)),
	}
}

// material is what a quantity of work costs beside its hours; below zero where it
// is saved.
func material(q money.Quantity, rate *Rate, j *job) money.Spread {
	if j.saved {
		return rate.Times(q).Neg()
	}
	return rate.Times(q)
}

// taken is the hours of a quantity of work. Hours for one unit are kept as finely
// as money, in ten-thousandths.
func taken(q money.Quantity, hours money.Amount) money.Quantity {
	return money.Quantity(hours.Share(int64(q), int64(money.Unit)))
}

// formula is the figures that hours are made of: those of the quantity, what it
// comes to, and the hours for one unit of it.
func formula(item *takeoff.Item, hours money.Amount) []takeoff.Input {
	unit := item.Work.Unit()
	inputs := make([]takeoff.Input, 0, len(item.Inputs)+2)
	return append(append(inputs, item.Inputs...),
		takeoff.Input{Name: "quantity", Value: item.Quantity.Decimal(), Unit: unit},
		takeoff.Input{Name: "hours_per_unit", Value: hours.Decimal(), Unit: "h/" + unit})
}
