package resolve

import (
	"railhead/internal/length"
)

// leastCounter is the lowest counter that is taken where nobody says: built-under appliances stand 820 mm high under a
// counter of 40 mm (common practice, no source).
const leastCounter = 860 * length.Millimetre

func (b *body) readCounter() {
	in := &b.req.Plan
	counter, known := b.usualCounter()
	if !in.Counter.Given() && known {
		b.assume("assume.plan.counter", counter, "/plan/counter")
	}
	b.plan.Counter = b.lengthOr(in.Counter, "/plan/counter", positive, counter)
	least := leastCounter
	if b.plan.Counter > 0 {
		least = min(least, b.plan.Counter)
	}
	if !in.LeastCounter.Given() {
		b.assume("assume.plan.least_counter", least, "/plan/least_counter")
	}
	b.plan.LeastCounter = b.lengthOr(in.LeastCounter, "/plan/least_counter", positive, least)
}

// usualCounter is the counter on the system's base cabinets: the planned ones where they are all of one height, else
// those that bring it closest to the ordinary height, 900 mm (metric data sheet of kitchen sizes, looked up) or 36 in
// (common practice, no source). It goes up and down with the row.
func (b *body) usualCounter() (length.Length, bool) {
	if b.system == nil || len(b.system.Base.Heights) == 0 {
		return 0, false
	}
	rest := b.system.Legs + b.system.Counter
	height := nearest(b.system.Base.Heights, b.metricOr(900*length.Millimetre, 36*length.Inch)-rest)
	if planned, one := b.plannedBase(); one {
		height = planned
	}
	return height + rest + b.plan.RowShift, true
}

// plannedBase is the height that all planned base cabinets have.
func (b *body) plannedBase() (height length.Length, one bool) {
	for _, c := range b.req.Plan.Cabinets {
		h, ok := b.quiet(c.Height)
		if c.Kind != "base" || !ok {
			continue
		}
		if one && h != height {
			return 0, false
		}
		height, one = h, true
	}
	return height, one
}
