package mip

import (
	"math"
	"strings"
	"testing"
)

// A program small enough to be solved by hand: 5a + 4b + 3c at most under three rows, all whole. The relaxed one is
// solved in V. Chvátal, Linear Programming (1983), chapter 2 (from memory): 13 at a = 2, b = 0, c = 1, which is whole.
func example() *Model {
	m := &Model{Name: "example"}
	a, b, c := m.Integer(5), m.Integer(4), m.Integer(3)
	m.AtMost(new(Sum).Plus(2, a).Plus(3, b).Plus(1, c), 5)
	m.AtMost(new(Sum).Plus(4, a).Plus(1, b).Plus(2, c), 11)
	m.AtMost(new(Sum).Plus(3, a).Plus(4, b).Plus(2, c), 8)
	return m
}

func TestText(t *testing.T) {
	want := `Max
 obj: +5 x0 +4 x1 +3 x2
Subject To
 r0: +2 x0 +3 x1 +1 x2 <= 5
 r1: +4 x0 +1 x1 +2 x2 <= 11
 r2: +3 x0 +4 x1 +2 x2 <= 8
Binary
General
 x0
 x1
 x2
End
`
	if got := example().LP(); got != want {
		t.Errorf("got %s", got)
	}
}

func TestRowsWithoutVariables(t *testing.T) {
	m := &Model{}
	v := m.Binary(1)
	m.AtMost(new(Sum).Plus(1, v).Plus(-1, v), 0) // holds, and says nothing
	if text := m.LP(); strings.Contains(text, "r0") {
		t.Errorf("got %s", text)
	}
	m.AtLeast(&Sum{Constant: 2}, 3) // does not hold
	if text := m.LP(); !strings.Contains(text, "r0: +1 x1 <= 0\n r1: +1 x1 >= 1") {
		t.Errorf("got %s", text)
	}
}

func TestConstantsAndRepeats(t *testing.T) {
	m := &Model{}
	v, w := m.Binary(1), m.Number(1)
	sum := (&Sum{Constant: 4}).Plus(2, v).Add(-1, (&Sum{Constant: 1}).Plus(3, v, w))
	m.Equals(sum, 5)
	if text := m.LP(); !strings.Contains(text, "r0: -1 x0 -3 x1 = 2\n") {
		t.Errorf("got %s", text)
	}
}

func TestSolved(t *testing.T) {
	most := 0
	for a := range 3 {
		for b := range 3 {
			for c := range 5 {
				if 2*a+3*b+c <= 5 && 4*a+b+2*c <= 11 && 3*a+4*b+2*c <= 8 {
					most = max(most, 5*a+4*b+3*c)
				}
			}
		}
	}
	if most != 13 {
		t.Errorf("the most of all is %d", most)
	}
	solver := Installed(t)
	if solver == nil {
		return
	}
	none := example()
	none.Name = "none"
	none.AtLeast(&Sum{}, 1)
	got := solver.Solve(t, example(), none)
	if got[0].Status != Optimal || math.Round(got[0].Objective) != 13 || got[1].Status != Impossible {
		t.Errorf("got %+v", got)
	}
}
