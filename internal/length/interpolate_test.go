package length

import (
	"math/big"
	"testing"

	"pgregory.net/rapid"
)

func TestHeightBetweenTwoReadings(t *testing.T) {
	// By similar triangles (Euclid VI.2), worked by hand.
	for name, c := range map[string]struct{ x0, y0, x1, y1, x, want string }{
		"halfway":                 {"0 mm", "2400 mm", "3000 mm", "2410 mm", "1500 mm", "2405 mm"},
		"three tenths, falling":   {"1000 mm", "2400 mm", "2000 mm", "2390 mm", "1300 mm", "2397 mm"},
		"an inch in a yard":       {"0 in", "95 in", "36 in", "96 in", "9 in", "95 1/4 in"},
		"points from the right":   {"36 in", "96 in", "0 in", "95 in", "9 in", "95 1/4 in"},
		"beyond the second point": {"0 mm", "0 mm", "1 m", "1 mm", "3 m", "3 mm"},
		"before the first point":  {"0 mm", "0 mm", "1 m", "1 mm", "-2 m", "-2 mm"},
		"level":                   {"0 mm", "-5 mm", "1 m", "-5 mm", "0.3 m", "-5 mm"},
		"at the first point":      {"4 mm", "7 mm", "1 m", "9 mm", "4 mm", "7 mm"},
		"at the second point":     {"4 mm", "7 mm", "1 m", "9 mm", "1 m", "9 mm"},
		"both points at one x":    {"1 m", "7 mm", "1 m", "9 mm", "2 m", "7 mm"},
	} {
		t.Run(name, func(t *testing.T) {
			got := Interpolate(must(t, c.x0), must(t, c.y0).Exact(), must(t, c.x1), must(t, c.y1).Exact(), must(t, c.x))
			if want := must(t, c.want).Exact(); got != want {
				t.Errorf("got %v, want %v", got, want)
			}
		})
	}
}

func TestHeightThatIsNoWholeNanometre(t *testing.T) {
	got := Interpolate(0, Exact{}, 3*Metre, Length(10).Exact(), Metre)
	if got.Rat().Cmp(rat(10, 3)) != 0 || got.Floor() != 3 || got.Ceil() != 4 {
		t.Errorf("a third of 10 nm is %v, between %d and %d", got, got.Floor(), got.Ceil())
	}
}

func TestInterpolateIsTheLine(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x0, x1, x := lengths().Draw(t, "x0"), lengths().Draw(t, "x1"), lengths().Draw(t, "x")
		y0, y1 := exacts().Draw(t, "y0"), exacts().Draw(t, "y1")
		if x0 == x1 {
			x1++
		}
		got := Interpolate(x0, y0, x1, y1, x)
		checkForm(t, got)
		share := new(big.Rat).Quo(nm(x-x0), nm(x1-x0))
		want := share.Mul(share, new(big.Rat).Sub(y1.Rat(), y0.Rat()))
		want.Add(want, y0.Rat())
		if got.Rat().Cmp(want) != 0 {
			t.Fatalf("got %v, want %v", got, want)
		}
		if mirrored := Interpolate(x1, y1, x0, y0, x); !mirrored.Equal(got) {
			t.Fatalf("from the other end: %v, want %v", mirrored, got)
		}
	})
}

func TestCrossingUndoesInterpolate(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x0, x1, x := lengths().Draw(t, "x0"), lengths().Draw(t, "x1"), lengths().Draw(t, "x")
		y0, y1 := exacts().Draw(t, "y0"), exacts().Draw(t, "y1")
		if x0 == x1 || y0.Equal(y1) {
			x1, y1 = x0+1, y0.Plus(1)
		}
		got := Crossing(x0, y0, x1, y1, Interpolate(x0, y0, x1, y1, x))
		checkForm(t, got)
		if !got.Equal(x.Exact()) {
			t.Fatalf("crosses at %v, want %v", got, x)
		}
	})
}

func TestWhereASlopeReachesALevel(t *testing.T) {
	at := func(text string) Length { return must(t, text) }
	level := func(text string) Exact { return must(t, text).Exact() }
	for name, c := range map[string]struct{ got, want Exact }{
		"rising":       {Crossing(0, level("2400 mm"), at("3 m"), level("2430 mm"), level("2410 mm")), level("1 m")},
		"falling":      {Crossing(0, level("2430 mm"), at("3 m"), level("2400 mm"), level("2410 mm")), level("2 m")},
		"beyond":       {Crossing(0, level("0 mm"), at("1 m"), level("1 mm"), level("-1 mm")), level("-1 m")},
		"no nanometre": {Crossing(0, level("0 mm"), 10, level("3 mm"), level("1 mm")), FromRat(rat(10, 3))},
		"never":        {Crossing(at("1 m"), level("5 mm"), at("2 m"), level("5 mm"), level("6 mm")), level("1 m")},
	} {
		if c.got != c.want {
			t.Errorf("%s: %v, want %v", name, c.got, c.want)
		}
	}
}

func TestScaleIsProductOverQuotient(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		e, part, of := exacts().Draw(t, "e"), exacts().Draw(t, "part"), exacts().Draw(t, "of")
		got := e.Scale(part, of)
		checkForm(t, got)
		want := e.Rat()
		if of.Sign() != 0 {
			want.Quo(want.Mul(want, part.Rat()), of.Rat())
		}
		if got.Rat().Cmp(want) != 0 {
			t.Fatalf("%v * %v / %v is %v", e, part, of, got)
		}
	})
}
