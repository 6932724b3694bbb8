package contents

import (
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/belief"
	"railhead/internal/money"
	"railhead/internal/survey"
)

// A probe hole of 1.5 m sight into 3 m of soffit, by the listed shares (C): few
// wires are seen with 1 − (0.6·0.1 + 0.4·0.5) = 0.74, many and pipes with
// 1 − (0.7·0.1 + 0.3·0.5) = 0.78, what cannot be moved with 1 − (0.5·0.1 + 0.5·0.5) = 0.7.
func TestWhatAProbeHoleShows(t *testing.T) {
	_, c := one(t, corner(over("s", 0, 0, 3000)))
	want := [States]belief.Chance{Empty: 1_000_000_000, FewWires: 740_000_000, ManyWires: 780_000_000, PipeOrDuct: 780_000_000, Immovable: 700_000_000}
	for s, d := range want {
		if got := Probe(c)[s][s]; got != d {
			t.Errorf("%s is seen with %d billionths, want %d", State(s), got, d)
		}
	}
}

func TestAProbeIntoWhatWasSeenShowsNothingNew(t *testing.T) {
	odds, c := one(t, corner(over("s", 0, 0, 3000, looked(survey.Opened))))
	if c.ProbeAt() != nil {
		t.Error("a hole is proposed where all was seen")
	}
	for _, signal := range Probe(c) {
		if after, _ := odds.Now.Given(signal); Text(after) != Text(odds.Now) {
			t.Errorf("after a signal %s, before %s", Text(after), Text(odds.Now))
		}
	}
}

func TestAProbeBelongsWhereMostIsUnseen(t *testing.T) {
	k := corner(over("a", 0, 0, 1000, group("g")), over("b", 0, 1000, 3000, group("g"), looked(survey.Opened, 1000, 2600)),
		over("c", 1, 0, 1000, group("g")))
	if _, c := one(t, k); c.ProbeAt().ID != "a" {
		t.Errorf("hole in %s, want a: 1000 unseen, before c", c.ProbeAt().ID)
	}
}

// Each state is seen for what it is or looks empty, and never more is expected to
// be learnt than there was (the law of total probability).
func TestAProbeIsAnExperiment(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := anyKitchen(t)
		lookInto(t, k)
		findIn(t, k)
		k.Prices.Figures = anyFigures(t)
		c := Clusters(k)[0]
		odds, signals := Of(k, c), Probe(c)
		mean := make([]int64, States)
		for s := range States {
			var column belief.Chance
			for i, signal := range signals {
				if signal[s] < 0 || i != int(s) && i != int(Empty) && signal[s] != 0 {
					t.Fatalf("state %s gives signal %d with %d", s, i, signal[s])
				}
				column += signal[s]
			}
			if column != belief.Certain {
				t.Fatalf("signals of %s add up to %d", s, column)
			}
		}
		for _, signal := range signals {
			after, p := odds.Now.Given(signal)
			for s := range after {
				mean[s] += int64(money.Amount(after[s]).Share(int64(p), int64(belief.Certain)))
			}
		}
		for s := range mean {
			if off := belief.Chance(mean[s]) - odds.Now[s]; off > 10 || off < -10 {
				t.Fatalf("%s is expected to be %d billionths after a probe and was %d", State(s), mean[s], odds.Now[s])
			}
		}
	})
}

// What a probe that shows nothing would leave is what the service says when such
// a probe is reported.
func TestAReportedProbeSaysWhatWasExpectedOfIt(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		from := rapid.IntRange(0, 2000).Draw(t, "from")
		to := from + rapid.IntRange(1600, 4000).Draw(t, "length")
		seen := rapid.IntRange(0, to-from-1500).Draw(t, "seen before")
		o := over("s", 0, from, to)
		if seen > 0 {
			looked(survey.ProbeHole, from, from+seen)(&o)
		}
		before, c := one(t, corner(o))
		expected, _ := before.Now.Given(Probe(c)[Empty])
		o.Inside.Seen = nil
		looked(survey.ProbeHole, from, from+seen+1500)(&o)
		reported, _ := one(t, corner(o))
		if reported.Unseen == 0 {
			return // then it is not likely but certain
		}
		for s := range expected {
			if off := expected[s] - reported.Now[s]; off > 1000 || off < -1000 { // factors are millionths
				t.Fatalf("expected %s, reported %s", Text(expected), Text(reported.Now))
			}
		}
	})
}

func addsUp(t *rapid.T, b belief.Belief) {
	if sum(b) != belief.Certain {
		t.Fatalf("odds add up to %d", sum(b))
	}
}

// Contents and what is behind do not depend on each other; a hole shows the
// latter whatever it shows of the former.
func TestAProbeShowsWhatIsBehind(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := anyKitchen(t)
		c := Clusters(k)[0]
		missing := belief.Chance(rapid.Int64Range(0, int64(belief.Certain)).Draw(t, "missing"))
		both := WithBehind(Of(k, c).Now, missing)
		addsUp(t, both)
		if got := sum(both[States:]); got < missing-5 || got > missing+5 {
			t.Fatalf("missing with %d, want %d", got, missing)
		}
		for i, signal := range ProbeWithBehind(Probe(c)) {
			after, p := both.Given(signal)
			shown := sum(after[:States])
			if i >= int(States) {
				shown = sum(after[States:])
			}
			if p > 0 && shown != belief.Certain {
				t.Fatalf("after signal %d what is behind is known with %d", i, shown)
			}
		}
	})
}
