package resolve

import (
	"slices"

	"railhead/api"
	"railhead/internal/cabinet"
)

func (b *body) readCooking() {
	in, pointer := b.req.Plan.Cooking, "/plan/cooking"
	if in == nil {
		return
	}
	c := &cabinet.Cooking{
		Pointer:   pointer,
		Energy:    oneOf[cabinet.Energy](b, in.Energy, pointer+"/energy", "gas", "electric", "induction"),
		Surface:   b.lengthOr(in.Surface, pointer+"/surface", positive, b.plan.Counter),
		Clearance: b.lengthOr(in.Clearance, pointer+"/clearance", positive, 0),
	}
	s, ok := b.span(in.From, in.To, pointer)
	c.From, c.To = s.From, s.To
	w, found := b.onWall(in.Wall, pointer+"/wall")
	c.Wall = w.Index
	if ok && found {
		b.onWallOver(w, s, "plan.cooking.off_wall", pointer)
	}
	c.Hood = b.hood(in.Hood, pointer+"/hood")
	b.plan.Cooking = c
}

func (b *body) hood(in *api.Hood, pointer string) *cabinet.Hood {
	if in == nil {
		return nil
	}
	h := &cabinet.Hood{
		Kind:      oneOf[cabinet.HoodKind](b, in.Kind, pointer+"/kind", "ducted", "recirculating", "downdraft"),
		Underside: b.lengthOr(in.Underside, pointer+"/underside", positive, 0),
		Clearance: b.lengthOr(in.Clearance, pointer+"/clearance", positive, 0),
		Protected: in.Protected,
		Moves:     in.Moves,
	}
	b.amount(in.Airflow, pointer+"/airflow")
	b.related(in, pointer, "")
	if in.DuctBox != "" {
		h.DuctBox = b.ductBox(in.DuctBox, pointer+"/duct_box")
	}
	return h
}

// ductBox checks that the id is a duct box.
func (b *body) ductBox(id, pointer string) string {
	o, ok := b.ids.overheads[id]
	switch {
	case !ok:
		b.astray("duct_box", id, pointer)
	case o.Kind != "duct_box" && slices.Contains(overheadKinds[:], o.Kind):
		b.fault("plan.hood.not_a_duct_box", pointer)
	default:
		return id
	}
	return ""
}
