// Package estimate puts prices on work: the rate book, lines with their spread,
// and totals with what they may come to.
package estimate
