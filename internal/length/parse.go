package length

// Parse reads a length that says its own unit: 31 5/8 in, 31-5/8", 2' 7 5/8", 2 ft 7 5/8 in, 803.3 mm, 0.8033 m.
//
// It is strict where a guess could be wrong:
//
//   - Numbers are written as in JSON but without exponent: no leading zeros, digits before and after the point. A comma
//     is refused, as it parts thousands here and decimals there.
//   - Units are lower case, since MM is no millimetre. A number without a unit is refused.
//   - Nothing stands before or after the length. Where a space may stand, it is one, plain or no-break.
//   - Inches and feet may have fractions, metric units may not. A fraction after a whole number is less than one; alone
//     it may be more, 9/8 in. Inches after feet are less than 12, and the feet before them are whole.
//   - A leading minus is for the whole length; a hyphen further on only joins: -2'-7 5/8" is 31 5/8 in below zero.
func Parse(text string) (Length, error) {
	w, ok := read(text)
	if !ok {
		return 0, errSyntax()
	}
	return w.length()
}

// written is a length as it was written; inches are those after feet.
type written struct {
	negative bool
	amount   amount
	unit     Length
	inches   amount
}

func read(text string) (w written, ok bool) {
	s := scanner{rest: text}
	w.negative = s.eat("-", minus)
	if w.amount, ok = s.amount(); !ok {
		return w, false
	}
	w.unit = s.unit()
	if w.unit == Foot && w.amount.isWhole() && s.rest != "" {
		w.inches, ok = s.inches()
	}
	fits := w.unit == Inch || w.unit == Foot || w.unit != 0 && !w.amount.isFraction()
	return w, ok && fits && s.rest == ""
}

// inches takes the inches after feet: less than 12 of them, in two digits at most.
func (s *scanner) inches() (amount, bool) {
	s.space()
	if s.hyphen() {
		s.space()
	}
	a, ok := s.amount()
	a.mixed = true
	whole := a.number.whole
	under12 := len(whole) < 2 || whole == "10" || whole == "11"
	return a, ok && under12 && s.unit() == Inch
}

// unit takes a unit and is its size; 0 where there is none.
func (s *scanner) unit() Length {
	s.space()
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

func (w written) length() (Length, error) {
	l, err := w.amount.length(w.unit)
	if err != nil {
		return 0, err
	}
	inches, err := w.inches.length(Inch)
	if err != nil {
		return 0, err
	}
	if w.negative {
		return negated(inRange(l + inches))
	}
	return inRange(l + inches)
}

func negated(l Length, err error) (Length, error) { return -l, err }
