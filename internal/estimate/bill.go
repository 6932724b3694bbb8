package estimate

import (
	"railhead/internal/money"
	"railhead/internal/takeoff"
)

// Bill is work with the mean of each of its lines at a book's rates, so that it can
// be added up again, to the last place, where one rate changes.
type Bill struct{ lines []billed }

// billed is one line of a bill.
type billed struct {
	*job
	quantity money.Quantity
	labour   bool // hours, else what is bought
	mean     money.Amount
}

// Bill prices items line by line.
func (b *Book) Bill(items []takeoff.Item) Bill {
	out := Bill{make([]billed, 0, 2*len(items))}
	for item, j := range jobsOf(items) {
		if j.hours != none {
			out.add(b, billed{job: j, quantity: item.Quantity, labour: true})
		}
		if j.material != none {
			out.add(b, billed{job: j, quantity: item.Quantity})
		}
	}
	return out
}

func (bill *Bill) add(b *Book, l billed) {
	l.mean = l.at(b)
	bill.lines = append(bill.lines, l)
}

// SumWith adds the lines up with those in whose price a rate has a part at the
// rates of another book, from which the bill's own differs in that rate alone.
func (bill Bill) SumWith(b *Book, code string) Sum { return bill.sum(b, index(code)) }

// sum adds the lines up, with those that rest on what has changed at the rates of
// another book.
func (bill Bill) sum(b *Book, changed int) Sum {
	var s Sum
	for i := range bill.lines {
		l := &bill.lines[i]
		mean := l.mean
		if changed != none && l.rests(changed) {
			mean = l.at(b)
		}
		if l.labour {
			s.addLabour(l.job, mean)
		} else {
			s.addBought(l.job, mean)
		}
	}
	return s
}

// rests reports whether a rate has a part in the line.
func (l *billed) rests(rate int) bool {
	if l.labour {
		return rate == l.hours || rate == l.wage
	}
	return rate == l.material
}

// at is the line's mean at the rates of a book.
func (l *billed) at(b *Book) money.Amount {
	if l.labour {
		return labour(l.quantity, &b.rates[l.hours], &b.rates[l.wage]).Mean()
	}
	return material(l.quantity, &b.rates[l.material], l.job).Mean()
}
