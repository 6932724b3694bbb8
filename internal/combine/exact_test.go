package combine

import (
	"math/rand/v2"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/money"
)

// Every combination is tried: the solver finds the first of the best, and what it
// says that it is worth is what it is worth.
func TestAsGoodAsTryingEverything(t *testing.T) {
	var solver Solver
	for seed := range uint64(6000) {
		r := rand.New(rand.NewPCG(4, seed))
		sh := anyShape(r)
		p := sh.draw(r)
		compare(t, seed, &sh, p, &solver)
	}
}

// The same with more things and two ways each.
func TestAsGoodAsTryingEverythingOfMany(t *testing.T) {
	var solver Solver
	for seed := range uint64(60) {
		r := rand.New(rand.NewPCG(5, seed))
		sh := anyShape(r)
		sh.things, sh.ways, sh.trades, sh.joints = 11, 2, 1+r.IntN(8), r.IntN(6)
		compare(t, seed, &sh, sh.draw(r), &solver)
	}
}

func compare(t *testing.T, seed uint64, sh *shape, p *Problem, solver *Solver) {
	t.Helper()
	best, most, ok := tryAll(p, p.Value, nil)
	pick, value, can := solver.Best(p)
	if !slices.Equal(pick, best) || value != most || can != ok || !solver.Proven() {
		t.Fatalf("%d %+v: best %v, %d, %v; want %v, %d, %v", seed, sh, pick, value, can, best, most, ok)
	}
	but := make([]int, len(p.Things)) // the best one, or any
	for i := range but {
		but[i] = int(seed) * (i + 3) % len(p.Things[i].Ways)
		if ok && seed%3 > 0 {
			but[i] = best[i]
		}
	}
	best, most, ok = tryAll(p, p.Value, but)
	pick, value, can = solver.RunnerUp(p, but)
	if !slices.Equal(pick, best) || value != most || can != ok || !solver.Proven() {
		t.Fatalf("%d %+v: but for %v best %v, %d, %v; want %v, %d, %v", seed, sh, but, pick, value, can, best, most, ok)
	}
}

// Passes that are as narrow as can be, and problems that were made easier though
// nothing called for it, come to the same.
func TestAsGoodByAnyWay(t *testing.T) {
	for seed := range uint64(2500) {
		r := rand.New(rand.NewPCG(9, seed))
		sh := anyShape(r)
		p := sh.draw(r)
		best, most, ok := tryAll(p, p.Value, nil)
		var s search
		if !s.prepare(p, nil) {
			if ok {
				t.Fatalf("%d %+v: nothing is possible, but %v", seed, sh, best)
			}
			continue
		}
		s.bound.tune(&s.task)
		for n := range s.bound.share {
			s.bound.share[n] = r.Int64N(certain + 1) // any will do
		}
		s.bound.prepare(&s.task, quickWork)
		for width := 1; !s.pass(width); width++ {
			if r.IntN(2) == 0 {
				s.sharpen()
			}
		}
		if s.known != ok || ok && (money.Amount(s.floor) != most || !slices.Equal(s.picks(), best)) {
			t.Fatalf("%d %+v: %v, %d; want %v, %d", seed, sh, s.picks(), s.floor, best, most)
		}
	}
}

// A solver that is used again answers as a fresh one does, whatever it solved
// before, even where it gives up.
func TestUsedAgain(t *testing.T) {
	used := Solver{Effort: 20_000}
	rapid.Check(t, func(t *rapid.T) {
		r := rand.New(rand.NewPCG(6, rapid.Uint64().Draw(t, "seed")))
		sh := anyShape(r)
		sh.things, sh.ways, sh.trades = 1+r.IntN(30), 1+r.IntN(7), r.IntN(10)
		p := sh.draw(r)
		fresh := Solver{Effort: used.Effort}
		pick, value, ok := used.Best(p)
		again, want, can := fresh.Best(p)
		if !slices.Equal(pick, again) || value != want || ok != can || used.Proven() != fresh.Proven() {
			t.Fatalf("%v, %d, %v; fresh %v, %d, %v", pick, value, ok, again, want, can)
		}
		if v, possible := p.Value(pick); ok && (v != value || !possible) {
			t.Fatalf("worth %d, said %d", v, value)
		}
		if !used.Proven() {
			return
		}
		if second, worth, more := used.RunnerUp(p, pick); more && (worth > value || slices.Equal(second, pick)) {
			t.Fatalf("runner-up %v, %d after %v, %d", second, worth, pick, value)
		}
	})
}

// With call-outs for certain and no minimum the best combination is also found by
// trying all sets of trades that may come: everything is then decided by itself.
func TestHundredsOfThingsByTheTradesThatCome(t *testing.T) {
	for seed := range uint64(12) {
		r := rand.New(rand.NewPCG(7, seed))
		sh := shape{things: 300, ways: 7, trades: 8, worth: 1e6, labour: 1e6, callOut: 4e6, calls: []float64{0.1, 0.3, 0.6}[seed%3], full: seed%2 == 0}
		p := sh.draw(r)
		want := -money.Most
		for set := range 1 << sh.trades {
			v, ok := byTrades(p, set)
			if want = max(want, v); !ok && set == 1<<sh.trades-1 {
				t.Fatal("nothing is possible with all trades")
			}
		}
		pick, value, ok := p.Best()
		if v, _ := p.Value(pick); !ok || value != want || v != want {
			t.Fatalf("%d: %d, worth %d; want %d", seed, value, v, want)
		}
	}
}

// byTrades is the most that comes of it when the trades of a set come, and no
// others.
func byTrades(p *Problem, set int) (sum money.Amount, ok bool) {
	for t, trade := range p.Trades {
		if set&(1<<t) != 0 {
			sum -= trade.CallOut
		}
	}
	for _, thing := range p.Things {
		best, possible := money.Amount(0), false
		for _, w := range thing.Ways {
			v, can := w.Worth, true
			for _, c := range w.Calls {
				v -= c.Labour
				can = can && set&(1<<c.Trade) != 0
			}
			if can && (!possible || v > best) {
				best, possible = v, true
			}
		}
		if !possible {
			return -money.Most, false
		}
		sum += best
	}
	return sum, true
}

// One trade with nothing but a minimum charge is a knapsack; the table of what
// any amount of labour is worth at most solves it.
func TestMinimumChargeAsAKnapsack(t *testing.T) {
	for seed := range uint64(40) {
		r := rand.New(rand.NewPCG(8, seed))
		minimum := 50 + r.IntN(400)
		p := &Problem{Trades: []Trade{{Minimum: money.Amount(minimum)}}}
		const none = -1 << 40
		most := []int{0} // by labour
		for range 40 {
			labour := 1 + r.IntN(60)
			worth := labour/2 + r.IntN(20)
			p.Things = append(p.Things, Thing{Ways: []Way{{}, {Worth: money.Amount(worth), Calls: []Call{{0, certain, money.Amount(labour)}}}}})
			next := append(slices.Clone(most), slices.Repeat([]int{none}, labour)...)
			for l, m := range most {
				next[l+labour] = max(next[l+labour], m+worth)
			}
			most = next
		}
		want := 0
		for l, m := range most[1:] {
			want = max(want, m-max(minimum, l+1))
		}
		if pick, value, ok := p.Best(); !ok || value != money.Amount(want) {
			t.Fatalf("%d: %v is worth %d, want %d", seed, pick, value, want)
		}
	}
}
