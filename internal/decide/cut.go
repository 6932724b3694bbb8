package decide

import (
	"railhead/internal/fit"
	"railhead/internal/hazard"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
	"railhead/internal/trim"
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

// layOut plans the cuts that trimming every group, and opening a part of every
// group, would take. Where cabinets are in a group's way they are those that
// the cabinets need. Where none is, they are those that would give the cabinets
// their headroom: a snug cabinet calls for no cut, but one may be chosen.
func layOut(k *kitchen.Kitchen, found []fit.Result, all []*matter) {
	trims := byGroup(trim.Measured(k, found, asked(all, kitchen.Trim)))
	opened := byGroup(trim.Measured(k, found, asked(all, kitchen.OpenPart)))
	for _, m := range all {
		m.trims, m.opened = trims[m.group.ID], opened[m.group.ID]
		for i := range m.trims {
			m.cuts = append(m.cuts, cutOf(k, &m.trims[i]))
		}
		for _, o := range m.group.Parts {
			m.restStay = m.restStay || leavesEnough(o, m.cuts)
		}
	}
}

// asked has one option for every group.
func asked(all []*matter, option kitchen.Option) kitchen.AppliedOptions {
	out := make(kitchen.AppliedOptions, len(all))
	for _, m := range all {
		a := kitchen.Applied{Option: option, By: kitchen.ByChoice}
		if m.inTheWay() {
			a.By = kitchen.ByAdvice
		}
		if option == kitchen.OpenPart && m.chosenSpans() {
			a.Spans = m.k.Choices[m.group.ID].Spans
		}
		out[m.group.ID] = a
	}
	return out
}

// byGroup sorts cuts by overhead group; those that take nothing are none.
func byGroup(in []trim.Trim) map[string][]trim.Trim {
	out := map[string][]trim.Trim{}
	for _, t := range in {
		if t.Work != trim.None {
			out[t.Overhead.Group] = append(out[t.Overhead.Group], t)
		}
	}
	return out
}

func cutOf(k *kitchen.Kitchen, t *trim.Trim) cut {
	lowest := t.Overhead.Underside.Lowest(t.From, t.To).Value
	return cut{
		overhead: t.Overhead, from: t.From, to: t.To, line: t.CutLine,
		strip: t.CutLine.Exact().Sub(k.Above(t.Overhead.Wall, lowest)),
		stub:  fit.Stub(k, t.Overhead, t.CutLine, t.From, t.To),
	}
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
// its own cuts, and those of every other group with a cabinet in the way that is
// not chosen to stay.
func sharePaint(all []*matter) {
	var room hazard.Area
	for _, m := range all {
		if m.isCut() {
			room = room.Add(m.ownPaint())
		}
	}
	for _, m := range all {
		m.paint = room
		if !m.isCut() {
			m.paint = room.Add(m.ownPaint())
		}
	}
}

// isCut reports whether the room's cuts are reckoned to take something of the group.
func (m *matter) isCut() bool {
	c, chosen := m.k.Choices[m.group.ID]
	return m.inTheWay() && (!chosen || c.Option != kitchen.Keep)
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
		if c.overhead != o {
			continue
		}
		if c.from > from && c.from-from >= o.Make.LeastRun {
			return true
		}
		from = c.to
	}
	return o.To > from && o.To-from >= o.Make.LeastRun
}
