package estimate

import (
	"math"

	"railhead/internal/money"
)

// moments are the mean, the variance and the third central moment of an amount,
// in the amount's own ten-thousandths. Those of independent amounts add up.
type moments struct{ mean, variance, third float64 }

// Products are converted to float64 before they are added, so that no processor
// joins the two into one operation and rounds differently from another.

func (m moments) plus(n moments) moments {
	return moments{m.mean + n.mean, m.variance + n.variance, m.third + n.third}
}

func (m moments) deviation() float64 { return math.Sqrt(m.variance) }

// skew is the third moment in terms of the deviation.
func (m moments) skew() float64 {
	if m.variance <= 0 {
		return 0
	}
	return m.third / (m.variance * m.deviation())
}

// shape is the moments of a spread: mean and deviation as PERT has them, and the
// third moment of the beta distribution between the ends that has both. With
// u = (mean - low) / (high - low) and n = 36·u·(1-u) - 1, the sum of its
// parameters, that is (1 - 2u)·(high - low)³ / (18·(n + 2)).
func shape(s money.Spread) moments {
	low, wide := float64(s.Low), float64(s.High)-float64(s.Low)
	if wide <= 0 {
		return moments{mean: float64(s.Likely)}
	}
	u := (1 + 4*(float64(s.Likely)-low)/wide) / 6
	deviation := wide / 6
	return moments{
		mean:     low + float64(u*wide),
		variance: float64(deviation * deviation),
		third:    (1 - 2*u) * wide * wide * wide / (18 * (1 + float64(36*u*(1-u)))),
	}
}

// whole is the amount nearest to a value, half to even, within the range.
func whole(v float64) money.Amount {
	most := float64(money.Most)
	return money.Amount(math.RoundToEven(max(-most, min(most, v))))
}
