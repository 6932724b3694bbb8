package length

import (
	"math/bits"
	"strings"
)

// ParseNumber reads the text of a JSON number (RFC 8259, section 6) as an exact decimal in the unit. However many digits
// it has and however large its exponent, it is read in one pass and without growing anything.
func ParseNumber(text string, u Unit) (Length, error) {
	s := scanner{rest: text}
	negative := s.eat("-")
	n, ok := s.decimal(len(text), len(text))
	if !ok || !s.exponent(&n) || s.rest != "" {
		return 0, errNumber()
	}
	l, err := n.length(u.Size())
	if negative {
		l = -l
	}
	return l, err
}

// number is a decimal as written: digits before and after the point, and a power of ten.
type number struct {
	whole, places string
	exponent      int
}

// Bounds of a number that can be a length: beyond ten million units even millimetres are out of range, and more than 9
// places are finer than a nanometre even in metres (25.4 mm has 5 factors of 5 and 6 of 2 in nanometres, a metre 9).
const (
	mostDigits = 7
	mostPlaces = 9
)

var powersOfTen = [...]uint64{1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9}

// length is n units of the given size.
func (n number) length(size Length) (Length, error) {
	digits, exponent := n.significant()
	switch {
	case digits == "":
		return 0, nil
	case len(digits)+exponent > mostDigits:
		return 0, errOutOfRange()
	case exponent < -mostPlaces:
		return 0, errTooFine()
	}
	value := uint64(0) // at most 16 digits
	for _, d := range []byte(digits) {
		value = value*10 + uint64(d-'0')
	}
	up, down := size.size(), uint64(1)
	if exponent < 0 {
		down = powersOfTen[-exponent]
	} else {
		up *= powersOfTen[exponent]
	}
	hi, lo := bits.Mul64(value, up)
	nm, rest := bits.Div64(hi, lo, down) // below 10^7 m, so it fits
	if rest != 0 {
		return 0, errTooFine()
	}
	return inRange(Length(nm))
}

// significant is n as digits without zeros at either end, times a power of ten.
func (n number) significant() (digits string, exponent int) {
	exponent = n.exponent - len(n.places)
	digits = strings.TrimLeft(n.whole+n.places, "0")
	short := strings.TrimRight(digits, "0")
	return short, exponent + len(digits) - len(short)
}

func inRange(l Length) (Length, error) {
	if l > Max {
		return 0, errOutOfRange()
	}
	return l, nil
}
