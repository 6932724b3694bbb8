package resolve

import (
	"railhead/api"
	"railhead/internal/finding"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// Bounds beyond which a number is more likely a slip than a kitchen (common practice, no source).
const (
	wideTolerance = 10 * length.Millimetre
	lowCeiling    = 2 * length.Metre
	highCeiling   = 5 * length.Metre
)

// oddities mentions what is possible but unusual.
func (b *body) oddities() {
	b.oddTolerances()
	b.notLevelled()
	for i := range b.walls {
		w := &b.walls[i]
		b.oddCeiling(w)
		b.steep(w)
		b.sparse(w)
		b.oddCorner(w)
		for j := range w.Overheads {
			b.oddOverhead(w, j)
		}
	}
	b.oddOld()
	b.oddAppliances()
	b.oddClosed()
}

func (b *body) oddTolerances() {
	if b.frame.tolerance > wideTolerance {
		b.note("survey.tolerance.wide", "/survey/tolerance", size("tolerance", b.frame.tolerance))
	}
	for _, r := range b.room.Readings {
		if r.HalfWidth > wideTolerance && r.HalfWidth != b.frame.tolerance {
			b.note("survey.tolerance.wide", r.Pointer, size("tolerance", r.HalfWidth))
		}
	}
}

// notLevelled says so where a level group was taped from one floor that was taken for level: nothing was read from a
// laser line, and every floor level is the survey's zero.
func (b *body) notLevelled() {
	for g := range b.room.Groups {
		group := &b.room.Groups[g]
		group.NotLevelled = true
		for _, i := range group.Walls {
			group.NotLevelled = group.NotLevelled && b.walls[i].flatZero() && !b.walls[i].usesLaser()
		}
		if group.NotLevelled {
			pointer := b.walls[group.Walls[0]].Pointer + "/floor"
			b.caution("survey.floor.not_levelled", pointer)
			b.ask("ask.survey.level_floor", pointer)
		}
	}
}

func (w *wall) flatZero() bool {
	for _, p := range w.FoundFloor.Points() {
		if p.Height.Value.Sign() != 0 {
			return false
		}
	}
	return true
}

func (w *wall) usesLaser() (uses bool) {
	eachOnWall(w.in, func(r *api.Reading) { uses = uses || r.Up.Given() || r.Down.Given() })
	return uses
}

// oddCeiling mentions a room that is very low or very high somewhere along a wall.
func (b *body) oddCeiling(w *wall) {
	whole, pointer := survey.Span{From: 0, To: w.Length}, w.Pointer+"/ceiling"
	if low := closest(w.ceiling, w.FoundFloor, whole); low.Value.CmpLength(lowCeiling) < 0 {
		b.note("survey.ceiling.low", pointer, size("at", low.At), size("usual", lowCeiling))
		b.weigh(nil, finding.Down(low.Value))
	}
	if high := closest(w.FoundFloor, w.ceiling, whole); high.Value.CmpLength(-highCeiling) < 0 {
		b.note("survey.ceiling.high", pointer, size("at", high.At), size("usual", highCeiling))
		b.weigh(nil, finding.Down(high.Value.Neg()))
	}
}

// oddOld mentions an old cabinet that reaches off its wall.
func (b *body) oddOld() {
	for i := range b.plan.Old {
		o := &b.plan.Old[i]
		if o.From < 0 || o.To > b.walls[o.Wall].Length {
			b.caution("plan.old.off_wall", o.Pointer, size("length", b.walls[o.Wall].Length))
		}
	}
}
