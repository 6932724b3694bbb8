package resolve

import (
	"railhead/api"
	"railhead/internal/cabinet"
	"railhead/internal/length"
)

// door reads a front. Its thickness and its pull are taken as ordinary where nobody gave them (common practice, no
// source).
func (b *body) door(in *api.Door, pointer string) *cabinet.Door {
	if in == nil {
		return nil
	}
	thickness := b.metricOr(20*length.Millimetre, length.Inch*3/4)
	pull := b.metricOr(40*length.Millimetre, length.Inch*3/2)
	d := &cabinet.Door{
		Opens:     oneOf[cabinet.Opens](b, in.Opens, pointer+"/opens", "none", "left", "right", "pair", "up", "drawer"),
		Rise:      b.lengthOr(in.Rise, pointer+"/rise", notNegative, 0),
		Thickness: b.lengthOr(in.Thickness, pointer+"/thickness", positive, thickness),
		Pull:      b.lengthOr(in.Pull, pointer+"/pull", notNegative, pull),
	}
	if !in.Thickness.Given() {
		b.assume("assume.door.thickness", thickness, pointer+"/thickness")
	}
	if !in.Pull.Given() {
		b.assume("assume.door.pull", pull, pointer+"/pull")
	}
	return d
}
