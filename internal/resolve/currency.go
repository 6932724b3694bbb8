package resolve

import (
	"railhead/api"
	"railhead/internal/finding"
	"railhead/internal/money"
)

const euro = "EUR"

// perEuro is how many of a currency's units stand for one euro in the built-in rates, in hundredths: round figures (from
// memory). They bring rates to the right order of size; wages and prices differ more between countries than these do
// from any day's rate of exchange.
var perEuro = map[string]int64{
	euro: 100, "AED": 400, "AUD": 170, "BHD": 42, "BRL": 600, "CAD": 155, "CHF": 95, "CNY": 800, "CZK": 2500,
	"DKK": 746, "GBP": 85, "HKD": 860, "HUF": 40000, "ILS": 400, "INR": 9500, "ISK": 14500, "JPY": 16000, "KRW": 155000,
	"KWD": 34, "MAD": 1070, "MXN": 2100, "NOK": 1150, "NZD": 190, "PLN": 430, "QAR": 400, "RON": 500, "RSD": 11700,
	"SAR": 410, "SEK": 1120, "SGD": 148, "THB": 3750, "TRY": 4500, "TWD": 3500, "UAH": 4600, "USD": 110, "ZAR": 2000,
}

// readCurrency reads the currency and what stands for a euro in it.
func (b *body) readCurrency(in *api.Money) {
	prices := &b.kitchen.Prices
	code := in.Currency
	if code == "" {
		code = euro
		b.suppose("assume.money.currency", code, "/money/currency")
	}
	currency, known := money.CurrencyOf(code)
	if prices.Currency = currency; !known {
		b.fault("money.currency.unknown", "/money/currency")
	}
	if in.PerEuro.Given() {
		b.readPerEuro(in, code)
		return
	}
	hundredths, listed := perEuro[code]
	if known && !listed {
		b.fault("money.currency.no_rates", "/money/per_euro")
	}
	prices.PerEuro = money.Unit.Share(hundredths, 100)
	if listed && code != euro {
		b.suppose("assume.money.per_euro", prices.PerEuro.Decimal(), "/money/per_euro")
	}
}

func (b *body) readPerEuro(in *api.Money, code string) {
	const pointer = "/money/per_euro"
	value, ok := b.money(in.PerEuro, pointer)
	switch {
	case !ok:
	case value == 0:
		b.fault("money.per_euro.not_positive", pointer)
	case code == euro && value != money.Unit:
		b.fault("money.per_euro.of_euro", pointer, finding.Word("currency", code))
	}
	b.kitchen.Prices.PerEuro = value
}
