package resolve

import (
	"railhead/internal/length"
	"railhead/internal/survey"
)

// fixtureSize is the width and the height of a small thing on the wall whose size nobody gave: a little less than a
// socket's plate (common practice, no source).
const fixtureSize = 80 * length.Millimetre

func (b *body) readFixture(w *wall, i int) {
	in, pointer := &w.in.Points[i], item(w.Pointer, "points", i)
	f := survey.Fixture{
		ID: in.ID, Pointer: pointer,
		Kind: oneOf[survey.FixtureKind](b, in.Kind, pointer+"/kind",
			"socket", "switch", "light", "junction", "valve", "gas_valve", "pipe", "vent", "panel", "other"),
		Width:  b.lengthOr(in.Width, pointer+"/width", positive, fixtureSize),
		Height: b.lengthOr(in.Height, pointer+"/height", positive, fixtureSize),
		Out:    b.lengthOr(in.Out, pointer+"/out", notNegative, 0),
	}
	if !in.Width.Given() {
		b.assume("assume.point.width", fixtureSize, pointer+"/width")
	}
	if !in.Height.Given() {
		b.assume("assume.point.height", fixtureSize, pointer+"/height")
	}
	at, ok := b.length(in.At, pointer+"/at", anySign)
	if ok {
		b.onWallAt(w, at, "survey.point.off_wall", pointer+"/at")
	}
	f.At = at
	floor := b.floorOver(w, survey.Span{From: at, To: at}, ok, pointer)
	f.Level, _ = b.level(&in.Level, pointer+"/level", w, floor)
	w.Fixtures = append(w.Fixtures, f)
}
