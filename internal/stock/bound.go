package stock

import "math/bits"

// scale is how many whole units of value the dearest bar has when the dual values are rounded down. With at most
// MaxPieces pieces, none worth more than MaxPieces bars, sums stay below 2^62.
const scale = 1 << 40

// wholeValue rounds a dual value down to whole units. Any values make a true bound once they are lowered far enough (see
// generate), so nothing depends on how good the float is but how high the bound is.
func wholeValue(dual float64) int64 { return int64(max(0, min(dual, MaxPieces)) * scale) }

// worth is the price of a size in whole units of value, rounded down.
func (t *task) worth(s size) int64 {
	hi, lo := bits.Mul64(uint64(s.price), scale)
	q, _ := bits.Div64(hi, lo, uint64(t.longest().price))
	return int64(q)
}

// inBars is whole units of value in bars' prices, rounded up.
func (t *task) inBars(value int64) int64 {
	hi, lo := bits.Mul64(uint64(value), uint64(t.longest().price))
	lo, carry := bits.Add64(lo, scale-1, 0)
	q, _ := bits.Div64(hi+carry, lo, scale)
	return int64(q)
}

// widthBound is the bound with each piece worth its width: no plan beats bars filled to the brim.
func (t *task) widthBound(demand []int) int64 {
	width := total(t.widths, demand)
	best := int64(none)
	for _, s := range t.sizes {
		hi, lo := bits.Mul64(uint64(width), uint64(s.price))
		lo, carry := bits.Add64(lo, uint64(s.room-1), 0)
		q, _ := bits.Div64(hi+carry, lo, uint64(s.room))
		best = min(best, int64(q))
	}
	return best
}
