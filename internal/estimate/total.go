package estimate

import (
	"cmp"
	"slices"

	"railhead/internal/money"
)

// Total is what lines come to together, and what they stay within with a
// probability of one, five and nine in ten.
type Total struct {
	Cost
	P10, P50, P90 money.Amount
}

// TotalOf adds up lines. While the unknowns are few, every way in which they may
// turn out together is weighed by itself: what costs much in one case of ten is
// not spread over all ten.
func TotalOf(lines []Line) Total {
	sure, unknowns := gather(lines)
	all := sure.moments()
	each := make([][]outcome, len(unknowns))
	for i := range unknowns {
		each[i] = unknowns[i].outcomes()
		all = all.plus(mix(each[i]))
	}
	t := Total{Cost: columns(lines)}
	t.Deviation = whole(all.deviation())
	cases := turns(sure.moments(), each)
	within := func(p float64) money.Amount { return max(t.Low, min(t.High, whole(percentile(cases, p)))) }
	t.P10, t.P50, t.P90 = within(.1), within(.5), within(.9)
	return t
}

// mostCases is how many ways to turn out are weighed one by one.
const mostCases = 128

// turns is the ways in which unknowns may turn out together with what is certain.
// The weightiest are told apart; where that makes too many cases, the rest go by
// their moments.
func turns(sure moments, unknowns [][]outcome) []outcome {
	slices.SortStableFunc(unknowns, func(a, b []outcome) int { return cmp.Compare(mix(b).variance, mix(a).variance) })
	cases := []outcome{{1, sure}}
	for _, u := range unknowns {
		ways := rest(u)
		if len(cases)*len(ways) > mostCases {
			ways = []outcome{{1, mix(u)}}
		}
		cases = cross(cases, ways)
	}
	return cases
}

// cross is every case with every way.
func cross(cases, ways []outcome) []outcome {
	out := make([]outcome, 0, len(cases)*len(ways))
	for _, c := range cases {
		for _, w := range ways {
			out = append(out, outcome{c.chance * w.chance, c.cost.plus(w.cost)})
		}
	}
	return out
}
