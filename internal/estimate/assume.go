package estimate

import (
	"slices"

	"railhead/internal/finding"
	"railhead/internal/money"
)

// Assumptions are the built-in rates that lines rest on, each once and in order of
// code, with those of also, which something else rests on. Rates that the request
// gives are none.
func (b *Book) Assumptions(lines []Line, also ...string) []finding.Assumption {
	codes := slices.Clone(also)
	for i := range lines {
		codes = append(codes, lines[i].RateCode, lines[i].HoursCode)
	}
	slices.Sort(codes)
	var out []finding.Assumption
	for _, code := range slices.Compact(codes) {
		if i := index(code); i != none && !b.rates[i].Given {
			out = append(out, finding.Assumption{
				Code: code, Value: finding.Word("value", b.told(i)), Override: b.rates[i].Pointer,
			})
		}
	}
	return out
}

// told is a rate with its ends and its unit, such as 38 / 48 / 62 EUR/h.
func (b *Book) told(i int) string {
	rate, builtin := &b.rates[i], &builtins[i]
	unit := b.currency.Code
	if builtin.inHours() {
		unit = "h"
	}
	return spread(rate.Spread) + " " + unit + "/" + builtin.Per
}

func spread(s money.Spread) string {
	return s.Low.Decimal() + " / " + s.Likely.Decimal() + " / " + s.High.Decimal()
}
