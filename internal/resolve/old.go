package resolve

import (
	"railhead/internal/cabinet"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// readOld reads a cabinet of the kitchen that goes. Its top, if taped from the floor, was taped in its middle.
func (b *body) readOld(i int) {
	in, pointer := &b.req.Plan.OldCabinets[i], item("/plan", "old_cabinets", i)
	o := cabinet.Old{ID: in.ID, Pointer: pointer}
	o.Kind, _ = b.kind(in.Kind, pointer+"/kind")
	w, onWall := b.onWall(in.Wall, pointer+"/wall")
	from, fromOK := b.length(in.From, pointer+"/from", anySign)
	width, widthOK := b.length(in.Width, pointer+"/width", positive)
	o.From, o.To = from, from+width
	o.Depth = b.lengthOr(in.Depth, pointer+"/depth", positive, b.oldDepth(o.Kind))
	if !in.Depth.Given() {
		b.assume("assume.old."+o.Kind.String()+"_depth", o.Depth, pointer+"/depth")
	}
	o.Wall = w.Index
	s := survey.Span{From: o.From, To: o.To}
	o.Top, _ = b.level(&in.Top, pointer+"/top", w, b.floorOver(w, s, onWall && fromOK && widthOK, pointer))
	b.plan.Old = append(b.plan.Old, o)
}

// oldDepth is the depth of an old cabinet that nobody measured: 600 mm or 24 in standing, 320 mm or 12 in hanging
// (common practice, no source).
func (b *body) oldDepth(k cabinet.Kind) length.Length {
	if k == cabinet.Wall {
		return b.metricOr(320*length.Millimetre, 12*length.Inch)
	}
	return b.metricOr(600*length.Millimetre, 24*length.Inch)
}
