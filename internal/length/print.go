package length

import (
	"strconv"
	"strings"
)

// MM is l in millimetres, exactly: no exponent, no trailing zeros.
func (l Length) MM() string { return decimal(l, 6) }

// Inches is l in inches, rounded to 6 places: a nanometre is 5/127 of a millionth of an inch, so there are no ties.
func (l Length) Inches() string {
	rest := (l%127*5).RoundTo(127, Nearest) / 127
	return decimal(l/127*5+rest, 6)
}

// Decimal is l in the unit, exactly, if it has a finite decimal there with at most 9 places. In millimetres it needs at
// most 6 and in centimetres 7; in inches it has one, of at most 6 places, for every 127th nanometre.
func (l Length) Decimal(u Unit) (string, bool) {
	switch u {
	case CM:
		return decimal(l, 7), true
	case IN:
		if l%127 != 0 {
			return "", false
		}
		return decimal(l/127*5, 6), true
	default:
		return l.MM(), true
	}
}

// Text is l exactly, as Parse reads it back: a decimal in the unit if there is one, else in millimetres.
func (l Length) Text(u Unit) string {
	if text, ok := l.Decimal(u); ok {
		return text + " " + u.String()
	}
	return l.MM() + " mm"
}

// decimal writes n divided by ten to the power of places.
func decimal(n Length, places int) string {
	digits := strconv.FormatUint(n.size(), 10)
	if missing := places + 1 - len(digits); missing > 0 {
		digits = strings.Repeat("0", missing) + digits
	}
	point := len(digits) - places
	text := digits[:point]
	if decimals := strings.TrimRight(digits[point:], "0"); decimals != "" {
		text += "." + decimals
	}
	if n < 0 {
		return "-" + text
	}
	return text
}
