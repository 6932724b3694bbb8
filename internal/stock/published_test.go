package stock

import (
	"math"
	"testing"

	"railhead/internal/length"
)

const mm = length.Millimetre

// order is so many pieces of a length, in millimetres.
type order struct{ length, count int }

// published are cutting stock problems with a known optimum. Their lengths have no unit; millimetres here. Kerf is 0.
var published = []struct {
	name     string
	stock    int
	orders   []order
	bars     int
	firstFit int // bars that first-fit decreasing needs
}{
	// Paper mill: Wikipedia, "Cutting stock problem", worked example; the optimum of 73 master rolls is published
	// (status F). First-fit decreasing is computed, not printed (C).
	{"paper mill", 5600, []order{
		{1380, 22}, {1520, 25}, {1560, 12}, {1710, 14}, {1820, 18}, {1880, 18}, {1930, 20},
		{2000, 10}, {2050, 12}, {2100, 14}, {2140, 16}, {2150, 18}, {2200, 20},
	}, 73, 82},
	// V. Chvátal, Linear Programming (1983), chapter 13, as given in the cutting stock pages of the GAMS gallery and
	// the JuMP tutorials (F). First-fit decreasing C.
	{"Chvatal", 100, []order{{45, 97}, {36, 610}, {31, 395}, {14, 211}}, 453, 485},
	// A. Scholl and R. Klein, bin packing data set 1, instance N1C1W1_A (F: items and optimum; first-fit decreasing C).
	{"N1C1W1_A", 100, ones(
		99, 99, 96, 96, 92, 92, 91, 88, 87, 86, 85, 76, 74, 72, 69, 67, 67, 62, 61, 56, 52, 51, 49, 46, 44,
		42, 40, 40, 33, 33, 30, 30, 29, 28, 28, 27, 25, 24, 23, 22, 21, 20, 17, 14, 13, 11, 10, 7, 7, 3,
	), 25, 25},
	// Model cutstock.mzn, a MiniZinc example on tangled.org (F: data; optimum C from the bound 36/10 and the plan
	// 2×(7,3), (5,5), (3,3)).
	{"four bars", 10, []order{{7, 2}, {5, 2}, {3, 4}}, 4, 4},
	// M. Fieldhouse, "The duality gap in trim problems", SICUP Bulletin 5 (1990), from memory: the linear program says
	// 59/30 bars, so 2, and it takes 3.
	{"duality gap", 30, []order{{15, 1}, {10, 2}, {6, 4}}, 3, 3},
}

func ones(lengths ...int) []order {
	out := make([]order, len(lengths))
	for i, l := range lengths {
		out[i] = order{l, 1}
	}
	return out
}

// problem numbers the pieces of some orders.
func problem(kerf length.Length, orders []order, stock ...int) Problem {
	p := Problem{Kerf: kerf}
	for _, l := range stock {
		p.Stock = append(p.Stock, length.Length(l)*mm)
	}
	for _, o := range orders {
		for range o.count {
			p.Pieces = append(p.Pieces, Piece{len(p.Pieces), length.Length(o.length) * mm})
		}
	}
	return p
}

func TestPublishedOptimum(t *testing.T) {
	for _, c := range published {
		t.Run(c.name, func(t *testing.T) {
			p := problem(0, c.orders, c.stock)
			plan, err := Cut(p)
			if err != nil {
				t.Fatal(err)
			}
			verify(t, p, plan)
			if len(plan.Bars) != c.bars || !plan.Proven {
				t.Errorf("%d bars, proven %v; published optimum %d", len(plan.Bars), plan.Proven, c.bars)
			}
		})
	}
}

// The same without the exact table, so that the small ones also go through the search.
func TestPublishedOptimumBySearch(t *testing.T) {
	for _, c := range published {
		t.Run(c.name, func(t *testing.T) {
			p := problem(0, c.orders, c.stock)
			plan := cutWith(p, bare())
			verify(t, p, plan)
			if len(plan.Bars) != c.bars || !plan.Proven {
				t.Errorf("%d bars, proven %v; published optimum %d", len(plan.Bars), plan.Proven, c.bars)
			}
		})
	}
}

func TestPublishedFirstFitDecreasing(t *testing.T) {
	for _, c := range published {
		task := reduce(problem(0, c.orders, c.stock))
		if n := len(firstFit(task, task.demand, 0, &budget{1 << 40})); n != c.firstFit {
			t.Errorf("%s: %d bars, want %d", c.name, n, c.firstFit)
		}
	}
}

// Paper mill: 0.401 % of the stock is waste (F).
func TestPublishedWaste(t *testing.T) {
	plan, err := Cut(problem(0, published[0].orders, published[0].stock))
	if err != nil {
		t.Fatal(err)
	}
	percent := 100 * float64(plan.Waste) / float64(plan.Bought)
	if math.Abs(percent-0.401) > 0.0005 {
		t.Errorf("waste %.4f %%, published 0.401 %%", percent)
	}
	if plan.Used != 407160*mm {
		t.Errorf("used %v, published total 407 160", plan.Used)
	}
}

// Chvátal: the linear program is worth 452.25 bars with the dual values 1/2, 1/2, 1/4, 0 (F).
func TestPublishedLinearProgram(t *testing.T) {
	task := reduce(problem(0, published[1].orders, published[1].stock))
	s := newSearch(task, usual())
	found, done := s.relax(task.demand, none, false)
	if !done {
		t.Fatal("not solved")
	}
	for k, want := range []float64{0.5, 0.5, 0.25, 0} {
		if got := float64(found.values[k]) / scale; math.Abs(got-want) > 1e-6 {
			t.Errorf("dual value %d is %v, published %v", k, got, want)
		}
	}
	if got := float64(total(found.values, task.demand)) / scale; math.Abs(got-452.25) > 1e-5 {
		t.Errorf("linear program %v, published 452.25", got)
	}
	if bars := found.bound / task.longest().price; bars != 453 {
		t.Errorf("bound %d bars, want 453", bars)
	}
}
