package fill

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
)

// things is an answer as things from end to end.
func (m *model) things(a Answer) ([]thing, error) {
	var inside []thing
	for _, p := range a.Pieces {
		inside = append(inside, thing{from: p.At, to: p.At + p.Width, height: p.Height, size: p.Size})
	}
	for _, b := range m.bound {
		if !b.isCabinet() {
			inside = append(inside, b)
		}
	}
	slices.SortFunc(inside, func(a, b thing) int { return cmp.Compare(a.from, b.from) })
	all := append(append([]thing{m.leftEnd()}, inside...), m.rightEnd())
	told := map[string]int{}
	for i := 1; i < len(all); i++ {
		all[i].before = m.readBetween(a, all[i-1], all[i], told)
	}
	if told["fillers"] != len(a.Fillers) || told["panels"] != len(a.Panels) || told["open"] != len(a.Open) {
		return all, fmt.Errorf("told %d fillers, %d panels, %d open; found %v", len(a.Fillers), len(a.Panels), len(a.Open), told)
	}
	return all, nil
}

// readBetween is what an answer has between two things.
func (m *model) readBetween(a Answer, t, u thing, told map[string]int) how {
	space := Span{t.to, u.from}
	if t.to < u.from && slices.Contains(a.Fillers, space) {
		told["fillers"]++
		return filled
	}
	as := nothing
	if !t.isCabinet() && !u.isCabinet() {
		as = left
	}
	if t.isNew() && slices.Contains(a.Panels, Span{t.to, t.to + m.Panel}) {
		told["panels"]++
		space.From, as = space.From+m.Panel, left
	}
	if u.isNew() && slices.Contains(a.Panels, Span{u.from - m.Panel, u.from}) {
		told["panels"]++
		space.To, as = space.To-m.Panel, left
	}
	if space.From < space.To && slices.Contains(a.Open, space) {
		told["open"]++
		as = left
	}
	return as
}

// key is the ordered list of cabinets, with the gaps between them. Among lists of one length, that with the earlier key
// comes first: 'g' for a gap and 's' for a cabinet that stays come after all digits.
func (m *model) key(all []thing) string {
	var b strings.Builder
	for _, t := range all[1 : len(all)-1] {
		switch {
		case t.isNew():
			fmt.Fprintf(&b, "%012d,%012d;", int64(1e11)-int64(t.to-t.from), int64(1e11)-int64(t.height))
		case t.isCabinet():
			b.WriteString("s;")
		default:
			b.WriteString("t;")
		}
	}
	return b.String()
}

// count is how many new cabinets there are.
func count(all []thing) int {
	n := 0
	for _, t := range all {
		if t.isNew() {
			n++
		}
	}
	return n
}
