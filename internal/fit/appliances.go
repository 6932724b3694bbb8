package fit

import (
	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/length"
)

// standIn is an appliance as the fixed cabinet that takes up its place. Its
// index is before any cabinet's: what is between the two is the cabinet's to
// see to, and a gap that an appliance wants is nobody's.
func standIn(a *cabinet.Appliance, i int) *cabinet.Placed {
	kind := cabinet.Base
	if a.Hangs {
		kind = cabinet.Wall
	}
	return &cabinet.Placed{
		ID: a.ID, Pointer: a.Pointer, Index: -1 - i, Kind: kind, Wall: a.Wall, From: a.From, To: a.To,
		Depth: a.Depth, Underside: a.Underside, Top: a.Top,
	}
}

// appliances appends the appliances that are in a cabinet's way where they share
// floor with it, as the wall sees them.
func (v view) appliances(out []placedAt, k *kitchen.Kitchen, c *cabinet.Placed) []placedAt {
	for i := range k.Plan.Appliances {
		a := &k.Plan.Appliances[i]
		s, ok := v.area(a.Patch())
		if in := standIn(a, i); ok && a.InWayOf(c.Kind) && levelled(k, c, in) {
			out = append(out, placedAt{in, s, a})
		}
	}
	return out
}

// appliances minds what the plan's appliances want left free around them, and
// that a sink hangs in one base cabinet.
func (b *beside) appliances(p cabinet.Patch) {
	here := viewFrom(b.k.Room, p.Wall)
	for i := range b.k.Plan.Appliances {
		a := &b.k.Plan.Appliances[i]
		s, ok := here.area(a.Patch())
		switch {
		case !ok:
		case !a.InWayOf(b.c.Kind):
			b.under(p, s, a)
		case !levelled(b.k, b.c, standIn(a, i)):
			b.above(p, s, a)
		case !p.Overlaps(s.Patch):
			b.aside(here, p, s, a, false)
			b.aside(here, p, s, a, true)
		}
	}
}

// aside minds the clearance on one side of an appliance.
func (b *beside) aside(here view, p cabinet.Patch, s seen, a *cabinet.Appliance, right bool) {
	free, ok := here.area(a.Beside(right))
	if !ok || !p.Overlaps(free.Patch) {
		return
	}
	need := a.Left
	if right {
		need = a.Right
	}
	along, out := max(s.From-p.To, p.From-s.To), max(s.Near-p.Far, p.Near-s.Far)
	b.clearance("fit.appliance.beside", a, need, max(along, out), finding.Word("side", sideWord(right)))
}

// above minds the clearance above an appliance, under what hangs over it.
func (b *beside) above(p cabinet.Patch, s seen, a *cabinet.Appliance) {
	have := lowest(b.c) - a.Top
	if have >= 0 && have < a.Above.Need && p.Overlaps(s.Patch) {
		b.clearance("fit.appliance.above", a, a.Above, have)
	}
}

// clearance tells of too little. Instructions bind; what the trade usually
// leaves is a guide.
func (b *beside) clearance(code string, a *cabinet.Appliance, need cabinet.Clearance, have length.Length, params ...finding.Param) {
	severity := finding.AsCaution
	if need.Stated {
		severity = finding.AsStop
	}
	b.findings = append(b.findings, finding.Finding{
		Code: code, Severity: severity, Pointer: a.Pointer,
		Params: append([]finding.Param{finding.Word("appliance", a.ID)}, params...),
		Need:   finding.Up(need.Need.Exact()), Have: finding.Down(have.Exact()),
		Remedies: remedies(moveCabinet, narrower),
	})
}

// under minds a base cabinet that ends under a sink: the bowl hangs in one.
func (b *beside) under(p cabinet.Patch, s seen, a *cabinet.Appliance) {
	if s.side != fromOwnWall || !p.Overlaps(s.Patch) || p.From <= s.From && s.To <= p.To {
		return
	}
	b.findings = append(b.findings, finding.Finding{
		Code: "fit.appliance.joint", Severity: finding.AsCaution, Pointer: a.Pointer,
		Params: []finding.Param{finding.Word("appliance", a.ID)}, Remedies: remedies(moveCabinet),
	})
}
