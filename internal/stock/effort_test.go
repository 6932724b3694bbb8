package stock

import (
	"math/rand"
	"reflect"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/length"
)

// little is an effort that ends before most searches do.
func little() effort {
	e := usual()
	e.steps, e.whole = 300_000, 1000
	return e
}

// When the steps run out there is still a plan, and its bound still holds.
func TestOutOfSteps(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawProblem(t, 12, 3)
		e := bare()
		e.steps = rapid.Int64Range(0, 100_000).Draw(t, "steps")
		e.rows = rapid.SampledFrom([]int{2, 4, 250}).Draw(t, "rows")
		plan := cutWith(p, e)
		verify(t, p, plan)
		best, err := Cut(p)
		if err != nil {
			t.Fatal(err)
		}
		if plan.Bound > best.Bought || plan.Bought < best.Bought {
			t.Fatalf("bound %v, bought %v, optimum %v", plan.Bound, plan.Bought, best.Bought)
		}
	})
}

// random is pieces of lengths that no one would order.
func random(n int, least, most, unit length.Length) []Piece {
	r := rand.New(rand.NewSource(int64(n)))
	out := make([]Piece, n)
	for i := range out {
		out[i] = Piece{i, (least + length.Length(r.Int63n(int64(most-least)))) * unit}
	}
	return out
}

// hard are problems made to take long. They must end; how long they take is in the benchmarks.
var hard = []struct {
	name string
	p    Problem
}{
	{"60 pieces to the nanometre", Problem{
		Stock: []length.Length{2400 * mm}, Kerf: 3*mm + 1, Pieces: random(60, 200e6, 1200e6, 1)}},
	{"60 pieces to the nanometre, odd stock", Problem{
		Stock: []length.Length{2_400_000_001, 3_000_000_019, 4_100_000_333}, Kerf: 3 * mm, Pieces: random(60, 200e6, 1200e6, 1)}},
	{"60 small pieces to the nanometre", Problem{
		Stock: []length.Length{2400 * mm, 6000 * mm}, Kerf: 3 * mm, Pieces: random(60, 20e6, 400e6, 1)}},
	{"1000 pieces to the millimetre", Problem{
		Stock: []length.Length{2400 * mm}, Kerf: 3 * mm, Pieces: random(1000, 200, 1200, mm)}},
	{"1000 pieces to the nanometre, three lengths", Problem{
		Stock: []length.Length{2400 * mm, 3000 * mm, 4100 * mm}, Kerf: 3 * mm, Pieces: random(1000, 200e6, 1200e6, 1)}},
	{"2000 splinters", Problem{
		Stock: []length.Length{length.Max, 99 * length.Metre}, Pieces: random(2000, 1, 3000, 1)}},
	{"splinters and 30 beams in the longest stock there is", Problem{
		Stock: []length.Length{length.Max, length.Max - 1}, Kerf: 1,
		Pieces: append(random(30, length.Max/3, length.Max, 1), Piece{30, 1}, Piece{31, 2}, Piece{32, 5})}},
	{"50 lengths of stock", Problem{
		Stock: manyLengths(), Kerf: 3 * mm, Pieces: random(400, 100e6, 3000e6, 1)}},
}

func manyLengths() []length.Length {
	var out []length.Length
	for _, piece := range random(MaxStock, 3000e6, 9000e6, 1) {
		out = append(out, piece.Length)
	}
	return out
}

func TestHardProblemsEnd(t *testing.T) {
	for _, c := range hard {
		t.Run(c.name, func(t *testing.T) {
			plan, err := Cut(c.p)
			if err != nil {
				t.Fatal(err)
			}
			verify(t, c.p, plan)
			if plan.Bound < plan.Used {
				t.Errorf("bound %v below the pieces' %v", plan.Bound, plan.Used)
			}
			t.Logf("bought %v, bound %v, proven %v", plan.Bought, plan.Bound, plan.Proven)
		})
	}
}

func TestSameProblemSamePlan(t *testing.T) {
	for _, c := range hard[:3] {
		if a, b := cutWith(c.p, little()), cutWith(c.p, little()); !reflect.DeepEqual(a, b) {
			t.Errorf("%s: two plans", c.name)
		}
	}
}

// A house of rails on a handful of stock lengths must come out proven.
func TestHouseIsProven(t *testing.T) {
	for n := 10; n <= 24; n++ {
		for _, stock := range [][]length.Length{{2400 * mm}, {2400 * mm, 3000 * mm}, {2000 * mm, 2400 * mm, 3000 * mm}} {
			p := Problem{Stock: stock, Kerf: 3 * mm, Pieces: random(n, 200, 2000, mm)}
			plan, err := Cut(p)
			if err != nil {
				t.Fatal(err)
			}
			verify(t, p, plan)
			if !plan.Proven {
				t.Errorf("%d pieces from %v: bought %v, bound %v", n, stock, plan.Bought, plan.Bound)
			}
		}
	}
}
