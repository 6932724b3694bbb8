package stock

import "railhead/internal/length"

// Piece is one length to be cut. ID is the caller's and is carried through.
type Piece struct {
	ID     int
	Length length.Length
}

// Problem is what is to be cut, and from what.
type Problem struct {
	Stock  []length.Length // lengths that can be bought, as many of each as needed
	Kerf   length.Length   // what one saw cut turns to dust; 0 for a shear
	Pieces []Piece
}

// Bar is one length bought and what is cut from it.
type Bar struct {
	Stock  length.Length
	Cuts   []Piece       // longest first
	Offcut length.Length // what is left after the last saw cut; 0 when the saw takes all that was left
}

// Plan is the way to cut. Bought = Used + Kerf + Waste.
type Plan struct {
	Bars   []Bar         // longest stock first, then the longest cuts first
	Bought length.Length // stock
	Used   length.Length // pieces
	Kerf   length.Length // dust
	Waste  length.Length // offcuts
	Bound  length.Length // no plan buys less; Bought when Proven
	Proven bool          // no plan buys less than this one
}

// Cut plans the cutting. The error is of type [Errors] and holds everything that is wrong with the problem.
func Cut(p Problem) (Plan, error) {
	if wrong := check(p); len(wrong) > 0 {
		return Plan{}, wrong
	}
	if len(p.Pieces) == 0 {
		return Plan{Proven: true}, nil
	}
	t := reduce(p)
	return t.plan(p, solve(t, usual())), nil
}
