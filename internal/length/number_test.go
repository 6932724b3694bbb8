package length

import (
	"encoding/json"
	"errors"
	"math/big"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

func TestParseNumberReadsItInTheUnit(t *testing.T) {
	for name, c := range map[string]struct {
		text string
		unit Unit
		want Length
	}{
		"millimetres":                {"803.3", MM, 803_300_000},
		"centimetres":                {"80.33", CM, 803_300_000},
		"inches":                     {"31.625", IN, 803_275_000},
		"whole":                      {"30", IN, 762_000_000},
		"below zero":                 {"-0.25", IN, -6_350_000},
		"nothing":                    {"0", MM, 0},
		"nothing below zero":         {"-0.000", MM, 0},
		"a nanometre":                {"0.000001", MM, 1},
		"a nanometre, by exponent":   {"1e-6", MM, 1},
		"a tenth":                    {"0.1", MM, 100_000},
		"the exponent takes back":    {"0.0000008033E+9", MM, 803_300_000},
		"zeros for the exponent":     {"803300000000e-9", MM, 803_300_000},
		"nothing times anything":     {"0.0e999999999999999999999", MM, 0},
		"zeros after the point":      {"803.300000000000000000000000000", MM, 803_300_000},
		"the longest":                {"1e5", MM, Max},
		"a megabyte of zeros":        {"1" + strings.Repeat("0", 1<<20) + "e-1048576", MM, Millimetre},
		"a megabyte after the point": {"0." + strings.Repeat("0", 1<<20) + "5e1048577", MM, 5 * Millimetre},
	} {
		t.Run(name, func(t *testing.T) {
			if got, err := ParseNumber(c.text, c.unit); err != nil || got != c.want {
				t.Errorf("%d, %v; want %d", got, err, c.want)
			}
		})
	}
}

func TestParseNumberRefuses(t *testing.T) {
	for name, c := range map[string]struct{ text, code string }{
		"nothing":                     {"", CodeSyntax},
		"a sign":                      {"-", CodeSyntax},
		"a plus":                      {"+1", CodeSyntax},
		"a leading zero":              {"01", CodeSyntax},
		"no digit before the point":   {".5", CodeSyntax},
		"no digit after the point":    {"5.", CodeSyntax},
		"no digit after the exponent": {"5e", CodeSyntax},
		"a signed nothing of it":      {"5e-", CodeSyntax},
		"a space":                     {"5 ", CodeSyntax},
		"a unit":                      {"5 mm", CodeSyntax},
		"a fraction":                  {"5/8", CodeSyntax},
		"no number":                   {"NaN", CodeSyntax},
		"null":                        {"null", CodeSyntax},
		"infinity":                    {"Infinity", CodeSyntax},
		"half a nanometre":            {"0.0000005", CodeTooFine},
		"a third as floats print it":  {"0.3333333333333333", CodeTooFine},
		"binary tenth":                {"0.1000000000000000055511151231257827021181583404541015625", CodeTooFine},
		"a vanishing number":          {"1e-999999999999999999", CodeTooFine},
		"a nanometre too long":        {"100000.000001", CodeOutOfRange},
		"a nanometre too low":         {"-100000.000001", CodeOutOfRange},
		"ten million":                 {"1e7", CodeOutOfRange},
		"largest float":               {"1.7976931348623157e308", CodeOutOfRange},
		"a huge exponent":             {"1e999999999999999999999999", CodeOutOfRange},
		"a megabyte of nines":         {strings.Repeat("9", 1<<20), CodeOutOfRange},
	} {
		t.Run(name, func(t *testing.T) {
			got, err := ParseNumber(c.text, MM)
			var refused *Error
			if !errors.As(err, &refused) || refused.Code != c.code || got != 0 {
				t.Errorf("%d, %v; want %s", got, err, c.code)
			}
		})
	}
}

func TestParseNumberGrowsNothing(t *testing.T) {
	text := strings.Repeat("7", 1<<20) + "." + strings.Repeat("3", 1<<20) + "e-99999999999"
	if n := testing.AllocsPerRun(10, func() { _, _ = ParseNumber(text, MM) }); n > 1 { // the error itself
		t.Errorf("%v allocations for two megabytes of digits", n)
	}
}

// checkNumber holds ParseNumber to RFC 8259 as encoding/json knows it, and to the value as math/big reads it.
func checkNumber(t interface {
	Helper()
	Fatalf(string, ...any)
}, text string, u Unit) {
	t.Helper()
	got, err := ParseNumber(text, u)
	var refused *Error
	if err != nil && (!errors.As(err, &refused) || got != 0) {
		t.Fatalf("%q: %d with %v", text, got, err)
	}
	begins := text != "" && strings.Contains("-0123456789", text[:1]) // as no other JSON value does
	isNumber := begins && json.Valid([]byte(text)) && strings.TrimSpace(text) == text
	if syntax := refused != nil && refused.Code == CodeSyntax; syntax == isNumber {
		t.Fatalf("%q: %v, but a JSON number: %t", text, err, isNumber)
	}
	_, exponent, _ := strings.Cut(strings.ToLower(text), "e")
	if !isNumber || len(exponent) > 4 {
		return // a value too large for the oracle
	}
	want, _ := new(big.Rat).SetString(text)
	want.Mul(want, nm(u.Size()))
	tooFine, tooLong := !want.IsInt(), new(big.Rat).Abs(want).Cmp(nm(Max)) > 0
	switch {
	case refused == nil:
		if tooFine || tooLong || want.Cmp(nm(got)) != 0 {
			t.Fatalf("%q in %v is %d, want %v", text, u, got, want)
		}
	case refused.Code == CodeTooFine && tooFine, refused.Code == CodeOutOfRange && tooLong:
	default:
		t.Fatalf("%q in %v: %v, want %v", text, u, err, want)
	}
}

func FuzzParseNumber(f *testing.F) {
	for _, text := range []string{
		"803.3", "-31.625", "0", "-0", "1e5", "1E-6", "1e+2", "100000.000001", "0.0000005", "1e999999999", "1e-999999999", "01", "5.",
		".5", "5e", "1e7", "0.1", "9999999.999999999", "\xff", "", "0e99999", "1 ", "1.0e00005",
	} {
		for u := range 3 {
			f.Add(text, u)
		}
	}
	f.Fuzz(func(t *testing.T, text string, u int) { checkNumber(t, text, Unit(u)) })
}

func TestParseNumberFollowsTheValue(t *testing.T) {
	matching := rapid.StringMatching(`-?(0|[1-9][0-9]{0,12})([.][0-9]{1,12})?([eE][+-]?[0-9]{1,2})?`)
	rapid.Check(t, func(t *rapid.T) {
		u := Unit(rapid.IntRange(0, 2).Draw(t, "unit"))
		checkNumber(t, matching.Draw(t, "text"), u)
		l := lengths().Draw(t, "l")
		checkNumber(t, l.MM()+"e"+strconv.Itoa(rapid.IntRange(-8, 8).Draw(t, "exponent")), u)
	})
}
