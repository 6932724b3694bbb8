package level

import (
	"math"
	"math/big"
	"os"
	"strconv"
	"strings"
	"testing"

	"railhead/internal/length"
)

// rows reads a published table: lines of fields, less the header.
func rows(t *testing.T, name string) (out [][]string) {
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

// metres is a decimal of metres. Levels over the sea are more than a request may hold, but not more than a height may.
func metres(t *testing.T, text string) length.Length {
	t.Helper()
	r, ok := new(big.Rat).SetString(text)
	if !ok {
		t.Fatalf("%q is no number", text)
	}
	l, ok := length.FromRat(r.Mul(r, big.NewRat(int64(length.Metre), 1))).Whole()
	if !ok {
		t.Fatalf("%q is no whole number of nanometres", text)
	}
	return l
}

// Level books reduce by the height of the instrument, the way laser set-ups are reduced here: each set-up is a
// line, tied to the one before by the readings at the change point.
func TestLevelBooksReduce(t *testing.T) {
	instrument := map[string]length.Length{}
	for _, r := range rows(t, "level-instrument-heights.txt") {
		instrument[r[0]+" "+r[1]] = metres(t, r[2])
	}
	var readings []Reading
	read := func(v length.Length) Height {
		readings = append(readings, Reading{HalfWidth: length.Millimetre})
		return Read(ReadingID(len(readings)-1), v)
	}
	var book, setUp string
	var line, last Height
	for _, r := range rows(t, "level-books.txt") {
		staff, want := metres(t, r[2]), metres(t, r[3])
		if r[0] != book {
			last = Fixed(want.Exact()) // the bench mark
		}
		if r[0] != book || r[1] != setUp {
			line = last.Add(read(staff))
			if got := line.Value; got.CmpLength(instrument[r[0]+" "+r[1]]) != 0 {
				t.Errorf("book %s, set-up %s: instrument at %s, want %s", r[0], r[1], got, instrument[r[0]+" "+r[1]])
			}
			book, setUp = r[0], r[1]
			continue
		}
		last = line.Sub(read(staff))
		if last.Value.CmpLength(want) != 0 {
			t.Errorf("book %s, set-up %s, staff %s: level %s, want %s", r[0], r[1], r[2], last.Value, want)
		}
	}
}

// The sum of backsights less that of foresights is the last level less the first, which is the check every level book
// ends with (surveying textbooks; seen on expertsmind.com, status F).
func TestBacksightsLessForesights(t *testing.T) {
	table := rows(t, "level-books.txt")
	var sum, first length.Length
	for i, r := range table {
		starts := i == 0 || table[i-1][0] != r[0] || table[i-1][1] != r[1]
		ends := i+1 == len(table) || table[i+1][0] != r[0] || table[i+1][1] != r[1]
		if i == 0 || table[i-1][0] != r[0] {
			sum, first = 0, metres(t, r[3])
		}
		if starts {
			sum += metres(t, r[2])
		}
		if ends {
			sum -= metres(t, r[2])
		}
		if (i+1 == len(table) || table[i+1][0] != r[0]) && metres(t, r[3])-first != sum {
			t.Errorf("book %s: last less first is %s, backsights less foresights %s", r[0], metres(t, r[3])-first, sum)
		}
	}
}

// JCGM 100:2008, 4.3.7, example 1 (from memory): "should not exceed 0.40" is a half-width, u² = 0.40²/3, u = 0.23.
func TestAHalfWidthIsRectangular(t *testing.T) {
	d := DoubtOf([]Term{{0, big.NewRat(1, 1)}}, []Reading{{HalfWidth: 400_000}})
	if u := float64(d.Expanded) / 2; math.Abs(u-0.23e6) > 0.005e6 {
		t.Errorf("u = %.0f, want 230 000 to two places", u)
	}
	if d.Expanded != 461_881 { // 2 · 400 000 / √3 = 461 880.2…, up
		t.Errorf("U = %d, want 461 881", d.Expanded)
	}
}

// The terms of the end gauge combine to their root sum of squares. Lengths here stand for millionths of a nanometre; a
// term that is not rectangular there gets the half-width that has its u.
func TestEndGaugeTermsCombine(t *testing.T) {
	table := rows(t, "gum-h1-end-gauge.txt")
	var terms []Term
	var readings []Reading
	var want float64
	for _, r := range table {
		if r[0] == "rss" {
			want, _ = strconv.ParseFloat(r[1], 64)
			continue
		}
		u, err := strconv.ParseFloat(r[0], 64)
		if err != nil {
			t.Fatal(err)
		}
		half, weight := length.Length(math.Round(u*math.Sqrt(3)*1e6)), big.NewRat(1, 1)
		switch r[0] {
		case "16.599": // sensitivity l·α to a temperature difference within ±0.05
			half, weight = 50_000, big.NewRat(50_000_623*115, 10_000_000)
		case "2.887": // sensitivity −l·θ to an expansion difference within ±1e-6
			half, weight = 1, big.NewRat(-50_000_623, 10)
		}
		terms = append(terms, Term{ReadingID(len(readings)), weight})
		readings = append(readings, Reading{HalfWidth: half})
	}
	d := DoubtOf(terms, readings)
	if u := float64(d.Expanded) / 2e6; math.Abs(u-want) > 0.005 {
		t.Errorf("u = %.4f nm, want %.2f", u, want)
	}
	if d.Largest != 0 {
		t.Errorf("largest share has reading %d, want the standard's own, 0", d.Largest)
	}
}
