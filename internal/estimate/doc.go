// Package estimate puts prices on work: the rate book, lines with their spread,
// and totals with what they may come to.
//
// Labour is a quantity times the hours for one unit times a wage, everything else
// a quantity times a rate; low, likely and high go with low, likely and high rates
// together. What one crew works, or what is paid at one rate, is dear or cheap
// together; the rest is independent. What may not come up is weighed by its chance,
// state by state of the unknown that it depends on.
//
// Built-in rates are net of tax, and there is tax only where the request gives some
// for a rate: it is reckoned on what a line likely comes to.
package estimate
