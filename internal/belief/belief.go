package belief

// Chance is a probability, in billionths.
type Chance int64

// Certain is the probability of what is sure.
const Certain Chance = 1_000_000_000

// Belief is how probable each state of something unknown is; it adds up to
// Certain exactly.
type Belief []Chance
