package estimate

// outcome is one way in which something unknown may turn out.
type outcome struct {
	chance float64
	cost   moments
}

// mix is the moments of what is unknown; in what is left of its chances it costs
// nothing.
func mix(outcomes []outcome) moments {
	var mean, second, third float64 // about nothing
	for _, o := range outcomes {
		m, v := o.cost.mean, o.cost.variance
		square := float64(m * m)
		mean += float64(o.chance * m)
		second += float64(o.chance * (v + square))
		third += float64(o.chance * (o.cost.third + float64(3*m*v) + float64(square*m)))
	}
	variance := second - float64(mean*mean)
	return moments{mean, max(0, variance), third - float64(3*mean*second) + float64(2*mean*mean*mean)}
}

// rest is the outcomes with what is left of the chances, in which nothing comes.
func rest(outcomes []outcome) []outcome {
	left := 1.0
	for _, o := range outcomes {
		left -= o.chance
	}
	if left <= 1e-12 { // what rounding leaves of it
		return outcomes
	}
	return append(outcomes, outcome{chance: left})
}
