package belief

import (
	"fmt"
	"math/big"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/money"
)

// drawProblem draws a problem of up to five states, decisions and signals.
func drawProblem(t *rapid.T) problem {
	states := rapid.IntRange(1, 5).Draw(t, "states")
	p := problem{prior: drawBelief(t, states), signals: drawSignals(t, states)}
	for range rapid.IntRange(1, 5).Draw(t, "decisions") {
		payoff := make([]money.Amount, states)
		for i := range payoff {
			payoff[i] = money.Amount(rapid.Int64Range(-1e8, 1e8).Draw(t, "payoff"))
		}
		p.payoffs = append(p.payoffs, payoff)
	}
	return p
}

// noise is what rounding may take or add: payoffs of 10^8 parts at most, in up to
// five states that are rounded to 10^-9 each, are off by less than a part together,
// and each of three roundings by half a part.
const noise = 3

func TestATestIsWorthAtMostKnowing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawProblem(t)
		sample, perfect := Sample(p.prior, p.signals, p.best), Perfect(p.prior, p.best)
		if sample < 0 || sample > perfect+noise {
			t.Fatalf("the test is worth %d, knowing %d", sample, perfect)
		}
	})
}

func TestAUselessTestIsWorthNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawProblem(t)
		for s, chance := range drawBelief(t, len(p.signals)) { // whatever the state
			for i := range p.signals[s] {
				p.signals[s][i] = chance
			}
		}
		if got := Sample(p.prior, p.signals, p.best); got != 0 {
			t.Fatalf("the test is worth %d", got)
		}
	})
}

func TestATestThatCannotErrIsWorthKnowing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawProblem(t)
		var signals [][]Chance
		for i := range p.prior {
			signals = append(signals, Point(len(p.prior), i))
		}
		if sample, perfect := Sample(p.prior, signals, p.best), Perfect(p.prior, p.best); sample != perfect {
			t.Fatalf("the test is worth %d, knowing %d", sample, perfect)
		}
	})
}

// Whoever mixes up signals knows no more than before: the order of experiments by
// Blackwell (from memory).
func TestMixedUpSignalsAreWorthNoMore(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawProblem(t)
		if len(p.signals) < 2 {
			return
		}
		apart, last := Sample(p.prior, p.signals, p.best), len(p.signals)-1
		merged := append([][]Chance{make([]Chance, len(p.prior))}, p.signals[1:last]...)
		for i := range p.prior {
			merged[0][i] = p.signals[0][i] + p.signals[last][i]
		}
		if mixed := Sample(p.prior, merged, p.best); mixed > apart+noise {
			t.Fatalf("mixed up %d, apart %d", mixed, apart)
		}
	})
}

func TestWhereOneDecisionIsLeftNothingIsWorthKnowing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawProblem(t)
		p.payoffs = p.payoffs[:1]
		if sample, perfect := Sample(p.prior, p.signals, p.best), Perfect(p.prior, p.best); sample > noise || perfect != 0 {
			t.Fatalf("the test is worth %d, knowing %d", sample, perfect)
		}
	})
}

// The definition in fractions, without rounding: what is gained is the sum over the
// signals of the best sum over the states of prior, likelihood and payoff.
func TestInformationFollowsItsDefinition(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawProblem(t)
		sure := make([][]Chance, len(p.prior))
		for i := range sure {
			sure[i] = Point(len(p.prior), i)
		}
		blind := [][]Chance{make([]Chance, len(p.prior))}
		for i := range blind[0] {
			blind[0][i] = Certain
		}
		before := p.defined(blind)
		for name, c := range map[string]struct {
			got     money.Amount
			signals [][]Chance
		}{
			"sample":  {Sample(p.prior, p.signals, p.best), p.signals},
			"perfect": {Perfect(p.prior, p.best), sure},
		} {
			want := new(big.Rat).Sub(p.defined(c.signals), before)
			off := want.Sub(want, big.NewRat(int64(c.got), 1))
			if off.Abs(off).Cmp(big.NewRat(noise, 1)) > 0 {
				t.Fatalf("%s is %d, off by %s", name, c.got, off.FloatString(3))
			}
		}
	})
}

// defined is what the best decisions come to where a signal is seen before.
func (p problem) defined(signals [][]Chance) *big.Rat {
	sum := new(big.Rat)
	for _, likelihood := range signals {
		var best *big.Rat
		for _, payoff := range p.payoffs {
			value := new(big.Rat)
			for i, prior := range p.prior {
				joint := new(big.Rat).Mul(big.NewRat(int64(prior), int64(Certain)), big.NewRat(int64(likelihood[i]), int64(Certain)))
				value.Add(value, joint.Mul(joint, big.NewRat(int64(payoff[i]), 1)))
			}
			if best == nil || value.Cmp(best) > 0 {
				best = value
			}
		}
		sum.Add(sum, best)
	}
	return sum
}

// A state or a signal that cannot be costs no decision.
func TestWhatCannotBeIsNotDecided(t *testing.T) {
	p, asked := goferbroke(), 0
	p.prior = percent(0, 100)
	best := func(b Belief) money.Amount { asked++; return p.best(b) }
	if got := Perfect(p.prior, best); got != 0 || asked != 2 {
		t.Errorf("knowing is worth %d after %d decisions", got, asked)
	}
	asked = 0
	signals := [][]Chance{percent(100, 0), percent(0, 100)}
	if got := Sample(p.prior, signals, best); got != 0 || asked != 2 {
		t.Errorf("the test is worth %d after %d decisions", got, asked)
	}
}

// Whoever remembers answers the same, and is asked once about one belief.
func TestRememberedAnswersTheSame(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		worths := rapid.SliceOfN(rapid.Int64Range(-1000, 1000), 2, 4).Draw(t, "worths")
		asked := map[string]int{}
		best := func(b Belief) money.Amount {
			asked[fmt.Sprint(b)]++
			var out money.Amount
			for i, c := range b {
				out += c.Of(money.Amount(worths[i]))
			}
			return max(0, out)
		}
		remembered := Remembered(best)
		for range 6 {
			b := Of(rapid.SliceOfN(rapid.Custom(func(t *rapid.T) Chance { return Chance(rapid.Int64Range(0, 2).Draw(t, "part")) }), len(worths), len(worths)).Draw(t, "belief")...)
			got := remembered(b)
			if n := asked[fmt.Sprint(b)]; n != 1 {
				t.Fatalf("asked %d times about %v", n, b)
			}
			if want := best(b); got != want {
				t.Fatalf("%d, want %d", got, want)
			}
			asked[fmt.Sprint(b)]--
		}
	})
}
