package length

import (
	"math/big"
	"testing"

	"pgregory.net/rapid"
)

// Published roundings to even, their numbers taken as millimetres and the place kept as the step.
func TestNearestRoundsTiesToEven(t *testing.T) {
	for _, c := range []struct{ source, value, step, want string }{
		{"chem.fsu.edu roundrules, rule 3A (F)", "6.65", "0.1", "6.6"},
		{"chem.fsu.edu roundrules, rule 3B (F)", "6.35", "0.1", "6.4"},
		{"chem.fsu.edu roundrules, zero is even (F)", "3.05", "0.1", "3"},
		{"chem.fsu.edu roundrules, rule 3B (F; printed with a misprint in the whole part)", "3.4675", "0.001", "3.468"},
		{"chem.fsu.edu roundrules, rule 1 (F)", "3.677", "0.01", "3.68"},
		{"chem.fsu.edu roundrules, rule 2 (F)", "6.632", "0.01", "6.63"},
		{"hartnell.edu rounding rules, IIIa (F)", "21.4501", "0.1", "21.5"},
		{"hartnell.edu rounding rules, IIIb1 (F)", "21.350", "0.1", "21.4"},
		{"hartnell.edu rounding rules, IIIb2 (F)", "21.45", "0.1", "21.4"},
		{"hartnell.edu rounding rules, I (F)", "56.748", "0.1", "56.7"},
		{"hartnell.edu rounding rules, II (F)", "2.146", "0.01", "2.15"},
		{"IS 2:1960 rule I, seen at concretebasics.org (F)", "15.205", "0.1", "15.2"},
		{"IS 2:1960 rule II, seen at concretebasics.org (F)", "9.625", "1", "10"},
		{"IS 2:1960 rule II, seen at concretebasics.org (F)", "2.651", "0.1", "2.7"},
		{"IS 2:1960 rule II, seen at concretebasics.org (F)", "12.545001", "0.01", "12.55"},
	} {
		value, step, want := must(t, c.value+" mm"), must(t, c.step+" mm"), must(t, c.want+" mm")
		if got := value.RoundTo(step, Nearest); got != want {
			t.Errorf("%s: %s to %s is %v, want %v", c.source, c.value, c.step, got, want)
		}
		if got := (-value).RoundTo(step, Nearest); got != -want {
			t.Errorf("%s: -%s to %s is %v, want %v", c.source, c.value, c.step, got, -want)
		}
	}
}

// IS 2:1960, amendment 1 (1997), clause 3.4: where a limit is stipulated, round in the one direction that does not flatter.
// Seen at scribd.com 497469050 (F).
func TestLimitsRoundOneWay(t *testing.T) {
	if got := must(t, "2.39 mm").RoundTo(Millimetre/10, Down); got != must(t, "2.3 mm") {
		t.Errorf("a thickness of at least 2.4 mm, measured 2.39 mm, is reported %v", got)
	}
	if got := must(t, "0.051 mm").RoundTo(Millimetre/100, Up); got != must(t, "0.06 mm") {
		t.Errorf("a limit of at most 0.05, measured 0.051, is reported %v", got)
	}
}

func TestRoundToAWholeNanometre(t *testing.T) {
	for name, c := range map[string]struct {
		value             *big.Rat
		nearest, down, up Length
	}{
		"whole":               {rat(7, 1), 7, 7, 7},
		"a third":             {rat(1, 3), 0, 0, 1},
		"two thirds":          {rat(2, 3), 1, 0, 1},
		"tie over even":       {rat(5, 2), 2, 2, 3},
		"tie over odd":        {rat(7, 2), 4, 3, 4},
		"a third below zero":  {rat(-1, 3), 0, -1, 0},
		"tie below zero":      {rat(-1, 2), 0, -1, 0},
		"tie below minus one": {rat(-3, 2), -2, -2, -1},
		"an overlap, just so": {rat(-2399999999, 1000), -2400000, -2400000, -2399999},
	} {
		e := FromRat(c.value)
		if n, d, u := e.Round(Nearest), e.Round(Down), e.Round(Up); n != c.nearest || d != c.down || u != c.up {
			t.Errorf("%s: nearest %d, down %d, up %d; want %d, %d, %d", name, n, d, u, c.nearest, c.down, c.up)
		}
	}
}

func TestRoundKeepsItsDirection(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		whole := lengths().Draw(t, "whole")
		e := exacts().Draw(t, "e")
		e = e.Minus(e.Floor()).Plus(whole) // any fraction, over a length that can be
		checkRounded(t, e, 1, e.Round(Nearest), e.Round(Down), e.Round(Up))
		step := positive().Draw(t, "step")
		checkRounded(t, whole.Exact(), step, whole.RoundTo(step, Nearest), whole.RoundTo(step, Down), whole.RoundTo(step, Up))
	})
}

// checkRounded holds rounded values to what their directions mean.
func checkRounded(t *rapid.T, e Exact, step, nearest, down, up Length) {
	below, above := e.Minus(down), up.Exact().Sub(e)
	if below.Sign() < 0 || below.CmpLength(step) >= 0 || above.Sign() < 0 || above.CmpLength(step) >= 0 {
		t.Fatalf("%v by %d: down %d, up %d", e, step, down, up)
	}
	if nearest%step != 0 || down%step != 0 || up%step != 0 {
		t.Fatalf("%v by %d: %d, %d, %d are no whole steps", e, step, nearest, down, up)
	}
	off := e.Minus(nearest)
	switch twice := off.Add(off); {
	case twice.CmpLength(step) > 0 || twice.CmpLength(-step) < 0:
		t.Fatalf("%v by %d: %d is not nearest", e, step, nearest)
	case twice.CmpLength(step) == 0 || twice.CmpLength(-step) == 0:
		if (nearest/step)%2 != 0 {
			t.Fatalf("%v by %d: the tie went to %d, an odd number of steps", e, step, nearest)
		}
	}
}

func TestBeyondWordsRoundingStopsAtTheEnd(t *testing.T) {
	far := new(big.Rat).SetFrac(new(big.Int).Lsh(big.NewInt(1), 80), big.NewInt(3))
	for _, d := range []Direction{Nearest, Down, Up} {
		if got := FromRat(far).Round(d); got != maxWhole {
			t.Errorf("far above, direction %d: %d", d, got)
		}
		if got := FromRat(new(big.Rat).Neg(far)).Round(d); got != minWhole {
			t.Errorf("far below, direction %d: %d", d, got)
		}
	}
}

func TestNoStepRoundsNothing(t *testing.T) {
	for _, step := range []Length{0, -Millimetre} {
		if got := Length(1234567).RoundTo(step, Up); got != 1234567 {
			t.Errorf("step %d: %d", step, got)
		}
	}
}
