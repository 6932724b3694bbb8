package resolve

import (
	"math/big"
	"regexp"
	"strconv"
	"strings"

	"railhead/api"
	"railhead/internal/decimal"
	"railhead/internal/finding"
)

// Bounds of a decimal number: beyond them nothing is money, hours, a mass, an angle or a share. They also keep the exact
// arithmetic small, whatever exponent is sent.
const (
	mostAmount = 1_000_000_000
	mostPlaces = 40
)

var (
	decimalText = regexp.MustCompile(`^-?(0|[1-9][0-9]*)(\.[0-9]+)?$`)
	numberText  = regexp.MustCompile(`^-?(0|[1-9][0-9]*)(\.[0-9]+)?([eE][+-]?[0-9]+)?$`)
)

// amount reads an exact decimal that is not negative; false where it is refused or absent.
func (b *body) amount(in api.Amount, pointer string) (*big.Rat, bool) {
	if !in.Given() {
		return nil, false
	}
	value, problem := exact(in)
	if problem == "" {
		return value, true
	}
	b.fault(area(pointer)+problem, pointer)
	return nil, false
}

// placed reads an amount of at most so many decimal places: finer than it is reckoned with, it would be rounded in silence.
func (b *body) placed(in api.Amount, pointer string, places int64) (*big.Rat, bool) {
	value, ok := b.amount(in, pointer)
	if !ok {
		return nil, false
	}
	unit := new(big.Int).Exp(big.NewInt(10), big.NewInt(places), nil)
	if !new(big.Rat).Mul(value, new(big.Rat).SetInt(unit)).IsInt() {
		b.fault(area(pointer)+".amount.too_fine", pointer, finding.Word("places", strconv.FormatInt(places, 10)))
		return nil, false
	}
	return value, true
}

// Decimal places of money and hours, and of quantities.
const (
	moneyPlaces    = 4
	quantityPlaces = 3
)

// exact is an amount's value, or the end of the code that refuses it. A number is refused for the same reason however it
// is written: as a text, as a number, with an exponent or without.
func exact(in api.Amount) (value *big.Rat, problem string) {
	pattern := numberText
	if in.Quoted {
		pattern = decimalText
	}
	if !pattern.MatchString(in.Text) {
		return nil, ".amount.syntax"
	}
	digits, exponent := decimal.Parts(strings.TrimPrefix(in.Text, "-"))
	switch {
	case digits == "":
		return new(big.Rat), ""
	case strings.HasPrefix(in.Text, "-"):
		return nil, ".amount.negative"
	case len(digits)+exponent > len(strconv.Itoa(mostAmount)):
		return nil, ".amount.too_large"
	case exponent < -mostPlaces:
		return nil, ".amount.syntax"
	}
	value, _ = new(big.Rat).SetString(digits + "e" + strconv.Itoa(exponent))
	if value.Cmp(big.NewRat(mostAmount, 1)) > 0 {
		return nil, ".amount.too_large"
	}
	return value, ""
}
