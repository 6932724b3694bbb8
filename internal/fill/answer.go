package fill

import (
	"railhead/internal/length"
	"railhead/internal/money"
)

// Stays is the Size of a piece that was there already.
const Stays = -1

// Piece is a cabinet in its place.
type Piece struct {
	At, Width, Height length.Length
	Size              int // in Run.Sizes, or Stays
}

// Span is a stretch of the run.
type Span struct{ From, To length.Length }

// Answer is one way to fill a run, everything from left to right.
type Answer struct {
	Pieces  []Piece // those that stay among them
	Fillers []Span
	Panels  []Span // on sides that show
	Open    []Span // where nothing stands although something might
	Worth   money.Amount
	Parts   []Part // what Worth is made of, without those that are nothing

	Unsought bool // of the last one: there may be more answers, but looking for them would take too long
}

// Part is one part of an answer's worth.
type Part struct {
	Name  string
	Count int // how many, or how many Grids of it
	Worth money.Amount
}

// The names of the parts, in order.
const (
	Sizes         = "sizes"          // the worth of the new cabinets' sizes
	Cabinets      = "cabinets"       // Weights.Cabinet
	Fillers       = "fillers"        // Weights.Filler
	FillerWidth   = "filler_width"   // Weights.FillerPerGrid
	Panels        = "panels"         // Weights.Panel
	OpenWidth     = "open_width"     // Weights.OpenPerGrid
	HeightChanges = "height_changes" // Weights.HeightChange
	LineMisses    = "line_misses"    // Weights.LineMiss
	Pairs         = "pairs"          // Pair.Worth
)
