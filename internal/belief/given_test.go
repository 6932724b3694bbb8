package belief

import (
	"slices"
	"testing"

	"pgregory.net/rapid"
)

func TestGiven(t *testing.T) {
	for name, c := range map[string]struct {
		prior      Belief
		likelihood []Chance
		want       Belief
		signal     Chance
	}{
		"a pipe is certain to be seen, and is not": {percent(20, 80), percent(0, 100), Belief{0, Certain}, 800_000_000},
		"tells nothing":         {percent(20, 80), percent(35, 35), percent(20, 80), 350_000_000},
		"cannot come":           {percent(20, 80), percent(0, 0), percent(20, 80), 0},
		"cannot come in truth":  {percent(100, 0), percent(0, 100), percent(100, 0), 0},
		"rarer than a chance":   {Belief{1, Certain - 1}, []Chance{1, 0}, Belief{Certain, 0}, 0},
		"ties to even":          {Belief{Certain / 2, Certain / 2}, []Chance{1, 0}, Belief{Certain, 0}, 0},
		"more than half of one": {percent(75, 25), []Chance{1, 0}, Belief{Certain, 0}, 1},
		"ties up to even":       {Belief{Certain / 2, Certain / 2}, []Chance{3, 0}, Belief{Certain, 0}, 2},
		"beyond what is sure":   {percent(50, 50), percent(300, -100), Belief{Certain, 0}, 500_000_000},
	} {
		got, signal := c.prior.Given(c.likelihood)
		if !slices.Equal(got, c.want) || signal != c.signal {
			t.Errorf("%s: %v by %d, want %v by %d", name, got, signal, c.want, c.signal)
		}
	}
}

// What is believed after each of all signals comes on average to what was believed
// before, and the signals' chances to certainty.
func TestSignalsAddUpToThePrior(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		prior := drawBelief(t, rapid.IntRange(1, 6).Draw(t, "states"))
		signals := drawSignals(t, len(prior))
		var all Chance
		back := make([]float64, len(prior))
		for _, likelihood := range signals {
			posterior, signal := prior.Given(likelihood)
			checkBelief(t, posterior, true)
			all += signal
			for i, c := range posterior {
				back[i] += float64(c) * float64(signal) / float64(Certain)
			}
		}
		within := float64(2 * len(signals)) // each chance and each posterior is rounded
		if off := float64(all - Certain); off > within || -off > within {
			t.Fatalf("chances add up to %d", all)
		}
		for i, c := range prior {
			if off := back[i] - float64(c); off > within || -off > within {
				t.Fatalf("state %d: %f, was %d", i, back[i], c)
			}
		}
	})
}

// A state that makes a signal likelier than another is believed the more for it,
// against the other.
func TestEvidenceMovesTheOdds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		prior := drawBelief(t, 2)
		likelihood := []Chance{drawChance(t), drawChance(t)}
		posterior, _ := prior.Given(likelihood)
		if likelihood[0] >= likelihood[1] && posterior[0] < prior[0] || likelihood[0] <= likelihood[1] && posterior[0] > prior[0] {
			t.Fatalf("%v by %v is %v", prior, likelihood, posterior)
		}
	})
}

func drawChance(t *rapid.T) Chance {
	return Chance(rapid.Int64Range(0, int64(Certain)).Draw(t, "chance"))
}

func drawBelief(t *rapid.T, states int) Belief {
	parts := make([]Chance, states)
	for i := range parts {
		parts[i] = Chance(rapid.Int64Range(0, 20).Draw(t, "part"))
	}
	return Of(parts...)
}

// drawSignals draws up to four signals; those of one state add up to Certain.
func drawSignals(t *rapid.T, states int) [][]Chance {
	signals := make([][]Chance, rapid.IntRange(1, 4).Draw(t, "signals"))
	for s := range signals {
		signals[s] = make([]Chance, states)
	}
	for i := range states {
		for s, chance := range drawBelief(t, len(signals)) {
			signals[s][i] = chance
		}
	}
	return signals
}
