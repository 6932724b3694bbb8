package trim

import (
	"strconv"

	"railhead/internal/fit"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// Plan is every cut that the applied options ask for, overhead by overhead and
// from the left: the trims, and the parts that are opened. found is each
// cabinet in the room as found.
func Plan(k *kitchen.Kitchen, found []fit.Result, applied kitchen.AppliedOptions) []Trim {
	cuts := cutsFor(k, found, applied)
	out := make([]Trim, 0, len(cuts))
	number := map[*survey.Overhead]int{}
	for i := range cuts {
		number[cuts[i].over]++
		t := cuts[i].trim(k, cuts)
		t.ID = t.Overhead.ID + "#" + strconv.Itoa(number[t.Overhead])
		t.Conflicts = conflicts(k, t)
		t.notice(k, &cuts[i])
		t.Steps = steps(k, t)
		out = append(out, t)
	}
	return out
}

// Measured is the same cuts, without what a person is told of them: for whoever
// only measures their work.
func Measured(k *kitchen.Kitchen, found []fit.Result, applied kitchen.AppliedOptions) []Trim {
	cuts := cutsFor(k, found, applied)
	out := make([]Trim, 0, len(cuts))
	for i := range cuts {
		out = append(out, cuts[i].trim(k, cuts))
	}
	return out
}

// cutsFor are the cuts before anything of them is measured.
func cutsFor(k *kitchen.Kitchen, found []fit.Result, applied kitchen.AppliedOptions) []cut {
	var cuts []cut
	byCabinet := index(found)
	for _, o := range k.Overheads() {
		a, ok := applied[o.Group]
		if ok && isCut(o, a.Option) {
			cuts = append(cuts, cutsOf(k, o, byCabinet, a)...)
		}
	}
	even(k.Room, cuts)
	return cuts
}

// isCut: what goes with the old cabinets is gone before anything is cut.
func isCut(o *survey.Overhead, option kitchen.Option) bool {
	return !o.GoesWithOldCabinets() && (option == kitchen.Trim || option == kitchen.OpenPart)
}

func (c *cut) trim(k *kitchen.Kitchen, all []cut) Trim {
	t := Trim{
		Overhead: c.over, Needed: c.needed, ByLift: c.byLift, Cabinets: c.cabinets,
		From: c.From, To: c.To, RowTop: c.top, CutLine: c.line, RailEdge: c.railEdge(k),
	}
	down := c.opened || c.takes(k) && NeedsTakeDown(k, c.over, c.From, c.To, c.line)
	if c.opened {
		t.CutLine = max(t.CutLine, k.Above(c.over.Wall, k.Room.CeilingOver(c.over).Highest(c.From, c.To).Value).Ceil())
	}
	t.Stations = c.stations(k, t.CutLine, down)
	for _, s := range t.Stations {
		t.Most = length.Larger(t.Most, s.Remove)
	}
	t.Work = workOf(t.Most, c.over.Make, down)
	if t.Work == RelocateBottomMember || t.Work == Reframe {
		frame := t.CutLine + c.over.Make.NewBottom
		t.FrameLine = &frame
	}
	t.Returns = c.returns(k, t, all)
	t.Boarded = boarded(k, &t)
	return t
}

// railEdge is the lower edge of the rail of the highest row served.
func (c *cut) railEdge(k *kitchen.Kitchen) *length.Length {
	if k.System.Rail == nil {
		return nil
	}
	for _, p := range c.cabinets {
		if p.Top == c.top && hangsOnRail(p) {
			edge := c.top - k.System.Rail.Drop
			return &edge
		}
	}
	return nil
}

// workOf is what kind of work it is to take off a strip.
func workOf(most length.Exact, m survey.Make, down bool) Work {
	switch {
	case down:
		return TakeDown
	case most.Sign() <= 0:
		return None
	case most.CmpLength(m.Lining) <= 0:
		return LiningOnly
	case most.CmpLength(m.Lining+m.BottomMember) <= 0:
		return RelocateBottomMember
	default:
		return Reframe
	}
}

// NeedsTakeDown reports whether a cut at a height above the datum cannot be
// built over a stretch of an overhead: it would reach the ceiling, or leave a
// stub that nobody can fix.
func NeedsTakeDown(k *kitchen.Kitchen, o *survey.Overhead, from, to, line length.Length) bool {
	stub := fit.Stub(k, o, line, from, to)
	return stub.Sign() <= 0 || stub.CmpLength(o.Make.LeastStub) < 0
}
