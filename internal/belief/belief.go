package belief

import "railhead/internal/money"

// Belief is how probable each state of something unknown is; it adds up to
// Certain exactly.
type Belief []Chance

// Of is a belief with the states in the given proportions. Where no state has
// any, all are as probable.
func Of(parts ...Chance) Belief { return money.Apportion(Certain, parts) }

// Point is the belief that the i-th of n states holds.
func Point(n, i int) Belief {
	b := make(Belief, n)
	b[i] = Certain
	return b
}

// Mean is what the values, one for each state, are expected to come to.
func (b Belief) Mean(values []money.Amount) money.Amount { return money.Mean(values, b, Certain) }
