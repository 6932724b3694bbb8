package level

import (
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/length"
)

// drawn is a profile with steps and slopes of any size.
func drawn(t *rapid.T) Profile {
	x := length.Length(0)
	var points []Point
	for i := range rapid.IntRange(1, 8).Draw(t, "points") {
		y := length.Length(rapid.Int64Range(-3e9, 3e9).Draw(t, "height"))
		points = append(points, Point{x, Read(ReadingID(i), y)})
		if rapid.Bool().Draw(t, "step") && i%2 == 0 {
			continue
		}
		x += length.Length(rapid.Int64Range(1, 4e9).Draw(t, "run"))
	}
	p, fault := NewProfile(points)
	if fault != nil {
		t.Fatalf("%s at %d", fault, fault.Index)
	}
	return p
}

func side(t *rapid.T) Side { return Side(rapid.IntRange(0, 1).Draw(t, "side")) }

// A point on the line between two others changes no value anywhere.
func TestACollinearPointChangesNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawn(t)
		points := p.Points()
		i := rapid.IntRange(0, len(points)-1).Draw(t, "after")
		last := points[len(points)-1].At + length.Metre
		x := length.Length(rapid.Int64Range(int64(points[i].At)+1, int64(last)).Draw(t, "x"))
		more := []Point{}
		added := false
		for _, q := range points {
			if q.At > x && !added {
				more, added = append(more, Point{x, p.HeightAt(x, Left)}), true
			}
			if q.At == x {
				added = true // a point is there already
			}
			more = append(more, q)
		}
		if !added {
			more = append(more, Point{x, p.HeightAt(x, Left)})
		}
		dense, fault := NewProfile(more)
		if fault != nil {
			t.Fatal(fault)
		}
		for range 20 {
			y := length.Length(rapid.Int64Range(-1e9, int64(last)+1e9).Draw(t, "y"))
			s := side(t)
			if !p.At(y, s).Equal(dense.At(y, s)) {
				t.Fatalf("at %s: %s, with the point at %s %s", y, p.At(y, s), x, dense.At(y, s))
			}
		}
	})
}

// No value over a span lies outside its extremes.
func TestExtremesBoundEverything(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawn(t)
		from := length.Length(rapid.Int64Range(-1e9, 20e9).Draw(t, "from"))
		to := from + length.Length(rapid.Int64Range(1, 10e9).Draw(t, "width"))
		low, high := p.Lowest(from, to), p.Highest(from, to)
		for range 20 {
			x := length.Length(rapid.Int64Range(int64(from)+1, int64(to)).Draw(t, "x"))
			v := p.At(x, Left)
			if v.Less(low.Value) || high.Value.Less(v) {
				t.Fatalf("%s at %s lies outside %s to %s", v, x, low.Value, high.Value)
			}
		}
		if !p.At(low.At, low.Side).Equal(low.Value) || !p.At(high.At, high.Side).Equal(high.Value) {
			t.Fatal("an extreme is not what the profile has there")
		}
	})
}

// A height's value is the sum of its readings' values by their weights.
func TestHeightsAreTheirTerms(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawn(t)
		x := length.Length(rapid.Int64Range(-1e9, 20e9).Draw(t, "x"))
		h := p.HeightAt(x, side(t))
		sum := length.Length(0).Exact().Rat()
		for _, term := range h.Terms {
			value := p.Points()[term.Reading].Height.Value.Rat()
			sum.Add(sum, value.Mul(value, term.Weight))
		}
		if !length.FromRat(sum).Equal(h.Value) {
			t.Fatalf("terms add up to %s, value %s", sum, h.Value)
		}
	})
}

// An extreme is the first of the most extreme of all places where one can be.
func TestExtremesAreTheFirstOfAllSpots(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawn(t)
		from := length.Length(rapid.Int64Range(-1e9, 20e9).Draw(t, "from"))
		if points := p.Points(); rapid.Bool().Draw(t, "at a point") {
			from = points[rapid.IntRange(0, len(points)-1).Draw(t, "point")].At
		}
		to := from + length.Length(rapid.Int64Range(1, 10e9).Draw(t, "width"))
		low, high := p.Spots(from, to)[0], p.Spots(from, to)[0]
		for _, s := range p.Spots(from, to) {
			if s.Value.Less(low.Value) {
				low = s
			}
			if high.Value.Less(s.Value) {
				high = s
			}
		}
		if got := p.Lowest(from, to); got != low {
			t.Fatalf("lowest %+v, want %+v", got, low)
		}
		if got := p.Highest(from, to); got != high {
			t.Fatalf("highest %+v, want %+v", got, high)
		}
	})
}
