package level

import (
	"math/big"
	"testing"

	"railhead/internal/length"
)

const mm = length.Millimetre

// path makes a profile of pairs of station and height in millimetres, each height a reading of its own.
func path(t testing.TB, pairs ...int) Profile {
	t.Helper()
	var points []Point
	for i := 0; i < len(pairs); i += 2 {
		points = append(points, Point{at(pairs[i]), Read(ReadingID(i/2), at(pairs[i+1]))})
	}
	p, fault := NewProfile(points)
	if fault != nil {
		t.Fatalf("refused: %s at point %d", fault, fault.Index)
	}
	return p
}

func at(millimetres int) length.Length { return length.Length(millimetres) * mm }

func wantAt(t *testing.T, p Profile, station int, s Side, want int) {
	t.Helper()
	if got := p.At(at(station), s); got.CmpLength(at(want)) != 0 {
		t.Errorf("at %d, side %d: %s, want %d mm", station, s, got, want)
	}
	if got := p.HeightAt(at(station), s); got.Value.CmpLength(at(want)) != 0 {
		t.Errorf("height at %d, side %d: %s, want %d mm", station, s, got.Value, want)
	}
}

func TestProfileIsStraightBetweenPoints(t *testing.T) {
	p := path(t, 0, 2000, 1000, 2010, 3000, 1990)
	wantAt(t, p, 500, Left, 2005)
	wantAt(t, p, 500, Right, 2005)
	wantAt(t, p, 1000, Left, 2010)
	wantAt(t, p, 2000, Right, 2000)
}

func TestProfileIsLevelBeyondItsEnds(t *testing.T) {
	p := path(t, 400, 2000, 1000, 2060)
	wantAt(t, p, -50, Right, 2000)
	wantAt(t, p, 0, Left, 2000)
	wantAt(t, p, 5000, Right, 2060)
	wantAt(t, path(t, 700, 2222), 0, Left, 2222)
	wantAt(t, path(t, 700, 2222), 9000, Right, 2222)
}

func TestTwoPointsAtOneStationAreAStep(t *testing.T) {
	p := path(t, 0, 2000, 1000, 2000, 1000, 2200, 2000, 2200)
	wantAt(t, p, 1000, Left, 2000)
	wantAt(t, p, 1000, Right, 2200)
	wantAt(t, p, 999, Right, 2000)
	wantAt(t, p, 1001, Left, 2200)
	if b := p.Breaks(0, at(2000)); len(b) != 1 || b[0] != at(1000) {
		t.Errorf("a step is one break, got %v", b)
	}
}

func TestAStepAtTheVeryEnd(t *testing.T) {
	p := path(t, 0, 2100, 0, 2000, 1000, 2000, 1000, 1900)
	wantAt(t, p, 0, Right, 2000)
	wantAt(t, p, 1000, Left, 2000)
	wantAt(t, p, 1500, Left, 1900)
	if low := p.Lowest(0, at(1000)); low.Value.CmpLength(at(2000)) != 0 {
		t.Errorf("lowest over the closed span is %s: the drop at its end lies outside it", low.Value)
	}
}

func TestPointsThatAreNoProfile(t *testing.T) {
	for _, c := range []struct {
		name     string
		stations []int
		code     string
		index    int
	}{
		{"no point at all", nil, "survey.profile.empty", 0},
		{"a station to the left of the last", []int{0, 500, 499}, "survey.profile.unordered", 2},
		{"a third at one station", []int{0, 500, 500, 500}, "survey.profile.third_at_station", 3},
		{"a third at the first station", []int{0, 0, 0}, "survey.profile.third_at_station", 2},
	} {
		t.Run(c.name, func(t *testing.T) {
			var points []Point
			for _, s := range c.stations {
				points = append(points, Point{At: at(s)})
			}
			if _, f := NewProfile(points); f == nil || f.Code != c.code || f.Index != c.index {
				t.Errorf("got %+v, want %s at %d", f, c.code, c.index)
			}
		})
	}
}

func TestExtremesOverASpan(t *testing.T) {
	dip := path(t, 0, 2100, 900, 2060, 1300, 2108, 3000, 2090)
	for _, c := range []struct {
		name                 string
		p                    Profile
		from, to             int
		low, lowAt, hi, hiAt int
	}{
		{"a dip between two cabinets' edges", dip, 600, 1200, 2060, 900, 2096, 1200},
		{"an extreme at the span's ends", dip, 1300, 3000, 2090, 3000, 2108, 1300},
		{"a span between two points", dip, 0, 450, 2080, 450, 2100, 0},
		{"the first of equal places", path(t, 0, 2000, 500, 1990, 1000, 2000, 1500, 1990), 0, 1500, 1990, 500, 2000, 0},
		{"a step inside the span counts on both sides", path(t, 0, 2000, 500, 2000, 500, 2300, 1000, 2300), 400, 600, 2000, 400, 2300, 500},
		{"a step at the span's left end counts from inside", path(t, 0, 1800, 500, 1800, 500, 2300), 500, 900, 2300, 500, 2300, 500},
		{"a step at the span's right end counts from inside", path(t, 0, 2300, 900, 2300, 900, 1800), 500, 900, 2300, 500, 2300, 500},
	} {
		t.Run(c.name, func(t *testing.T) {
			if s := c.p.Lowest(at(c.from), at(c.to)); s.Value.CmpLength(at(c.low)) != 0 || s.At != at(c.lowAt) {
				t.Errorf("lowest %s at %s, want %d at %d", s.Value, s.At, c.low, c.lowAt)
			}
			if s := c.p.Highest(at(c.from), at(c.to)); s.Value.CmpLength(at(c.hi)) != 0 || s.At != at(c.hiAt) {
				t.Errorf("highest %s at %s, want %d at %d", s.Value, s.At, c.hi, c.hiAt)
			}
		})
	}
}

func TestInterpolationIsExact(t *testing.T) {
	p := path(t, 0, 0, 3, 1)
	third := length.FromRat(big.NewRat(int64(mm), 3))
	if got := p.At(at(1), Left); !got.Equal(third) {
		t.Errorf("a third of the way up a millimetre is %s, want %s", got, third)
	}
}

func TestMovedProfile(t *testing.T) {
	p := path(t, 0, 2100, 1000, 2060).Moved(-12 * mm)
	wantAt(t, p, 0, Left, 2088)
	wantAt(t, p, 1000, Left, 2048)
	if n := len(p.Points()[0].Height.Terms); n != 1 {
		t.Errorf("a move nobody measured adds no reading: %d terms", n)
	}
}
