package fit

import (
	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// Where cabinets are to be placed, package space has to know beforehand how this
// package will judge them, and takes what it needs from here.

// Seen is a floor area in the coordinates of a wall: its own, around an inside
// corner, or across the room; false where the two have nothing to do with each
// other.
func Seen(room *survey.Room, wall int, p cabinet.Patch) (cabinet.Patch, bool) {
	s, ok := viewFrom(room, wall).area(p)
	return s.Patch, ok
}

// Opposite is a wall that another one looks at. It is mapped where the stations of
// the two are known to each other.
type Opposite struct {
	Wall     int
	Distance length.Length
	Mapped   bool
}

// Opposites are the walls that a wall looks at.
func Opposites(room *survey.Room, wall int) []Opposite {
	var out []Opposite
	for _, f := range facing(room, wall) {
		out = append(out, Opposite{f.wall, f.distance, f.mapped})
	}
	return out
}

// Tight is what a front needs beside it on account of one thing, and what there is.
type Tight struct {
	By         string // pointer of the thing
	Need, Have length.Length
}

// FrontNeeds are what a cabinet's front needs on one side: at a side wall, beside
// neighbours that stand out further, at the run around an inside corner.
func FrontNeeds(k *kitchen.Kitchen, c *cabinet.Placed, right bool) []Tight {
	f, ok := frontOf(k.Room, c)
	if !ok {
		return nil
	}
	b := &beside{k: k, c: c, others: viewFrom(k.Room, c.Wall).others(k, c)}
	var out []Tight
	for _, t := range append(b.sideWall(f, right), b.sideCabinets(f, right)...) {
		if t.have >= 0 {
			out = append(out, Tight{t.by, t.need, t.have})
		}
	}
	return out
}

// SideWall reports whether a wall that the survey shows stands at a wall's end.
func SideWall(room *survey.Room, wall int, right bool) bool {
	_, surveyed := endsAtWall(room, wall, right)
	return surveyed
}

// StandsUp reports whether a cabinet can be brought upright in its room; what hangs
// need not be.
func StandsUp(k *kitchen.Kitchen, c *cabinet.Placed) bool {
	up, _ := standing(k, c)
	return up == nil || up.Verdict != StandBlocked
}
