package length

import "unicode/utf8"

// Parse reads a length that says its own unit: 31 5/8 in, 31-5/8", 2' 7 5/8", 2 ft 7 5/8 in, 803.3 mm, 0.8033 m.
//
// It is strict where a guess could be wrong. Numbers are written as in JSON, without exponent: no leading zeros, a digit
// before and after the point. Units are lower case; MM is no millimetre. Nothing stands before or after the length, and
// one space at most, plain or no-break, where one may stand. Commas are refused, as they mean thousands here and decimals
// there. Inches and feet may have fractions, metric units may not; a fraction after a whole number is less than one, and
// inches after feet are less than 12. A leading minus is for the whole length; later hyphens only join.
func Parse(text string) (Length, error) {
	if len(text) > MaxText && utf8.RuneCountInString(text) > MaxText {
		return 0, errSyntax()
	}
	s := scanner{rest: text}
	negative := s.eat("-", minus)
	first, ok := s.amount()
	s.space()
	size := s.unit()
	if !ok || size == 0 || first.den != 0 && size != Inch && size != Foot {
		return 0, errSyntax()
	}
	l, err := first.length(size)
	if s.rest != "" {
		inches, isLength := s.inches()
		if !isLength || size != Foot || !first.isWhole() {
			return 0, errSyntax()
		}
		l, err = join(l, err, inches)
	}
	if err == nil {
		l, err = inRange(l)
	}
	if negative {
		l = -l
	}
	return l, err
}

// inches takes the inches after the feet, to the end of the text.
func (s *scanner) inches() (amount, bool) {
	s.space()
	if s.hyphen() {
		s.space()
	}
	a, ok := s.amount()
	if len(a.number.whole) > 1 && a.number.whole != "10" && a.number.whole != "11" {
		ok = false
	}
	s.space()
	return a, ok && s.unit() == Inch && s.rest == ""
}

// join adds inches to feet, unless one of them cannot be had.
func join(feet Length, err error, inches amount) (Length, error) {
	if err != nil {
		return 0, err
	}
	if inches.den != 0 && inches.num >= inches.den {
		return 0, errImproper()
	}
	l, err := inches.length(Inch)
	return feet + l, err
}

// unit takes a unit and is the size of one; 0 where there is none.
func (s *scanner) unit() Length {
	switch {
	case s.eat("mm"):
		return Millimetre
	case s.eat("cm"):
		return Centimetre
	case s.eat("m"):
		return Metre
	case s.eat("in", `"`, doublePrime, doubleQuote):
		return Inch
	case s.eat("ft", "'", prime, quote):
		return Foot
	}
	return 0
}
