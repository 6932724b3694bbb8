package resolve

import (
	"math/big"
	"os"
	"strings"
	"testing"

	"railhead/internal/length"
)

// published reads a published table: lines of fields, less the header.
func published(t testing.TB, name string) (out [][]string) {
	t.Helper()
	data, err := os.ReadFile("../../testdata/published/" + name)
	if err != nil {
		t.Fatal(err)
	}
	for line := range strings.Lines(string(data)) {
		if fields := strings.Fields(line); len(fields) > 0 && fields[0] != "#" {
			out = append(out, fields)
		}
	}
	return out
}

// metres is a decimal of metres.
func metres(t testing.TB, text string) length.Length {
	t.Helper()
	r, ok := new(big.Rat).SetString(text)
	if !ok {
		t.Fatalf("%q is no number", text)
	}
	l, _ := length.FromRat(r.Mul(r, big.NewRat(int64(length.Metre), 1))).Whole()
	return l
}

// DIN 18202, table 3, rows 3 and 6, with the values between its columns as they were printed.
func TestFlatnessIsThePublishedTable(t *testing.T) {
	table := published(t, "din-18202-flatness.txt")
	rows := map[string]flatness{"3": finishedFloor, "6": finishedCeiling}
	for _, row := range table[1:] {
		for i, want := range row[1:] {
			if got := rows[row[0]].over(metres(t, table[0][i+1])); got.MM() != want {
				t.Errorf("row %s at %s m: %s, want %s", row[0], table[0][i+1], got.MM(), want)
			}
		}
	}
	if got := finishedFloor.over(length.Centimetre); got.MM() != "2" {
		t.Errorf("nearer than the first column: %s, want 2", got.MM())
	}
	if got := finishedCeiling.over(40 * length.Metre); got.MM() != "25" {
		t.Errorf("further than the last column: %s, want 25", got.MM())
	}
}

// DIN 18202, table 2: a row holds up to and including its distance.
func TestAnglesAreThePublishedTable(t *testing.T) {
	last := length.Length(0)
	for _, row := range published(t, "din-18202-angles.txt") {
		upTo := metres(t, row[0])
		for _, at := range []length.Length{last + 1, upTo} {
			if got := angular(at); got.MM() != row[1] {
				t.Errorf("at %s: %s, want %s", at, got.MM(), row[1])
			}
		}
		last = upTo
	}
}
