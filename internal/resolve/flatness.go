package resolve

import (
	"math/big"

	"railhead/internal/length"
)

// What is ordinary in a building, after DIN 18202, as it was looked up in copies of its tables. It guides; nobody is held
// to it here.

// flatness is a row of table 3: limits for the flatness of a surface between stations so far apart.
type flatness [len(flatnessSpans)]int // whole millimetres

var (
	flatnessSpans   = [...]length.Length{100 * length.Millimetre, length.Metre, 4 * length.Metre, 10 * length.Metre, 15 * length.Metre}
	finishedFloor   = flatness{2, 4, 10, 12, 15} // row 3
	finishedCeiling = flatness{3, 5, 10, 20, 25} // row 6
)

// over is the limit between stations a distance apart: interpolated and brought to whole millimetres, halves up, as the
// standard's figure is read.
func (f flatness) over(distance length.Length) length.Length {
	last := len(flatnessSpans) - 1
	if distance <= flatnessSpans[0] {
		return length.Length(f[0]) * length.Millimetre
	}
	for i := range last {
		if distance <= flatnessSpans[i+1] {
			return between(flatnessSpans[i], f[i], flatnessSpans[i+1], f[i+1], distance)
		}
	}
	return length.Length(f[last]) * length.Millimetre
}

func between(x0 length.Length, y0 int, x1 length.Length, y1 int, x length.Length) length.Length {
	exact := length.Interpolate(x0, (length.Length(y0) * length.Millimetre).Exact(), x1, (length.Length(y1) * length.Millimetre).Exact(), x)
	half := length.FromRat(big.NewRat(int64(length.Millimetre), 2))
	return exact.Add(half).Floor().RoundTo(length.Millimetre, length.Down)
}

// angular is table 2: how far a surface may run off its nominal level over a distance.
func angular(distance length.Length) length.Length {
	for _, row := range [...]struct{ upTo, limit length.Length }{
		{length.Metre / 2, 3}, {length.Metre, 6}, {3 * length.Metre, 8}, {6 * length.Metre, 12},
		{15 * length.Metre, 16}, {30 * length.Metre, 20},
	} {
		if distance <= row.upTo {
			return row.limit * length.Millimetre
		}
	}
	return 30 * length.Millimetre
}
