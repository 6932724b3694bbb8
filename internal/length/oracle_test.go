package length

import (
	"math"
	"math/big"
	"testing"

	"pgregory.net/rapid"
)

// The oracle of the properties is math/big: rationals without any shortcut.

func rat(a, b int64) *big.Rat { return big.NewRat(a, b) }

func nm(l Length) *big.Rat { return new(big.Rat).SetInt64(int64(l)) }

func must(t testing.TB, text string) Length {
	t.Helper()
	l, err := Parse(text)
	if err != nil {
		t.Fatalf("Parse(%q): %v", text, err)
	}
	return l
}

// lengths within the range that can be read.
func lengths() *rapid.Generator[Length] {
	return rapid.Custom(func(t *rapid.T) Length { return Length(rapid.Int64Range(-int64(Max), int64(Max)).Draw(t, "nm")) })
}

// positive lengths up to a metre: steps, ways.
func positive() *rapid.Generator[Length] {
	return rapid.Custom(func(t *rapid.T) Length { return Length(rapid.Int64Range(1, int64(Metre)).Draw(t, "nm")) })
}

// exacts of every form: whole, with a fraction of a few or of all 64 bits, and too wide for machine words.
func exacts() *rapid.Generator[Exact] {
	return rapid.Custom(func(t *rapid.T) Exact {
		whole := nm(Length(rapid.OneOf(
			rapid.Int64Range(-int64(Max), int64(Max)),
			rapid.SampledFrom([]int64{0, 1, -1, math.MaxInt64, math.MaxInt64 - 1, math.MinInt64, math.MinInt64 + 1}),
		).Draw(t, "whole")))
		den := rapid.OneOf(
			rapid.Uint64Range(1, 64), rapid.Uint64Range(1, uint64(Max)), rapid.Uint64Min(math.MaxUint64-64),
		).Draw(t, "den")
		num := rapid.Uint64Max(den).Draw(t, "num")
		part := new(big.Rat).SetFrac(new(big.Int).SetUint64(num), new(big.Int).SetUint64(den))
		if rapid.IntRange(0, 9).Draw(t, "wide") == 0 {
			part.Mul(part, part)
		}
		return FromRat(whole.Add(whole, part))
	})
}

// checkForm says whether e has the one form its value may have.
func checkForm(t interface {
	Helper()
	Fatalf(string, ...any)
}, e Exact) {
	t.Helper()
	switch r := e.Rat(); {
	case e.wide != nil && e.wide.Denom().IsUint64() && new(big.Int).Div(r.Num(), r.Denom()).IsInt64():
		t.Fatalf("%v fits machine words but is wide", e)
	case e.wide != nil && (e.whole != 0 || e.num != 0 || e.den != 0):
		t.Fatalf("%v is wide and is not", e)
	case e.num == 0 && e.den != 0:
		t.Fatalf("%v has a denominator and no fraction", e)
	case e.num != 0 && (e.num >= e.den || !r.Denom().IsUint64() || r.Denom().Uint64() != e.den):
		t.Fatalf("%v: %d/%d is not a proper fraction in lowest terms", e, e.num, e.den)
	}
}
