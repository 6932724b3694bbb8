package decide

import (
	"railhead/internal/cabinet"
	"railhead/internal/fit"
	"railhead/internal/length"
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
}

// tallerRow compares the rows above the present one with the room that the
// group leaves once it is gone. Rows are tried from the next one up; the
// tallest that fits is the one worth taking something down for.
func (m *matter) tallerRow(rows []fit.Row) taller {
	row := m.presentRow()
	if len(row) == 0 {
		return taller{}
	}
	var out taller
	for i := range rows {
		t, ok := m.with(row, &rows[i])
		if !ok || out.row != nil && !t.fits {
			continue
		}
		out = t
	}
	return out
}

// presentRow are the cabinets under the group that end on its highest top line.
// One that was given a level of its own keeps it where others follow the row.
func (m *matter) presentRow() []standing {
	var row, own []standing
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

func (m *matter) onTopLine() []standing {
	var out []standing
	for _, r := range m.under {
		switch {
		case len(out) == 0 || r.Cabinet.Top > out[0].Cabinet.Top:
			out = []standing{r}
		case r.Cabinet.Top == out[0].Cabinet.Top:
			out = append(out, r)
		}
	}
	return out
}

// with is the present cabinets exchanged for one row's; false where the row is
// not above the present one, or is not made for every kind that stands there.
func (m *matter) with(present []standing, row *fit.Row) (taller, bool) {
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
		have, by, assumed := m.roomWithout(r)
		if i == 0 || have.Minus(top).Less(t.have.Minus(t.need)) {
			t.have, t.need, t.by = have, top, by
		}
		t.fits = t.fits && have.CmpLength(top) >= 0
		t.assumed = t.assumed || assumed
		t.swaps = append(t.swaps, cabinet.Swap{Cabinet: r.Cabinet, Height: *h, Top: top})
	}
	return t, true
}

// roomWithout is how high a cabinet may reach once the group is gone: up to the
// ceiling and to the overheads of other groups. Where the ceiling behind the
// group was seen, that level counts over the stretch that it was behind.
func (m *matter) roomWithout(r standing) (have length.Exact, by string, assumed bool) {
	low := lowest{}
	behind := m.partsOver(r.patches)
	for _, l := range r.Limits {
		switch {
		case l.Axis != fit.Up || l.Overhead != nil && l.Overhead.Group == m.group.ID:
		case l.Overhead != nil:
			low.take(l.Margin.Plus(r.Cabinet.Top), l.By)
		default:
			m.takeCeiling(&low, l, behind)
		}
	}
	for _, o := range behind {
		if level := o.Behind.CeilingLevel; level != nil {
			low.take(m.height(o, level.Value), o.Pointer+"/behind/ceiling_level")
		} else {
			assumed = assumed || o.Behind.Ceiling != survey.Yes
		}
	}
	return low.value, low.by, assumed
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
		low.take(m.k.Above(l.Wall, wall.Ceiling.Lowest(s.From, s.To).Value), l.By)
	}
}

// partsOver are the group's parts above a cabinet.
func (m *matter) partsOver(patches []cabinet.Patch) []*survey.Overhead {
	var out []*survey.Overhead
	for _, o := range m.group.Parts {
		if meets(patches, o) {
			out = append(out, o)
		}
	}
	return out
}

// lowest is the first of the lowest values taken.
type lowest struct {
	value length.Exact
	by    string
}

func (l *lowest) take(v length.Exact, by string) {
	if l.by == "" || v.Less(l.value) {
		l.value, l.by = v, by
	}
}
