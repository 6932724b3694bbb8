package estimate

import (
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/money"
)

// 100.00 in thirds. Source: a case of the largest remainder, computed (C).
func TestThirdsOfAHundred(t *testing.T) {
	var lines []Line
	for range 3 {
		lines = append(lines, sure("a", known(333_333)))
	}
	rows, total := Settle(lines, euro)
	for i, want := range []money.Amount{333_400, 333_300, 333_300} {
		if rows[i].Likely != want || rows[i].Low != want || rows[i].High != want || rows[i].Mean != want {
			t.Errorf("line %d: %+v", i, rows[i])
		}
	}
	if total.Likely != 100*money.Unit {
		t.Errorf("total %+v", total)
	}
}

func TestSettledLinesAddUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		lines := someLines(t)
		for i := range lines {
			lines[i].TaxPercent = money.Quantity(rapid.Int64Range(0, 30_000).Draw(t, "tax"))
		}
		c := rapid.SampledFrom([]money.Currency{euro, {Code: "JPY"}, {Code: "KWD", Digits: 3}}).Draw(t, "currency")
		rows, total := Settle(lines, c)
		var sum Row
		exact, settled := map[string]Row{}, map[string]Row{}
		for i, row := range rows {
			l := &lines[i]
			sum = sum.Plus(row)
			settled[l.Group] = settled[l.Group].Plus(row)
			exact[l.Group] = exact[l.Group].Plus(Row{l.Spread.Low, l.Spread.Likely, l.Spread.High, l.Mean, l.Tax()})
			if row.Low > row.Likely || row.Likely > row.High {
				t.Fatalf("out of order: %+v of %+v", row, l)
			}
			if off(row.Likely, l.Spread.Likely) >= c.Coin() || off(row.Mean, l.Mean) >= c.Coin() || off(row.Tax, l.Tax()) >= c.Coin() ||
				off(row.Low, l.Spread.Low) >= 3*c.Coin() || off(row.High, l.Spread.High) >= 3*c.Coin() {
				t.Fatalf("too far off: %+v of %+v", row, l)
			}
		}
		if sum != total {
			t.Fatalf("the lines come to %+v, the total is %+v", sum, total)
		}
		for group, e := range exact {
			want := Row{e.Low.Rounded(c), e.Likely.Rounded(c), e.High.Rounded(c), e.Mean.Rounded(c), e.Tax.Rounded(c)}
			if settled[group] != want {
				t.Fatalf("group %q comes to %+v, want %+v", group, settled[group], want)
			}
		}
	})
}

func off(a, b money.Amount) money.Amount { return max(a-b, b-a) }
