package estimate

import (
	"slices"

	"railhead/internal/kitchen"
	"railhead/internal/money"
	"railhead/internal/takeoff"
)

// Book is all rates in the currency of the request.
type Book struct {
	currency money.Currency
	rates    []Rate // one for each of builtins
}

// Rate is one rate: money, or hours, for one of its unit.
type Rate struct {
	money.Spread
	Tax     money.Quantity // percent on top, in thousandths
	Given   bool           // by the request
	Pointer string         // the member that gives it, or would replace it
}

// NewBook is the book of built-in rates with those that the request gives in their
// place.
func NewBook(p kitchen.Prices) *Book {
	b := &Book{p.Currency, make([]Rate, len(builtins))}
	for i := range builtins {
		rate := &builtins[i]
		b.rates[i] = Rate{Spread: rate.in(p.PerEuro), Pointer: override(rate.Code)}
		if given, ok := p.Rates[rate.Code]; ok {
			b.rates[i].replace(given)
		}
	}
	return b
}

// in is a built-in rate in a currency of which so much stands for one euro; where
// nobody said how much, it is euros.
func (b *Builtin) in(perEuro money.Amount) money.Spread {
	spread := money.Spread{Low: b.Low, Likely: b.Likely, High: b.High}
	if perEuro == 0 || b.inHours() {
		return spread
	}
	return spread.Share(int64(perEuro), int64(money.Unit))
}

func (r *Rate) replace(given kitchen.Rate) {
	r.Spread, r.Given = ordered(given.Spread), true
	if given.TaxSet {
		r.Tax = given.Tax
	}
	if given.Pointer != "" {
		r.Pointer = given.Pointer
	}
}

// ordered is a spread whose likely value is not outside of its ends.
func ordered(s money.Spread) money.Spread {
	return money.Spread{Low: min(s.Low, s.Likely), Likely: s.Likely, High: max(s.Likely, s.High)}
}

// override is the member of the request that replaces a rate.
func override(code string) string { return "/money/rates/" + code }

// Rate is the rate of a code; nothing where there is none.
func (b *Book) Rate(code string) Rate {
	i := index(code)
	if i == none {
		return Rate{}
	}
	return b.rates[i]
}

// With is the book with one rate replaced, as if the request gave it; the book
// itself where there is no such rate.
func (b *Book) With(code string, spread money.Spread) *Book {
	i := index(code)
	if i == none {
		return b
	}
	rates := slices.Clone(b.rates)
	rates[i].Spread, rates[i].Given = ordered(spread), true
	return &Book{b.currency, rates}
}

// Trial is a book of its own with one rate that is tried out: what the function
// returns holds until it is called again.
func (b *Book) Trial(code string) func(money.Spread) *Book {
	out := b.With(code, money.Spread{})
	i := index(code)
	return func(spread money.Spread) *Book {
		if i != none {
			out.rates[i].Spread = ordered(spread)
		}
		return out
	}
}

// Uses reports whether a rate has a part in the price of a kind of work.
func Uses(code string, w takeoff.Work) bool {
	i, j := index(code), jobs[w]
	return i != none && j != nil && j.uses(i)
}

func (j *job) uses(rate int) bool {
	return j.material == rate || j.hours != none && (j.hours == rate || j.wage == rate)
}
