package decode

import (
	"errors"
	"strconv"
	"strings"

	"railhead/internal/decimal"
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
	digits, exponent := decimal.Parts(text)
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
