package resolve

import (
	"cmp"

	"railhead/api"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

// overhead is an overhead being resolved, and which of its members turned out usable.
type overhead struct {
	*survey.Overhead
	in        *api.Overhead
	kindOK    bool
	carrierOK bool
	spanOK    bool // it ends to the right of where it starts, on the wall or off it
	underOK   bool

	// As found, over what of it is on the wall.
	on                      survey.Span
	underCeiling, overFloor bool
}

// goes reports whether it goes with the old cabinets, or may.
func (o *overhead) goes() bool {
	return o.GoesWithOldCabinets() || !o.carrierOK || !o.kindOK && o.Carrier == survey.CarriedByOldCabinets
}

func (b *body) readOverhead(w *wall, i int) {
	w.overheads[i] = overhead{Overhead: &w.Overheads[i], in: &w.in.Overheads[i]}
	o := &w.overheads[i]
	b.readIdentity(o, w, i)
	b.readPlace(o, w)
	b.readUnderside(o, w)
	b.readMayCut(o)
	b.readMake(o)
	b.readEnds(o)
	b.readBehind(o, w)
	b.readInside(o, w)
	b.readDuct(o)
}

func (b *body) readIdentity(o *overhead, w *wall, i int) {
	in, pointer := o.in, item(w.Pointer, "overheads", i)
	*o.Overhead = survey.Overhead{
		ID: in.ID, Pointer: pointer, Wall: w.Index, Index: i, Group: groupOf(in),
		Structure: oneOf[survey.Structure](b, cmp.Or(in.Structure, "unknown"), pointer+"/structure", "unknown", "framed", "solid", "bearing"),
		Finish:    cmp.Or(in.Finish, "unknown"),
		Painted:   b.tri(in.Painted, pointer+"/painted", "yes", "no"),
		Textured:  b.tri(in.Textured, pointer+"/textured", "yes", "no"),
	}
	o.Kind, o.kindOK = among[survey.OverheadKind](b, in.Kind, pointer+"/kind", overheadKinds[:]...)
	o.Carrier, o.carrierOK = among[survey.Carrier](b, cmp.Or(in.CarriedBy, "unknown"), pointer+"/carried_by", "unknown", "old_cabinets", "ceiling", "both")
	if in.CarriedBy != "" && o.kindOK && o.Kind != survey.ClosedGap {
		b.fault("survey.overhead.not_a_closed_gap", pointer+"/carried_by")
	}
}

var overheadKinds = [...]string{"soffit", "closed_gap", "lowered_ceiling", "beam", "duct_box"}

// tri reads yes, no or unknown by the words that a member has for them.
func (b *body) tri(word, pointer, yes, no string) survey.Tri {
	return oneOf[survey.Tri](b, cmp.Or(word, "unknown"), pointer, "unknown", yes, no)
}

func (b *body) readPlace(o *overhead, w *wall) {
	s, ok := b.span(o.in.From, o.in.To, o.Pointer)
	if ok {
		b.onWallOver(w, s, "survey.overhead.off_wall", o.Pointer)
	}
	o.From, o.To, o.spanOK = s.From, s.To, ok
	o.Out = b.lengthOr(o.in.Out, o.Pointer+"/out", notNegative, 0)
	o.Depth, _ = b.length(o.in.Depth, o.Pointer+"/depth", positive)
}

// readUnderside reads the underside's profile, or hangs it a closed gap's thickness under the ceiling.
func (b *body) readUnderside(o *overhead, w *wall) {
	pointer, thick, read := o.Pointer+"/underside", o.in.Thickness.Given(), len(o.in.Underside) > 0
	switch {
	case thick && o.kindOK && o.Kind != survey.ClosedGap:
		b.fault("survey.overhead.not_a_closed_gap", o.Pointer+"/thickness")
	case thick && read:
		b.fault("survey.overhead.two_undersides", o.Pointer+"/thickness")
	case !thick && !read:
		b.fault("body.member.missing", pointer)
	}
	if read {
		o.Underside, o.underOK = b.profile(o.in.Underside, pointer, w)
	}
	if thick {
		thickness, ok := b.length(o.in.Thickness, o.Pointer+"/thickness", positive)
		if !read && ok {
			pointer = o.Pointer + "/thickness"
			b.hang(o, w, thickness)
		}
	}
	if o.Underside.Empty() {
		o.Underside = level.Level(level.Height{})
	}
	if o.spanOK && o.underOK {
		b.possibleOverhead(o, w, pointer)
	}
}

func (b *body) hang(o *overhead, w *wall, thickness length.Length) {
	if w.ceilingOK {
		o.Underside, o.underOK = w.Ceiling.Under(b.read(o.Pointer+"/thickness", b.frame.tolerance, thickness)), true
	}
}

// possibleOverhead refuses an underside at or above the ceiling, or at or under the floor, as far as there is a wall.
func (b *body) possibleOverhead(o *overhead, w *wall, pointer string) {
	o.on = survey.Span{From: max(o.From, 0), To: o.To}
	if w.lengthOK {
		o.on.To = min(o.on.To, w.Length)
	}
	if o.on.From > o.on.To {
		return
	}
	o.underCeiling = w.ceilingOK && b.above(w.Ceiling, o.Underside, o.on, "survey.overhead.above_ceiling", pointer)
	o.overFloor = w.floorOK && b.above(o.Underside, w.FoundFloor, o.on, "survey.overhead.under_floor", pointer)
}
