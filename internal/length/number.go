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

// Bounds of a number that can be a length. From ten million units on even millimetres are out of range. More than 9
// places are finer than a nanometre even in metres: a unit takes as many places as it has nanometres divisible by 2 or
// 5 over and over, which is 9 times in a metre (10^9 nm), 8 in a foot, 7 in a centimetre, 6 in a millimetre and an inch.
const (
	mostDigits = 7
	mostPlaces = 9
)

var powersOfTen = [...]uint64{1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9}

// length is n units of the given size.
func (n number) length(size Length) (Length, error) {
	n = n.significant()
	digits := len(n.whole) + len(n.places)
	switch {
	case digits == 0:
		return 0, nil
	case digits+n.exponent > mostDigits:
		return 0, errOutOfRange()
	case n.exponent < -mostPlaces:
		return 0, errTooFine()
	}
	up, down := size.size(), uint64(1)
	if n.exponent < 0 {
		down = powersOfTen[-n.exponent]
	} else {
		up *= powersOfTen[n.exponent]
	}
	hi, lo := bits.Mul64(n.digits(), up)
	nm, rest := bits.Div64(hi, lo, down) // below ten million units, so it fits
	if rest != 0 {
		return 0, errTooFine()
	}
	return inRange(Length(nm))
}

// significant is n without the zeros at either end; its exponent is that of its last digit.
func (n number) significant() number {
	whole, places := strings.TrimLeft(n.whole, "0"), strings.TrimRight(n.places, "0")
	exponent := n.exponent - len(places)
	if whole == "" {
		places = strings.TrimLeft(places, "0")
	}
	if places == "" {
		short := strings.TrimRight(whole, "0")
		whole, exponent = short, exponent+len(whole)-len(short)
	}
	return number{whole, places, exponent}
}

// digits is all digits as one number; there are 16 of them at most.
func (n number) digits() (value uint64) {
	for _, part := range [...]string{n.whole, n.places} {
		for _, d := range []byte(part) {
			value = value*10 + uint64(d-'0')
		}
	}
	return value
}

func inRange(l Length) (Length, error) {
	if l > Max {
		return 0, errOutOfRange()
	}
	return l, nil
}
