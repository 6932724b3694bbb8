package resolve

import (
	"railhead/internal/finding"
	"railhead/internal/length"
	"railhead/internal/level"
)

// difference is how far two walls disagree about one level in the corner that they share.
type difference struct {
	height level.Height
	doubt  length.Length
}

// beyond reports whether the readings' doubt does not explain it.
func (d difference) beyond() bool { return abs(d.height.Value).CmpLength(d.doubt) > 0 }

func abs(e length.Exact) length.Exact {
	if e.Sign() < 0 {
		return e.Neg()
	}
	return e
}

// oddCorner compares the floors and the ceilings that two walls have in their corner. Where both are off by the same and
// the walls were read from two laser lines, it is the tie between the lines that is off.
func (b *body) oddCorner(w *wall) {
	if w.Next < 0 {
		return
	}
	next := &b.walls[w.Next]
	floor := b.differs(w.FoundFloor, next.FoundFloor, w.Length)
	ceiling := b.differs(w.ceiling, next.ceiling, w.Length)
	between := b.weighed(ceiling.height.Sub(floor.height))
	if floor.beyond() && ceiling.beyond() && !between.beyond() && w.line != next.line {
		b.disagree(max(w.line, next.line), floor)
		return
	}
	b.cornerDiffers(floor, "survey.corner.floor_differs", next.Pointer+"/floor", w.Pointer+"/floor")
	b.cornerDiffers(ceiling, "survey.corner.ceiling_differs", next.Pointer+"/ceiling", w.Pointer+"/ceiling")
}

func (b *body) differs(left, right level.Profile, corner length.Length) difference {
	return b.weighed(right.HeightAt(0, level.Right).Sub(left.HeightAt(corner, level.Left)))
}

func (b *body) weighed(h level.Height) difference {
	return difference{h, level.DoubtOf(h.Terms, b.room.Readings).Expanded}
}

func (b *body) cornerDiffers(d difference, code, pointer, other string) {
	if d.beyond() {
		b.caution(code, pointer, finding.Word("other", other))
		b.weigh(finding.Up(d.doubt.Exact()), finding.Up(abs(d.height.Value)))
	}
}

func (b *body) disagree(line int, d difference) {
	b.caution("survey.laser.disagrees", item("/survey", "lasers", line)+"/above")
	b.weigh(finding.Up(d.doubt.Exact()), finding.Up(abs(d.height.Value)))
}
