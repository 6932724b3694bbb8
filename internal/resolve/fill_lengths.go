package resolve

import (
	"strconv"

	"railhead/internal/cabinet"
	"railhead/internal/length"
)

// fillLengths reads how wide fillers, panels and open stretches are; what nobody says is common practice, no source.
func (b *body) fillLengths() {
	const mm, in = length.Millimetre, length.Inch
	f := &b.filling
	f.LeastFiller = b.lengthOr(b.fill.LeastFiller, "/fill/least_filler", notNegative, b.metricOr(20*mm, in*3/4))
	f.WallFiller = b.lengthOr(b.fill.WallFiller, "/fill/wall_filler", notNegative, f.LeastFiller)
	f.CornerFiller = b.lengthOr(b.fill.CornerFiller, "/fill/corner_filler", notNegative, b.metricOr(60*mm, in*9/4))
	f.Panel = b.lengthOr(b.fill.Panel, "/fill/panel", notNegative, 0)
	f.LeastOpen = b.lengthOr(b.fill.LeastOpen, "/fill/least_open", notNegative, b.metricOr(150*mm, 6*in))
	if !b.fill.LeastFiller.Given() {
		b.assume("assume.fill.least_filler", f.LeastFiller, "/fill/least_filler")
	}
	if !b.fill.CornerFiller.Given() && b.cornersIn(f.Walls) {
		b.assume("assume.fill.corner_filler", f.CornerFiller, "/fill/corner_filler")
	}
	if !b.fill.Panel.Given() {
		b.assume("assume.fill.panel_thickness", f.Panel, "/fill/panel")
	}
	switch {
	case f.Closed && b.fill.LeastOpen.Given():
		b.idle("/fill/least_open")
	case !f.Closed && !b.fill.LeastOpen.Given():
		b.assume("assume.fill.least_open", f.LeastOpen, "/fill/least_open")
	}
}

// cornersIn reports whether one of some walls meets another in an inside corner.
func (b *body) cornersIn(walls []int) bool {
	for _, w := range walls {
		if b.walls[w].Next >= 0 || b.walls[w].Prev >= 0 {
			return true
		}
	}
	return false
}

// usualTall is how many tall cabinets a kitchen has at most: for food, and for what is built in at the height of the eyes
// (common practice, no source).
const usualTall = 2

// fillTall reads how many tall cabinets there may be: none where none are asked for.
func (b *body) fillTall() {
	const pointer = "/fill/most_tall"
	switch most := b.fill.MostTall; {
	case !b.filling.Asks(cabinet.Tall):
		if most > 0 {
			b.idle(pointer)
		}
	case most > 0:
		b.filling.MostTall = most
	default:
		b.filling.MostTall = usualTall
		b.suppose("assume.fill.most_tall", strconv.Itoa(usualTall), pointer)
	}
}
