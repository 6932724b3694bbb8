package decode

import (
	"errors"
	"strconv"
	"strings"
)

var errInteger = errors.New("not a whole number")

// mostWhole stands for every whole number beyond it.
const mostWhole = 1_000_000_000_000_000

// wholeNumber reads a JSON number that has no fraction, however it is written.
// Values beyond ±mostWhole come out as ±mostWhole. Nothing grows with the exponent.
func wholeNumber(text string) (int, bool) {
	sign := 1
	if strings.HasPrefix(text, "-") {
		sign, text = -1, text[1:]
	}
	digits, exponent := decimal(text)
	switch {
	case digits == "":
		return 0, true
	case exponent < 0:
		return 0, false
	case len(digits)+exponent > 15:
		return sign * mostWhole, true
	}
	n, err := strconv.Atoi(digits + strings.Repeat("0", exponent))
	return sign * n, err == nil
}

// decimal is an unsigned JSON number as its significant digits and a power of ten.
func decimal(text string) (digits string, exponent int) {
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

// saturated reads an exponent, as ±10^9 where it is beyond that.
func saturated(power string) int {
	if power == "" {
		return 0
	}
	const most = 1_000_000_000
	n, err := strconv.Atoi(power)
	if err != nil && strings.HasPrefix(power, "-") {
		return -most
	}
	if err != nil {
		return most
	}
	return max(-most, min(most, n))
}
