package estimate

import "math"

// Percentiles go by the expansion of Cornish and Fisher up to the third moment
// (Abramowitz & Stegun, Handbook of Mathematical Functions, 26.2.49): what stands
// z deviations above the mean in the normal distribution stands z + (z²-1)·skew/6
// above it here.

// percentile is the value that mixed cases stay within with a probability of p.
func percentile(cases []outcome, p float64) float64 {
	if len(cases) == 1 {
		return cases[0].cost.at(math.Sqrt2 * math.Erfinv(2*p-1))
	}
	low, high := bounds(cases)
	for high-low > 0.25 { // a quarter of the last place of an amount
		middle := low + (high-low)/2
		if middle <= low || middle >= high {
			break // the floats end before the places do
		}
		if within(cases, middle) < p {
			low = middle
		} else {
			high = middle
		}
	}
	return high
}

// bounds is values that all cases stay above and below, but for next to nothing.
func bounds(cases []outcome) (low, high float64) {
	const far = 8
	low, high = math.Inf(1), math.Inf(-1)
	for _, c := range cases {
		least, most := c.cost.at(-far), c.cost.at(far)
		middle, sigma := c.cost.mean, c.cost.deviation()
		low = min(low, least, middle-far*sigma-1)
		high = max(high, most, middle+far*sigma+1)
	}
	return low, high
}

// within is the probability that mixed cases stay within a value.
func within(cases []outcome, value float64) float64 {
	sum := 0.0
	for _, c := range cases {
		sum += float64(c.chance * c.cost.within(value))
	}
	return sum
}

// at is the value that stands where z does in the normal distribution.
func (m moments) at(z float64) float64 {
	return m.mean + float64(m.deviation()*(z+float64((float64(z*z)-1)*m.skew()/6)))
}

// within is the probability of at most a value: at, turned round.
func (m moments) within(value float64) float64 {
	sigma := m.deviation()
	if sigma == 0 {
		if value < m.mean {
			return 0
		}
		return 1
	}
	g, y := m.skew()/6, (value-m.mean)/sigma
	root := 1 + float64(4*g*(g+y))
	switch {
	case root >= 0:
		z := 2 * (g + y) / (1 + math.Sqrt(root))
		return math.Erfc(-z/math.Sqrt2) / 2
	case g > 0:
		return 0 // below all that it may be
	default:
		return 1 // above it
	}
}
