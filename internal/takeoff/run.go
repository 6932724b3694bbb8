package takeoff

import (
	"slices"

	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
	"railhead/internal/trim"
)

// run is a straight piece of a face along a wall: its height at both ends.
type run struct{ from, to, left, right length.Exact }

func (r run) long() length.Exact { return r.to.Sub(r.from) }

// at is the height at a station of the run.
func (r run) at(x length.Exact) length.Exact {
	if r.left.Equal(r.right) || x.Equal(r.from) {
		return r.left
	}
	return r.left.Add(r.right.Sub(r.left).Scale(x.Sub(r.from), r.long()))
}

// heights are the pieces of a span over which one profile is above another.
func heights(low, high level.Profile, s survey.Span) []run {
	if s.From >= s.To {
		return nil
	}
	at := append(make([]length.Length, 0, 8), s.From, s.To) // more than a surveyed wall mostly has
	at = high.AppendBreaks(low.AppendBreaks(at, s.From, s.To), s.From, s.To)
	slices.Sort(at)
	at = slices.Compact(at)
	out := make([]run, 0, len(at)-1)
	for i := 1; i < len(at); i++ {
		left := high.At(at[i-1], level.Right).Sub(low.At(at[i-1], level.Right))
		right := high.At(at[i], level.Left).Sub(low.At(at[i], level.Left))
		out = appendAbove(out, at[i-1], left, at[i], right)
	}
	return out
}

// appendAbove adds the part of a straight piece that is above 0.
func appendAbove(out []run, x0 length.Length, left length.Exact, x1 length.Length, right length.Exact) []run {
	r := run{x0.Exact(), x1.Exact(), left, right}
	switch zero := (length.Exact{}); {
	case left.Sign() <= 0 && right.Sign() <= 0:
		return out
	case left.Sign() < 0:
		r.from, r.left = length.Crossing(x0, left, x1, right, zero), zero
	case right.Sign() < 0:
		r.to, r.right = length.Crossing(x0, left, x1, right, zero), zero
	}
	return appendRun(out, r)
}

// appendRun adds a piece; one that goes on straight from the last is part of it,
// so that a surveyed point on a straight line changes no formula.
func appendRun(out []run, r run) []run {
	if last := len(out) - 1; last >= 0 && out[last].to.Equal(r.from) && out[last].right.Equal(r.left) && sameSlope(out[last], r) {
		out[last].to, out[last].right = r.to, r.right
		return out
	}
	return append(out, r)
}

func sameSlope(a, b run) bool {
	rise, other := a.right.Sub(a.left), b.right.Sub(b.left)
	if rise.Sign() == 0 || other.Sign() == 0 {
		return rise.Sign() == other.Sign()
	}
	return rise.Scale(b.long(), a.long()).Equal(other)
}

// strips are the pieces over which a cut takes something off.
func strips(stations []trim.Station) []run {
	var out []run
	for i := 1; i < len(stations); i++ {
		a, b := stations[i-1], stations[i]
		if a.At.Less(b.At) && (a.Remove.Sign() > 0 || b.Remove.Sign() > 0) {
			out = appendRun(out, run{a.At, b.At, a.Remove, b.Remove})
		}
	}
	return out
}

// within are the parts of runs that lie in some spans.
func within(runs []run, spans []survey.Span) []run {
	if len(spans) == 1 && allWithin(runs, spans[0]) {
		return runs
	}
	out := make([]run, 0, len(runs)+len(spans))
	for _, s := range spans {
		for _, r := range runs {
			if from, to := r.within(s); from.Less(to) {
				out = append(out, run{from, to, r.at(from), r.at(to)})
			}
		}
	}
	return out
}

// allWithin reports whether runs lie in a span, one and all.
func allWithin(runs []run, s survey.Span) bool {
	for _, r := range runs {
		if r.from.CmpLength(s.From) < 0 || r.to.CmpLength(s.To) > 0 {
			return false
		}
	}
	return true
}

// within is where the part of a run that lies in a span begins and ends.
func (r run) within(s survey.Span) (from, to length.Exact) {
	return length.Larger(r.from, s.From.Exact()), length.Smaller(r.to, s.To.Exact())
}

// longWithin is how long the parts of runs that lie in some spans are together.
func longWithin(runs []run, spans []survey.Span) length.Exact {
	var out length.Exact
	for _, s := range spans {
		for _, r := range runs {
			if from, to := r.within(s); from.Less(to) {
				out = out.Add(to.Sub(from))
			}
		}
	}
	return out
}

// longOf is how long runs are together.
func longOf(runs []run) length.Exact {
	var out length.Exact
	for _, r := range runs {
		out = out.Add(r.long())
	}
	return out
}

// highest is the greatest height of some runs.
func highest(runs []run) length.Exact {
	var out length.Exact
	for _, r := range runs {
		out = length.Larger(out, length.Larger(r.left, r.right))
	}
	return out
}

// heightAt is the height of runs at a station, which is an end of one.
func heightAt(runs []run, x length.Length) length.Exact {
	var out length.Exact
	for _, r := range runs {
		if r.from.CmpLength(x) <= 0 && r.to.CmpLength(x) >= 0 {
			out = length.Larger(out, r.at(x.Exact()))
		}
	}
	return out
}

// face is the area of a straight piece: its length and the mean of its heights.
func (a *account) face(r run, name string) figure {
	long := a.metre("length", r.long())
	if r.left.Equal(r.right) {
		return times(long, a.metre(name, r.left))
	}
	return times(long, half(plus(a.metre(name, r.left), a.metre(name, r.right))))
}

func (a *account) addFaces(runs []run, name string) {
	for _, r := range runs {
		a.add(a.face(r, name))
	}
}
