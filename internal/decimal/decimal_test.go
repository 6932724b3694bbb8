package decimal

import (
	"math/big"
	"strconv"
	"testing"

	"pgregory.net/rapid"
)

func TestParts(t *testing.T) {
	for text, want := range map[string]struct {
		digits   string
		exponent int
	}{
		"0":                         {"", 1},
		"120":                       {"12", 1},
		"0.0120":                    {"12", -3},
		"1.20e+3":                   {"12", 2},
		"5E-2":                      {"5", -2},
		"1e99999999999999999999":    {"1", far},
		"1e-99999999999999999999":   {"1", -far},
		"1e2000000000":              {"1", far},
		"10.5e-2000000000":          {"105", -far - 1},
		"100000000000000000000.000": {"1", 20},
	} {
		if digits, exponent := Parts(text); digits != want.digits || exponent != want.exponent {
			t.Errorf("%s: %q and %d, want %q and %d", text, digits, exponent, want.digits, want.exponent)
		}
	}
}

// The standard library's rational numbers are the other way to the same value.
func TestPartsAreTheNumber(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringMatching(`(0|[1-9][0-9]{0,12})(\.[0-9]{1,12})?([eE][+-]?[0-9]{1,2})?`).Draw(t, "text")
		want, ok := new(big.Rat).SetString(text)
		if !ok {
			t.Fatalf("%q is no number", text)
		}
		digits, exponent := Parts(text)
		if got, _ := new(big.Rat).SetString("0" + digits + "e" + strconv.Itoa(exponent)); got.Cmp(want) != 0 {
			t.Fatalf("%s: %q and %d", text, digits, exponent)
		}
	})
}
