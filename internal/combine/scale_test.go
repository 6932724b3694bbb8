package combine

import (
	"math/rand/v2"
	"testing"

	"railhead/internal/belief"
	"railhead/internal/money"
)

// Many things that are all alike: all combinations are equal until the trades
// charge, and the first of equals is the first way of each.
func TestHundredsOfThingsAlike(t *testing.T) {
	var thing Thing
	for range 7 {
		w := Way{Worth: eur(50)}
		for n := range 8 {
			w.Calls = append(w.Calls, Call{n, belief.Certain / 3, eur(2)})
		}
		thing.Ways = append(thing.Ways, w)
	}
	p := Problem{Trades: make([]Trade, 8)}
	for n := range p.Trades {
		p.Trades[n] = Trade{eur(70), eur(90)}
	}
	for range 300 {
		p.Things = append(p.Things, thing)
	}
	solver := Solver{Effort: 100_000}
	pick, _, ok := solver.Best(&p)
	if !ok || !solver.Proven() {
		t.Fatal("not solved")
	}
	for i, w := range pick {
		if w != 0 {
			t.Fatalf("thing %d is done in way %d", i, w)
		}
	}
	second, _, ok := solver.RunnerUp(&p, pick)
	if !ok || !solver.Proven() || second[299] != 1 {
		t.Fatalf("runner-up %v", second)
	}
}

// Hundreds of things with rates as the trade has them, whose minimum charge a few
// jobs fill, are solved without giving up.
func TestHundredsOfThings(t *testing.T) {
	for seed := range uint64(10) {
		r := rand.New(rand.NewPCG(11, seed))
		sh := shape{
			things: 300, ways: 7, trades: 8, joints: int(seed % 3), span: 8, lines: int(seed % 4),
			worth: 1e7, labour: 3e6, callOut: 1e6, minimum: 3e6, even: 5e6, joint: 5e6,
			calls: []float64{0.1, 0.3, 0.6}[seed%3], perhaps: 0.4, full: true,
		}
		p, solver := sh.draw(r), Solver{Effort: 200_000}
		pick, value, ok := solver.Best(p)
		if v, can := p.Value(pick); !solver.Proven() || ok != can || v != value {
			t.Fatalf("%d: worth %d, said %d, proven %v", seed, v, value, solver.Proven())
		}
	}
}

// What no effort of reason solves ends all the same, with a good combination.
func TestEffortEnds(t *testing.T) {
	r := rand.New(rand.NewPCG(12, 1))
	sh := shape{things: 100, ways: 7, trades: 8, worth: 1e7, labour: 7e6, callOut: 1e6, minimum: 6e7, calls: 0.3, perhaps: 0.5, full: true}
	p, solver := sh.draw(r), Solver{Effort: 30_000}
	pick, value, ok := solver.Best(p)
	if v, can := p.Value(pick); !ok || !can || v != value {
		t.Fatalf("worth %d, said %d", v, value)
	}
	if solver.Proven() {
		t.Fatal("this problem is too easy for the test")
	}
	for range 2000 { // at random nothing is found that is better
		other := make([]int, len(p.Things))
		for i := range other {
			other[i] = r.IntN(len(p.Things[i].Ways))
		}
		if v, _ := p.Value(other); v > value {
			t.Fatalf("%d at random, %d found", v, value)
		}
	}
	if _, _, ok := solver.Best(&Problem{}); !ok || !solver.Proven() {
		t.Error("it stays unproven")
	}
}

// room is eight overheads, or more, as a house has them: keep, trim, open a part,
// take down and put taller cabinets in, close or leave open, and lower the row.
// Trades: helper, carpenter, drywaller, painter, electrician, plumber, duct
// fitter, cabinet fitter, waste, site. The figures are of a size that is common
// practice, no source.
func room(r *rand.Rand, overheads int) *Problem {
	between := func(low, high int64) money.Amount { return eur(money.Amount(low + r.Int64N(high-low+1))) }
	p := &Problem{Even: Even{between(100, 400), Line(r.IntN(4))}}
	for _, c := range [][2]int64{{0, 120}, {60, 150}, {60, 150}, {60, 180}, {80, 120}, {80, 120}, {80, 150}, {60, 100}, {80, 0}, {150, 0}} {
		p.Trades = append(p.Trades, Trade{eur(money.Amount(c[0])), eur(money.Amount(c[1]))})
	}
	for range overheads {
		size := 1 + r.Int64N(4)
		found := []belief.Chance{4: belief.Chance(r.IntN(700)), 5: belief.Chance(r.IntN(400)), 6: belief.Chance(r.IntN(100))}
		way := func(worth money.Amount, line Line, limit int, tenths int64, trades ...int) Way {
			w := Way{Worth: worth, Line: line, Effects: []Effect{{0, uint8(limit), false}}}
			for _, t := range trades {
				c := belief.Certain
				if t >= 4 && t <= 6 {
					c = found[t] * (belief.Certain / 1000)
				}
				w.Calls = append(w.Calls, Call{t, c, c.Of(between(40, 60) * money.Amount(size*tenths) / 20)})
			}
			return w
		}
		a, b := Line(1+r.IntN(3)), Line(1+r.IntN(4))
		p.Things = append(p.Things, Thing{[]Way{
			way(0, a, r.IntN(3), 0),
			way(between(100, 600), b, 2+r.IntN(2), 6, 0, 1, 2, 3, 4, 5, 8, 9),
			way(between(150, 800), Several, 3, 8, 0, 1, 2, 3, 4, 5, 6, 8, 9),
			way(between(400, 1500), 9, 4, 15, 0, 2, 3, 4, 5, 6, 7, 8, 9),
			way(between(100, 900), b, 4, 12, 0, 3, 4, 5, 6, 7, 8, 9),
			way(between(100, 900), b, 4, 14, 0, 2, 3, 4, 5, 6, 8, 9),
			way(-between(10, 200), a, r.IntN(3), 2, 7),
		}})
	}
	step := between(0, 300)
	p.Joints = []Joint{{4, func(limit uint8, _ bool) (money.Amount, bool) { return step * money.Amount(limit), true }}}
	return p
}

// Rooms of five overheads can be tried in all combinations.
func TestRoomsAsGoodAsTryingEverything(t *testing.T) {
	for seed := range uint64(3) {
		p := room(rand.New(rand.NewPCG(13, seed)), 5)
		var solver Solver
		compare(t, seed, &shape{}, p, &solver)
	}
}
