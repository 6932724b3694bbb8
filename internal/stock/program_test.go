package stock

import (
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"testing"

	"railhead/internal/length"
	"railhead/internal/mip"
)

// program writes a problem as a mixed-integer program: a flow along the longest bar, from each place to where a piece
// that begins there ends, with as many units as bars are bought. It knows nothing of the search but what a cut takes.
// It buys the least length, and of plans that buy as much the one with the fewest bars.
func program(name string, p Problem) *mip.Model {
	m := &mip.Model{Name: name}
	unit := p.Kerf
	var longest length.Length
	for _, l := range p.Stock {
		unit, longest = length.GCD(unit, l), max(longest, l)
	}
	demand := map[length.Length]int64{}
	var kinds []length.Length
	for _, piece := range p.Pieces {
		unit = length.GCD(unit, piece.Length)
		if demand[piece.Length]++; demand[piece.Length] == 1 {
			kinds = append(kinds, piece.Length)
		}
	}
	balance := make([]mip.Sum, int((longest+p.Kerf)/unit)+1)
	for _, l := range kinds {
		wide := int((l + p.Kerf) / unit)
		cut := &mip.Sum{}
		for at := 0; at+wide < len(balance); at++ {
			flow := m.Integer(0)
			balance[at].Plus(-1, flow)
			balance[at+wide].Plus(1, flow)
			cut.Plus(1, flow)
		}
		m.AtLeast(cut, demand[l])
	}
	for at := range len(balance) - 1 { // what is left over
		rest := m.Number(0)
		balance[at].Plus(-1, rest)
		balance[at+1].Plus(1, rest)
	}
	for _, l := range p.Stock {
		bars := m.Integer(-int64(l/unit)*int64(len(p.Pieces)+1) - 1)
		balance[0].Plus(1, bars)
		balance[int((l+p.Kerf)/unit)].Plus(-1, bars)
	}
	for at := range balance {
		m.Equals(&balance[at], 0)
	}
	return m
}

// price is what the program makes of a plan.
func price(p Problem, plan Plan) int64 {
	unit := p.Kerf
	for _, l := range p.Stock {
		unit = length.GCD(unit, l)
	}
	for _, piece := range p.Pieces {
		unit = length.GCD(unit, piece.Length)
	}
	return -int64(plan.Bought/unit)*int64(len(p.Pieces)+1) - int64(len(plan.Bars))
}

// few are problems small enough for HiGHS to solve one in an eye's blink: rails in decimetres, with and without a kerf.
func few(n int) []Problem {
	rng := rand.New(rand.NewPCG(7, 11))
	var out []Problem
	for range n {
		p := Problem{Kerf: length.Length(rng.IntN(3)) * mm}
		for range 1 + rng.IntN(3) {
			p.Stock = append(p.Stock, length.Length(20+rng.IntN(25))*mm)
		}
		for range 1 + rng.IntN(5) {
			l := length.Length(3+rng.IntN(17)) * mm
			for range 1 + rng.IntN(5) {
				p.Pieces = append(p.Pieces, Piece{len(p.Pieces), l})
			}
		}
		out = append(out, p)
	}
	return out
}

// A mixed-integer program of each problem, solved by HiGHS, buys as much and as many bars: random ones and those that
// are published. Without HiGHS every way to cut the shorter random ones is tried instead.
func TestAsMixedIntegerProgram(t *testing.T) {
	solver := mip.Installed(t)
	if solver == nil {
		for _, p := range few(300) {
			if len(p.Pieces) > 7 {
				continue
			}
			plan := cut(t, p)
			if want := bruteForce(p); want.bought != plan.Bought || want.bars != len(plan.Bars) {
				t.Errorf("%v: bought %v, %d bars; all ways: %+v", p, plan.Bought, len(plan.Bars), want)
			}
		}
		return
	}
	problems := few(20)
	if os.Getenv("CI") != "" {
		problems = few(220)
	}
	for _, c := range published {
		problems = append(problems, problem(0, c.orders, c.stock))
	}
	var programs []*mip.Model
	for i, p := range problems {
		programs = append(programs, program(fmt.Sprint(i), p))
	}
	for i, got := range solver.Solve(t, programs...) {
		plan := cut(t, problems[i])
		if got.Status != mip.Optimal || int64(math.Round(got.Objective)) != price(problems[i], plan) {
			t.Errorf("%v: bought %v, %d bars; HiGHS %+v", problems[i], plan.Bought, len(plan.Bars), got)
		}
	}
}

// cut is a plan that is proven and can be cut.
func cut(t *testing.T, p Problem) Plan {
	t.Helper()
	plan, err := Cut(p)
	if err != nil {
		t.Fatal(err)
	}
	verify(t, p, plan)
	if !plan.Proven {
		t.Errorf("%v: not proven", p)
	}
	return plan
}
