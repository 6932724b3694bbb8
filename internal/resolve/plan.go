package resolve

import (
	"cmp"

	"railhead/internal/cabinet"
	"railhead/internal/length"
	"railhead/internal/survey"
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
	b.readDatums()
}

// leastCounter is the lowest counter that is taken where nobody says: built-under appliances stand 820 mm high under a
// counter of 40 mm (common practice, no source).
const leastCounter = 860 * length.Millimetre

func (b *body) readCounter() {
	in := &b.req.Plan
	counter, known := b.usualCounter()
	if !in.Counter.Given() && known {
		b.assume("assume.plan.counter", counter, "/plan/counter")
	}
	b.plan.Counter = b.lengthOr(in.Counter, "/plan/counter", positive, counter)
	least := leastCounter
	if b.plan.Counter > 0 {
		least = min(least, b.plan.Counter)
	}
	if !in.LeastCounter.Given() {
		b.assume("assume.plan.least_counter", least, "/plan/least_counter")
	}
	b.plan.LeastCounter = b.lengthOr(in.LeastCounter, "/plan/least_counter", positive, least)
}

// usualCounter is the counter on the system's base cabinets: the planned ones where they are all of one height, else
// those that bring it closest to the ordinary height, 900 mm (metric data sheet of kitchen sizes, looked up) or 36 in
// (common practice, no source). It goes up and down with the row.
func (b *body) usualCounter() (length.Length, bool) {
	if b.system == nil || len(b.system.Base.Heights) == 0 {
		return 0, false
	}
	rest := b.system.Legs + b.system.Counter
	height := nearest(b.system.Base.Heights, b.metricOr(900*length.Millimetre, 36*length.Inch)-rest)
	if planned, one := b.plannedBase(); one {
		height = planned
	}
	return height + rest + b.plan.RowShift, true
}

// plannedBase is the height that all planned base cabinets have.
func (b *body) plannedBase() (height length.Length, one bool) {
	for _, c := range b.req.Plan.Cabinets {
		h, ok := b.quiet(c.Height)
		if c.Kind != "base" || !ok {
			continue
		}
		if one && h != height {
			return 0, false
		}
		height, one = h, true
	}
	return height, one
}

func (b *body) readFiller(i int) {
	in, pointer := &b.req.Plan.Fillers[i], item("/plan", "fillers", i)
	f := cabinet.Filler{Pointer: pointer, AnyKind: in.Kind == ""}
	f.Kind = b.kind(cmp.Or(in.Kind, "wall"), pointer+"/kind")
	if w, ok := b.onWall(in.Wall, pointer+"/wall"); ok {
		f.Wall = w.Index
	}
	f.From = b.must(in.From, pointer+"/from", anySign)
	f.To = f.From + b.must(in.Width, pointer+"/width", positive)
	b.plan.Fillers = append(b.plan.Fillers, f)
}

func (b *body) kind(word, pointer string) cabinet.Kind {
	return oneOf[cabinet.Kind](b, word, pointer, "wall", "tall", "base")
}

// readOld reads a cabinet of the kitchen that goes. Its top, if taped from the floor, was taped in its middle.
func (b *body) readOld(i int) {
	in, pointer := &b.req.Plan.OldCabinets[i], item("/plan", "old_cabinets", i)
	o := cabinet.Old{ID: in.ID, Pointer: pointer, Kind: b.kind(in.Kind, pointer+"/kind")}
	w, onWall := b.onWall(in.Wall, pointer+"/wall")
	from, fromOK := b.length(in.From, pointer+"/from", anySign)
	width, widthOK := b.length(in.Width, pointer+"/width", positive)
	o.From, o.To = from, from+width
	o.Depth = b.lengthOr(in.Depth, pointer+"/depth", positive, b.oldDepth(o.Kind))
	if !in.Depth.Given() {
		b.assume("assume.old."+o.Kind.String()+"_depth", o.Depth, pointer+"/depth")
	}
	if onWall {
		o.Wall = w.Index
		floor := floorAt(noFloor)
		if fromOK && widthOK {
			floor = b.floorNear(w, o.From, o.To)
		}
		o.Top, _ = b.level(&in.Top, pointer+"/top", w, floor)
	}
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

// readDatums reads the datums that the planner set, one a level group.
func (b *body) readDatums() {
	for i := range b.req.Plan.Datums {
		in, pointer := &b.req.Plan.Datums[i], item("/plan", "datums", i)
		at, ok := b.length(in.At, pointer+"/at", anySign)
		w, found := b.onWall(in.Wall, pointer+"/wall")
		if !ok || !found {
			continue
		}
		b.onWallAt(w, at, "plan.datum.off_wall", pointer+"/at")
		h, _ := b.level(&in.Level, pointer+"/level", w, b.floorNear(w, at, at))
		if _, twice := b.given[w.Group]; twice {
			b.fault("plan.datum.twice", pointer+"/wall")
		}
		b.given[w.Group] = survey.Datum{Wall: w.Index, At: at, Level: h, By: survey.ByGiven}
	}
}
