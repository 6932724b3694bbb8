package stock

import (
	"errors"
	"reflect"
	"slices"
	"testing"

	"railhead/internal/length"
)

// What a saw leaves: common practice, no source. Two pieces out of one bar need one cut between them; what is left after
// the last piece and is no wider than the blade turns to dust.
func TestKerf(t *testing.T) {
	cases := []struct {
		name   string
		kerf   length.Length
		stock  length.Length
		pieces []length.Length
		bars   int
		dust   length.Length
		offcut []length.Length
	}{
		{"shear: two halves", 0, 2000 * mm, []length.Length{1000 * mm, 1000 * mm}, 1, 0, []length.Length{0}},
		{"saw: two halves no longer fit", 3 * mm, 2000 * mm, []length.Length{1000 * mm, 1000 * mm}, 2, 6 * mm,
			[]length.Length{997 * mm, 997 * mm}},
		{"two halves less the cut between them", 3 * mm, 2000 * mm, []length.Length{998 * mm, 999 * mm}, 1, 3 * mm,
			[]length.Length{0}},
		{"a nanometre too long for that", 3 * mm, 2000 * mm, []length.Length{998*mm + 1, 999 * mm}, 2, 6 * mm,
			[]length.Length{998 * mm, 999*mm - 1}},
		{"the whole bar needs no cut", 3 * mm, 2000 * mm, []length.Length{2000 * mm}, 1, 0, []length.Length{0}},
		{"less left than the blade takes", 3 * mm, 2000 * mm, []length.Length{1998 * mm}, 1, 2 * mm, []length.Length{0}},
		{"just the blade left", 3 * mm, 2000 * mm, []length.Length{1997 * mm}, 1, 3 * mm, []length.Length{0}},
		{"an offcut after the last cut", 3 * mm, 2000 * mm, []length.Length{1990 * mm}, 1, 3 * mm, []length.Length{7 * mm}},
		{"eight feet in three, 1/8 in blade", length.Inch / 8, 96 * length.Inch,
			[]length.Length{32*length.Inch - length.Inch/8, 32*length.Inch - length.Inch/8, 32*length.Inch - length.Inch/8},
			1, 3 * length.Inch / 8, []length.Length{0}},
		{"eight feet in three, 1/64 in too long", length.Inch / 8, 96 * length.Inch,
			[]length.Length{32 * length.Inch, 32 * length.Inch, 32*length.Inch - length.Inch/4 + length.Inch/64},
			2, 3 * length.Inch / 8, []length.Length{31*length.Inch + 3*length.Inch/4, 64*length.Inch + 7*length.Inch/64}},
		{"a blade wider than the pieces", 50 * mm, 210 * mm, []length.Length{10 * mm, 10 * mm, 10 * mm, 10 * mm}, 1, 170 * mm,
			[]length.Length{0}},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			p := Problem{Stock: []length.Length{c.stock}, Kerf: c.kerf}
			for i, l := range c.pieces {
				p.Pieces = append(p.Pieces, Piece{i, l})
			}
			plan, err := Cut(p)
			if err != nil {
				t.Fatal(err)
			}
			verify(t, p, plan)
			got := offcuts(plan)
			slices.Sort(got)
			if len(plan.Bars) != c.bars || plan.Kerf != c.dust || !slices.Equal(got, c.offcut) {
				t.Errorf("%d bars, dust %v, offcuts %v", len(plan.Bars), plan.Kerf, got)
			}
		})
	}
}

// Worked by hand with a kerf of 3 mm.
func TestSeveralStockLengths(t *testing.T) {
	cases := []struct {
		name   string
		stock  []int
		orders []order
		want   []int // stock of the bars
		offcut int   // the longest
	}{
		{"one long bar instead of two short", []int{2400, 3000}, []order{{1400, 2}}, []int{3000}, 194},
		{"the short bar when it will do", []int{2400, 3000}, []order{{1100, 2}}, []int{2400}, 194},
		{"a short and a long", []int{2400, 3000}, []order{{2900, 1}, {1300, 1}, {900, 1}}, []int{3000, 2400}, 194},
		{"equal length bought: fewer bars", []int{1000, 2000}, []order{{990, 2}}, []int{2000}, 14},
		{"two short when one long is not enough", []int{1000, 2000}, []order{{1000, 2}}, []int{1000, 1000}, 0},
		{"a length too short for any piece", []int{300, 2000}, []order{{1500, 1}}, []int{2000}, 497},
		{"the same length twice", []int{2000, 2000}, []order{{1500, 1}}, []int{2000}, 497},
		{"one long offcut rather than two", []int{1000}, []order{{600, 2}, {290, 1}, {100, 1}}, []int{1000, 1000}, 397},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			p := problem(3*mm, c.orders, c.stock...)
			plan, err := Cut(p)
			if err != nil {
				t.Fatal(err)
			}
			verify(t, p, plan)
			var got []int
			for _, b := range plan.Bars {
				got = append(got, int(b.Stock/mm))
			}
			if !slices.Equal(got, c.want) || !plan.Proven || slices.Max(offcuts(plan)) != length.Length(c.offcut)*mm {
				t.Errorf("bars %v, offcuts %v, proven %v", got, offcuts(plan), plan.Proven)
			}
		})
	}
}

func TestErrorsSayWhere(t *testing.T) {
	_, err := Cut(Problem{Stock: []length.Length{10, -1}, Kerf: -1})
	if got, want := err.Error(), "stock.value.not_positive: stock 1; stock.value.not_positive: kerf"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}

func TestNothingToCut(t *testing.T) {
	plan, err := Cut(Problem{Stock: []length.Length{2400 * mm}})
	if err != nil || len(plan.Bars) != 0 || plan.Bought != 0 || !plan.Proven {
		t.Errorf("%+v, %v", plan, err)
	}
}

func TestPiecesKeepTheirID(t *testing.T) {
	p := Problem{Stock: []length.Length{1000 * mm}, Pieces: []Piece{{7, 400 * mm}, {3, 400 * mm}, {5, 900 * mm}}}
	plan, err := Cut(p)
	if err != nil {
		t.Fatal(err)
	}
	want := [][]Piece{{{5, 900 * mm}}, {{3, 400 * mm}, {7, 400 * mm}}}
	for i, b := range plan.Bars {
		if !slices.Equal(b.Cuts, want[i]) {
			t.Errorf("bar %d: %v, want %v", i, b.Cuts, want[i])
		}
	}
}

func TestRefused(t *testing.T) {
	many := make([]Piece, MaxPieces+1)
	lengths := make([]length.Length, MaxStock+1)
	cases := []struct {
		name string
		p    Problem
		want Errors
	}{
		{"no stock", Problem{Pieces: []Piece{{0, mm}}}, Errors{{Code: CodeNone, Member: InStock, Index: -1}}},
		{"piece longer than any stock", Problem{Stock: []length.Length{10, 20}, Pieces: []Piece{{4, 20}, {5, 21}}},
			Errors{{CodeTooLong, InPieces, 1, 21, 20}}},
		{"everything at once", Problem{Stock: []length.Length{0, 10}, Kerf: -1, Pieces: []Piece{{0, 0}, {1, 11}, {2, -5}}},
			Errors{
				{CodeNotPositive, InStock, 0, 0, 0}, {CodeNotPositive, InKerf, -1, -1, 0},
				{CodeNotPositive, InPieces, 0, 0, 0}, {CodeTooLong, InPieces, 1, 11, 10}, {CodeNotPositive, InPieces, 2, -5, 0},
			}},
		{"beyond what a length may be", Problem{Stock: []length.Length{length.Max + 1}, Kerf: length.Max + 1},
			Errors{
				{CodeTooLarge, InStock, 0, length.Max + 1, length.Max},
				{CodeTooLarge, InKerf, -1, length.Max + 1, length.Max},
			}},
		{"too many pieces", Problem{Stock: []length.Length{mm}, Pieces: many},
			Errors{{Code: CodeTooMany, Member: InPieces, Index: -1}}},
		{"too many lengths", Problem{Stock: lengths}, Errors{{Code: CodeTooMany, Member: InStock, Index: -1}}},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			_, err := Cut(c.p)
			var got Errors
			if !errors.As(err, &got) || !reflect.DeepEqual(got, c.want) {
				t.Errorf("%v, want %v", err, c.want)
			}
		})
	}
}
