package length

import (
	"strconv"
	"strings"
	"unicode/utf8"
)

// amount is what stands before a unit: a decimal, or a fraction with or without a whole number before it.
type amount struct {
	number   number
	num, den int64 // den is 0 where there is no fraction
	mixed    bool  // the fraction stands after a whole number
}

func (a amount) isFraction() bool { return a.den != 0 }
func (a amount) isWhole() bool    { return a.den == 0 && a.number.places == "" }

// length is a units of the given size.
func (a amount) length(size Length) (Length, error) {
	whole, err := a.number.length(size)
	if err != nil || a.den == 0 {
		return whole, err
	}
	if a.mixed && a.num >= a.den {
		return 0, errImproper()
	}
	part := a.num * int64(size) // a million feet at most: below 10^15
	if part%a.den != 0 {
		return 0, errTooFine()
	}
	return whole + Length(part/a.den), nil
}

// amount takes one off the text.
func (s *scanner) amount() (a amount, ok bool) {
	if s.fraction(&a) {
		return a, true
	}
	if a.number, ok = s.decimal(wholeDigits, placeDigits); !ok || !a.isWhole() {
		return a, ok
	}
	before := s.rest
	joined := s.space() || s.hyphen()
	if joined && s.fraction(&a) || s.vulgar(&a) { // 31 5/8, 31-5/8, 31 ⅝, 31-⅝, 31⅝
		a.mixed = true
		return a, true
	}
	s.rest = before
	return a, true
}

// fraction takes a fraction off the text, or nothing.
func (s *scanner) fraction(a *amount) bool {
	if s.vulgar(a) {
		return true
	}
	before := s.rest
	num, ok := s.whole(fractionDigits)
	if ok && s.eat("/", fractionSlash) && !strings.HasPrefix(s.rest, "0") {
		if den := s.digits(fractionDigits); den != "" {
			a.num, a.den = few(num), few(den)
			return true
		}
	}
	s.rest = before
	return false
}

// vulgar takes a fraction that is one character.
func (s *scanner) vulgar(a *amount) bool {
	if s.rest == "" || s.rest[0] < utf8.RuneSelf {
		return false
	}
	for _, v := range vulgarValues {
		if s.eat(v.text) {
			a.num, a.den = v.num, v.den
			return true
		}
	}
	return false
}

// few is the value of a few digits; with nothing else among them it cannot fail.
func few(digits string) int64 {
	n, _ := strconv.ParseInt(digits, 10, 64)
	return n
}

// vulgarValues are the fractions that Unicode has as characters (chart Number Forms, and three of Latin-1).
var vulgarValues = [...]struct {
	text     string
	num, den int64
}{
	{"½", 1, 2},
	{"⅓", 1, 3}, {"⅔", 2, 3},
	{"¼", 1, 4}, {"¾", 3, 4},
	{"⅕", 1, 5}, {"⅖", 2, 5}, {"⅗", 3, 5}, {"⅘", 4, 5},
	{"⅙", 1, 6}, {"⅚", 5, 6},
	{"⅐", 1, 7},
	{"⅛", 1, 8}, {"⅜", 3, 8}, {"⅝", 5, 8}, {"⅞", 7, 8},
	{"⅑", 1, 9},
	{"⅒", 1, 10},
}
