package contents

import (
	"railhead/internal/belief"
	"railhead/internal/length"
	"railhead/internal/money"
	"railhead/internal/survey"
)

// Probe is what a probe hole into a cluster would show: how likely each state is
// seen (the first index), by the state that there is (the second). Either the
// true state is seen or it looks empty. The chances are those by which the same
// look would be weighed if it were reported, so that what a hole is worth and what
// it turns out to say agree.
func Probe(c Cluster) [][]belief.Chance {
	signals := make([][]belief.Chance, States)
	for s := range signals {
		signals[s] = make([]belief.Chance, States)
	}
	empty := c.looksEmpty()
	for s := range States {
		signals[Empty][s] = empty[s]
		signals[s][s] += belief.Certain - empty[s]
	}
	return signals
}

// looksEmpty is how likely one more hole shows nothing, by state. After looks that
// showed nothing it is what is left of having seen nothing then and now.
func (c Cluster) looksEmpty() [States]belief.Chance {
	before, after := c.beforeAndAfter()
	var out [States]belief.Chance
	for s := range out {
		out[s] = belief.Chance(money.Amount(belief.Certain).Share(int64(after[s]), int64(before[s])))
	}
	return out
}

// beforeAndAfter is how likely it is to have seen nothing, without the hole and with it.
func (c Cluster) beforeAndAfter() (before, after Factors) {
	hole := c.ProbeAt()
	if hole == nil {
		return unmoved, unmoved // a hole shows nothing new
	}
	shows, shown, all := min(c.sight(), UnseenOf(hole)), c.shown(), c.Length()
	before = unmoved
	switch state, _ := c.seenState(); {
	case state != Empty:
		return before, c.nothingSeen(partOf(shows, c.UnseenLength()))
	case shown > 0:
		before = c.nothingSeen(partOf(shown, all))
	}
	return before, c.nothingSeen(partOf(min(shown+shows, all), all))
}

// ProbeAt is the overhead that a probe hole belongs in: the one of which most is
// unseen, the first of equals; nil where all was seen.
func (c Cluster) ProbeAt() *survey.Overhead {
	var out *survey.Overhead
	for _, o := range c.Parts {
		if n := UnseenOf(o); n > 0 && (out == nil || n > UnseenOf(out)) {
			out = o
		}
	}
	return out
}

func partOf(part, whole length.Length) Factor { return share(int64(part), int64(whole)) }

// WithBehind is the belief of the contents together with whether the ceiling's
// board is missing behind: first all states with the board in place, then all
// states with it missing.
func WithBehind(b belief.Belief, missing belief.Chance) belief.Belief {
	both := make([]belief.Chance, 2*len(b))
	for s, chance := range b {
		both[s], both[s+len(b)] = chance*missing.Not(), chance*missing
	}
	return belief.Of(both...)
}

// ProbeWithBehind is what a probe hole would show of both, in the order of
// [WithBehind]: looking up, one sees what is behind, whatever else is seen.
func ProbeWithBehind(signals [][]belief.Chance) [][]belief.Chance {
	n := len(signals)
	out := make([][]belief.Chance, 2*n)
	for i := range out {
		out[i] = make([]belief.Chance, 2*n)
		copy(out[i][i/n*n:], signals[i%n])
	}
	return out
}
