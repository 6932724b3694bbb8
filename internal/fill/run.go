package fill

import (
	"railhead/internal/length"
	"railhead/internal/money"
)

// Run is a stretch of one wall, [0, Length], in which one row of cabinets may stand. Every width and position is a
// whole number of Grids.
type Run struct {
	Length length.Length
	Grid   length.Length

	Sizes  []Size
	Limits []Limit
	Fixed  []Piece         // cabinets that stay; their Size is not looked at
	Whole  []Span          // stretches over each of which one cabinet stands, new or staying; they may be off the grid
	Lines  []length.Length // of the base cabinets below, which joints should meet; one off the grid is met by none
	Ends   [2]End          // left and right
	Pairs  []Pair

	LeastFiller length.Length // a filler is at least this wide
	LeastOpen   length.Length // a stretch left open beside a new cabinet is at least this wide, but beside an open side
	Panel       length.Length // thickness of the panel on a side that shows
	Closed      bool          // no hole is left in the row

	Weights Weights

	Best     int  // how many answers are wanted; 0 counts as 1
	AnyOrder bool // answers with the same cabinets in another order, or at other gaps, are one
}

// Size is a cabinet that may stand, as often as it fits.
type Size struct {
	Width, Height length.Length
	Worth         money.Amount // of one: its storage less its price, with what it is preferred by
}

// Limit is a stretch over which only so much may stand. Where several overlap, the lowest counts.
type Limit struct {
	From, To length.Length
	Height   length.Length // the greatest height that may stand; 0: nothing may
	Sides    [2]End        // where nothing may stand: what the cabinets to the left and to the right of it meet
}

// End is what a cabinet meets where it can go no further.
type End struct {
	Least length.Length // how far a new cabinet stays away, for its doors and pulls; 0: it may touch
	Open  bool          // nothing is there to meet: what stands there shows its side, and no filler can close against it
}

// Pair is a gap whose two neighbours are equal in width and height and have nothing between them and the gap but the
// panel on a side that shows, or the narrowest filler where they are kept away. The gap is the whole stretch around
// [From, To] where nothing may stand.
type Pair struct {
	From, To length.Length
	Must     bool         // nothing else will do
	Worth    money.Amount // of the neighbours being so
}

// Weights are what the things that nobody wants cost. None is below 0.
type Weights struct {
	Cabinet       money.Amount // each new cabinet
	Filler        money.Amount // each filler
	FillerPerGrid money.Amount // a Grid of filler
	Panel         money.Amount // each panel on a side that shows
	OpenPerGrid   money.Amount // a Grid left open
	HeightChange  money.Amount // two neighbours of different heights, with nothing or a filler between them
	LineMiss      money.Amount // a joint of two cabinets that meets no line, if there are lines
}
