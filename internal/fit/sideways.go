package fit

import (
	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/length"
)

// beside collects what is in a cabinet's way beside it, and what its front
// needs there.
type beside struct {
	k        *kitchen.Kitchen
	c        *cabinet.Placed
	others   []placedAt // what shares some height with it, as its walls see it
	clashes  []clash
	findings []finding.Finding
}

// clash is an overlap with something that does not give way. Its limit is what
// is overlapped, its finding says what would help.
type clash struct {
	limit Limit
	found finding.Finding
}

// sideways holds a cabinet against what stands beside it: neighbours and
// fillers, the wall's ends, openings with their casings, fixtures. Overlaps are
// limits; what is merely covered, and the room that doors, pulls and the last
// cabinet of a row need, are findings.
//
// Boxes overlap when their open interiors meet, so a cabinet that begins where
// its neighbour ends, or at the very end of the wall, is in nobody's way.
func sideways(k *kitchen.Kitchen, c *cabinet.Placed) ([]Limit, []finding.Finding) {
	b := &beside{k: k, c: c}
	for _, p := range c.Native(k.Room) {
		b.others = append(b.others, viewFrom(k.Room, p.Wall).others(k, c)...)
	}
	for _, p := range c.Native(k.Room) {
		b.wallEnds(p)
		b.neighbours(p)
		b.fillers(p)
		b.across(p)
		b.appliances(p)
		b.openings(p)
		b.fixtures(p)
	}
	b.mayFace()
	b.fronts()
	b.gaps()
	limits := make([]Limit, len(b.clashes))
	found := make([]finding.Finding, len(b.clashes))
	for i, c := range b.clashes {
		limits[i], found[i] = c.limit, c.found
	}
	return limits, append(found, b.findings...)
}

// clash notes an overlap; of several with one thing the largest counts.
func (b *beside) clash(by string, axis Axis, p cabinet.Patch, at, overlap length.Length, found finding.Finding) {
	found.Severity, found.Pointer = finding.AsStop, by
	found.Params = append(found.Params, place(at), size("overlap", overlap))
	c := clash{Limit{
		By: by, Axis: axis, Wall: p.Wall, At: at, From: p.From, To: p.To,
		Margin: (-overlap).Exact(), Verdict: Blocked,
	}, found}
	for i := range b.clashes {
		if b.clashes[i].limit.By == by {
			if c.limit.Margin.Less(b.clashes[i].limit.Margin) {
				b.clashes[i] = c
			}
			return
		}
	}
	b.clashes = append(b.clashes, c)
}

// along notes an overlap along the wall between a patch and the stretch
// from..to; the cabinet's width is what it needs.
func (b *beside) along(by string, p cabinet.Patch, from, to length.Length, found finding.Finding) {
	f, t, shared := common(p.From, p.To, from, to)
	if !shared {
		return
	}
	found.Need, found.Have = finding.Up((p.To - p.From).Exact()), finding.Down((p.To - p.From - (t - f)).Exact())
	over := p
	over.From, over.To = f, t
	b.clash(by, Along, over, invades(p, from, to), t-f, found)
}

// invades is the edge of the stretch from..to that lies within a patch: where
// one would see the two run into each other.
func invades(p cabinet.Patch, from, to length.Length) length.Length {
	switch {
	case from > p.From:
		return from
	case to < p.To:
		return to
	default:
		return p.From
	}
}

// wallEnds holds a patch against the ends of its wall.
func (b *beside) wallEnds(p cabinet.Patch) {
	wall := &b.k.Room.Walls[p.Wall]
	beyond := finding.Finding{Code: "fit.wall_end.over", Remedies: remedies(moveCabinet, narrower)}
	by := wall.Pointer + "/length"
	if p.From < 0 {
		b.along(by, p, p.From, min(0, p.To), beyond)
	}
	if p.To > wall.Length {
		b.along(by, p, max(wall.Length, p.From), p.To, beyond)
	}
}

// neighbours holds a patch against the other cabinets and the appliances of its
// wall and of the walls joined to it, where they reach around an inside corner.
func (b *beside) neighbours(p cabinet.Patch) {
	for _, s := range b.others {
		if s.side == fromFacing || !p.Overlaps(s.Patch) {
			continue
		}
		code := "fit.neighbour.overlap"
		if s.appliance != nil {
			code = "fit.appliance.overlap"
		}
		b.along(s.c.Pointer, p, s.From, s.To, finding.Finding{
			Code: code, Params: []finding.Param{finding.Word("other", s.c.ID)}, Remedies: remedies(moveCabinet, narrower),
		})
	}
}

// across holds a patch against the wall opposite and what stands there.
func (b *beside) across(p cabinet.Patch) {
	for _, f := range facing(b.k.Room, p.Wall) {
		if p.Far > f.distance {
			b.out(b.k.Room.Walls[f.wall].Pointer, p, p.Far-f.distance, finding.Finding{Code: "fit.facing.overlap"})
		}
	}
	for _, s := range b.others {
		if s.side == fromFacing && p.Overlaps(s.Patch) {
			b.out(s.c.Pointer, p, p.Far-max(p.Near, s.Near), finding.Finding{Code: "fit.facing.overlap"})
		}
	}
}

// out notes an overlap in depth.
func (b *beside) out(by string, p cabinet.Patch, overlap length.Length, found finding.Finding) {
	depth := p.Far - p.Near
	found.Need, found.Have = finding.Up(depth.Exact()), finding.Down((depth - overlap).Exact())
	found.Remedies = remedies(shallower, moveCabinet)
	b.clash(by, Out, p, p.From, overlap, found)
}
