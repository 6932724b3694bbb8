package length

import (
	"errors"
	"math/big"
	"regexp"
	"strings"
	"testing"
	"unicode/utf8"

	"golang.org/x/text/unicode/norm"
	"pgregory.net/rapid"
)

var pattern = regexp.MustCompile(Pattern)

// oracle reads what the pattern matches in another way: spelled out in ASCII, cut into words, added up as rationals. It
// also says whether a fraction after a whole number is improper.
func oracle(text string) (nanometres *big.Rat, improper bool) {
	for _, v := range vulgarValues {
		text = strings.ReplaceAll(text, v.text, " "+norm.NFKC.String(v.text))
	}
	negative := strings.HasPrefix(text, "-") || strings.HasPrefix(text, minus)
	text = strings.NewReplacer("-", " ", minus, " ", hyphen, " ", noBreakHyphen, " ", noBreak, " ", narrowNoBreak, " ",
		fractionSlash, "/", `"`, " in ", doublePrime, " in ", doubleQuote, " in ", "'", " ft ", prime, " ft ", quote, " ft ",
		"mm", " mm ", "cm", " cm ", "in", " in ", "ft", " ft ", "m", " m ").Replace(text)
	total, sum, before := new(big.Rat), new(big.Rat), false
	for _, word := range strings.Fields(text) {
		if size, ok := unitSizes[word]; ok {
			total.Add(total, sum.Mul(sum, size))
			sum = new(big.Rat)
			continue
		}
		part, _ := new(big.Rat).SetString(word)
		improper = improper || before && strings.Contains(word, "/") && part.Cmp(rat(1, 1)) >= 0
		sum.Add(sum, part)
		before = true
	}
	if negative {
		total.Neg(total)
	}
	return total, improper
}

var unitSizes = map[string]*big.Rat{
	"mm": rat(1_000_000, 1), "cm": rat(10_000_000, 1), "m": rat(1_000_000_000, 1),
	"in": rat(25_400_000, 1), "ft": rat(12*25_400_000, 1),
}

// checkParse holds Parse to the pattern and the oracle, whatever the text.
func checkParse(t interface {
	Helper()
	Fatalf(string, ...any)
}, text string) {
	t.Helper()
	got, err := Parse(text)
	var refused *Error
	if err != nil && (!errors.As(err, &refused) || got != 0) {
		t.Fatalf("%q: %d with %v", text, got, err)
	}
	if !pattern.MatchString(text) {
		if refused == nil || refused.Code != CodeSyntax {
			t.Fatalf("%q: %d, %v; the pattern does not match", text, got, err)
		}
		return
	}
	want, improper := oracle(text)
	tooFine, tooLong := !want.IsInt(), new(big.Rat).Abs(want).Cmp(nm(Max)) > 0
	switch {
	case refused == nil:
		if improper || tooFine || tooLong || want.Cmp(nm(got)) != 0 {
			t.Fatalf("%q is %d, want %v (improper %t)", text, got, want, improper)
		}
	case refused.Code == CodeTooFine && tooFine, refused.Code == CodeOutOfRange && (tooLong || improper):
	default:
		t.Fatalf("%q: %v, want %v (improper %t)", text, err, want, improper)
	}
}

func FuzzParse(f *testing.F) {
	for _, text := range []string{
		"31 5/8 in", `31-5/8"`, "5/8 in", "31.625 in", `2' 7 5/8"`, `2'-7 5/8"`, "2 ft 7 5/8 in", "2'", "803.3 mm",
		"80.33 cm", "0.8033 m", "31⅝ in",
		"31 ⅝\"", "2′ 7⅝″", "2’ - 7 5⁄8”", "−1 3/16 in", "1/0 in", "31 9/8 in", `2' 14"`, "1/3 in",
		"-0 mm", "100 m", "999999999 ft", "1e3 mm", "\xff", "", "0.0000000000000000000000000000001 m",
	} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) { checkParse(t, text) })
}

func TestParseAndPatternAgree(t *testing.T) {
	matching := rapid.StringMatching(Pattern)
	pieces := rapid.SampledFrom([]string{
		"0", "1", "7", "11", "12", "31", "5/8", "9/8", "/", "⅝", "⅓", ".", " ", "\u00a0", "-", "−", "\u2011", "mm", "cm",
		"m", "in", "ft", "'", `"`, "′", "″", "’", "”", "⁄", "x", "000", "123456",
	})
	rapid.Check(t, func(t *rapid.T) {
		text := matching.Draw(t, "matching")
		if !pattern.MatchString(text) || utf8.RuneCountInString(text) > MaxText {
			t.Fatalf("%q is longer than said, or no match", text)
		}
		checkParse(t, text)
		checkParse(t, strings.Join(rapid.SliceOfN(pieces, 0, 9).Draw(t, "pieces"), ""))
		cut := rapid.IntRange(0, len(text)).Draw(t, "cut")
		checkParse(t, text[:cut]+pieces.Draw(t, "piece")+text[cut:])
	})
}

func TestTheLongestTextIsWithinMaxText(t *testing.T) {
	longest := "-123456789 ft - 11." + strings.Repeat("9", 30) + " in"
	if !pattern.MatchString(longest) {
		t.Fatalf("%q does not match", longest)
	}
	if n := utf8.RuneCountInString(longest); n > MaxText {
		t.Errorf("%d characters", n)
	}
}

// Escapes and groups that ECMA-262 and RE2 do not share, or that its u and v flags refuse, are not used.
func TestPatternIsPlain(t *testing.T) {
	for _, not := range []string{`\`, "(?i", "(?P", "(?<", "(?=", "(?!", "[[", "{,", ".*", "[-", "-]"} {
		if strings.Contains(Pattern, not) {
			t.Errorf("the pattern contains %s", not)
		}
	}
}
