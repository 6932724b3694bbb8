package decide

import (
	"math"
	"slices"

	"railhead/internal/belief"
	"railhead/internal/cabinet"
	"railhead/internal/fit"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

// taller is what taking the group down would allow: the tallest row of the
// system that then fits, else the next one that does not.
type taller struct {
	row     *fit.Row // nil where the system has no taller row for these cabinets
	fits    bool
	need    length.Length // the ceiling that the row needs, above the datum
	have    length.Exact  // what there is with the group gone
	by      string        // pointer of what leaves the least
	assumed bool          // nobody has seen what is behind
	swaps   []cabinet.Swap
	needs   []string           // other groups over the same cabinets that must go with it
	doubt   func() level.Doubt // of what there is over what is needed
	chance  belief.Chance      // that it fits, within that doubt
}

// tallerRow compares the rows above the present one with the room that the
// group leaves once it is gone. Rows are tried from the next one up; the
// tallest that fits is the one worth taking something down for. A row that
// fits only where other overheads over the same cabinets go as well counts
// where none fits without.
func (m *matter) tallerRow(rows []fit.Row) taller {
	row := m.presentRow()
	if len(row) == 0 {
		return taller{}
	}
	alone := m.tallest(row, rows, m.only())
	alone.chance = alone.fitting(m.k.Room)
	if alone.row == nil || alone.fits {
		return alone
	}
	if others := m.others(row); len(others) > 0 {
		if together := m.tallest(row, rows, append(others, m.group.ID)); together.fits {
			together.needs, together.chance = others, together.fitting(m.k.Room)
			return together
		}
	}
	return alone
}

func (m *matter) only() []string { return []string{m.group.ID} }

// tallest is the tallest row that fits with some groups gone, else the next one
// that does not.
func (m *matter) tallest(present []*fit.Result, rows []fit.Row, gone []string) taller {
	var out taller
	rooms := m.roomsWithout(present, gone)
	for i := range rows {
		t, ok := m.with(present, &rows[i], rooms)
		if !ok || out.row != nil && !t.fits {
			continue
		}
		out = t
	}
	return out
}

// others are the other groups over some cabinets that may be cut.
func (m *matter) others(present []*fit.Result) []string {
	var out []string
	for _, r := range present {
		for _, l := range r.Limits {
			o := l.Overhead
			if l.Axis == fit.Up && o != nil && o.Group != m.group.ID && o.MayCut != survey.CutNo && !slices.Contains(out, o.Group) {
				out = append(out, o.Group)
			}
		}
	}
	return out
}

// fitting is the chance that the taller row fits once the group is gone: of what
// there is over what is needed, within the doubt of the readings. Beyond U = 2u it
// counts as sure, as everywhere (JCGM 100:2008, 6.2).
func (t *taller) fitting(room *survey.Room) belief.Chance {
	if t.row == nil {
		return 0
	}
	margin := t.have.Minus(t.need)
	u := fit.BeyondDoubt(room)
	if margin.CmpLength(u) < 0 && margin.Plus(u).Sign() > 0 {
		u = t.doubt().Expanded // what is beyond any doubt need not be asked
	}
	switch {
	case margin.CmpLength(u) >= 0:
		return belief.Certain
	case margin.Plus(u).Sign() <= 0:
		return 0
	default:
		over, _ := margin.Rat().Float64()
		return belief.Chance(math.Round(normal(2*over/float64(u)) * float64(belief.Certain)))
	}
}

// normal is the distribution function of the standard normal distribution.
func normal(z float64) float64 { return math.Erfc(-z/math.Sqrt2) / 2 }

// mayFit reports whether the taller row fits, or might if it is measured again.
func (t *taller) mayFit() bool { return t.fits || t.chance > 0 }

// presentRow are the cabinets under the group that end on its highest top line.
// One that was given a level of its own keeps it where others follow the row.
func (m *matter) presentRow() []*fit.Result {
	var row, own []*fit.Result
	for _, r := range m.onTopLine() {
		if r.Cabinet.OwnLevel {
			own = append(own, r)
		} else {
			row = append(row, r)
		}
	}
	if len(row) == 0 {
		return own
	}
	return row
}

func (m *matter) onTopLine() []*fit.Result {
	var out []*fit.Result
	for _, r := range m.under {
		switch {
		case len(out) == 0 || r.Cabinet.Top > out[0].Cabinet.Top:
			out = []*fit.Result{r}
		case r.Cabinet.Top == out[0].Cabinet.Top:
			out = append(out, r)
		}
	}
	return out
}

// with is the present cabinets exchanged for one row's, with the room that each of
// them then has; false where the row is not above the present one, or is not made
// for every kind that stands there.
func (m *matter) with(present []*fit.Result, row *fit.Row, rooms []headroom) (taller, bool) {
	if row.Top <= present[0].Cabinet.Top {
		return taller{}, false
	}
	t := taller{row: row, fits: true, need: row.Top}
	for i, r := range present {
		h := row.WallHeight
		if r.Cabinet.Kind == cabinet.Tall {
			h = row.TallHeight
		}
		if h == nil || *h <= r.Cabinet.Height {
			return taller{}, false
		}
		top := r.Cabinet.Underside + *h
		low, assumed := rooms[i].lowest, rooms[i].assumed
		if i == 0 || low.value.Minus(top).Less(t.have.Minus(t.need)) {
			t.have, t.need, t.by, t.doubt = low.value, top, low.by, low.doubt
		}
		t.fits = t.fits && low.value.CmpLength(top) >= 0
		t.assumed = t.assumed || assumed
		t.swaps = append(t.swaps, cabinet.Swap{Cabinet: r.Cabinet, Height: *h, Top: top})
	}
	return t, true
}

// headroom is how high a cabinet may reach.
type headroom struct {
	lowest
	assumed bool
}

func (m *matter) roomsWithout(present []*fit.Result, gone []string) []headroom {
	out := make([]headroom, len(present))
	for i, r := range present {
		out[i].lowest, out[i].assumed = m.roomWithout(r, gone)
	}
	return out
}

// roomWithout is how high a cabinet may reach once some groups are gone: up to
// the ceiling and to the overheads of other groups. Where the ceiling behind a
// group was seen, that level counts over the stretch that it was behind.
func (m *matter) roomWithout(r *fit.Result, gone []string) (low lowest, assumed bool) {
	behind := m.over(r.Patches, gone)
	for _, l := range r.Limits {
		switch {
		case l.Axis != fit.Up || l.Overhead != nil && slices.Contains(gone, l.Overhead.Group):
		case l.Overhead != nil:
			low.take(l.Margin.Plus(r.Cabinet.Top), l.By, l.DoubtIn(m.k.Room))
		default:
			m.takeCeiling(&low, l, behind)
		}
	}
	for _, o := range behind {
		if seen := o.Behind.CeilingLevel; seen != nil {
			h := m.k.HeightAbove(o.Wall, *seen)
			low.take(h.Value, o.Pointer+"/behind/ceiling_level", func() level.Doubt {
				return level.DoubtOf(h.Terms, m.k.Room.Readings)
			})
		} else {
			assumed = assumed || o.Behind.Ceiling != survey.Yes
		}
	}
	return low, assumed
}

// takeCeiling counts the ceiling in front of and beside what was seen behind.
func (m *matter) takeCeiling(low *lowest, l fit.Limit, behind []*survey.Overhead) {
	wall := &m.k.Room.Walls[l.Wall]
	var seen []survey.Span
	for _, o := range behind {
		if o.Wall == l.Wall && o.Behind.CeilingLevel != nil {
			seen = append(seen, survey.Span{From: o.From, To: o.To})
		}
	}
	for _, s := range survey.Without([]survey.Span{{From: l.From, To: l.To}}, seen) {
		low.take(m.k.Above(l.Wall, wall.Ceiling.Lowest(s.From, s.To).Value), l.By, l.DoubtIn(m.k.Room))
	}
}

// over are the parts of some groups above a floor area.
func (m *matter) over(patches []cabinet.Patch, groups []string) []*survey.Overhead {
	var out []*survey.Overhead
	for w := range m.k.Room.Walls {
		for i := range m.k.Room.Walls[w].Overheads {
			if o := &m.k.Room.Walls[w].Overheads[i]; slices.Contains(groups, o.Group) && meets(patches, o) {
				out = append(out, o)
			}
		}
	}
	return out
}

// lowest is the first of the lowest values taken.
type lowest struct {
	value length.Exact
	by    string
	doubt func() level.Doubt // worked out only where it is asked for
}

func (l *lowest) take(v length.Exact, by string, d func() level.Doubt) {
	if l.by == "" || v.Less(l.value) {
		l.value, l.by, l.doubt = v, by, d
	}
}
