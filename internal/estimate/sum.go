package estimate

import (
	"railhead/internal/belief"
	"railhead/internal/money"
	"railhead/internal/takeoff"
)

// Sum is what work is expected to come to if it comes up, and who is needed for
// it: what choosing reckons with, without the lines.
type Sum struct {
	Bought money.Amount // what is bought, saved, or paid by the piece
	Labour [Trades]money.Amount
	Needs  [Trades]bool
}

// Sum adds up the means of the lines that Price makes of items.
func (b *Book) Sum(items []takeoff.Item) Sum {
	var s Sum
	for item, j := range jobsOf(items) {
		if j.hours != none {
			s.addLabour(j, labour(item.Quantity, &b.rates[j.hours], &b.rates[j.wage]).Mean())
		}
		if j.material != none {
			s.addBought(j, material(item.Quantity, &b.rates[j.material], j).Mean())
		}
	}
	return s
}

func (s *Sum) addLabour(j *job, mean money.Amount) {
	s.Labour[j.trade] = s.Labour[j.trade].Plus(mean)
	s.need(j.trade, j)
}

func (s *Sum) addBought(j *job, mean money.Amount) {
	s.Bought = s.Bought.Plus(mean)
	s.need(j.paid, j)
}

// need notes who has to come; for what makes dust, the site is set up too.
func (s *Sum) need(t Trade, j *job) {
	s.Needs[t] = t != NoTrade
	s.Needs[Site] = s.Needs[Site] || j.dusty
}

// Add adds what other work is expected to come to where it comes up with a chance.
func (s *Sum) Add(t *Sum, c belief.Chance) {
	s.Bought = s.Bought.Plus(c.Of(t.Bought))
	for i := range s.Labour {
		if t.Labour[i] != 0 {
			s.Labour[i] = s.Labour[i].Plus(c.Of(t.Labour[i]))
		}
		s.Needs[i] = s.Needs[i] || t.Needs[i]
	}
}
