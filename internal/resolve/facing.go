package resolve

import (
	"railhead/internal/survey"
)

func (b *body) readFacing(w *wall) {
	in, pointer := w.in.Facing, w.Pointer+"/facing"
	if in == nil {
		return
	}
	other, ok := b.onWall(in.Wall, pointer+"/wall")
	distance, read := b.length(in.Distance, pointer+"/distance", positive)
	switch {
	case ok && other.Index == w.Index:
		b.fault("survey.facing.itself", pointer+"/wall")
	case ok && read:
		w.Facing = &survey.Facing{Wall: other.Index, Distance: distance}
	}
}
