package trim

import (
	"cmp"
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// cut is one stretch of an overhead on its way to becoming a Trim.
type cut struct {
	over *survey.Overhead
	survey.Span
	cabinets []*cabinet.Placed
	top      length.Length // highest top line it serves
	line     length.Length // highest top line and headroom, above the datum
	byLift   bool          // of the headroom that gave the line
	needed   bool
	opened   bool          // the planner has this part opened up to the ceiling
	evened   bool          // raised to the line of the part it meets
	along    length.Length // of rests at the overhead's ends that are taken along
}

// cutsOf are the cuts along one overhead, from the left.
func cutsOf(k *kitchen.Kitchen, o *survey.Overhead, found asFound, a kitchen.Applied) []cut {
	all := cabinetsUnder(k, o, found)
	if a.Option == kitchen.OpenPart && len(a.Spans) > 0 {
		return openings(o, all, a.Spans)
	}
	rows := byTop(all)
	var wanted []cut
	for _, c := range rows {
		if c.takes(k) && (c.needed || a.By == kitchen.ByChoice) {
			wanted = append(wanted, c)
		}
	}
	if len(wanted) == 0 && a.By == kitchen.ByChoice && a.Option == kitchen.Trim {
		return merged(rows)
	}
	out := merged(wanted)
	for i := range out {
		out[i].takeRestsAlong()
		out[i].serve(all)
		out[i].opened = a.Option == kitchen.OpenPart
	}
	return out
}

// takes reports whether anything of the overhead hangs below the cut's line.
func (c *cut) takes(k *kitchen.Kitchen) bool {
	return lowest(k, c.over, c.Span).CmpLength(c.line) < 0
}

func lowest(k *kitchen.Kitchen, o *survey.Overhead, s survey.Span) length.Exact {
	return k.Above(o.Wall, o.Underside.Lowest(s.From, s.To).Value)
}

// byTop joins the cuts of one top line that touch or overlap: a row is cut to
// one line.
func byTop(all []cut) []cut {
	sorted := slices.Clone(all)
	slices.SortStableFunc(sorted, func(a, b cut) int {
		return cmp.Or(cmp.Compare(a.top, b.top), cmp.Compare(a.From, b.From))
	})
	var out []cut
	for _, c := range sorted {
		if last := len(out) - 1; last >= 0 && out[last].top == c.top && c.From <= out[last].To {
			out[last].join(c)
			continue
		}
		out = append(out, c)
	}
	return out
}

// merged joins, at the higher line, the cuts between which less would stay
// hanging than the shortest sensible run.
func merged(cuts []cut) []cut {
	sorted := slices.Clone(cuts)
	slices.SortStableFunc(sorted, func(a, b cut) int {
		return cmp.Or(cmp.Compare(a.From, b.From), cmp.Compare(a.To, b.To))
	})
	var out []cut
	for _, c := range sorted {
		last := len(out) - 1
		if last >= 0 && (c.From <= out[last].To || c.From-out[last].To < c.over.Make.LeastRun) {
			out[last].join(c)
			continue
		}
		out = append(out, c)
	}
	return out
}

// join takes another cut in: its stretch, its cabinets, and the higher line.
func (c *cut) join(o cut) {
	c.From, c.To = min(c.From, o.From), max(c.To, o.To)
	c.raise(o)
	c.top = max(c.top, o.top)
	c.needed = c.needed || o.needed
	c.along += o.along
	for _, p := range o.cabinets {
		c.add(p)
	}
}

// raise takes another cut's line where that is higher.
func (c *cut) raise(o cut) {
	switch {
	case o.line > c.line:
		c.line, c.byLift = o.line, o.byLift
	case o.line == c.line:
		c.byLift = c.byLift && o.byLift
	}
}

func (c *cut) add(p *cabinet.Placed) {
	if !slices.Contains(c.cabinets, p) {
		c.cabinets = append(c.cabinets, p)
		slices.SortFunc(c.cabinets, func(a, b *cabinet.Placed) int { return cmp.Compare(a.Index, b.Index) })
	}
}

// takeRestsAlong widens a cut to the overhead's end where what would be left
// there is shorter than the shortest sensible run.
func (c *cut) takeRestsAlong() {
	if rest := c.From - c.over.From; rest > 0 && rest < c.over.Make.LeastRun {
		c.From, c.along = c.over.From, c.along+rest
	}
	if rest := c.over.To - c.To; rest > 0 && rest < c.over.Make.LeastRun {
		c.To, c.along = c.over.To, c.along+rest
	}
}

// serve adds the cabinets that stand wholly under the cut and below its line,
// though they did not call for it.
func (c *cut) serve(all []cut) {
	for _, u := range all {
		if u.From >= c.From && u.To <= c.To && u.top <= c.line {
			c.top, c.needed = max(c.top, u.top), c.needed || u.needed
			c.add(u.cabinets[0])
		}
	}
}
