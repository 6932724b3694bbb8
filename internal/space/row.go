package space

import (
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/fit"
	"railhead/internal/kitchen"
	"railhead/internal/length"
)

// Ask is a row of cabinets to be placed along a wall.
type Ask struct {
	Wall  int
	Kind  cabinet.Kind
	Depth length.Length
	// Spare stays open above a cabinet: the system's fit gap for one that fits, 0
	// for one that is snug.
	Spare length.Length
	Door  *cabinet.Door // the front that its cabinets have; nil where nobody says
}

// Usual asks for a row of a system's shallowest cabinets that fit; false where the
// system makes none of the kind.
func Usual(k *kitchen.Kitchen, wall int, kind cabinet.Kind) (Ask, bool) {
	depths := k.System.Sizes(kind).Depths
	if len(depths) == 0 {
		return Ask{}, false
	}
	return Ask{Wall: wall, Kind: kind, Depth: slices.Min(depths), Spare: k.System.FitGap}, true
}

// Row is the space that there is for a row along its wall. Stations are the
// wall's, heights above its datum.
type Row struct {
	Ask
	Length length.Length // of the wall
	Low    length.Length // where the row's cabinets begin
	Boxes  []Box         // what is in the way beside cabinets
	Limits []Limit       // what is above them
	Lines  []length.Length
	Gaps   []Gap
	Whole  []Whole

	k *kitchen.Kitchen
}

// Of is the space for a row under a sky. Every cabinet of the plan stays where it is.
func Of(k *kitchen.Kitchen, sky kitchen.Sky, ask Ask) *Row {
	r := &Row{Ask: ask, Length: k.Room.Walls[ask.Wall].Length, Low: rowLow(k, ask.Kind), k: k}
	r.limits(sky)
	r.wallEnds()
	r.openings()
	r.fixtures()
	r.cabinets()
	r.facing()
	r.fillers()
	r.appliances()
	r.cooking()
	r.lines()
	r.gaps(sky)
	r.whole()
	return r
}

func rowLow(k *kitchen.Kitchen, kind cabinet.Kind) length.Length {
	if kind == cabinet.Wall {
		return k.System.WallUnderside + k.Plan.RowShift
	}
	return k.System.Legs + k.Plan.RowShift
}

// Levels are where a cabinet begins and ends.
type Levels struct{ Low, Top length.Length }

// Levels are those of a cabinet of a height in its row.
func (r *Row) Levels(height length.Length) Levels { return Levels{r.Low, r.Low + height} }

// feet is where a cabinet begins to be in the way: what stands reaches down to the
// floor.
func (r *Row) feet(at Levels) length.Length {
	if r.Kind != cabinet.Wall {
		return fit.Underfoot
	}
	return at.Low
}
