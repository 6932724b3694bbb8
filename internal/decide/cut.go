package decide

import (
	"sort"

	"railhead/internal/fit"
	"railhead/internal/hazard"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// cut is one stretch of an overhead that a trim would raise to one line.
type cut struct {
	overhead *survey.Overhead
	from, to length.Length
	line     length.Length // above the datum: top line and headroom
	strip    length.Exact  // the most that comes off
	stub     length.Exact  // the least that stays hanging; negative where the line is above the ceiling
}

// reachesCeiling and tooThin are why a cut cannot be built.
func (c cut) reachesCeiling() bool { return c.stub.Sign() <= 0 }
func (c cut) tooThin() bool {
	return !c.reachesCeiling() && c.stub.CmpLength(c.overhead.Make.LeastStub) < 0
}

// buildable reports whether what the cut leaves hanging can be fixed.
func (c cut) buildable() bool { return !c.reachesCeiling() && !c.tooThin() }

// cutsFor are the cuts that the cabinets in the way need. Where none is in the
// way, they are those that would give the cabinets their headroom: a snug
// cabinet calls for no cut, but one may be chosen.
//
// The second answer is whether a piece stays beside them that is long enough to
// hang on its own.
func (m *matter) cutsFor() (out []cut, restStays bool) {
	serve := m.overlaps
	if len(serve) == 0 {
		serve = m.near
	}
	spans := map[*survey.Overhead][]cut{}
	for _, s := range serve {
		spans[s.overhead] = append(spans[s.overhead], m.spanOf(s))
	}
	for _, o := range m.group.Parts {
		cuts := merged(spans[o])
		restStays = restStays || leavesEnough(o, cuts)
		for _, c := range cuts {
			out = append(out, m.measured(c))
		}
	}
	return out, restStays
}

// spanOf is the stretch of the overhead over a cabinet, widened by the side
// clearance and clipped to the overhead.
func (m *matter) spanOf(s overlap) cut {
	need, _ := m.k.System.Headroom(s.cabinet.Kind)
	return cut{
		overhead: s.overhead, line: s.cabinet.Top + need,
		from: max(s.limit.From-m.k.System.SideClearance, s.overhead.From),
		to:   min(s.limit.To+m.k.System.SideClearance, s.overhead.To),
	}
}

// merged joins stretches with less between them than can be left hanging, at
// the higher line.
func merged(spans []cut) []cut {
	sort.SliceStable(spans, func(i, j int) bool { return spans[i].from < spans[j].from })
	var out []cut
	for _, s := range spans {
		last := len(out) - 1
		if last >= 0 && s.from-out[last].to < s.overhead.Make.LeastRun || last >= 0 && s.from <= out[last].to {
			out[last].to = max(out[last].to, s.to)
			out[last].line = max(out[last].line, s.line)
			continue
		}
		out = append(out, s)
	}
	return out
}

func (m *matter) measured(c cut) cut {
	lowest := c.overhead.Underside.Lowest(c.from, c.to).Value
	c.strip = c.line.Exact().Sub(m.height(c.overhead, lowest))
	c.stub = fit.Stub(m.k, c.overhead, c.line, c.from, c.to)
	return c
}

// paint is the painted surface that the cut takes: the underside over its
// length, the strip of the face, and the strip of each free end. When parts of
// components come off, all of the surface removed counts (40 CFR 745.83).
func (c cut) paint() hazard.Area {
	o := c.overhead
	if o.Painted == survey.No {
		return hazard.Area{}
	}
	strip := max(c.strip.Ceil(), 0)
	out := hazard.AreaOf(c.to-c.from, o.Depth+strip)
	if o.Left == survey.EndOpen && c.from == o.From {
		out = out.Add(hazard.AreaOf(o.Depth, strip))
	}
	if o.Right == survey.EndOpen && c.to == o.To {
		out = out.Add(hazard.AreaOf(o.Depth, strip))
	}
	return out
}

// sharePaint gives each group the paint that the room's cuts disturb together:
// its own cuts, and those of every other group with a cabinet in the way.
func sharePaint(all []*matter) {
	var room hazard.Area
	for _, m := range all {
		if m.inTheWay() {
			room = room.Add(m.ownPaint())
		}
	}
	for _, m := range all {
		m.paint = room
		if !m.inTheWay() {
			m.paint = room.Add(m.ownPaint())
		}
	}
}

func (m *matter) ownPaint() hazard.Area {
	var out hazard.Area
	for _, c := range m.cuts {
		out = out.Add(c.paint())
	}
	return out
}

// leavesEnough reports whether a piece of an overhead stays beside its cuts that
// is long enough to hang on its own.
func leavesEnough(o *survey.Overhead, cuts []cut) bool {
	from := o.From
	for _, c := range cuts {
		if c.from > from && c.from-from >= o.Make.LeastRun {
			return true
		}
		from = c.to
	}
	return o.To > from && o.To-from >= o.Make.LeastRun
}
