package belief

import (
	"slices"

	"railhead/internal/money"
)

// Best is what the best decision is expected to come to under a belief.
type Best = func(Belief) money.Amount

// Remembered is best that works nothing out twice: where a signal leaves no doubt,
// what is then best is what is best with that known.
func Remembered(best Best) Best {
	var beliefs []Belief
	var values []money.Amount
	return func(b Belief) money.Amount {
		i := slices.IndexFunc(beliefs, func(have Belief) bool { return slices.Equal(have, b) })
		if i < 0 {
			i = len(beliefs)
			beliefs, values = append(beliefs, b), append(values, best(b))
		}
		return values[i]
	}
}

// Perfect is what it is worth to know the state before deciding: the expected
// value of perfect information. No question is worth more.
func Perfect(prior Belief, best Best) money.Amount {
	values := make([]money.Amount, len(prior))
	for i, chance := range prior {
		if chance > 0 {
			values[i] = best(Point(len(prior), i))
		}
	}
	return gain(prior.Mean(values), best(prior))
}

// Sample is what it is worth to see a signal before deciding: the expected value
// of sample information, before what the signal costs. Signals hold the likelihood
// of each signal in each state; those of one state add up to Certain.
func Sample(prior Belief, signals [][]Chance, best Best) money.Amount {
	values, chances := make([]money.Amount, len(signals)), make([]both, len(signals))
	var all both
	for s, likelihood := range signals {
		posterior, chance := prior.given(likelihood)
		if chance == 0 {
			continue
		}
		values[s], chances[s] = best(posterior), chance
		all += chance
	}
	return gain(money.Mean(values, chances, all), best(prior))
}

// gain is how much more knowing brings. Less than nothing is what rounding took:
// whoever knows more can still decide as before.
func gain(knowing, before money.Amount) money.Amount { return max(0, knowing.Minus(before)) }
