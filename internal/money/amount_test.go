package money

import (
	"math"
	"math/big"
	"testing"

	"pgregory.net/rapid"
)

func TestArithmeticRoundsOnceHalfToEven(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := drawAmount(t, "a"), drawAmount(t, "b")
		q, r := drawQuantity(t, "q"), drawQuantity(t, "r")
		part, whole := rapid.Int64().Draw(t, "part"), rapid.Int64().Filter(func(n int64) bool { return n != 0 }).Draw(t, "whole")
		product := func(x, y, over int64) *big.Rat {
			n := new(big.Int).Mul(big.NewInt(x), big.NewInt(y))
			return new(big.Rat).SetFrac(n, big.NewInt(over))
		}
		for name, c := range map[string]struct {
			got  int64
			want *big.Rat
		}{
			"plus":           {int64(a.Plus(b)), new(big.Rat).Add(exact(a), exact(b))},
			"minus":          {int64(a.Minus(b)), new(big.Rat).Sub(exact(a), exact(b))},
			"neg":            {int64(a.Neg()), new(big.Rat).Neg(exact(a))},
			"times":          {int64(a.Times(q)), product(int64(a), int64(q), 1000)},
			"share":          {int64(a.Share(part, whole)), product(int64(a), part, whole)},
			"quantity plus":  {int64(q.Plus(r)), big.NewRat(int64(q)+int64(r), 1)},
			"quantity times": {int64(q.Times(r)), product(int64(q), int64(r), 1000)},
		} {
			if !isNearest(c.got, c.want) {
				t.Fatalf("%s is %d, want nearest to %v", name, c.got, c.want)
			}
		}
	})
}

func TestAmountsStopAtTheEndsOfTheRange(t *testing.T) {
	for name, c := range map[string]struct{ got, want Amount }{
		"sum":                 {Most.Plus(1), Most},
		"difference":          {(-Most).Minus(Most), -Most},
		"senseless rate":      {Most.Times(Quantity(Most)), Most},
		"senseless saving":    {(-Most).Times(Quantity(Most)), -Most},
		"share beyond all":    {Most.Share(math.MaxInt64, 1), Most},
		"smallest share":      {Most.Share(math.MinInt64, 1), -Most},
		"share of nothing":    {Most.Share(3, 0), 0},
		"just beyond 64 bits": {Amount(1<<40).Share(1<<40, 1<<16), Most},
		"much and much more":  {Amount(Quantity(Most).Plus(1)), Most},
		"little and less":     {Amount(Quantity(-Most).Plus(-1)), -Most},
		"share of a debt":     {(100 * Unit).Share(1, -4), -25 * Unit},
		"quantity of anybody": {Amount(Quantity(Most).Times(Quantity(Most))), Most},
	} {
		if c.got != c.want {
			t.Errorf("%s: %d, want %d", name, c.got, c.want)
		}
	}
}

// The worked example of a line: 4.1 m of board at 12.35 come to 50.635, and ties go
// to even places: 0.5 of 0.0001 is nothing, 0.5 of 0.0003 is 0.0002.
func TestTimes(t *testing.T) {
	for _, c := range []struct {
		rate     string
		quantity Quantity
		want     string
	}{
		{"12.35", 4100, "50.635"},
		{"-12.35", 4100, "-50.635"},
		{"0.0001", 500, "0"},
		{"0.0003", 500, "0.0002"},
		{"0.0003", -500, "-0.0002"},
		{"48", 1250, "60"},
	} {
		if got := amount(t, c.rate).Times(c.quantity).Decimal(); got != c.want {
			t.Errorf("%s times %s is %s, want %s", c.rate, c.quantity.Decimal(), got, c.want)
		}
	}
}

func TestDecimalHasTheDigitsThereAre(t *testing.T) {
	for _, c := range []struct{ got, want string }{
		{Amount(0).Decimal(), "0"},
		{(12 * Unit).Decimal(), "12"},
		{Amount(125_000).Decimal(), "12.5"},
		{Amount(-1).Decimal(), "-0.0001"},
		{Amount(100_010).Decimal(), "10.001"},
		{Most.Decimal(), "100000000000"},
		{(-Most + 1).Decimal(), "-99999999999.9999"},
		{Amount(math.MinInt64).Decimal(), "-922337203685477.5808"},
		{One.Decimal(), "1"},
		{Quantity(2750).Decimal(), "2.75"},
		{Quantity(-50).Decimal(), "-0.05"},
	} {
		if c.got != c.want {
			t.Errorf("%s, want %s", c.got, c.want)
		}
	}
}

func TestRationalsRoundOnceHalfToEven(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := big.NewRat(parts().Draw(t, "num"), rapid.Int64Range(1, 20_000).Draw(t, "den"))
		checkRational(t, "amount", r, int64(Unit), func() (int64, bool) { a, ok := FromRat(r); return int64(a), ok })
		checkRational(t, "quantity", r, int64(One), func() (int64, bool) { q, ok := QuantityFromRat(r); return int64(q), ok })
	})
}

func checkRational(t *rapid.T, what string, r *big.Rat, unit int64, read func() (int64, bool)) {
	want := new(big.Rat).Mul(r, big.NewRat(unit, 1))
	got, ok := read()
	switch beyond := new(big.Rat).Abs(want).Cmp(big.NewRat(int64(Most), 1)) > 0; {
	case ok && (beyond || !isNearest(got, want)):
		t.Fatalf("%s of %v is %d", what, r, got)
	case !ok && !beyond && want.Cmp(big.NewRat(int64(Most), 1)) != 0:
		t.Fatalf("%s of %v is refused", what, r)
	}
}
