package contents

import (
	"strings"

	"railhead/internal/belief"
	"railhead/internal/money"
)

// Factor is what a chance is multiplied by, in millionths.
type Factor int64

// Same is the factor that moves nothing.
const Same Factor = 1_000_000

// hundredths is a factor as the tables write it.
func hundredths(n int64) Factor { return Factor(n) * Same / 100 }

// thousandths is a share as a figure tells it.
func thousandths(q money.Quantity) Factor { return Factor(q) * Same / Factor(money.One) }

// Text is the factor as a decimal number.
func (f Factor) Text() string { return money.Decimal(int64(f), int64(Same)) }

// Factors are what the chances of the states are multiplied by. Only their
// proportions count: the chances are brought back to 1 together afterwards.
type Factors [States]Factor

// weights are factors in hundredths, from empty to immovable.
func weights(empty, few, many, pipe, fixed int64) Factors {
	return Factors{hundredths(empty), hundredths(few), hundredths(many), hundredths(pipe), hundredths(fixed)}
}

// even is the belief of somebody who knows nothing at all; the first factors, on
// top of it, are the odds themselves.
func even() belief.Belief { return belief.Of(make([]belief.Chance, States)...) }

// on is a belief after the factors.
func (f Factors) on(b belief.Belief) belief.Belief {
	var odds [States]belief.Chance
	for s := range f {
		odds[s] = b[s] * belief.Chance(f[s]) // below 10^9 · 10^8
	}
	return belief.Of(odds[:]...)
}

// text is the factors by name of state.
func (f Factors) text() string {
	return byState(func(s State) string { return f[s].Text() })
}

// Text is a belief by name of state, each chance as a decimal number.
func Text(b belief.Belief) string {
	return byState(func(s State) string { return b[s].Decimal() })
}

func byState(value func(State) string) string {
	parts := make([]string, States)
	for s := range States {
		parts[s] = s.String() + " " + value(s)
	}
	return strings.Join(parts, ", ")
}

// unmoved are factors that move nothing.
var unmoved = Factors{Same, Same, Same, Same, Same}

// share is a part of a whole in millionths, to the nearest.
func share(part, whole int64) Factor { return Factor(money.Amount(Same).Share(part, whole)) }
