package fit

import (
	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/length"
)

// tight is a place beside a front that is narrower than the front needs.
type tight struct {
	code       string
	by         string
	need, have length.Length
}

// fronts finds where a front has too little room beside it: at a side wall, at
// an inside corner, at a deeper neighbour. One finding a side: the worst.
func (b *beside) fronts() {
	f, ok := frontOf(b.k.Room, b.c)
	if !ok {
		return
	}
	for _, right := range []bool{false, true} {
		if t, found := b.worst(f, right); found {
			b.findings = append(b.findings, t.finding(f, right))
		}
	}
}

func (b *beside) worst(f front, right bool) (tight, bool) {
	var out tight
	found := false
	for _, t := range append(b.sideWall(f, right), b.sideCabinets(f, right)...) {
		if t.have < 0 || t.have >= t.need {
			continue
		}
		if !found || t.need-t.have > out.need-out.have {
			out, found = t, true
		}
	}
	return out, found
}

// sideWall is what a hinged door needs beside a wall that stands at the end of
// the cabinet's own. An end where no wall was surveyed may be open: a note.
func (b *beside) sideWall(f front, right bool) []tight {
	wall := &b.k.Room.Walls[f.patch.Wall]
	reaches, surveyed := endsAtWall(b.k.Room, f.patch.Wall, right)
	if !f.hinges(right) || reaches <= f.face() {
		return nil
	}
	code := "fit.filler.at_wall"
	if !surveyed {
		code = "fit.filler.at_wall_end"
	}
	end := wall.Length
	if !right {
		end = 0
	}
	return []tight{{code, wall.Pointer + "/length", f.aside(reaches), gapTo(f.patch, right, end, end)}}
}

// sideCabinets is what a front needs beside the neighbours that stand out
// further than it does, and beside the run around an inside corner.
func (b *beside) sideCabinets(f front, right bool) []tight {
	var out []tight
	for _, s := range b.others {
		if s.Wall != f.patch.Wall || s.Far <= f.face() {
			continue
		}
		gap := gapTo(f.patch, right, s.From, s.To)
		switch s.side {
		case fromOwnWall:
			if f.hinges(right) {
				out = append(out, tight{"fit.filler.at_neighbour", s.c.Pointer, f.aside(s.Far), gap})
			}
		case cornerAt(right):
			if s.Near < f.patch.Far+f.leaf {
				out = append(out, tight{"fit.filler.at_corner", s.c.Pointer, f.cornerNeed(right, s.c), gap})
			}
		}
	}
	return out
}

func cornerAt(right bool) from {
	if right {
		return fromRightCorner
	}
	return fromLeftCorner
}

// cornerNeed is the room between a cabinet's side and the carcasses of the run
// around the corner. A drawer, or a door hinged away from the corner, must clear
// the other run's closed fronts and the pulls on them: door thickness + pull. A
// leaf hinged at the corner opens into that room itself: its thickness, the
// other front's thickness, and the larger of the two pulls, which are seldom at
// one height and place (common practice, no source).
func (f front) cornerNeed(right bool, o *cabinet.Placed) length.Length {
	thickness, pull := f.closed(o)
	if !f.hinges(right) {
		return thickness + pull
	}
	return f.thickness + thickness + max(f.pull, pull)
}

func (t tight) finding(f front, right bool) finding.Finding {
	severity := finding.AsCaution
	if t.code == "fit.filler.at_wall_end" {
		severity = finding.AsNote
	}
	help := remedies(addFiller, moveCabinet)
	if d := f.c.Door.Opens; d == cabinet.OpensLeft || d == cabinet.OpensRight {
		help = remedies(addFiller, otherHinge, moveCabinet)
	}
	return finding.Finding{
		Code: t.code, Severity: severity, Pointer: t.by,
		Params: []finding.Param{finding.Word("side", sideWord(right))},
		Need:   finding.Up(t.need.Exact()), Have: finding.Down(t.have.Exact()),
		Remedies: help,
	}
}

func sideWord(right bool) string {
	if right {
		return "right"
	}
	return "left"
}
