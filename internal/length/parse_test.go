package length

import (
	"errors"
	"testing"
)

// The inch is 25.4 mm and the foot 304.8 mm exactly (published-checks 13, F).
func TestParseReadsWhatTapesAndDrawingsSay(t *testing.T) {
	for _, c := range []struct {
		text string
		want Length
	}{
		{"31 5/8 in", 803_275_000}, {`31-5/8"`, 803_275_000}, {"5/8 in", 15_875_000}, {"31.625 in", 803_275_000},
		{`2' 7 5/8"`, 803_275_000}, {`2'-7 5/8"`, 803_275_000}, {"2 ft 7 5/8 in", 803_275_000}, {"2'", 609_600_000},
		{"803.3 mm", 803_300_000}, {"80.33 cm", 803_300_000}, {"0.8033 m", 803_300_000}, {"31⅝ in", 803_275_000},
	} {
		if got, err := Parse(c.text); err != nil || got != c.want {
			t.Errorf("Parse(%q) = %d, %v; want %d", c.text, got, err, c.want)
		}
	}
}

func TestParseRefuses(t *testing.T) {
	for text, code := range map[string]string{
		"": CodeSyntax, "31": CodeSyntax, `2' 14"`: CodeSyntax, "1/3 in": CodeTooFine, "101 m": CodeOutOfRange,
	} {
		var refused *Error
		if got, err := Parse(text); !errors.As(err, &refused) || refused.Code != code || got != 0 {
			t.Errorf("Parse(%q) = %d, %v; want %s", text, got, err, code)
		}
	}
}
