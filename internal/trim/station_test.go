package trim

import (
	"math/big"
	"reflect"
	"testing"

	"railhead/internal/length"
	"railhead/internal/level"
)

func TestStrips(t *testing.T) {
	cases := map[string]struct {
		under level.Profile // the cut line is 2122 mm, the cut runs from 0 to 1200
		want  []strip
	}{
		"level":                         {profile(0, 2100*mm), []strip{{0, 22 * mm}, {1200 * mm, 22 * mm}}},
		"profile steps":                 {profile(0, 2100*mm, 500*mm, 2100*mm, 500*mm, 2080*mm, 1200*mm, 2080*mm), []strip{{0, 22 * mm}, {500 * mm, 22 * mm}, {500 * mm, 42 * mm}, {1200 * mm, 42 * mm}}},
		"a dip between two cabinets":    {profile(0, 2110*mm, 700*mm, 2060*mm, 1200*mm, 2110*mm), []strip{{0, 12 * mm}, {700 * mm, 62 * mm}, {1200 * mm, 12 * mm}}},
		"collinear point":               {profile(0, 2100*mm, 600*mm, 2106*mm, 900*mm, 2109*mm, 1200*mm, 2112*mm), []strip{{0, 22 * mm}, {1200 * mm, 10 * mm}}},
		"underside crosses the line":    {profile(0, 2112*mm, 1200*mm, 2132*mm), []strip{{0, 10 * mm}, {600 * mm, 0}, {1200 * mm, 0}}},
		"crossing at a collinear point": {profile(0, 2112*mm, 600*mm, 2122*mm, 1200*mm, 2132*mm), []strip{{0, 10 * mm}, {600 * mm, 0}, {1200 * mm, 0}}},
		"comes down from above":         {profile(0, 2132*mm, 1200*mm, 2112*mm), []strip{{0, 0}, {600 * mm, 0}, {1200 * mm, 10 * mm}}},
		"step across the line":          {profile(0, 2132*mm, 600*mm, 2132*mm, 600*mm, 2112*mm), []strip{{0, 0}, {600 * mm, 0}, {600 * mm, 10 * mm}, {1200 * mm, 10 * mm}}},
	}
	for name, c := range cases {
		tr := one(t, trimmed(cook(room(wall(1200*mm, 2500*mm, soffit(0, 1200*mm, c.under))), demo(), hung(0, 1200*mm, 2120*mm))))
		if got := strips(t, tr); !reflect.DeepEqual(got, c.want) {
			t.Errorf("%s: %v, want %v", name, got, c.want)
		}
		for _, s := range tr.Stations {
			if want := length.Larger(s.Underside, tr.CutLine.Exact()).Minus(2120 * mm); !s.OpenAbove.Equal(want) {
				t.Errorf("%s: open above %v at %v, want %v", name, s.OpenAbove, s.At, want)
			}
		}
	}
}

// A crossing need not lie on a nanometre: 2112 rising by 21 mm over 1 m meets
// 2122 at 10/21 m, where the floor, falling 3 mm over that metre, is 10/7 mm down.
func TestCrossingIsExact(t *testing.T) {
	w := wall(1000*mm, 2500*mm, soffit(0, 1000*mm, profile(0, 2112*mm, 1000*mm, 2133*mm)))
	w.Floor = profile(0, 0, 1000*mm, -3*mm)
	tr := one(t, trimmed(cook(room(w), demo(), hung(0, 1000*mm, 2120*mm))))
	s := tr.Stations[1]
	if want := big.NewRat(10_000_000_000, 21); s.At.Rat().Cmp(want) != 0 || s.Remove.Sign() != 0 {
		t.Errorf("crossing at %v takes %v, want %v", s.At, s.Remove, want)
	}
	if want := new(big.Rat).Add(big.NewRat(2_122_000_000, 1), big.NewRat(10_000_000, 7)); s.AboveFloor.Rat().Cmp(want) != 0 {
		t.Errorf("above the floor %v, want %v", s.AboveFloor, want)
	}
}
