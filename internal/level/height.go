package level

import (
	"math/big"

	"railhead/internal/length"
)

// Reading is one measured number of the survey.
type Reading struct {
	Pointer   string        // the member of the request that holds it
	HalfWidth length.Length // the value lies within ± this, every place equally likely
}

// ReadingID is a reading's index in its survey.
type ReadingID int

// Term is a reading's weight in a height.
type Term struct {
	Reading ReadingID
	Weight  *big.Rat
}

// Height is a level in the survey's frame and the readings that it rests on.
type Height struct {
	Value length.Exact
	Terms []Term
}

// Fixed is a height that rests on no reading.
func Fixed(v length.Exact) Height { return Height{Value: v} }

// Read is the height of one reading of value v.
func Read(id ReadingID, v length.Length) Height {
	return Height{v.Exact(), []Term{{id, big.NewRat(1, 1)}}}
}

// Add is h + o.
func (h Height) Add(o Height) Height {
	return Height{h.Value.Add(o.Value), append(append([]Term{}, h.Terms...), o.Terms...)}
}

// Sub is h − o.
func (h Height) Sub(o Height) Height {
	return Height{h.Value.Sub(o.Value), append(append([]Term{}, h.Terms...), scaled(o.Terms, big.NewRat(-1, 1))...)}
}

// Plus moves the height by a length nobody measured.
func (h Height) Plus(l length.Length) Height { return Height{h.Value.Plus(l), h.Terms} }

func scaled(terms []Term, by *big.Rat) []Term {
	out := make([]Term, len(terms))
	for i, t := range terms {
		out[i] = Term{t.Reading, new(big.Rat).Mul(t.Weight, by)}
	}
	return out
}

// between is the height at x on the line from (x0, a) to (x1, b).
func between(x0 length.Length, a Height, x1 length.Length, b Height, x length.Length) Height {
	right := big.NewRat(int64(x-x0), int64(x1-x0))
	left := new(big.Rat).Sub(big.NewRat(1, 1), right)
	return Height{
		Value: length.Interpolate(x0, a.Value, x1, b.Value, x),
		Terms: append(scaled(a.Terms, left), scaled(b.Terms, right)...),
	}
}
