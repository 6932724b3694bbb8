package fill

import (
	"cmp"
	"slices"
	"strings"

	"railhead/internal/length"
	"railhead/internal/money"
)

// found is one way to fill a run.
type found struct {
	worth    money.Amount
	cabinets int
	key      string
}

// brute tries every way to fill a run, and is the best of each list of cabinets, in order.
func brute(r *Run) []found {
	b := &bruteForce{model: newModel(r), best: map[string]found{}}
	b.after([]thing{b.leftEnd()})
	var out []found
	for _, f := range b.best {
		out = append(out, f)
	}
	slices.SortFunc(out, func(a, b found) int {
		return cmp.Or(cmp.Compare(b.worth, a.worth), cmp.Compare(a.cabinets, b.cabinets), cmp.Compare(a.key, b.key))
	})
	if r.AnyOrder {
		return firstOfEachBag(out)
	}
	return out
}

// firstOfEachBag leaves out what has the same new cabinets as one before.
func firstOfEachBag(all []found) []found {
	var out []found
	seen := map[string]bool{}
	for _, f := range all {
		each := strings.FieldsFunc(f.key, func(r rune) bool { return r == ';' || r == 's' || r == 't' })
		slices.Sort(each)
		if bag := strings.Join(each, ";"); !seen[bag] {
			seen[bag] = true
			out = append(out, f)
		}
	}
	return out
}

type bruteForce struct {
	*model
	best map[string]found
}

// after puts each thing that may come next behind the last of some things.
func (b *bruteForce) after(all []thing) {
	last := all[len(all)-1]
	next := b.rightEnd()
	for _, t := range b.bound {
		if t.from >= last.to && (t.from > last.from || len(all) == 1) {
			next = t
			break
		}
	}
	for at := last.to; at < next.from; at += b.Grid {
		for i, s := range b.Sizes {
			b.try(all, thing{from: at, to: at + s.Width, height: s.Height, size: i})
		}
	}
	b.try(all, next)
}

func (b *bruteForce) try(all []thing, t thing) {
	last := all[len(all)-1]
	if t.isNew() && !b.stands(t.from, t.to, t.height) {
		return
	}
	for _, as := range []how{nothing, filled, left} {
		t.before = as
		if !b.allowed(last, t) {
			continue
		}
		now := append(slices.Clone(all), t)
		if t.size == isBound && t.atEnd {
			b.finish(now)
		} else {
			b.after(now)
		}
	}
}

func (b *bruteForce) finish(all []thing) {
	worth, ok := b.judge(all)
	if !ok || !b.allStay(all) {
		return
	}
	one := found{worth, count(all), b.key(all)}
	if was, ok := b.best[one.key]; !ok || was.worth < worth {
		b.best[one.key] = one
	}
}

// allStay says whether every cabinet that stays is there, and every gap.
func (b *bruteForce) allStay(all []thing) bool {
	n := 0
	for _, t := range all {
		if !t.isNew() && !t.atEnd {
			n++
		}
	}
	return n == len(b.bound)
}

// span is a length of so many grids.
func span(n int, grid length.Length) length.Length { return length.Length(n) * grid }
