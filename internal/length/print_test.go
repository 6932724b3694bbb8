package length

import (
	"bufio"
	"math/big"
	"os"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// Computed from 25.4 mm to the inch (C); no decimal where the inches have none that ends.
func TestPrintedDecimals(t *testing.T) {
	for name, c := range map[string]struct {
		l                          Length
		mm, inches, cm, in, asText string
	}{
		"31 5/8 in":                {803_275_000, "803.275", "31.625", "80.3275", "31.625", "31.625 in"},
		"24 in":                    {609_600_000, "609.6", "24", "60.96", "24", "24 in"},
		"600 mm":                   {600_000_000, "600", "23.622047", "60", "", "600 mm"},
		"below zero":               {-1_500_000, "-1.5", "-0.059055", "-0.15", "", "-1.5 mm"},
		"nothing":                  {0, "0", "0", "0", "0", "0 in"},
		"a nanometre":              {1, "0.000001", "0", "0.0000001", "", "0.000001 mm"},
		"a nanometre below":        {-1, "-0.000001", "0", "-0.0000001", "", "-0.000001 mm"},
		"five millionths":          {127, "0.000127", "0.000005", "0.0000127", "0.000005", "0.000005 in"},
		"0.51 of a millionth":      {13, "0.000013", "0.000001", "0.0000013", "", "0.000013 mm"},
		"0.47 of a millionth":      {-12, "-0.000012", "0", "-0.0000012", "", "-0.000012 mm"},
		"the longest that is read": {Max, "100000", "3937.007874", "10000", "", "100000 mm"},
		"the least int64": {minWhole, "-9223372036854.775808", "-363124883340.739205", "-922337203685.4775808", "",
			"-9223372036854.775808 mm"},
	} {
		cm, _ := c.l.Decimal(CM)
		in, ok := c.l.Decimal(IN)
		if c.l.MM() != c.mm || c.l.Inches() != c.inches || cm != c.cm || c.l.Text(IN) != c.asText {
			t.Errorf("%s: %s mm, %s in, %s cm, as text %s", name, c.l.MM(), c.l.Inches(), cm, c.l.Text(IN))
		}
		if in != c.in || ok != (c.in != "") {
			t.Errorf("%s: a decimal of %q in, %t; want %q", name, in, ok, c.in)
		}
	}
}

// Every 64th of an inch as a published chart prints it: read, and printed the same.
func TestPublishedFractionsOfAnInch(t *testing.T) {
	file, err := os.Open("testdata/published/inch-fractions.txt")
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	rows, half := 0, 50*Nanometre // of the chart's last place
	for lines := bufio.NewScanner(file); lines.Scan(); {
		cells := strings.Fields(lines.Text())
		if cells[0] == "#" {
			continue
		}
		rows++
		l := must(t, cells[0]+" in")
		if got := must(t, cells[1]+" in"); got != l || Length(rows)*Inch/64 != l {
			t.Errorf("%s in is %d, as a decimal %d", cells[0], l, got)
		}
		if off := must(t, cells[2]+" mm") - l; off.Abs() > half {
			t.Errorf("%s in is %s mm, printed %s", cells[0], l.MM(), cells[2])
		}
		if text, mark := l.Tape(IN, Inch/64, Nearest); text != cells[0]+" in" || mark != l {
			t.Errorf("%s in is marked %s", cells[0], text)
		}
		if got := l.Inches(); got != strings.TrimRight(cells[1], "0") {
			t.Errorf("%s in is printed %s", cells[0], got)
		}
	}
	if rows != 63 {
		t.Errorf("%d rows", rows)
	}
}

func TestWhatIsPrintedCanBeReadBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := rapid.OneOf(lengths(), rapid.Map(lengths(), func(l Length) Length { return l / finest * finest })).Draw(t, "l")
		for _, u := range []Unit{MM, CM, IN} {
			if got, err := Parse(l.Text(u)); err != nil || got != l {
				t.Fatalf("%d is printed %q and read back as %d, %v", l, l.Text(u), got, err)
			}
			if text, ok := l.Decimal(u); ok {
				if got, err := ParseNumber(text, u); err != nil || got != l {
					t.Fatalf("%d is printed %s %v and read back as %d, %v", l, text, u, got, err)
				}
			}
		}
		if got, err := ParseNumber(l.MM(), MM); err != nil || got != l {
			t.Fatalf("%d is printed %s mm and read back as %d, %v", l, l.MM(), got, err)
		}
	})
}

// math/big rounds ties away from zero; there are none in inches.
func TestInchesAreRoundedToSixPlaces(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := Length(rapid.Int64().Draw(t, "l"))
		want := new(big.Rat).Quo(nm(l), nm(Inch)).FloatString(6)
		want = strings.TrimSuffix(strings.TrimRight(want, "0"), ".")
		if want == "-0" {
			want = "0"
		}
		if got := l.Inches(); got != want {
			t.Fatalf("%d is %s in, want %s", l, got, want)
		}
	})
}

// A decimal in inches is refused only where there is none: the denominator in lowest terms has a factor beside 2 and 5.
func TestDecimalInchesWhereThereAreSome(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := lengths().Draw(t, "l")
		if rapid.Bool().Draw(t, "even") {
			l = l / 127 * 127
		}
		text, ok := l.Decimal(IN)
		if places, finite := new(big.Rat).Quo(nm(l), nm(Inch)).FloatPrec(); finite != ok || ok && places > 9 {
			t.Fatalf("%d: %q, %t; %d places, finite %t", l, text, ok, places, finite)
		}
	})
}
