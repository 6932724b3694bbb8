// Package kitchen is the case to be answered: a room, a cabinet system, a plan,
// the choices made, and the datum of each level group. The computing packages
// all start from it and change nothing in it.
package kitchen

import (
	"railhead/internal/cabinet"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

// Kitchen is one resolved case.
type Kitchen struct {
	Room    *survey.Room
	System  *cabinet.System
	Plan    *cabinet.Plan
	Choices map[string]Choice // by overhead group
	Datums  []survey.Datum    // by level group
	Prices  Prices
}

// Option is a way to treat an overhead.
type Option int

// Options, from the least work to the most.
const (
	Keep Option = iota
	Trim
	OpenPart
	RemoveTaller // down, and a taller row
	RemoveClose  // down, and the gap closed again with a panel
	RemoveOpen   // down, made good and left open
	Move         // a duct box goes elsewhere
)

// String is the option's name on the wire.
func (o Option) String() string {
	return [...]string{"keep", "trim", "open_part", "remove_taller", "remove_close", "remove_open", "move"}[o]
}

// TakesDown reports whether the whole overhead goes.
func (o Option) TakesDown() bool { return o >= RemoveTaller }

// Choice is what was decided about one overhead group.
type Choice struct {
	Option  Option
	Spans   []survey.WallSpan // for OpenPart; empty means over the cabinets in the way
	Pointer string            // the member that says so
}

// DatumOf is the datum of a wall's level group.
func (k *Kitchen) DatumOf(wall int) *survey.Datum { return &k.Datums[k.Room.Walls[wall].Group] }

// Above turns a level of a wall's frame into a height above its datum.
func (k *Kitchen) Above(wall int, v length.Exact) length.Exact {
	return v.Sub(k.DatumOf(wall).Level.Value)
}

// HeightAbove is [Kitchen.Above] with the readings it rests on.
func (k *Kitchen) HeightAbove(wall int, h level.Height) level.Height {
	return h.Sub(k.DatumOf(wall).Level)
}

// LineAbove is a wall's laser line over its datum; false where no laser was used.
func (k *Kitchen) LineAbove(wall int) (length.Exact, bool) {
	line := k.Room.Walls[wall].Line
	if line == nil {
		return length.Exact{}, false
	}
	return k.Above(wall, line.Value), true
}

// OverBench is a height above a wall's datum counted from the bench mark, the
// day the laser line is gone; false where no bench mark was made.
func (k *Kitchen) OverBench(wall int, height length.Length) (length.Exact, bool) {
	bench := k.Room.Bench
	if bench == nil {
		return length.Exact{}, false
	}
	return height.Exact().Sub(k.Above(wall, bench.Level.Value)), true
}

// Overheads are all overheads of the room, wall by wall.
func (k *Kitchen) Overheads() []*survey.Overhead {
	var out []*survey.Overhead
	for w := range k.Room.Walls {
		for o := range k.Room.Walls[w].Overheads {
			out = append(out, &k.Room.Walls[w].Overheads[o])
		}
	}
	return out
}

// Groups are the overhead groups in order of their first overhead; the parts of
// one group are decided together.
func (k *Kitchen) Groups() []OverheadGroup {
	var out []OverheadGroup
	index := map[string]int{}
	for _, o := range k.Overheads() {
		i, ok := index[o.Group]
		if !ok {
			i = len(out)
			index[o.Group] = i
			out = append(out, OverheadGroup{ID: o.Group})
		}
		out[i].Parts = append(out[i].Parts, o)
	}
	return out
}

// OverheadGroup is one thing under the ceiling, in one part or several.
type OverheadGroup struct {
	ID    string
	Parts []*survey.Overhead
}

// Top is where a row of cabinets ends on a wall.
type Top struct {
	Wall   int
	Height length.Length // above the datum
}
