package belief

import "railhead/internal/money"

// Best is what the best decision is expected to come to under a belief.
type Best = func(Belief) money.Amount

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
		joint, chance := prior.joint(likelihood)
		if chance == 0 {
			continue
		}
		values[s], chances[s] = best(money.Apportion(Certain, joint)), chance
		all += chance
	}
	return gain(money.Mean(values, chances, all), best(prior))
}

// gain is how much more knowing brings. Less than nothing is what rounding took:
// whoever knows more can still decide as before.
func gain(knowing, before money.Amount) money.Amount { return max(0, knowing.Minus(before)) }
