package length

import (
	"errors"
	"strings"
	"testing"

	"golang.org/x/text/unicode/norm"
)

// The inch is 25.4 mm and the foot 304.8 mm exactly (international agreement of 1959; F, as published in the mail archive
// of the metric association), so 31 5/8 in is 803.275 mm and 2 ft 7 5/8 in the same.
func TestParseReadsWhatTapesAndDrawingsSay(t *testing.T) {
	for name, c := range map[string]struct{ text, mm string }{
		"inches and eighths":         {"31 5/8 in", "803.275"},
		"joined by a hyphen":         {`31-5/8"`, "803.275"},
		"no space before the mark":   {`31 5/8"`, "803.275"},
		"no space before the unit":   {`31 5/8in`, "803.275"},
		"a fraction alone":           {"5/8 in", "15.875"},
		"more than one, as fraction": {"9/8 in", "28.575"},
		"sixty-fourths":              {"1/64 in", "0.396875"},
		"not in lowest terms":        {"31 10/16 in", "803.275"},
		"decimal inches":             {"31.625 in", "803.275"},
		"a tenth, by fraction":       {"1/10 in", "2.54"},
		"feet and inches":            {`2' 7 5/8"`, "803.275"},
		"feet, hyphen, inches":       {`2'-7 5/8"`, "803.275"},
		"as architects space it":     {`2' - 7 5/8"`, "803.275"},
		"hyphens throughout":         {`2'-7-5/8"`, "803.275"},
		"feet and inches in letters": {"2 ft 7 5/8 in", "803.275"},
		"letters without spaces":     {"2ft7 5/8in", "803.275"},
		"mark and letters":           {`2' 7 5/8 in`, "803.275"},
		"feet and decimal inches":    {`2' 7.625"`, "803.275"},
		"feet and a fraction":        {`2' 5/8"`, "625.475"},
		"feet and no inches":         {`2' 0"`, "609.6"},
		"no feet":                    {`0' 11 63/64"`, "304.403125"},
		"feet alone":                 {"2'", "609.6"},
		"decimal feet":               {"8.5 ft", "2590.8"},
		"feet and half a foot":       {"8 1/2 ft", "2590.8"},
		"two thirds of a foot":       {"2/3 ft", "203.2"},
		"millimetres":                {"803.3 mm", "803.3"},
		"a tenth of a millimetre":    {"0.1 mm", "0.1"},
		"a nanometre":                {"0.000001 mm", "0.000001"},
		"centimetres":                {"80.33 cm", "803.3"},
		"metres":                     {"0.8033 m", "803.3"},
		"nine places of a metre":     {"0.803300001 m", "803.300001"},
		"zeros that say nothing":     {"803.300000000000 mm", "803.3"},
		"the fraction character":     {"31⅝ in", "803.275"},
		"it after a space":           {`31 ⅝"`, "803.275"},
		"it after a hyphen":          {`31-⅝"`, "803.275"},
		"it alone":                   {"⅝ in", "15.875"},
		"it after feet":              {"2′ 7⅝″", "803.275"},
		"it alone after feet":        {"2′ ⅝″", "625.475"},
		"a third of a foot":          {"⅓ ft", "101.6"},
		"a fifth of an inch":         {"⅕ in", "5.08"},
		"primes":                     {"2′-7 5/8″", "803.275"},
		"typographic quotes":         {"2’ 7 5/8”", "803.275"},
		"fraction slash":             {"31 5⁄8 in", "803.275"},
		"no-break space":             {"803.3\u00a0mm", "803.3"},
		"narrow no-break space":      {"31\u202f5/8\u202fin", "803.275"},
		"no-break hyphen":            {"31\u20115/8 in", "803.275"},
		"below zero":                 {"-1 3/16 in", "-30.1625"},
		"the minus sign":             {"−1 3/16 in", "-30.1625"},
		"the minus is for all of it": {`-2'-7 5/8"`, "-803.275"},
		"nothing":                    {"0 in", "0"},
		"nothing below zero":         {"-0 mm", "0"},
		"no eighths":                 {"0/8 in", "0"},
		"the longest":                {"100 m", "100000"},
		"the lowest":                 {"-100000 mm", "-100000"},
	} {
		t.Run(name, func(t *testing.T) {
			got, err := Parse(c.text)
			if err != nil || got.MM() != c.mm {
				t.Errorf("%q is %s mm (%v), want %s", c.text, got.MM(), err, c.mm)
			}
		})
	}
}

func TestParseRefuses(t *testing.T) {
	for name, c := range map[string]struct{ text, code string }{
		"nothing":                        {"", CodeSyntax},
		"a space":                        {" ", CodeSyntax},
		"no unit":                        {"31", CodeSyntax},
		"no unit after a fraction":       {"31 5/8", CodeSyntax},
		"no mark on the inches":          {"2' 7", CodeSyntax},
		"no number":                      {"in", CodeSyntax},
		"a minus alone":                  {"-", CodeSyntax},
		"two signs":                      {"--1 mm", CodeSyntax},
		"a plus":                         {"+1 mm", CodeSyntax},
		"a sign apart":                   {"- 1 mm", CodeSyntax},
		"a unit unknown here":            {"1 yd", CodeSyntax},
		"a unit written out":             {"1 inch", CodeSyntax},
		"capital millimetres":            {"803 MM", CodeSyntax},
		"capital inches":                 {"31 5/8 IN", CodeSyntax},
		"a space before":                 {" 31 in", CodeSyntax},
		"a space after":                  {"31 in ", CodeSyntax},
		"two spaces":                     {"31  in", CodeSyntax},
		"a tab":                          {"31\tin", CodeSyntax},
		"a line break after":             {"31 in\n", CodeSyntax},
		"comma for thousands":            {"1,200 mm", CodeSyntax},
		"comma for the point":            {"803,3 mm", CodeSyntax},
		"space for thousands":            {"1 200 mm", CodeSyntax},
		"a point and nothing after":      {"31. in", CodeSyntax},
		"nothing before the point":       {".5 in", CodeSyntax},
		"two points":                     {"1.2.3 mm", CodeSyntax},
		"leading zeros":                  {"007 mm", CodeSyntax},
		"an exponent":                    {"8e2 mm", CodeSyntax},
		"not a number":                   {"NaN mm", CodeSyntax},
		"infinite":                       {"Inf mm", CodeSyntax},
		"hexadecimal":                    {"0x1F mm", CodeSyntax},
		"digits of another script":       {"٣ mm", CodeSyntax},
		"parts of nothing":               {"1/0 in", CodeSyntax},
		"nought in front of the parts":   {"5/08 in", CodeSyntax},
		"a fraction of a fraction":       {"1/2/3 in", CodeSyntax},
		"a decimal fraction":             {"1.5/2 in", CodeSyntax},
		"decimals and a fraction":        {"1.5 1/2 in", CodeSyntax},
		"two fractions":                  {"1/2 1/2 in", CodeSyntax},
		"a fraction character over some": {"⅝/2 in", CodeSyntax},
		"a fraction below zero":          {"31 -5/8 in", CodeSyntax},
		"a fraction of a millimetre":     {"5/8 mm", CodeSyntax},
		"a half millimetre":              {"803½ mm", CodeSyntax},
		"a foot or more of inches":       {`2' 14"`, CodeSyntax},
		"a foot of inches":               {`2' 12"`, CodeSyntax},
		"inches with a leading zero":     {`2' 07"`, CodeSyntax},
		"inches before feet":             {`7" 2'`, CodeSyntax},
		"broken feet before inches":      {`2.5' 7"`, CodeSyntax},
		"half a foot before inches":      {`2 1/2' 7"`, CodeSyntax},
		"feet twice":                     {`2' 7'`, CodeSyntax},
		"feet and millimetres":           {"2' 7 mm", CodeSyntax},
		"inches below zero after feet":   {`2' --7"`, CodeSyntax},
		"metres and centimetres":         {"1 m 20 cm", CodeSyntax},
		"something after":                {"31 in or so", CodeSyntax},
		"a broken character":             {"31\xff in", CodeSyntax},
		"more digits than a room has":    {"1234567890 mm", CodeSyntax},
		"more than 64 characters":        {"0." + strings.Repeat("0", 70) + " mm", CodeSyntax},

		"a third of an inch":           {"1/3 in", CodeTooFine},
		"a third, as a character":      {"31⅓ in", CodeTooFine},
		"a third after feet":           {`2' 7 1/3"`, CodeTooFine},
		"an inch in 128ths":            {"1/128 in", CodeTooFine},
		"a third, as printed":          {"0.3333333333333333 in", CodeTooFine},
		"half a nanometre":             {"0.0000005 mm", CodeTooFine},
		"seven places of an inch":      {"0.0000001 in", CodeTooFine},
		"a thousandth of a thousandth": {"0.000000000000000000000000000001 m", CodeTooFine},

		"beyond 100 m":                  {"101 m", CodeOutOfRange},
		"a nanometre beyond":            {"100.000000001 m", CodeOutOfRange},
		"a nanometre below":             {"-100.000000001 m", CodeOutOfRange},
		"nine digits of metres":         {"999999999 m", CodeOutOfRange},
		"nine digits of millimetres":    {"999999999 mm", CodeOutOfRange},
		"beyond by the inches":          {`328' 11"`, CodeOutOfRange},
		"beyond by a fraction":          {"999999/1 ft", CodeOutOfRange},
		"a mixed number that is none":   {"31 9/8 in", CodeOutOfRange},
		"eight eighths":                 {"31 8/8 in", CodeOutOfRange},
		"nine eighths after feet":       {`2' 9/8"`, CodeOutOfRange},
		"eight eighths of inches, feet": {`2' 7 8/8"`, CodeOutOfRange},
	} {
		t.Run(name, func(t *testing.T) {
			got, err := Parse(c.text)
			var refused *Error
			if !errors.As(err, &refused) || refused.Code != c.code || got != 0 {
				t.Fatalf("%q is %d, %v; want %s", c.text, got, err, c.code)
			}
		})
	}
}

func TestRefusalsSayNothingOfTheText(t *testing.T) {
	for _, text := range []string{"<b>31</b>", "77.77 mn", "77/777 in", "77777 m", `77 777/77"`} {
		if _, err := Parse(text); err == nil || strings.Contains(err.Error(), "<b>") || strings.Contains(err.Error(), "77") {
			t.Errorf("%q is refused with %v", text, err)
		}
	}
}

// What a fraction character means is what the Unicode Character Database decomposes it to (NFKC).
func TestFractionCharactersMeanWhatUnicodeSays(t *testing.T) {
	for _, v := range vulgarValues {
		byCharacter, errA := Parse(v.text + " ft")
		byDigits, errB := Parse(norm.NFKC.String(v.text) + " ft")
		if byCharacter != byDigits || (errA == nil) != (errB == nil) {
			t.Errorf("%s is %d (%v), spelled out %d (%v)", v.text, byCharacter, errA, byDigits, errB)
		}
	}
	for r := rune(0x80); r < 0x3000; r++ { // and none is left out: 5⁄8 decomposes to digits around a fraction slash
		whole, parts, found := strings.Cut(norm.NFKC.String(string(r)), fractionSlash)
		if !found || whole == "" || whole == "0" || parts == "" {
			continue
		}
		if !strings.ContainsRune(patVulgar, r) {
			t.Errorf("%c is a fraction that Parse does not read", r)
		}
	}
}
