package estimate

import (
	"slices"

	"railhead/internal/money"
	"railhead/internal/takeoff"
)

// Merged is lines as they are told: what comes up together, if at all, is one line
// with its chance as the quantity and what it then costs as the rate. Of states
// that exclude each other only the dearest counts in the column of the most: they
// cannot all turn out.
func Merged(lines []Line) []Line {
	var out []Line
	var from []int // where the allowances of one group begin and end in out
	for i := range lines {
		l := &lines[i]
		if l.Kind != Allowance {
			out = append(out, *l)
			continue
		}
		at := slices.IndexFunc(out, func(m Line) bool { return m.sameEvent(l) })
		if at < 0 {
			at = len(out)
			out, from = append(out, merge(l)), append(from, at)
		}
		out[at].take(l)
	}
	dearestOnly(out, from)
	return out
}

func (l *Line) sameEvent(o *Line) bool {
	return l.Kind == Allowance && l.Group == o.Group && l.unknown() == o.unknown() && l.State == o.State && l.Misfit == o.Misfit
}

// merge is an allowance to which the lines of its event are still to be added.
func merge(l *Line) Line {
	return Line{
		Group: l.Group, Pointer: l.Pointer, Kind: Allowance, Code: "work.allowance", Unit: "1",
		Quantity: money.One, If: l.If, State: l.State, Misfit: l.Misfit, Of: l.Of, merged: true,
	}
}

// take adds a line of the event. Its figures are told by the kind of work.
func (l *Line) take(o *Line) {
	l.Spread, l.Cost, l.Mean = l.Spread.Plus(o.Spread), l.Cost.Plus(o.Cost), l.Mean.Plus(o.Mean)
	l.Rate, l.tax, l.Assumed = l.Rate.Plus(o.Cost.Mean()), l.tax.Plus(o.Tax()), l.Assumed || o.Assumed
	l.Inputs = append(l.Inputs, takeoff.Input{Name: string(o.work()), Value: o.Quantity.Decimal(), Unit: o.Unit})
}

// dearestOnly leaves the most that may turn out only on the dearest state of each
// unknown; at lists the allowances.
func dearestOnly(lines []Line, at []int) {
	for _, i := range at {
		l := &lines[i]
		for _, j := range at {
			o := &lines[j]
			if i == j || l.Group != o.Group || l.unknown() != o.unknown() || l.Misfit != o.Misfit {
				continue
			}
			if o.Cost.High > l.Cost.High || o.Cost.High == l.Cost.High && j < i {
				l.Spread.High = l.Spread.Likely
				break
			}
		}
	}
}
