package propose

import (
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/layout"
)

// empty are the rows that were asked for and stay empty in the best layout. A row of
// tall cabinets is none of its own where there are others.
func (p *proposer) empty() {
	if len(p.out.Layouts) == 0 {
		return
	}
	best := &p.out.Layouts[0]
	p.out.Unmet = layout.Unmet(p.kept, p.f, p.left(best))
	for _, kind := range p.f.Kinds {
		for _, w := range p.f.Walls {
			has := func(c cabinet.Placed) bool {
				return (c.Kind == kind || c.Kind == cabinet.Tall) && slices.ContainsFunc(c.Native(p.k.Room), func(q cabinet.Patch) bool { return q.Wall == w })
			}
			if kind == cabinet.Tall && len(p.f.Kinds) > 1 || slices.ContainsFunc(best.Kitchen.Plan.Cabinets, has) {
				continue
			}
			p.out.Empty = append(p.out.Empty, p.why(w, kind, p.left(best)))
		}
	}
}

// why is why a row stays empty.
func (p *proposer) why(wall int, kind cabinet.Kind, sky kitchen.Sky) Empty {
	out := Empty{Wall: wall, Kind: kind, Why: Unworthy, Pointer: p.k.Room.Walls[wall].Pointer}
	if by, barred := layout.Barred(p.kept, p.f, wall, kind, sky); barred {
		out.Why, out.Pointer = NoRoom, by
	} else if layout.Longest(p.kept, p.f, wall, kind, sky) < slices.Min(p.k.System.Sizes(kind).Widths) {
		out.Why = TooShort
	}
	return out
}

// left is what hangs once a layout's options are carried out, as far as that leaves
// room for cabinets.
func (p *proposer) left(l *Layout) kitchen.Sky {
	states := make([]state, len(p.all))
	for i, g := range p.all {
		states[i] = stateFor(l.Options[g.ID])
	}
	return p.sky(states)
}
