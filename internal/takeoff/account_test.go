package takeoff

import (
	"testing"

	"railhead/internal/length"
)

func TestFiguresAreShownInMetres(t *testing.T) {
	for l, want := range map[length.Length]string{
		0: "0", 3 * length.Metre: "3", 330 * mm: "0.33", -330 * mm: "-0.33", length.Inch: "0.0254",
		1: "0.000000001", 2_122_000_001: "2.122000001", 100 * length.Metre: "100",
	} {
		if got := inMetres(l); got != want {
			t.Errorf("%d nm: %s, want %s", int64(l), got, want)
		}
	}
}

// Equal figures of one name are one input; others are numbered.
func TestInputsAreNamedOnce(t *testing.T) {
	var a account
	a.add(times(a.length("length", 3*length.Metre), a.length("depth", 330*mm)))
	a.add(times(a.length("length", 2*length.Metre), a.length("depth", 330*mm)))
	a.take(times(a.length("length", 3*length.Metre), a.length("strip", 10*mm)))
	got, ok := a.item(BoardOff, "/x")
	if !ok || got.Formula != "length*depth + length_2*depth - length*strip" || len(got.Inputs) != 4 || got.Quantity != 1620 {
		t.Errorf("%+v", got)
	}
	reworked(t, got)
}

// A quantity rounds once, half to even: 0.0005 and 0.0015 m2.
func TestQuantitiesRoundHalfToEven(t *testing.T) {
	for height, want := range map[length.Length]string{500 * length.Micrometre: "", 1500 * length.Micrometre: "0.002", 2500 * length.Micrometre: "0.002"} {
		var a account
		a.add(times(a.length("length", length.Metre), a.length("height", height)))
		items := appendItem(nil, &a, BoardOff, "/x")
		if got := sums(items)[BoardOff]; got != want {
			t.Errorf("1 m by %s: %q, want %q", height, got, want)
		}
	}
}
