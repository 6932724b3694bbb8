package estimate

import (
	"slices"
	"strings"

	"railhead/internal/money"
)

// Builtin is a rate that the book comes with, in euros of 2026 without tax, or in
// hours. All of them are from memory.
type Builtin struct {
	Code              string
	Per               string // what it is for one of: "h", "m2", "piece", …
	Low, Likely, High money.Amount
}

// one is one euro, or one hour, in the tables of rates; Go reckons with their
// decimals exactly.
const one = 10_000

// builtins are all built-in rates, in order of code.
var builtins = sorted(wages, hours, materials, charges, worths)

func sorted(tables ...[]Builtin) []Builtin {
	all := slices.Concat(tables...)
	slices.SortFunc(all, func(a, b Builtin) int { return strings.Compare(a.Code, b.Code) })
	return all
}

// Codes are the codes of all rates, in order.
func Codes() []string {
	codes := make([]string, len(builtins))
	for i := range builtins {
		codes[i] = builtins[i].Code
	}
	return codes
}

// IsCode reports whether there is a rate of a code.
func IsCode(code string) bool { return index(code) != none }

// none is the index of no rate.
const none = -1

// index is a rate's place in the book; none where there is no such rate.
func index(code string) int {
	i, ok := slices.BinarySearchFunc(builtins, code, func(b Builtin, code string) int { return strings.Compare(b.Code, code) })
	if !ok {
		return none
	}
	return i
}

// inHours reports whether a rate is a time, which no currency changes.
func (b *Builtin) inHours() bool { return strings.HasPrefix(b.Code, prefixHours) }

// The prefixes of the codes.
const (
	prefixWage     = "wage."
	prefixHours    = "hours."
	prefixMaterial = "material."
	prefixCallOut  = "call_out."
	prefixMinimum  = "minimum."
	prefixWork     = "work."
)
