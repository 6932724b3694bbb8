package money

// Quantity is how much of something there is, in thousandths of its unit (m, m2,
// h, l, kg, pieces). It is at most Most thousandths either way.
type Quantity int64

// One is one of a quantity's unit.
const One Quantity = 1000

// Plus is q + r.
func (q Quantity) Plus(r Quantity) Quantity {
	return max(-Quantity(Most), min(Quantity(Most), q+r))
}

// Times is q for each of another quantity's units, as hours for each metre.
func (q Quantity) Times(r Quantity) Quantity { return Quantity(scale(int64(q), int64(r), int64(One))) }

// Decimal is q with as many decimal places as it has, such as 2.75.
func (q Quantity) Decimal() string { return Decimal(int64(q), int64(One)) }
