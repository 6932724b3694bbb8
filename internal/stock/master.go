package stock

// master is the linear program over the patterns known so far: the least price of covering the demand with fractions of
// bars. Floats only steer here. Whatever they say, a bound counts after generate has checked it in whole numbers, and a
// plan is made of whole patterns. The conversions around products keep processors from fusing them with the sum, so
// that every machine takes the same way.
type master struct {
	rows   int
	cols   []column
	basis  []int     // column of each row
	inv    []float64 // inverse of the basis, row by row; after it one row of dual values
	x      []float64 // amount of each row's column
	work   *budget
	change []float64 // of each row with one unit of the entering column; the last is what it saves
}

// column is a pattern in terms of the rows. Two kinds without a pattern come first: column i stands for one piece of
// row i out of nowhere at a forbidding price, rows+i throws one away for nothing.
type column struct {
	pattern *pattern
	entries []entry
	price   float64 // 1 is the dearest bar
}

type entry struct {
	row   int
	count float64
}

const tiny = 1e-9

// newMaster starts with everything supplied out of nowhere.
func newMaster(demand, kinds []int, outOfNowhere float64, work *budget) *master {
	m := len(kinds)
	lp := &master{rows: m, work: work}
	lp.basis, lp.x, lp.change = make([]int, m), make([]float64, m), make([]float64, m+1)
	lp.inv = make([]float64, (m+1)*m)
	lp.cols = make([]column, 2*m)
	for i, k := range kinds {
		lp.basis[i] = i
		lp.inv[i*m+i] = 1
		lp.inv[m*m+i] = outOfNowhere
		lp.cols[i].price = outOfNowhere
		// A hair more than the demand, different in each row: equal demands make the program go round in circles.
		lp.x[i] = float64(demand[k]) + float64(i*7919%1009+1)/1e10
	}
	return lp
}

// add makes a pattern known.
func (lp *master) add(p *pattern, price float64, rowOf []int) {
	c := column{pattern: p, price: price}
	for _, each := range p.takes {
		c.entries = append(c.entries, entry{rowOf[each.kind], float64(each.count)})
	}
	lp.cols = append(lp.cols, c)
}

// duals is what one more piece of each row would cost.
func (lp *master) duals() []float64 { return lp.inv[lp.rows*lp.rows:] }

// value is the price of the program so far.
func (lp *master) value() float64 {
	var sum float64
	for i, j := range lp.basis {
		sum += float64(lp.cols[j].price * lp.x[i])
	}
	return sum
}

// solve pivots until no known column improves.
func (lp *master) solve() {
	for !lp.work.spent() {
		j, gain := lp.entering()
		if j < 0 {
			return
		}
		lp.direct(j, gain)
		r := lp.leaving()
		if r < 0 {
			return
		}
		lp.pivot(r, j)
	}
}

// entering is the column that saves most for each unit of it.
func (lp *master) entering() (best int, gain float64) {
	best, gain = -1, tiny
	y := lp.duals()
	for i, v := range y {
		if -v > gain {
			best, gain = lp.rows+i, -v
		}
	}
	steps := lp.rows
	for j := 2 * lp.rows; j < len(lp.cols); j++ {
		c := &lp.cols[j]
		save := -c.price
		for _, e := range c.entries {
			save += float64(y[e.row] * e.count)
		}
		steps += 2 + len(c.entries)
		if save > gain {
			best, gain = j, save
		}
	}
	lp.work.spend(steps)
	return best, gain
}

// direct finds how the basis changes with one unit of column j.
func (lp *master) direct(j int, gain float64) {
	m := lp.rows
	lp.change[m] = gain
	for i := range m {
		row := lp.inv[i*m : i*m+m]
		if j < 2*m {
			lp.change[i] = -row[j-m]
			continue
		}
		var sum float64
		for _, e := range lp.cols[j].entries {
			sum += float64(row[e.row] * e.count)
		}
		lp.change[i] = sum
	}
}

// leaving is the row that runs out first; among equals the one with the largest change, which is the safest to divide by.
func (lp *master) leaving() int {
	best, least := -1, 0.0
	for i, a := range lp.change[:lp.rows] {
		if a <= tiny {
			continue
		}
		ratio := lp.x[i] / a
		if best < 0 || ratio < least-tiny || ratio < least+tiny && a > lp.change[best] {
			best, least = i, ratio
		}
	}
	return best
}

// pivot puts column j into row r of the basis.
func (lp *master) pivot(r, j int) {
	m := lp.rows
	pivotRow := lp.inv[r*m : r*m+m]
	scale := 1 / lp.change[r]
	for i := range pivotRow {
		pivotRow[i] *= scale
	}
	step := max(0, lp.x[r]*scale)
	steps := m
	for i := 0; i <= m; i++ {
		a := lp.change[i]
		if i == r || a == 0 {
			continue
		}
		if i < m {
			lp.x[i] = max(0, lp.x[i]-float64(a*step))
		}
		row := lp.inv[i*m : i*m+m]
		for k, v := range pivotRow {
			row[k] -= float64(a * v)
		}
		steps += m
	}
	lp.x[r], lp.basis[r] = step, j
	lp.work.spend(steps)
}
