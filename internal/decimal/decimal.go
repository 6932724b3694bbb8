// Package decimal reads decimal numbers as they are written, without reckoning them out: nothing grows with the exponent.
package decimal

import (
	"strconv"
	"strings"
)

// far is beyond any exponent of use.
const far = 1_000_000_000

// Parts is a decimal number without sign as its digits, without needless zeros, and a power of ten; zero has no digits.
// The text has the form of a JSON number. Exponents beyond ±10^9 count as that.
func Parts(text string) (digits string, exponent int) {
	mantissa, power := text, ""
	if at := strings.IndexAny(text, "eE"); at >= 0 {
		mantissa, power = text[:at], text[at+1:]
	}
	whole, places, _ := strings.Cut(mantissa, ".")
	all := whole + places
	digits = strings.TrimRight(all, "0")
	exponent = saturated(power) + len(all) - len(digits) - len(places)
	return strings.TrimLeft(digits, "0"), exponent
}

// saturated is an exponent, or one far beyond any use with its sign.
func saturated(power string) int {
	n, err := strconv.Atoi(power)
	switch {
	case power == "":
		return 0
	case err == nil:
		return max(-far, min(far, n))
	case strings.HasPrefix(power, "-"):
		return -far
	}
	return far
}
