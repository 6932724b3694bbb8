package stock

import (
	"math"
	"math/bits"
)

// point is a width that can be filled and the most value it can hold.
type point struct{ width, value int64 }

// front is points rising in both: nothing of less width has as much value.
type front []point

// frontPoints is how fine a front is kept. A longer one is thinned upwards, so that it still promises at least what the
// exact one would.
const frontPoints = 1 << 14

// at is the most value that fits in the room.
func (f front) at(room int64) int64 {
	lo, hi := 0, len(f)
	for lo+1 < hi {
		if mid := int(uint(lo+hi) >> 1); f[mid].width <= room {
			lo = mid
		} else {
			hi = mid
		}
	}
	if len(f) == 0 || f[lo].width > room {
		return hopeless
	}
	return f[lo].value
}

// hopeless is less than any bar is worth, whatever is added.
const hopeless = math.MinInt64 / 2

// line is the value that what a bar holds in some width must exceed to count, if the rest of the bar is filled with the
// kind that is worth most for its width: base + width × value ÷ per.
type line struct{ base, value, per int64 }

func (l line) at(width int64) int64 {
	share, _ := l.share(width)
	return l.base + share
}

// share is width × value ÷ per, if that is no larger than sums can bear.
func (l line) share(width int64) (int64, bool) {
	hi, lo := bits.Mul64(uint64(width), uint64(l.value))
	if hi >= uint64(l.per) {
		return 0, false
	}
	q, _ := bits.Div64(hi, lo, uint64(l.per))
	return int64(q), q < -hopeless
}

// with is the front after one more piece may be added.
func (f front) with(width, value, room int64) front {
	out := make(front, 0, 2*len(f))
	i, j := 0, 0
	for i < len(f) || j < len(f) && f[j].width+width <= room {
		var next point
		added := point{}
		if j < len(f) {
			added = point{f[j].width + width, f[j].value + value}
		}
		if i < len(f) && (j == len(f) || added.width > room || f[i].width <= added.width) {
			next = f[i]
			i++
		} else {
			next = added
			j++
		}
		out = out.add(next)
	}
	return out
}

// add appends a point of at least the last one's width, if it is worth more.
func (f front) add(p point) front {
	last := len(f) - 1
	switch {
	case last < 0:
		return append(f, p)
	case p.value <= f[last].value:
		return f
	case p.width == f[last].width:
		f[last].value = p.value
		return f
	}
	return append(f, p)
}

// keep drops the points that are no part of any bar worth more than it costs.
func (f front) keep(l line) front {
	var out front
	for _, p := range f {
		if p.value > l.at(p.width) {
			out = append(out, p)
		}
	}
	return out
}

// thin joins neighbours: the width of the first, the value of the last. The first point stays exact.
func (f front) thin() front {
	if len(f) <= frontPoints {
		return f
	}
	group := (len(f)-2)/(frontPoints-1) + 1
	out := front{f[0]}
	for i := 1; i < len(f); i += group {
		out = append(out, point{f[i].width, f[min(i+group, len(f))-1].value})
	}
	return out
}
