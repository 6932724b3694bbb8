package stock

import (
	"reflect"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/length"
)

// drawProblem draws pieces that fit, of lengths from coarse to fine so that equal ones and misfits both come up.
func drawProblem(t *rapid.T, pieces, sizes int) Problem {
	unit := rapid.SampledFrom([]length.Length{1, 7, 396_875, mm}).Draw(t, "unit")
	longest := rapid.SampledFrom([]int64{12, 100, 2400, 99_991}).Draw(t, "longest")
	one := rapid.Int64Range(1, longest)
	var p Problem
	p.Kerf = length.Length(rapid.Int64Range(0, longest/8).Draw(t, "kerf")) * unit
	p.Stock = append(p.Stock, length.Length(longest)*unit)
	for range rapid.IntRange(0, sizes-1).Draw(t, "more stock") {
		p.Stock = append(p.Stock, length.Length(one.Draw(t, "stock"))*unit)
	}
	most := max(1, longest/rapid.Int64Range(1, 4).Draw(t, "part"))
	for i := range rapid.IntRange(1, pieces).Draw(t, "pieces") {
		p.Pieces = append(p.Pieces, Piece{i, length.Length(rapid.Int64Range(1, most).Draw(t, "piece")) * unit})
	}
	return p
}

func TestAsGoodAsTryingEverything(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawProblem(t, 7, 3)
		plan, err := Cut(p)
		if err != nil {
			t.Fatal(err)
		}
		verify(t, p, plan)
		if got, want := resultOf(plan), bruteForce(p); got != want || !plan.Proven {
			t.Fatalf("%+v, want %+v, proven %v", got, want, plan.Proven)
		}
	})
}

// searches are the ways of the search, each on its own and without the table.
var searches = []struct {
	name string
	run  func(s *search) int64
}{
	{"all", (*search).run},
	{"branch and price", func(s *search) int64 {
		s.explore(slices.Clone(s.t.demand), 0, 0, nil)
		return s.price
	}},
	{"listed bars", func(s *search) int64 {
		s.settleAll()
		return s.price
	}},
}

func TestSearchAsGoodAsTryingEverything(t *testing.T) {
	for _, way := range searches {
		t.Run(way.name, func(t *testing.T) {
			rapid.Check(t, func(t *rapid.T) {
				p := drawProblem(t, 7, 3)
				checkSearch(t, p, way.run, bare(), bruteForce(p))
			})
		})
	}
}

// The table is checked above; here it checks the search where trying everything would take too long.
func TestSearchAsGoodAsTheTable(t *testing.T) {
	for _, way := range searches {
		t.Run(way.name, func(t *testing.T) {
			rapid.Check(t, func(t *rapid.T) {
				p := drawProblem(t, 12, 4)
				plan, err := Cut(p)
				if err != nil {
					t.Fatal(err)
				}
				e := bare()
				e.steps = 3_000_000 // some of these are hard for one way alone
				checkSearch(t, p, way.run, e, resultOf(plan))
			})
		})
	}
}

// checkSearch holds one way to the optimum, stock and bars, which it must prove unless it ran out of steps.
func checkSearch(t *rapid.T, p Problem, run func(*search) int64, e effort, want bruteResult) {
	task := reduce(p)
	s := newSearch(task, e)
	bound := run(s)
	if s.open && e.steps < usual().steps {
		return
	}
	plan := task.plan(p, result{gather(task, s.best, &budget{gatherSteps}), bound})
	verify(t, p, plan)
	got := resultOf(plan)
	if got.bought != want.bought || got.bars != want.bars || got.offcut > want.offcut {
		t.Fatalf("%+v, want %+v", got, want)
	}
	if !plan.Proven || bound != s.price || s.open {
		t.Fatalf("not proven: bound %d, price %d, open %v", bound, s.price, s.open)
	}
}

func TestOrderOfPiecesChangesNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawProblem(t, 25, 3)
		q := p
		q.Pieces = rapid.Permutation(p.Pieces).Draw(t, "order")
		q.Stock = rapid.Permutation(p.Stock).Draw(t, "stock order")
		a, b := cutWith(p, little()), cutWith(q, little())
		if !reflect.DeepEqual(a, b) {
			t.Fatalf("%v\n%v", a, b)
		}
	})
}

func TestScalingScales(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawProblem(t, 25, 3)
		by := length.Length(rapid.SampledFrom([]int64{2, 25, 64}).Draw(t, "by"))
		if p.Stock[0]*by > length.Max {
			return
		}
		q := Problem{Kerf: p.Kerf * by}
		for _, l := range p.Stock {
			q.Stock = append(q.Stock, l*by)
		}
		for _, piece := range p.Pieces {
			q.Pieces = append(q.Pieces, Piece{piece.ID, piece.Length * by})
		}
		small, large := shape(cutWith(p, little())), shape(cutWith(q, little()))
		for _, bar := range small {
			for i := range bar {
				bar[i] *= by
			}
		}
		if !reflect.DeepEqual(small, large) {
			t.Fatalf("%v\n%v", small, large)
		}
	})
}

// More to cut never takes less stock, and one more stock length never takes more. Only what is proven can be compared.
func TestMoreToCutTakesNoLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawProblem(t, 12, 3)
		fewer, dearer := p, p
		fewer.Pieces = p.Pieces[1:]
		dearer.Stock = p.Stock[:1]
		plan, less, more := cutWith(p, usual()), Plan{}, cutWith(dearer, usual())
		if len(fewer.Pieces) > 0 {
			less = cutWith(fewer, usual())
		}
		if less.Bought > plan.Bought || plan.Bought > more.Bought {
			t.Fatalf("bought %v, %v, %v", less.Bought, plan.Bought, more.Bought)
		}
	})
}
