package money

// Spread is an amount that nobody knows exactly: the least that it may come to,
// what it most likely comes to, and the most, in this order.
type Spread struct{ Low, Likely, High Amount }

// Plus is what both come to where both are low, likely or high together.
func (s Spread) Plus(t Spread) Spread {
	return Spread{s.Low.Plus(t.Low), s.Likely.Plus(t.Likely), s.High.Plus(t.High)}
}

// Neg is s as what is saved, not paid: its most is then the least.
func (s Spread) Neg() Spread { return Spread{-s.High, -s.Likely, -s.Low} }

// Times is s for each of a quantity's units.
func (s Spread) Times(q Quantity) Spread { return s.Share(int64(q), int64(One)) }

// Share is the part of s that has part of a whole.
func (s Spread) Share(part, whole int64) Spread {
	scaled := Spread{s.Low.Share(part, whole), s.Likely.Share(part, whole), s.High.Share(part, whole)}
	if scaled.Low > scaled.High {
		scaled.Low, scaled.High = scaled.High, scaled.Low
	}
	return scaled
}

// The mean and the deviation of the three-point estimate of PERT: the most likely
// value counts for four, and low and high are six deviations apart.
const (
	likelyCounts    = 4
	allCount        = 1 + likelyCounts + 1
	deviationsApart = 6
)

// Mean is what s is expected to come to.
func (s Spread) Mean() Amount {
	return (s.Low + likelyCounts*s.Likely + s.High).Share(1, allCount)
}

// Deviation is the standard deviation of s.
func (s Spread) Deviation() Amount { return (s.High - s.Low).Share(1, deviationsApart) }
