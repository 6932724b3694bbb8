package combine

import (
	"math/big"
	"math/rand/v2"
	"testing"

	"railhead/internal/belief"
	"railhead/internal/money"
)

// plainValue is the value of a pick in exact fractions, by its definition: rounded
// only where an amount is paid. With chances in tenths and no more than nine
// things no chance is rounded before.
func plainValue(t *testing.T, p *Problem, pick []int) (money.Amount, bool) {
	t.Helper()
	var sum money.Amount
	line, even := p.Even.Others, p.Even.Others != Several
	for i, w := range pick {
		way := p.Things[i].Ways[w]
		sum += way.Worth
		switch {
		case way.Line == NoLine:
		case line == NoLine:
			line = way.Line
			even = line != Several
		case way.Line != line:
			even = false
		}
	}
	if even && line != NoLine {
		sum += p.Even.Worth
	}
	for n := range p.Trades {
		sum -= plainCharge(t, p, pick, n)
	}
	for j := range p.Joints {
		worth, ok := plainJoint(p, pick, j)
		if !ok {
			return 0, false
		}
		sum += worth
	}
	return sum, true
}

func plainCharge(t *testing.T, p *Problem, pick []int, trade int) money.Amount {
	t.Helper()
	none, labour := big.NewRat(1, 1), money.Amount(0)
	for i, w := range pick {
		for _, c := range p.Things[i].Ways[w].Calls {
			if c.Trade == trade {
				none.Mul(none, big.NewRat(int64(belief.Certain-c.Chance), int64(belief.Certain)))
				labour += c.Labour
			}
		}
	}
	called := new(big.Rat).Sub(big.NewRat(1, 1), none)
	paid := func(a money.Amount) money.Amount {
		n, ok := money.FromRat(new(big.Rat).Mul(called, big.NewRat(int64(a), int64(money.Unit))))
		if !ok {
			t.Fatal("out of range")
		}
		return n
	}
	return paid(p.Trades[trade].CallOut) + max(labour, paid(p.Trades[trade].Minimum))
}

func plainJoint(p *Problem, pick []int, joint int) (money.Amount, bool) {
	var limits []uint8
	wish := false
	for i, w := range pick {
		for _, e := range p.Things[i].Ways[w].Effects {
			if e.Joint == joint {
				limits = append(limits, e.Limit)
				wish = wish || e.Wish
			}
		}
	}
	limit := p.Joints[joint].Unlimited
	for n, l := range limits {
		if n == 0 || l < limit {
			limit = l
		}
	}
	return p.Joints[joint].Outcome(limit, wish)
}

func TestValueIsAsDefined(t *testing.T) {
	r := rand.New(rand.NewPCG(16, 1))
	for range 3000 {
		sh := anyShape(r)
		sh.things, sh.tenths = 1+r.IntN(9), true
		p := sh.draw(r)
		pick := make([]int, len(p.Things))
		for i := range pick {
			pick[i] = r.IntN(len(p.Things[i].Ways))
		}
		got, ok := p.Value(pick)
		want, can := plainValue(t, p, pick)
		if got != want || ok != can {
			t.Fatalf("%+v: %v is worth %d, %v; want %d, %v", sh, pick, got, ok, want, can)
		}
	}
}

// A pick that is none has no value and does no harm.
func TestPicksThatAreNone(t *testing.T) {
	p := &Problem{Things: []Thing{{Ways: []Way{{Worth: 1}}}, {Ways: []Way{{Worth: 2}}}}}
	for _, pick := range [][]int{nil, {0}, {0, 0, 0}, {0, 1}, {-1, 0}} {
		if v, ok := p.Value(pick); ok {
			t.Errorf("%v is worth %d", pick, v)
		}
		if c := p.Charges(pick); c != nil {
			t.Errorf("%v is charged %v", pick, c)
		}
		if second, v, ok := new(Solver).RunnerUp(p, pick); !ok || v != 3 || len(second) != 2 {
			t.Errorf("instead of %v: %v, %d, %v", pick, second, v, ok)
		}
	}
}

// A senseless rate gives a senseless value and never a wrapped one.
func TestSenselessAmounts(t *testing.T) {
	const huge = money.Amount(1) << 62
	call := []Call{{Trade: 0, Chance: 2 * belief.Certain, Labour: huge}}
	p := &Problem{Trades: []Trade{{huge, huge}}, Even: Even{huge, 1}}
	for range 500 {
		p.Things = append(p.Things, Thing{Ways: []Way{{Worth: -huge, Calls: call}, {Worth: huge, Line: 1}}})
	}
	pick, value, ok := p.Best()
	if want, _ := p.Value(pick); !ok || value != want || value != money.Most {
		t.Errorf("worth %d, %v; want %d", value, ok, money.Most)
	}
	for i, w := range pick {
		if w != 1 {
			t.Fatalf("thing %d is done in way %d", i, w)
		}
	}
	worst := make([]int, len(pick))
	if value, ok := p.Value(worst); !ok || value != -money.Most {
		t.Errorf("the worst is worth %d, %v", value, ok)
	}
}
