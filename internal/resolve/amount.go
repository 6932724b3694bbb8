package resolve

import (
	"math/big"
	"regexp"

	"railhead/api"
)

// mostDigits bounds an amount's text: beyond it nothing is money, a mass, an angle or a share.
const mostDigits = 40

var (
	decimalText = regexp.MustCompile(`^-?(0|[1-9][0-9]*)(\.[0-9]+)?$`)
	numberText  = regexp.MustCompile(`^-?(0|[1-9][0-9]*)(\.[0-9]+)?([eE][+-]?[0-9]{1,2})?$`)
)

// amount reads an exact decimal that is not negative; false where it is refused or absent.
func (b *body) amount(in api.Amount, pointer string) (*big.Rat, bool) {
	if !in.Given() {
		return nil, false
	}
	value, ok := exact(in)
	switch {
	case !ok:
		b.fault(area(pointer)+".amount.syntax", pointer)
	case value.Sign() < 0:
		b.fault(area(pointer)+".amount.negative", pointer)
	default:
		return value, true
	}
	return nil, false
}

func exact(in api.Amount) (*big.Rat, bool) {
	pattern := numberText
	if in.Quoted {
		pattern = decimalText
	}
	if len(in.Text) > mostDigits || !pattern.MatchString(in.Text) {
		return nil, false
	}
	return new(big.Rat).SetString(in.Text)
}
