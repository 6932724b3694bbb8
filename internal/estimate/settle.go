package estimate

import "railhead/internal/money"

// Row is a line in the currency's smallest coin.
type Row struct{ Low, Likely, High, Mean, Tax money.Amount }

// Plus is two rows together.
func (r Row) Plus(s Row) Row {
	return Row{r.Low.Plus(s.Low), r.Likely.Plus(s.Likely), r.High.Plus(s.High), r.Mean.Plus(s.Mean), r.Tax.Plus(s.Tax)}
}

// Settle rounds lines to the smallest coin so that they add up: in each column the
// lines of a group come to what the group comes to, rounded, and the groups to the
// total; what trades charge beside their work is a group of its own. No line's likely value is less than its low or more than its high.
func Settle(lines []Line, c money.Currency) (rows []Row, total Row) {
	rows = make([]Row, len(lines))
	for _, group := range groups(lines) {
		settle(lines, group, rows, c)
	}
	for _, row := range rows {
		total = total.Plus(row)
	}
	return rows, total
}

// groups are the indices of each group's lines, in order of its first.
func groups(lines []Line) [][]int {
	type key struct {
		group  string
		shared bool
	}
	var all [][]int
	place := map[key]int{}
	for i := range lines {
		k := key{lines[i].Group, lines[i].Kind == Shared}
		at, ok := place[k]
		if !ok {
			at = len(all)
			place[k], all = at, append(all, nil)
		}
		all[at] = append(all[at], i)
	}
	return all
}

// settle rounds the lines of one group. Low and high are rounded as how far they
// are from the likely.
func settle(lines []Line, group []int, rows []Row, c money.Currency) {
	column := func(of func(*Line) money.Amount) []money.Amount {
		values := make([]money.Amount, len(group))
		for at, i := range group {
			values[at] = of(&lines[i])
		}
		return values
	}
	likely := column(func(l *Line) money.Amount { return l.Spread.Likely })
	low := column(func(l *Line) money.Amount { return l.Spread.Low })
	high := column(func(l *Line) money.Amount { return l.Spread.High })
	below, above := apart(low, likely, c), apart(likely, high, c)
	likely = money.SplitTo(c, likely)
	mean := money.SplitTo(c, column(func(l *Line) money.Amount { return l.Mean }))
	tax := money.SplitTo(c, column(func(l *Line) money.Amount { return l.Tax() }))
	for at, i := range group {
		rows[i] = Row{likely[at].Minus(below[at]), likely[at], likely[at].Plus(above[at]), mean[at], tax[at]}
	}
}

// apart is how far one column is below another, in whole coins that add up to how
// far the rounded sums are apart.
func apart(low, high []money.Amount, c money.Currency) []money.Amount {
	far := make([]money.Amount, len(low))
	var least, most money.Amount
	for i := range low {
		far[i] = high[i].Minus(low[i])
		least, most = least.Plus(low[i]), most.Plus(high[i])
	}
	coins := money.Apportion((most.Rounded(c)-least.Rounded(c))/c.Coin(), far)
	for i := range coins {
		coins[i] *= c.Coin()
	}
	return coins
}
