package stock

import (
	"slices"
	"testing"

	"railhead/internal/length"
)

// failer is *testing.T or *rapid.T.
type failer interface {
	Helper()
	Fatalf(format string, args ...any)
}

var _ failer = (*testing.T)(nil)

// cutWith is Cut with another effort.
func cutWith(p Problem, e effort) Plan {
	t := reduce(p)
	return t.plan(p, solve(t, e))
}

// bare is the usual effort without the exact table.
func bare() effort {
	e := usual()
	e.whole, e.rest = 0, 0
	return e
}

// verify goes through a plan as the one at the saw would.
func verify(t failer, p Problem, plan Plan) {
	t.Helper()
	var bought, used, kerf, waste length.Length
	seen := map[int]length.Length{}
	for i, b := range plan.Bars {
		if !slices.Contains(p.Stock, b.Stock) {
			t.Fatalf("bar %d: %v cannot be bought", i, b.Stock)
		}
		if i > 0 && before(b, plan.Bars[i-1]) {
			t.Fatalf("bar %d: out of order", i)
		}
		if len(b.Cuts) == 0 {
			t.Fatalf("bar %d: nothing cut", i)
		}
		left, dust := b.Stock, length.Length(0)
		for j, c := range b.Cuts {
			if j > 0 && c.Length > b.Cuts[j-1].Length {
				t.Fatalf("bar %d: cuts not longest first", i)
			}
			if left < c.Length {
				t.Fatalf("bar %d: %v left for a piece of %v", i, left, c.Length)
			}
			left -= c.Length
			saw := min(p.Kerf, left)
			if j+1 < len(b.Cuts) && saw < p.Kerf {
				t.Fatalf("bar %d: no room for the saw", i)
			}
			left -= saw
			dust += saw
			used += c.Length
			if _, twice := seen[c.ID]; twice {
				t.Fatalf("piece %d cut twice", c.ID)
			}
			seen[c.ID] = c.Length
		}
		if left != b.Offcut {
			t.Fatalf("bar %d: offcut %v, left %v", i, b.Offcut, left)
		}
		bought, kerf, waste = bought+b.Stock, kerf+dust, waste+left
	}
	for _, piece := range p.Pieces {
		if l, ok := seen[piece.ID]; !ok || l != piece.Length {
			t.Fatalf("piece %d of %v: cut %v", piece.ID, piece.Length, l)
		}
	}
	if len(seen) != len(p.Pieces) {
		t.Fatalf("%d pieces cut of %d", len(seen), len(p.Pieces))
	}
	if plan.Bought != bought || plan.Used != used || plan.Kerf != kerf || plan.Waste != waste {
		t.Fatalf("sums %v %v %v %v, want %v %v %v %v", plan.Bought, plan.Used, plan.Kerf, plan.Waste, bought, used, kerf, waste)
	}
	if plan.Bound > plan.Bought || plan.Proven != (plan.Bound == plan.Bought) {
		t.Fatalf("bound %v, bought %v, proven %v", plan.Bound, plan.Bought, plan.Proven)
	}
}

// before says that a bar belongs before another: longer stock, else a longer cut where they first differ.
func before(a, b Bar) bool {
	if a.Stock != b.Stock {
		return a.Stock > b.Stock
	}
	for i := range min(len(a.Cuts), len(b.Cuts)) {
		if a.Cuts[i].Length != b.Cuts[i].Length {
			return a.Cuts[i].Length > b.Cuts[i].Length
		}
	}
	return false
}

// offcuts of a plan, in the order of its bars.
func offcuts(plan Plan) []length.Length {
	var out []length.Length
	for _, b := range plan.Bars {
		out = append(out, b.Offcut)
	}
	return out
}

// shape is a plan without the IDs.
func shape(plan Plan) [][]length.Length {
	var out [][]length.Length
	for _, b := range plan.Bars {
		bar := []length.Length{b.Stock, b.Offcut}
		for _, c := range b.Cuts {
			bar = append(bar, c.Length)
		}
		out = append(out, bar)
	}
	return out
}
