package fill

import (
	"cmp"
	"slices"

	"railhead/internal/length"
	"railhead/internal/money"
)

// thing is what stands in a run or bounds it: a cabinet, or a stretch where nothing may stand, or an end.
type thing struct {
	from, to length.Length
	height   length.Length
	size     int // in Run.Sizes, Stays or isBound
	meets    [2]End
	atEnd    bool // an end of the run
	before   how  // what lies between the thing before it and this one
}

const isBound = -2

func (t thing) isCabinet() bool { return t.size != isBound }
func (t thing) isNew() bool     { return t.size >= 0 }

// model reads a run as its documentation has it, step by step and thing by thing, and shares nothing with the search.
type model struct {
	*Run
	most  []length.Length // over each step; 0 where nothing new may stand
	bound []thing         // gaps and cabinets that stay, by place
}

func newModel(r *Run) *model {
	m := &model{Run: r}
	steps := int(r.Length / r.Grid)
	stays := make([]bool, steps)
	for _, f := range r.Fixed {
		m.bound = append(m.bound, thing{from: f.At, to: f.At + f.Width, height: f.Height, size: Stays})
		for q := int(f.At / r.Grid); q < int((f.At+f.Width)/r.Grid); q++ {
			stays[q] = true
		}
	}
	for q := range steps {
		at := length.Length(q) * r.Grid
		most := length.Length(1 << 60)
		for _, l := range r.Limits {
			if l.From <= at && at < l.To {
				most = min(most, l.Height)
			}
		}
		if stays[q] {
			most = -1
		}
		m.most = append(m.most, most)
	}
	for q := 0; q < steps; q++ {
		if m.most[q] != 0 {
			continue
		}
		from := q
		for q+1 < steps && m.most[q+1] == 0 {
			q++
		}
		m.bound = append(m.bound, thing{
			from: length.Length(from) * r.Grid, to: length.Length(q+1) * r.Grid, size: isBound,
			meets: [2]End{m.sideOf(from, 0), m.sideOf(q, 1)},
		})
	}
	slices.SortFunc(m.bound, func(a, b thing) int { return cmp.Compare(a.from, b.from) })
	return m
}

// sideOf is the strictest side of all that keep a step free.
func (m *model) sideOf(q, which int) End {
	at := length.Length(q) * m.Grid
	out := End{Open: true}
	for _, l := range m.Limits {
		if l.Height == 0 && l.From <= at && at < l.To {
			out.Least = max(out.Least, l.Sides[which].Least)
			out.Open = out.Open && l.Sides[which].Open
		}
	}
	return out
}

func (m *model) leftEnd() thing {
	return thing{size: isBound, meets: [2]End{{}, m.Ends[0]}, atEnd: true}
}

func (m *model) rightEnd() thing {
	return thing{from: m.Length, to: m.Length, size: isBound, meets: [2]End{m.Ends[1], {}}, atEnd: true}
}

// stands says whether a height may newly stand over a stretch.
func (m *model) stands(from, to, height length.Length) bool {
	if from < 0 || to > m.Length {
		return false
	}
	for q := from / m.Grid; q < to/m.Grid; q++ {
		if m.most[q] < height {
			return false
		}
	}
	return true
}

// whole is a length of at least one step, on the grid.
func (m *model) whole(l length.Length) length.Length {
	return max(m.Grid, (l+m.Grid-1)/m.Grid*m.Grid)
}

// allowed says whether what lies between two things may be there.
func (m *model) allowed(a, b thing) bool {
	wide := b.from - a.to
	if wide < 0 {
		return false
	}
	if a.isCabinet() != b.isCabinet() && !m.keepsAway(a, b, wide) {
		return false
	}
	switch b.before {
	case nothing:
		return wide == 0 && !(a.isNew() && b.size == isBound && b.meets[0].Open) && !(b.isNew() && a.size == isBound && a.meets[1].Open) &&
			(a.isCabinet() || b.isCabinet())
	case filled:
		if !a.isCabinet() && !b.isCabinet() || !a.isCabinet() && a.meets[1].Open || !b.isCabinet() && b.meets[0].Open {
			return false
		}
		return wide >= m.whole(m.LeastFiller)
	}
	return m.mayBeOpen(a, b, wide)
}

// keepsAway says whether a new cabinet is far enough from a bound.
func (m *model) keepsAway(a, b thing, wide length.Length) bool {
	if a.isNew() && !b.meets[0].Open {
		return wide >= b.meets[0].Least
	}
	if b.isNew() && !a.meets[1].Open {
		return wide >= a.meets[1].Least
	}
	return true
}

func (m *model) mayBeOpen(a, b thing, wide length.Length) bool {
	toOpen := !a.isCabinet() && a.meets[1].Open || !b.isCabinet() && b.meets[0].Open
	both := !a.isCabinet() && !b.isCabinet()
	if m.Closed && !toOpen && !(both && wide == 0) {
		return false
	}
	if a.isNew() {
		wide -= m.Panel
		if !m.stands(a.to, a.to+m.Panel, a.height) {
			return false
		}
	}
	if b.isNew() {
		wide -= m.Panel
		if !m.stands(b.from-m.Panel, b.from, b.height) {
			return false
		}
	}
	switch {
	case toOpen || both:
		return wide >= 0
	case a.isNew() || b.isNew():
		return wide >= m.whole(m.LeastOpen)
	}
	return wide > 0
}

// between is what the space between two things costs, what changes there and what misses.
func (m *model) between(a, b thing) money.Amount {
	w := m.Weights
	steps := money.Amount((b.from - a.to) / m.Grid)
	var cost money.Amount
	switch b.before {
	case nothing:
		if a.isCabinet() && b.isCabinet() && len(m.Lines) > 0 && !slices.Contains(m.Lines, b.from) {
			cost += w.LineMiss
		}
	case filled:
		cost += w.Filler + steps*w.FillerPerGrid
	default:
		panel := money.Amount(m.Panel / m.Grid)
		for _, t := range []thing{a, b} {
			if t.isNew() {
				cost += w.Panel
				steps -= panel
			}
		}
		return cost + steps*w.OpenPerGrid
	}
	if a.isCabinet() && b.isCabinet() && a.height != b.height {
		cost += w.HeightChange
	}
	return cost
}

// judge is what things, from end to end, are worth; false where they may not be so.
func (m *model) judge(all []thing) (money.Amount, bool) {
	var worth money.Amount
	for i, t := range all {
		if t.isNew() {
			if !m.stands(t.from, t.to, t.height) {
				return 0, false
			}
			worth += m.Sizes[t.size].Worth - m.Weights.Cabinet
		}
		if i > 0 {
			if !m.allowed(all[i-1], t) {
				return 0, false
			}
			worth -= m.between(all[i-1], t)
		}
	}
	for _, s := range m.Whole {
		if !slices.ContainsFunc(all, func(t thing) bool { return t.isCabinet() && t.from <= s.From && s.To <= t.to }) {
			return 0, false
		}
	}
	for _, p := range m.Pairs {
		if m.equal(all, p) {
			worth += p.Worth
		} else if p.Must {
			return 0, false
		}
	}
	return worth, true
}

// equal says whether a pair's neighbours are equal and as near as they may be.
func (m *model) equal(all []thing, p Pair) bool {
	for i, t := range all {
		if !t.isCabinet() && !t.atEnd && t.from <= p.From && p.To <= t.to {
			a, b := all[i-1], all[i+1]
			return a.isCabinet() && b.isCabinet() && a.to-a.from == b.to-b.from && a.height == b.height &&
				m.nearest(a, t, true) && m.nearest(t, b, false)
		}
	}
	return false
}

// nearest says whether a cabinet is next to a gap with nothing between but its panel, or the narrowest filler where the
// gap keeps it away; b.before is what is between.
func (m *model) nearest(a, b thing, cabinetFirst bool) bool {
	cabinet, meets := b, a.meets[1]
	if cabinetFirst {
		cabinet, meets = a, b.meets[0]
	}
	wide := b.from - a.to
	switch {
	case !cabinet.isNew():
		return wide == 0
	case meets.Open:
		return wide == m.Panel
	case meets.Least == 0:
		return wide == 0
	}
	return b.before == filled && wide == max(m.whole(meets.Least), m.whole(m.LeastFiller))
}
