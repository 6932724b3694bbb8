package level

import (
	"math/big"
	"slices"

	"railhead/internal/length"
)

// Doubt is the uncertainty of a combination of readings.
type Doubt struct {
	// Expanded is U = 2u, rounded up to a whole nanometre.
	Expanded length.Length
	// Largest is the reading with the largest share of u²; −1 where there is none.
	Largest ReadingID
}

// DoubtOf combines terms: equal readings are collected first, then
// u² = Σ c²·a²/3 (a rectangular distribution of half-width a has u = a/√3,
// JCGM 100:2008, 4.3.7; independent readings combine by 5.1.2), and U = 2u
// (coverage factor k = 2, 6.2).
func DoubtOf(terms []Term, readings []Reading) Doubt {
	sum, largest, top := new(big.Rat), ReadingID(-1), new(big.Rat)
	for _, t := range collected(terms) {
		share := new(big.Rat).Mul(t.Weight, new(big.Rat).SetInt64(int64(readings[t.Reading].HalfWidth)))
		share.Mul(share, share)
		sum.Add(sum, share)
		if share.Cmp(top) > 0 {
			largest, top = t.Reading, share
		}
	}
	return Doubt{twiceRootOfThird(sum), largest}
}

// collected adds up the weights of equal readings, in reading order. A height
// rests on a handful of readings, so a list is quicker than a map.
func collected(terms []Term) []Term {
	out := make([]Term, 0, len(terms))
	for _, t := range terms {
		i, found := slices.BinarySearchFunc(out, t.Reading, func(have Term, id ReadingID) int { return int(have.Reading - id) })
		if found {
			out[i].Weight = new(big.Rat).Add(out[i].Weight, t.Weight)
		} else {
			out = slices.Insert(out, i, t)
		}
	}
	return out
}

// twiceRootOfThird is 2·√(s/3) rounded up to a whole number, exactly.
func twiceRootOfThird(s *big.Rat) length.Length {
	square := new(big.Rat).Mul(s, big.NewRat(4, 3))
	whole := new(big.Int).Div(square.Num(), square.Denom())
	root := new(big.Int).Sqrt(whole)
	one := big.NewInt(1)
	for new(big.Rat).SetInt(new(big.Int).Mul(root, root)).Cmp(square) < 0 {
		root.Add(root, one)
	}
	return length.Length(root.Int64())
}
