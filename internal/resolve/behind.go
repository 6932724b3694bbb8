package resolve

import (
	"railhead/api"
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
	floor := floorAt(noFloor)
	if o.spanOK {
		floor = b.floorNear(w, o.From, o.To)
	}
	h, ok := b.level(&in.CeilingLevel, pointer+"/ceiling_level", w, floor)
	if !ok {
		return
	}
	o.Behind.CeilingLevel = &h
	if o.spanOK && o.underOK && h.Value.Cmp(o.Underside.Highest(o.From, o.To).Value) <= 0 {
		b.fault("survey.behind.under_underside", pointer+"/ceiling_level")
	}
}
