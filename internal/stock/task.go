package stock

import (
	"cmp"
	"slices"
	"sort"

	"railhead/internal/length"
)

// task is a problem in the smallest whole numbers that say the same: every length divided by what divides them all,
// equal pieces counted as one kind, and the kerf added to both sides.
type task struct {
	unit   length.Length // one of the task's lengths
	kerf   int64
	widths []int64       // piece + kerf of each kind, longest first
	demand []int         // how many of each kind
	sizes  []size        // shortest first, each a different length
	step   length.Length // divides every stock length
	weight int64         // what one step of stock costs when a bar costs 1
}

// size is a stock length. Price puts the two first aims into one number, length bought before bars: it is
// (stock ÷ step × weight + 1), and there are fewer bars in any plan than the weight.
type size struct {
	room  int64 // stock + kerf
	price int64
}

// reduce makes the task of a checked problem.
func reduce(p Problem) *task {
	t := &task{unit: commonUnit(p), weight: int64(len(p.Pieces)) + 1}
	t.kerf = int64(p.Kerf / t.unit)
	for _, piece := range sorted(p.Pieces) {
		t.add(int64(piece.Length/t.unit) + t.kerf)
	}
	stock := slices.Clone(p.Stock)
	slices.Sort(stock)
	stock = slices.Compact(stock)
	t.step = common(stock)
	for _, l := range stock {
		if int64(l/t.unit)+t.kerf < t.widths[len(t.widths)-1] {
			continue // too short for any piece
		}
		t.sizes = append(t.sizes, size{int64(l/t.unit) + t.kerf, int64(l/t.step)*t.weight + 1})
	}
	return t
}

// add counts one more piece of this width; widths come in falling.
func (t *task) add(width int64) {
	last := len(t.widths) - 1
	if last >= 0 && t.widths[last] == width {
		t.demand[last]++
		return
	}
	t.widths = append(t.widths, width)
	t.demand = append(t.demand, 1)
}

// sorted is the pieces longest first, equal ones by ID.
func sorted(pieces []Piece) []Piece {
	out := slices.Clone(pieces)
	slices.SortStableFunc(out, func(a, b Piece) int {
		return cmp.Or(cmp.Compare(b.Length, a.Length), cmp.Compare(a.ID, b.ID))
	})
	return out
}

// commonUnit divides every length of the problem.
func commonUnit(p Problem) length.Length {
	unit := length.GCD(common(p.Stock), p.Kerf)
	for _, piece := range p.Pieces {
		unit = length.GCD(unit, piece.Length)
	}
	return unit
}

// common divides every one of the lengths.
func common(lengths []length.Length) length.Length {
	var unit length.Length
	for _, l := range lengths {
		unit = length.GCD(unit, l)
	}
	return unit
}

// fit is the shortest size for a width; there is none when it is len(t.sizes).
func (t *task) fit(width int64) int {
	return sort.Search(len(t.sizes), func(i int) bool { return t.sizes[i].room >= width })
}

// longest is the size with the most room.
func (t *task) longest() size { return t.sizes[len(t.sizes)-1] }

// total is what a demand adds up to when each kind counts for something; nothing does without values.
func total(values []int64, demand []int) int64 {
	var sum int64
	for k, v := range values {
		sum += v * int64(demand[k])
	}
	return sum
}

// coarse is the task with neighbouring kinds joined, each piece as wide as the narrowest of its group. It cuts from no
// more stock than the task itself.
func (t *task) coarse(groups int) *task {
	c := *t
	c.widths, c.demand = nil, nil
	each := (len(t.widths)-1)/groups + 1
	for from := 0; from < len(t.widths); from += each {
		to := min(from+each, len(t.widths))
		pieces := 0
		for _, n := range t.demand[from:to] {
			pieces += n
		}
		c.widths = append(c.widths, t.widths[to-1])
		c.demand = append(c.demand, pieces)
	}
	return &c
}
