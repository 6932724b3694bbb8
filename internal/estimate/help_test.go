package estimate

import (
	"fmt"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/belief"
	"railhead/internal/contents"
	"railhead/internal/kitchen"
	"railhead/internal/money"
	"railhead/internal/takeoff"
)

var euro = money.Currency{Code: "EUR", Digits: 2}

// euros are the built-in rates.
func euros() *Book { return NewBook(kitchen.Prices{Currency: euro, PerEuro: money.Unit}) }

// amount reads an amount as a person writes it.
func amount(t *testing.T, text string) money.Amount {
	t.Helper()
	a, err := money.Parse(text, euro)
	if err != nil {
		t.Fatal(err)
	}
	return a
}

// known is a spread without doubt.
func known(a money.Amount) money.Spread { return money.Spread{Low: a, Likely: a, High: a} }

// units are a spread of whole units.
func units(low, likely, high money.Amount) money.Spread {
	return money.Spread{Low: low * money.Unit, Likely: likely * money.Unit, High: high * money.Unit}
}

// sure is a line that comes up anyhow, paid at a rate.
func sure(rate string, cost money.Spread) Line {
	return Line{Kind: Material, RateCode: rate, Spread: cost, Cost: cost, Mean: cost.Mean(), Deviation: cost.Deviation(), If: belief.Certain}
}

// maybe is a line that comes up with an event.
func maybe(rate string, cost money.Spread, e Event) Line {
	return Line{
		Kind: Allowance, RateCode: rate, Spread: e.spread(cost), Cost: cost, Mean: e.Chance.Of(cost.Mean()),
		If: e.Chance, State: e.State, Of: e.Of,
	}
}

func percent(n belief.Chance) belief.Chance { return n * belief.Certain / 100 }

// works are all kinds of work.
func works() []takeoff.Work {
	var all []takeoff.Work
	for _, code := range Codes() {
		for w := range jobs {
			if code == "hours."+string(w) || code == "material."+string(w) && jobs[w].hours == none {
				all = append(all, w)
			}
		}
	}
	return all
}

func someItems(t *rapid.T) []takeoff.Item {
	return rapid.SliceOfN(rapid.Custom(func(t *rapid.T) takeoff.Item {
		return takeoff.Item{
			Work:     rapid.SampledFrom(works()).Draw(t, "work"),
			Pointer:  fmt.Sprintf("/survey/walls/0/overheads/%d", rapid.IntRange(0, 3).Draw(t, "overhead")),
			Quantity: money.Quantity(rapid.Int64Range(0, 200_000).Draw(t, "quantity")),
			Inputs:   []takeoff.Input{{Name: "length", Value: "1", Unit: "m"}},
		}
	}), 0, 12).Draw(t, "items")
}

func someSpread(t *rapid.T) money.Spread {
	low := rapid.Int64Range(0, 3_000_000).Draw(t, "low")
	likely := low + rapid.Int64Range(0, 3_000_000).Draw(t, "more")
	high := likely + rapid.Int64Range(0, 6_000_000).Draw(t, "most")
	return money.Spread{Low: money.Amount(low), Likely: money.Amount(likely), High: money.Amount(high)}
}

func someEvent(t *rapid.T) Event {
	return Event{
		Of: rapid.SampledFrom([]string{"", "s", "u"}).Draw(t, "of"), State: contents.State(rapid.IntRange(0, 4).Draw(t, "state")),
		Chance: belief.Chance(rapid.Int64Range(1, int64(belief.Certain)/5).Draw(t, "chance")),
	}
}

// someBook is the built-in book with some rates replaced.
func someBook(t *rapid.T) *Book {
	b := euros()
	for range rapid.IntRange(0, 5).Draw(t, "replaced") {
		b = b.With(rapid.SampledFrom(Codes()).Draw(t, "code"), someSpread(t))
	}
	return b
}

// someLines are lines of a few groups, certain and not, with their shared charges.
func someLines(t *rapid.T) []Line {
	b := someBook(t)
	var lines []Line
	for _, group := range []string{"s", "t", "u"} {
		lines = append(lines, b.Price(group, someItems(t))...)
		lines = append(lines, b.PriceAt(group, someItems(t), someEvent(t))...)
	}
	return append(lines, b.Shared(someCalls(t), lines)...)
}

func someCalls(t *rapid.T) (calls [Trades]Call) {
	for i := range calls {
		calls[i].Chance = belief.Chance(rapid.Int64Range(0, int64(belief.Certain)).Draw(t, "called"))
		calls[i].Labour = money.Amount(rapid.Int64Range(0, 500*int64(money.Unit)).Draw(t, "counted labour"))
	}
	return calls
}
