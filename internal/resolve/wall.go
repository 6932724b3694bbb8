package resolve

import (
	"cmp"

	"railhead/api"
	"railhead/internal/level"
	"railhead/internal/survey"
)

// wall is a wall being resolved, and which of its members turned out usable.
type wall struct {
	*survey.Wall
	in        *api.Wall
	line      int // its laser line; unknownLine where it is not usable
	lengthOK  bool
	floorOK   bool
	ceilingOK bool
	sound     bool          // its ceiling is above its floor
	ceiling   level.Profile // as found
	overheads []overhead
}

const unknownLine = -1

// survey reads the room as found.
func (b *body) survey() {
	in := &b.req.Survey
	if len(in.Walls) == 0 {
		b.fault("body.member.missing", "/survey/walls")
	}
	b.room.Built = in.Built
	b.room.CodeSet = oneOf[survey.CodeSet](b, cmp.Or(in.CodeSet, "unspecified"), "/survey/code_set", "unspecified", "none", "us_irc")
	if in.Cleared != nil {
		b.room.Cleared = survey.Cleared{Asbestos: in.Cleared.Asbestos, Lead: in.Cleared.Lead}
	}
	b.readLocalRules()
	b.readFrame()
	b.readShells()
	b.join()
	b.group()
	for i := range b.walls {
		b.readOn(&b.walls[i])
	}
	b.joinOverheads()
	b.readBench()
}

// readShells reads every wall's length, floor and ceiling before anything that stands on them.
func (b *body) readShells() {
	b.room.Walls = make([]survey.Wall, len(b.req.Survey.Walls))
	b.walls = make([]wall, len(b.room.Walls))
	for i := range b.walls {
		in, pointer := &b.req.Survey.Walls[i], item("/survey", "walls", i)
		b.room.Walls[i] = survey.Wall{Index: i, ID: in.ID, Pointer: pointer, Prev: -1, Next: -1}
		b.walls[i] = wall{Wall: &b.room.Walls[i], in: in}
		b.readShell(&b.walls[i])
	}
}

func (b *body) readShell(w *wall) {
	w.Length, w.lengthOK = b.length(w.in.Length, w.Pointer+"/length", positive)
	w.line = b.wallLine(w)
	if w.line != unknownLine && b.frame.known(b.req.Survey.LaserHeight) {
		w.Line = &b.frame.lines[w.line]
	}
	b.readFloor(w)
	w.ceiling, w.ceilingOK = b.profile(w.in.Ceiling, w.Pointer+"/ceiling", w)
	w.Ceiling = w.ceiling
	b.readBacking(w)
	b.possibleShell(w)
}

// wallLine is the laser line that a wall names; the first where it names none.
func (b *body) wallLine(w *wall) int {
	if w.in.Laser == "" {
		return 0
	}
	if i, ok := b.line(w.in.Laser, w.Pointer+"/laser"); ok {
		return i
	}
	return unknownLine
}

func (b *body) readFloor(w *wall) {
	pointer, taped := w.Pointer+"/floor", false
	for i, p := range w.in.Floor {
		if p.AboveFloor.Given() {
			b.fault("survey.floor.above_floor", element(pointer, i)+"/above_floor")
			taped = true
		}
	}
	floor, ok := b.profile(w.in.Floor, pointer, w)
	w.FoundFloor, w.Floor, w.RoomFloor = floor, floor, floor
	w.floorOK = ok && !taped
}

// readOn reads what was measured on a wall.
func (b *body) readOn(w *wall) {
	b.readFacing(w)
	for i := range w.in.Openings {
		b.readOpening(w, i)
	}
	for i := range w.in.Points {
		b.readFixture(w, i)
	}
	w.Overheads = make([]survey.Overhead, len(w.in.Overheads))
	w.overheads = make([]overhead, len(w.in.Overheads))
	for i := range w.in.Overheads {
		b.readOverhead(w, i)
	}
}
