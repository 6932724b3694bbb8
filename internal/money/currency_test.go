package money

import (
	"testing"

	"github.com/bojanz/currency"
	"pgregory.net/rapid"
)

// ISO 4217, minor units: USD, EUR 2 and KRW, JPY 0 (F, lists of currencies); KWD,
// BHD 3 (F, dev-toolbox.tech and geratools.com, currency code references).
func TestMinorUnitsOfISO4217(t *testing.T) {
	for code, digits := range map[string]int{"USD": 2, "EUR": 2, "KRW": 0, "JPY": 0, "KWD": 3, "BHD": 3} {
		if c, ok := CurrencyOf(code); !ok || c != (Currency{code, digits}) {
			t.Errorf("%s: %+v %t, want %d digits", code, c, ok, digits)
		}
	}
}

func TestCodesThatAreNoCurrency(t *testing.T) {
	for _, code := range []string{"", "eur", "EURO", "ZZZ", "€", "E\x00R"} {
		if c, ok := CurrencyOf(code); ok {
			t.Errorf("%q is %+v", code, c)
		}
	}
}

// An amount has room for the smallest coin of every currency.
func TestNoCoinIsFinerThanAnAmount(t *testing.T) {
	for _, code := range currency.GetCurrencyCodes() {
		c, ok := CurrencyOf(code)
		if !ok || c.Digits > places {
			t.Errorf("%s: %+v %t", code, c, ok)
		}
	}
}

func TestCoin(t *testing.T) {
	for digits, want := range map[int]Amount{0: Unit, 2: 100, 3: 10, 4: 1, 5: 1, 30: 1} {
		if got := (Currency{Digits: digits}).Coin(); got != want {
			t.Errorf("%d places: %d, want %d", digits, got, want)
		}
	}
}

// Half to even: 6.65, 6.35, 3.05 (F, chem.fsu.edu, rules of rounding); 21.4501,
// 21.350, 21.45 (F, hartnell.edu). To two places and to none: C.
func TestRoundedHalfToEven(t *testing.T) {
	for _, c := range []struct {
		digits     int
		text, want string
	}{
		{1, "6.65", "6.6"}, {1, "6.35", "6.4"}, {1, "3.05", "3"},
		{1, "21.4501", "21.5"}, {1, "21.350", "21.4"}, {1, "21.45", "21.4"},
		{2, "50.635", "50.64"}, {2, "50.645", "50.64"}, {2, "-50.635", "-50.64"},
		{0, "0.5", "0"}, {0, "1.5", "2"}, {0, "-0.5", "0"},
		{3, "1.0005", "1"}, {3, "1.0015", "1.002"},
	} {
		if got := amount(t, c.text).Rounded(Currency{Digits: c.digits}).Decimal(); got != c.want {
			t.Errorf("%s to %d places is %s, want %s", c.text, c.digits, got, c.want)
		}
	}
}

func TestTextHasTheCoinsPlaces(t *testing.T) {
	for _, c := range []struct{ code, amount, want string }{
		{"EUR", "12.5", "12.50"},
		{"EUR", "0", "0.00"},
		{"EUR", "-0.004", "0.00"}, // nothing is not owed
		{"EUR", "-0.05", "-0.05"},
		{"JPY", "-3.2", "-3"},
		{"JPY", "2.5", "2"},
		{"KWD", "1.2345", "1.234"},
		{"CLF", "0.0001", "0.0001"},
		{"USD", "99999999999.99", "99999999999.99"},
		{"", "12.5", "12.5"},
	} {
		told, _ := CurrencyOf(c.code)
		if got := amount(t, c.amount).Text(told); got != c.want {
			t.Errorf("%s %s is told as %s, want %s", c.amount, c.code, got, c.want)
		}
	}
}

// The decimal arithmetic of the currency library is the other way to the same text.
func TestTextIsWhatDecimalArithmeticGives(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, c := drawAmount(t, "amount"), drawCurrency(t)
		exact, err := currency.NewAmount(a.Decimal(), c.Code)
		if err != nil {
			t.Fatal(err)
		}
		want := exact.RoundTo(uint8(c.Digits), currency.RoundHalfEven)
		got, err := currency.NewAmount(a.Text(c), c.Code)
		if err != nil || !got.Equal(want) {
			t.Fatalf("%s %s is told as %s, want %s", a.Decimal(), c.Code, a.Text(c), want)
		}
		if back, err := Parse(a.Text(c), c); err != nil || back != a.Rounded(c) {
			t.Fatalf("%s is read back as %s: %v", a.Text(c), back.Decimal(), err)
		}
	})
}
