package length

import (
	"math"
	"math/big"
	"testing"

	"pgregory.net/rapid"
)

func TestExactFollowsRationalArithmetic(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := exacts().Draw(t, "a"), exacts().Draw(t, "b")
		l := Length(rapid.Int64().Draw(t, "l"))
		ra, rb := a.Rat(), b.Rat()
		for name, c := range map[string]struct {
			got  Exact
			want *big.Rat
		}{
			"add":   {a.Add(b), new(big.Rat).Add(ra, rb)},
			"sub":   {a.Sub(b), new(big.Rat).Sub(ra, rb)},
			"neg":   {a.Neg(), new(big.Rat).Neg(ra)},
			"plus":  {a.Plus(l), new(big.Rat).Add(ra, nm(l))},
			"minus": {a.Minus(l), new(big.Rat).Sub(ra, nm(l))},
			"small": {Smaller(a, b), smaller(ra, rb)},
			"large": {Larger(a, b), new(big.Rat).Neg(smaller(new(big.Rat).Neg(ra), new(big.Rat).Neg(rb)))},
			"whole": {l.Exact(), nm(l)},
		} {
			checkForm(t, c.got)
			if c.got.Rat().Cmp(c.want) != 0 {
				t.Fatalf("%s of %v and %v (%d) is %v, want %v", name, a, b, l, c.got, c.want)
			}
		}
	})
}

func smaller(a, b *big.Rat) *big.Rat {
	if a.Cmp(b) <= 0 {
		return a
	}
	return b
}

func TestExactComparesAsRationalsDo(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := exacts().Draw(t, "a"), exacts().Draw(t, "b")
		if rapid.Bool().Draw(t, "near") { // differ in the fraction only
			b = FromRat(b.Rat().Add(nm(a.Floor()), b.Minus(b.Floor()).Rat()))
		}
		l := a.Floor()
		want := a.Rat().Cmp(b.Rat())
		if a.Cmp(b) != want || b.Cmp(a) != -want || a.Less(b) != (want < 0) || a.Equal(b) != (want == 0) {
			t.Fatalf("%v against %v: Cmp %d, Less %t, Equal %t", a, b, a.Cmp(b), a.Less(b), a.Equal(b))
		}
		if got := a.CmpLength(l); got != a.Rat().Cmp(nm(l)) {
			t.Fatalf("%v against %d: %d", a, l, got)
		}
		if a.Sign() != a.Rat().Sign() {
			t.Fatalf("sign of %v is %d", a, a.Sign())
		}
	})
}

func TestExactOperationsGiveBackWhatTheyTook(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := exacts().Draw(t, "a"), exacts().Draw(t, "b")
		if got := a.Add(b).Sub(b); !got.Equal(a) {
			t.Fatalf("%v + %v - %v = %v", a, b, b, got)
		}
		if got := a.Neg().Neg(); !got.Equal(a) {
			t.Fatalf("--%v = %v", a, got)
		}
	})
}

func TestWholeSaysWhetherAFractionIsLeft(t *testing.T) {
	third := FromRat(rat(1, 3))
	if l, ok := third.Add(third).Add(third).Whole(); !ok || l != 1 {
		t.Errorf("three thirds of a nanometre are %d, %t", l, ok)
	}
	for name, e := range map[string]Exact{
		"a third":      third,
		"beyond words": FromRat(new(big.Rat).Add(nm(maxWhole), nm(1))),
	} {
		if l, ok := e.Whole(); ok || l != 0 {
			t.Errorf("%s: Whole is %d, %t", name, l, ok)
		}
	}
}

func TestExactIsAValue(t *testing.T) {
	r := new(big.Rat).SetFrac(big.NewInt(1), new(big.Int).Lsh(big.NewInt(1), 70))
	e := FromRat(r)
	r.SetInt64(5)
	e.Rat().SetInt64(7)
	if got := e.Rat().Denom().BitLen(); got != 71 {
		t.Errorf("changed from outside: %v", e)
	}
	if (Exact{}).Rat().Sign() != 0 || !(Exact{}).Equal(Length(0).Exact()) {
		t.Error("the zero value is not 0")
	}
}

func TestSumsThatNeedMoreThanAWord(t *testing.T) {
	// Denominators that share nothing: the two largest primes below 2^32 and below 2^64 (from memory; that they share no
	// factor is checked by the form).
	a := FromRat(rat(1, 4294967291))
	b := FromRat(new(big.Rat).SetFrac(big.NewInt(1), new(big.Int).SetUint64(18446744073709551557)))
	sum := a.Add(b)
	checkForm(t, sum)
	if sum.wide == nil {
		t.Fatalf("%v fits a word", sum)
	}
	if back := sum.Sub(b); back != a {
		t.Errorf("back from wide: %v", back)
	}
	if got := Length(math.MaxInt64).Exact().Plus(1).Minus(1); got != maxWhole.Exact() {
		t.Errorf("over the end and back: %v", got)
	}
}

func TestFractionIsTheLength(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		e := exacts().Draw(t, "e")
		num, den, ok := e.Fraction()
		fits := e.Rat().Num().IsInt64() && e.Rat().Denom().IsInt64()
		if ok != fits && e.Rat().Num().Cmp(big.NewInt(math.MinInt64)) != 0 {
			t.Fatalf("%v in two words: %t, want %t", e, ok, fits)
		}
		if ok && (rat(num, den).Cmp(e.Rat()) != 0 || rat(num, den).Denom().Int64() != den) {
			t.Fatalf("%v as %d/%d", e, num, den)
		}
		n, d := rapid.Int64().Draw(t, "num"), rapid.Int64Range(1, math.MaxInt64).Draw(t, "den")
		got := Fraction(n, d)
		checkForm(t, got)
		if got.Rat().Cmp(rat(n, d)) != 0 {
			t.Fatalf("%d/%d nm is %v", n, d, got)
		}
	})
}
