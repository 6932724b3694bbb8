package money

import "github.com/bojanz/currency"

// Currency is a currency of ISO 4217 and how many decimal places its smallest
// coin has.
type Currency struct {
	Code   string
	Digits int
}

// CurrencyOf is the currency of a code such as EUR; false where ISO 4217 has none.
func CurrencyOf(code string) (Currency, bool) {
	digits, ok := currency.GetDigits(code)
	if !ok {
		return Currency{}, false
	}
	return Currency{code, int(digits)}, true
}

// Coin is the smallest coin, which no amount is finer than.
func (c Currency) Coin() Amount {
	coin := Unit
	for range c.Digits {
		coin /= 10
	}
	return max(coin, 1)
}

// Rounded is a to the nearest smallest coin, half to even.
func (a Amount) Rounded(c Currency) Amount {
	coin := c.Coin()
	return a.Share(1, int64(coin)) * coin
}

// Text is a as it is told in a currency: rounded to the smallest coin, with all
// its decimal places, such as 12.50. Of no currency it is told as it is.
func (a Amount) Text(c Currency) string {
	coins := int64(a.Rounded(c) / c.Coin())
	told, err := currency.NewAmountFromInt64(coins, c.Code)
	if err != nil {
		return a.Decimal()
	}
	return told.Number()
}
