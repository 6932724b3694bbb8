package layout

import (
	"cmp"
	"fmt"
	"hash/fnv"
	"slices"

	"railhead/internal/fill"
	"railhead/internal/money"
)

// way is a way to fill one kind's rows all over the room.
type way struct {
	worth money.Amount
	name  uint64 // of its cabinets, row by row in any order: ways with equal cabinets have equal names
	last  *link
}

// link is a row of a way, with those before it. Ways share the rows that they begin
// with.
type link struct {
	before, also *link
	ran
	turn *corner // at its right end; nil where it does not turn
}

// ran is one row as it was filled.
type ran struct {
	row    *row
	ends   ends
	answer *fill.Answer
}

// each goes through a way's rows.
func (w *way) each(do func(*link)) { w.last.each(do) }

func (l *link) each(do func(*link)) {
	if l == nil {
		return
	}
	l.before.each(do)
	l.also.each(do)
	if l.row != nil {
		do(l)
	}
}

// with is both together, which are of different walls.
func (w *way) with(o *way) way {
	return way{w.worth.Plus(o.worth), w.name + o.name, &link{before: w.last, also: o.last}}
}

// keep sorts ways by worth, those found first before equals, and keeps so many with
// different cabinets.
func keep(in []way, want int) []way {
	slices.SortStableFunc(in, func(a, b way) int { return cmp.Compare(b.worth, a.worth) })
	out := in[:0]
	for _, w := range in {
		if len(out) == want {
			break
		}
		if !slices.ContainsFunc(out, func(o way) bool { return o.name == w.name }) {
			out = append(out, w)
		}
	}
	return out
}

// ranked is one way to fill a wall.
type ranked struct {
	worth  money.Amount
	name   uint64 // of its cabinets in any order
	answer *fill.Answer
}

// named is a way to fill a row, with its name.
func named(r *row, a *fill.Answer) ranked {
	var all []string
	for _, p := range a.Pieces {
		if p.Size != fill.Stays {
			all = append(all, fmt.Sprint(p.Width, p.Height))
		}
	}
	slices.Sort(all)
	return ranked{a.Worth, hashOf(r.Kind, r.Wall, all), a}
}

// hashOf names things so that the names of several can be added up.
func hashOf(things ...any) uint64 {
	h := fnv.New64a()
	fmt.Fprintln(h, things...)
	return h.Sum64()
}

// step is one more row behind a way.
type step struct {
	worth     money.Amount
	name      uint64
	way, then int
}

// steps are the best ways to go on from some ways by one row, with what turning the
// corner behind it adds.
func steps(before []way, rows []ranked, turning money.Amount, name uint64, want int) []step {
	all := make([]step, 0, len(before)*len(rows))
	for i := range before {
		for j := range rows {
			all = append(all, step{
				before[i].worth.Plus(rows[j].worth).Plus(turning), before[i].name + rows[j].name + name, i, j,
			})
		}
	}
	slices.SortStableFunc(all, func(a, b step) int { return cmp.Compare(b.worth, a.worth) })
	out := all[:0]
	for _, s := range all {
		if len(out) == want {
			break
		}
		if !slices.ContainsFunc(out, func(o step) bool { return o.name == s.name }) {
			out = append(out, s)
		}
	}
	return out
}
