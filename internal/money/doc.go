// Package money holds amounts of money and the quantities they are reckoned
// from as exact decimals, and the currencies of ISO 4217 that they are told in.
//
// Each operation rounds once, half to even, to the last place of its result.
// Amounts that would leave the range stop at its end, so that a senseless rate
// gives a senseless amount and never a wrapped one.
package money
