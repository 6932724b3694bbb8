package resolve

import (
	"cmp"

	"railhead/internal/cabinet"
)

// readPlan reads what is to be built. The changes before fitting come first: they move the floor and the ceiling.
func (b *body) readPlan() {
	in := &b.req.Plan
	b.readChanges()
	b.plan.RowShift = b.lengthOr(in.RowShift, "/plan/row_shift", anySign, 0)
	b.readCounter()
	for i := range in.Cabinets {
		b.readCabinet(i)
	}
	for i := range in.Fillers {
		b.readFiller(i)
	}
	for i := range in.OldCabinets {
		b.readOld(i)
	}
	b.readCooking()
	for i := range in.Appliances {
		b.readAppliance(i)
	}
	b.readDatums()
}

func (b *body) readFiller(i int) {
	in, pointer := &b.req.Plan.Fillers[i], item("/plan", "fillers", i)
	f := cabinet.Filler{Pointer: pointer, AnyKind: in.Kind == ""}
	f.Kind, _ = b.kind(cmp.Or(in.Kind, "wall"), pointer+"/kind")
	w, _ := b.onWall(in.Wall, pointer+"/wall")
	f.Wall = w.Index
	f.From = b.must(in.From, pointer+"/from", anySign)
	f.To = f.From + b.must(in.Width, pointer+"/width", positive)
	b.plan.Fillers = append(b.plan.Fillers, f)
}

func (b *body) kind(word, pointer string) (cabinet.Kind, bool) {
	return among[cabinet.Kind](b, word, pointer, "wall", "tall", "base")
}
