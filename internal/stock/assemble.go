package stock

import (
	"cmp"
	"slices"

	"railhead/internal/length"
)

// plan hands the pieces to the bars and adds everything up.
func (t *task) plan(p Problem, r result) Plan {
	bars := slices.Clone(r.bars)
	slices.SortStableFunc(bars, t.order)
	pieces := t.byKind(p.Pieces)
	var out Plan
	for _, b := range bars {
		out.add(t.bar(b, pieces))
	}
	out.Kerf = out.Bought - out.Used - out.Waste
	out.Bound = min(t.stockOf(r.bound), t.stockOf(t.prices(r.bars)))
	out.Proven = out.Bound == out.Bought
	return out
}

// stockOf is the stock length in a price, the bars left out.
func (t *task) stockOf(price int64) length.Length {
	return length.Length(price/t.weight) * t.step
}

// order is longest stock first, then the longest cuts first.
func (t *task) order(a, b *pattern) int {
	if a.size != b.size {
		return cmp.Compare(b.size, a.size)
	}
	return slices.CompareFunc(a.takes, b.takes, func(x, y take) int {
		return cmp.Or(cmp.Compare(x.kind, y.kind), cmp.Compare(y.count, x.count))
	})
}

// byKind is the pieces of each kind in the order in which they are handed out.
func (t *task) byKind(pieces []Piece) [][]Piece {
	rest := sorted(pieces)
	out := make([][]Piece, len(t.demand))
	for k, n := range t.demand {
		out[k], rest = rest[:n], rest[n:]
	}
	return out
}

// bar takes the next pieces of each kind.
func (t *task) bar(p *pattern, pieces [][]Piece) Bar {
	z := t.sizes[p.size]
	b := Bar{Stock: length.Length(z.room-t.kerf) * t.unit, Offcut: length.Length(t.offcut(p)) * t.unit}
	for _, each := range p.takes {
		b.Cuts = append(b.Cuts, pieces[each.kind][:each.count]...)
		pieces[each.kind] = pieces[each.kind][each.count:]
	}
	return b
}

// add puts a bar into the plan.
func (p *Plan) add(b Bar) {
	p.Bars = append(p.Bars, b)
	p.Bought += b.Stock
	p.Waste += b.Offcut
	for _, c := range b.Cuts {
		p.Used += c.Length
	}
}
