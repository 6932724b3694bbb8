package resolve

import (
	"cmp"
	"slices"

	"railhead/api"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// readInside reads what is known of an overhead's contents.
func (b *body) readInside(o *overhead, w *wall) {
	in, pointer := o.in.Inside, o.Pointer+"/inside"
	o.Inside.Pointer = pointer
	if in == nil {
		return
	}
	o.Inside.Looked = oneOf[survey.Looked](b, cmp.Or(in.Looked, "no"), pointer+"/looked", "no", "probe_hole", "opened")
	for _, hint := range in.Hints {
		if !slices.Contains(o.Inside.Hints, hint) {
			o.Inside.Hints = append(o.Inside.Hints, hint)
		}
	}
	for i := range in.Seen {
		b.readSeen(o, &in.Seen[i], item(pointer, "seen", i))
	}
	for i := range in.Services {
		b.readService(o, w, &in.Services[i], item(pointer, "services", i))
	}
	o.Inside.Priors = b.priors(in.Priors, pointer+"/priors")
	b.readNear(o, in, pointer)
}

// readNear reads what its contents have to do with: the overhead that they run on into, and the nearest bath.
func (b *body) readNear(o *overhead, in *api.Inside, pointer string) {
	if in.SharesWith != "" {
		o.Inside.SharesWith = b.sharesWith(o, in.SharesWith, pointer+"/shares_with")
	}
	if away, ok := b.optional(in.BathAway, pointer+"/bath_away", notNegative); ok {
		o.Inside.BathAway = &away
	}
}

func (b *body) sharesWith(o *overhead, id, pointer string) string {
	switch _, ok := refer(b, b.ids.overheads, "overhead", id, pointer); {
	case !ok:
		return ""
	case id == o.ID:
		b.fault("survey.inside.shares_with_itself", pointer)
		return ""
	}
	return id
}

func (b *body) readSeen(o *overhead, in *api.SeenSpan, pointer string) {
	if s, ok := b.span(in.From, in.To, pointer); ok {
		b.withinOverhead(s, o, "survey.seen.off_overhead", pointer)
		o.Inside.Seen = append(o.Inside.Seen, s)
	}
}

func (b *body) withinOverhead(s survey.Span, o *overhead, code, pointer string) {
	if o.spanOK {
		b.within(s, o.From, o.To, code, pointer)
	}
}

// readService reads one thing that runs inside. Its level, if taped from the floor, was taped in its middle.
func (b *body) readService(o *overhead, w *wall, in *api.Service, pointer string) {
	s := survey.Service{
		Pointer:   pointer,
		Kind:      oneOf[survey.ServiceKind](b, in.Kind, pointer+"/kind", "wire", "cable", "pipe", "gas", "sprinkler", "duct", "structure"),
		Clearance: b.lengthOr(in.Clearance, pointer+"/clearance", notNegative, length.Length(0)),
		Movable:   oneOf[survey.Movable](b, cmp.Or(in.Movable, "unknown"), pointer+"/movable", "unknown", "easily", "with_work", "no"),
		Live:      in.Live == nil || *in.Live,
	}
	at, ok := b.span(in.From, in.To, pointer)
	if ok {
		b.withinOverhead(at, o, "survey.service.off_overhead", pointer)
	}
	s.From, s.To = at.From, at.To
	s.Underside, _ = b.level(&in.Underside, pointer+"/underside", w, b.floorOver(w, at, ok, pointer))
	o.Inside.Services = append(o.Inside.Services, s)
}

// readDuct reads what is known of the duct in a duct box.
func (b *body) readDuct(o *overhead) {
	in, pointer := o.in.Duct, o.Pointer+"/duct"
	if in == nil {
		return
	}
	if o.kindOK && o.Kind != survey.DuctBox {
		b.fault("survey.overhead.not_a_duct_box", pointer)
	}
	o.Duct = &survey.Duct{
		Diameter: b.lengthOr(in.Diameter, pointer+"/diameter", positive, 0),
		Exits:    cmp.Or(in.Exits, "unknown"),
	}
	b.lengthOr(in.Length, pointer+"/length", positive, 0)
	for i, bend := range in.Bends {
		b.amount(bend, item(pointer, "bends", i))
	}
}
