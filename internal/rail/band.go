package rail

import (
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// band is the strip of wall that a rail's profile covers, above the datum.
type band struct {
	k         *kitchen.Kitchen
	wall      *survey.Wall
	low, high length.Length
}

// meets reports whether the band overlaps from..to in height. A band without a
// height (profile not stated) is met by what its line runs through.
func (b band) meets(from, to length.Exact) bool {
	return from.CmpLength(b.high) < 0 && to.CmpLength(b.low) > 0
}

func (b band) above(v length.Exact) length.Exact { return b.k.Above(b.wall.Index, v) }

// top is the band's upper edge in the survey's frame.
func (b band) top() length.Exact {
	return b.k.DatumOf(b.wall.Index).Level.Value.Plus(b.high)
}

// interrupted are the stretches where no rail can run once the work under the
// ceiling is done: openings with their casing, what stands off the wall, what
// still hangs down there, and a ceiling that comes down that far.
func (b band) interrupted(after kitchen.Sky) []survey.Span {
	out := below(b.wall.Ceiling, survey.Span{To: b.wall.Length}, b.top())
	for i := range b.wall.Openings {
		if o := &b.wall.Openings[i]; b.crossesOpening(o) {
			out = append(out, survey.Span{From: o.From - o.Casing, To: o.To + o.Casing})
		}
	}
	for i := range b.wall.Fixtures {
		if f := &b.wall.Fixtures[i]; f.Out > 0 && b.crossesFixture(f) {
			out = append(out, fixtureSpan(f))
		}
	}
	for _, t := range atWall(b.k.Room, b.wall, after) {
		out = append(out, t.below(b.top())...)
	}
	return survey.Union(out)
}

func (b band) crossesOpening(o *survey.Opening) bool {
	top := b.above(o.Head.Value).Plus(o.Casing)
	if o.ToFloor {
		return top.CmpLength(b.low) > 0
	}
	return b.meets(b.above(o.Sill.Value).Minus(o.Casing), top)
}

func (b band) crossesFixture(f *survey.Fixture) bool {
	at, half := b.above(f.Level.Value), halfUp(f.Height)
	return b.meets(at.Minus(half), at.Plus(half))
}

func fixtureSpan(f *survey.Fixture) survey.Span {
	half := halfUp(f.Width)
	return survey.Span{From: f.At - half, To: f.At + half}
}

// halfUp is half a size, rounded up to a whole nanometre.
func halfUp(l length.Length) length.Length { return l - l/2 }
