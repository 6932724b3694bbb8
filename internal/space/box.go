package space

import (
	"railhead/internal/fit"
	"railhead/internal/length"
)

// What is what stands at the end of a free stretch.
type What int

// Things that stretches end at.
const (
	WallEnd What = iota
	Corner       // a run around an inside corner
	Opening
	Fixture
	Cabinet
	Filler
	Appliance
	Cooking
	Opposite // a wall across the room, or what stands there
	Overhead
	Ceiling
)

// Box is something in the way beside cabinets, over some height.
type Box struct {
	Meet
	By        string // pointer of the thing
	What      What
	Low, High length.Exact // above the datum
	// Soft boxes are what something wants left free around it: package fit tells of
	// too little, and calls nothing blocked.
	Soft bool
}

// meets reports whether the box is in the way of a cabinet at some heights.
func (b *Box) meets(feet, top length.Length) bool {
	return b.High.CmpLength(feet) > 0 && b.Low.CmpLength(top) < 0
}

// every height, for what is in the way of a row whatever its height.
func (r *Row) wholeHeight(m Meet, by string, what What) {
	r.Boxes = append(r.Boxes, Box{Meet: m, By: by, What: what, Low: fit.Underfoot.Exact(), High: length.Max.Exact()})
}

// wallEnds keeps the row on its wall.
func (r *Row) wallEnds() {
	by := r.k.Room.Walls[r.Wall].Pointer + "/length"
	r.wholeHeight(reachingLeft(-1), by, WallEnd)
	r.wholeHeight(reachingRight(r.Length+1), by, WallEnd)
}
