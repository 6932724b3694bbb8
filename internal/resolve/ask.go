package resolve

import "railhead/internal/survey"

// askSurvey asks for what nobody knows about the overheads.
func (b *body) askSurvey() {
	for w := range b.room.Walls {
		for i := range b.room.Walls[w].Overheads {
			b.askOverhead(&b.room.Walls[w].Overheads[i])
		}
	}
}

func (b *body) askOverhead(o *survey.Overhead) {
	if o.Kind == survey.ClosedGap && o.Carrier == survey.CarrierUnknown {
		b.ask("ask.overhead.carrier", o.Pointer+"/carried_by")
	}
	if o.MayCut == survey.CutAsk && !o.GoesWithOldCabinets() {
		if o.Structure == survey.StructureUnknown {
			b.ask("ask.overhead.structure", o.Pointer+"/structure")
		} else {
			b.ask("ask.overhead.may_cut", o.Pointer+"/may_cut")
		}
	}
	if o.Behind.Ceiling == survey.Unknown || o.Behind.Wall == survey.Unknown {
		b.ask("ask.overhead.behind", o.Pointer+"/behind")
	}
	if o.Inside.Looked == survey.NotLooked {
		b.ask("ask.overhead.contents", o.Pointer+"/inside")
	}
}
