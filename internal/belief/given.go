package belief

import "railhead/internal/money"

// Given is what is believed after a signal that comes with the given likelihood
// in each state, by the rule of Bayes, and how probable the signal was. A signal
// that cannot come leaves the belief as it was.
func (b Belief) Given(likelihood []Chance) (posterior Belief, signal Chance) {
	posterior, whole := b.given(likelihood)
	return posterior, rounded(whole)
}

func (b Belief) given(likelihood []Chance) (posterior Belief, signal both) {
	joint, signal := b.joint(likelihood)
	if signal == 0 {
		return b, 0
	}
	return money.Apportion(Certain, joint), signal
}

// both is the probability of a state and a signal together, in billionths of a
// billionth, as a chance times a chance is.
type both int64

// joint is the probability of each state and the signal together, and that of the
// signal. All of them add up to 10^18 at most.
func (b Belief) joint(likelihood []Chance) (each []both, signal both) {
	each = make([]both, len(b))
	for i, prior := range b {
		each[i] = both(prior) * both(max(0, min(Certain, likelihood[i])))
		signal += each[i]
	}
	return each, signal
}

// rounded is p in billionths, half to even.
func rounded(p both) Chance {
	whole, rest := Chance(p)/Certain, Chance(p)%Certain
	if half := Certain / 2; rest > half || rest == half && whole%2 == 1 {
		whole++
	}
	return whole
}
