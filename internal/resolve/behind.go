package resolve

import (
	"railhead/api"
	"railhead/internal/finding"
	"railhead/internal/survey"
)

// readBehind reads what is known of the surfaces that an overhead hides.
func (b *body) readBehind(o *overhead, w *wall) {
	in, pointer := o.in.Behind, o.Pointer+"/behind"
	if in == nil {
		in = &api.Behind{}
	}
	o.Behind.Ceiling = b.tri(in.Ceiling, pointer+"/ceiling", "continues", "missing")
	o.Behind.Wall = b.tri(in.Wall, pointer+"/wall", "finished", "unfinished")
	if !in.CeilingLevel.Given() {
		return
	}
	floor := b.floorOver(w, survey.Span{From: o.From, To: o.To}, o.spanOK, pointer)
	h, ok := b.level(&in.CeilingLevel, pointer+"/ceiling_level", w, floor)
	if !ok {
		return
	}
	o.Behind.CeilingLevel = &h
	if !o.spanOK || !o.underOK {
		return
	}
	if gap := h.Value.Sub(o.Underside.Highest(o.From, o.To).Value); gap.Sign() <= 0 {
		b.fault("survey.behind.under_underside", pointer+"/ceiling_level", finding.Size("gap", finding.Down(gap)))
	}
}
