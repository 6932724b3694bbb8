package money

import (
	"strconv"
	"strings"

	"github.com/bojanz/currency"
)

// longest is more digits than anybody writes, and few enough to be read at once.
const longest = 32

// places is how many decimal places an Amount has.
const places = 4

// Parse reads an amount of a currency that is written as a decimal number, such
// as 12.50. What is finer than an Amount is rounded, half to even. The currency is
// one that CurrencyOf gave.
func Parse(text string, c Currency) (Amount, error) {
	if !plain(text) {
		return 0, errSyntax()
	}
	read, err := currency.NewAmount(text, c.Code)
	if err != nil {
		return 0, errSyntax()
	}
	number := read.RoundTo(places, currency.RoundHalfEven).Number()
	n, err := strconv.ParseInt(strings.Replace(number, ".", "", 1), 10, 64)
	if err != nil || size(n) > uint64(Most) {
		return 0, errTooLarge()
	}
	return Amount(n), nil
}

// plain reports whether a text is digits with a sign before and a point between
// them at most: the library reads also exponents, infinities and what is none.
func plain(text string) bool {
	whole, fraction, point := strings.Cut(strings.TrimPrefix(text, "-"), ".")
	return len(text) <= longest && digits(whole) && (!point || digits(fraction))
}

func digits(text string) bool {
	return text != "" && strings.Trim(text, "0123456789") == ""
}
