package money

import (
	"errors"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

func TestParse(t *testing.T) {
	for text, want := range map[string]Amount{
		"0":                   0,
		"-0":                  0,
		"12.50":               125_000,
		"-3":                  -3 * Unit,
		"0.0001":              1,
		"0.00005":             0, // half to even
		"0.00015":             2,
		"0.000050000000001":   1,
		"007.10":              71_000,
		"100000000000":        Most,
		"-100000000000":       -Most,
		"100000000000.00005":  Most, // rounds to it
		"0.00000000000000001": 0,
	} {
		if got, err := Parse(text, euro); err != nil || got != want {
			t.Errorf("%q is %d, want %d: %v", text, got, want, err)
		}
	}
}

func TestTextsThatAreNoAmount(t *testing.T) {
	for text, want := range map[string]string{
		"":                       CodeSyntax,
		"-":                      CodeSyntax,
		".5":                     CodeSyntax,
		"5.":                     CodeSyntax,
		"+5":                     CodeSyntax,
		"--5":                    CodeSyntax,
		"1,50":                   CodeSyntax,
		"1 000":                  CodeSyntax,
		"1.2.3":                  CodeSyntax,
		"1e9":                    CodeSyntax,
		"NaN":                    CodeSyntax,
		"-Infinity":              CodeSyntax,
		"٣":                      CodeSyntax,
		strings.Repeat("0", 33):  CodeSyntax,
		"100000000000.0001":      CodeTooLarge,
		"-100000000001":          CodeTooLarge,
		"9999999999999999999999": CodeTooLarge,
		strings.Repeat("9", 32):  CodeTooLarge,
	} {
		_, err := Parse(text, euro)
		var refused *Error
		if !errors.As(err, &refused) || refused.Code != want {
			t.Errorf("%q: %v, want %s", text, err, want)
		}
		if err != nil && text != "" && strings.Contains(err.Error(), text) && len(text) > 3 {
			t.Errorf("%q is repeated: %v", text, err)
		}
	}
}

func TestDecimalReadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := drawAmount(t, "amount")
		if back, err := Parse(a.Decimal(), drawCurrency(t)); err != nil || back != a {
			t.Fatalf("%d is told as %s and read as %d: %v", a, a.Decimal(), back, err)
		}
	})
}

// Whatever is read is what a rational number of the same text is, and tells
// itself so that it is read again.
func FuzzParse(f *testing.F) {
	for _, text := range []string{"12.50", "-0.00005", "100000000000", "1e5", "Inf", "..", "-", "0000000000000000000000000000001"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		a, err := Parse(text, euro)
		if err != nil {
			return
		}
		if back, err := Parse(a.Decimal(), euro); err != nil || back != a {
			t.Fatalf("%q is %s, which is read as %s: %v", text, a.Decimal(), back.Decimal(), err)
		}
		if a > Most || a < -Most {
			t.Fatalf("%q is %d", text, a)
		}
	})
}
