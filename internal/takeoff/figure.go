package takeoff

import (
	"math/big"
	"strings"
)

// figure is a part of a formula and what it comes to.
type figure struct {
	text  string
	value *big.Rat
	sum   bool // needs brackets as a factor
}

func (f figure) factor() string {
	if f.sum {
		return "(" + f.text + ")"
	}
	return f.text
}

// times is a product of two figures or more.
func times(a, b figure, more ...figure) figure {
	value, factors := new(big.Rat).Mul(a.value, b.value), []string{a.factor(), b.factor()}
	for _, f := range more {
		value.Mul(value, f.value)
		factors = append(factors, f.factor())
	}
	return figure{text: strings.Join(factors, "*"), value: value}
}

func plus(a, b figure) figure {
	return figure{a.text + " + " + b.text, new(big.Rat).Add(a.value, b.value), true}
}

func minus(a, b figure) figure {
	return figure{a.text + " - " + b.factor(), new(big.Rat).Sub(a.value, b.value), true}
}

func half(f figure) figure {
	return figure{text: f.factor() + "/2", value: new(big.Rat).Mul(f.value, big.NewRat(1, 2))}
}

// over is a / b, where b is one input and not 0.
func over(a, b figure) figure {
	return figure{text: a.factor() + "/" + b.text, value: new(big.Rat).Quo(a.value, b.value)}
}

func plusOne(f figure) figure {
	return figure{f.text + " + 1", new(big.Rat).Add(f.value, big.NewRat(1, 1)), true}
}

// roundedUp is the least whole number that is not below f.
func roundedUp(f figure) figure {
	whole, rest := new(big.Int).DivMod(f.value.Num(), f.value.Denom(), new(big.Int))
	if rest.Sign() > 0 {
		whole.Add(whole, big.NewInt(1))
	}
	return figure{text: "ceil(" + f.text + ")", value: new(big.Rat).SetInt(whole)}
}
