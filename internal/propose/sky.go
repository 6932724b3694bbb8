package propose

import (
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/layout"
	"railhead/internal/length"
	"railhead/internal/space"
	"railhead/internal/survey"
)

// state is what of an overhead group is left hanging.
type state int

// States, from the least room for cabinets to the most.
const (
	asFound state = iota
	cut           // up to where a cut can just be built
	gone          // over the cabinets at least
)

// stateFor is the state that an option leaves a group in.
func stateFor(o kitchen.Option) state {
	switch o {
	case kitchen.Keep:
		return asFound
	case kitchen.Trim:
		return cut
	default:
		return gone
	}
}

// leaves reports whether an option leaves at least the room of a state. Taking down
// for a taller row is left to plans that are not proposed: here the rows are chosen.
func leaves(o kitchen.Option, s state) bool {
	return o != kitchen.RemoveTaller && (s == asFound && o == kitchen.Keep || s > asFound && stateFor(o) >= s)
}

// group is an overhead group with the states that it may be in.
type group struct {
	kitchen.OverheadGroup
	states  []state
	matters bool // to what there is room for
}

// groups are a kitchen's overhead groups. One that was decided about is in its state;
// one that nobody may cut stays; one that no row feels needs no states.
func (p *proposer) groups() []group {
	var out []group
	rows := p.feeling()
	for _, one := range p.k.Groups() {
		g := group{OverheadGroup: one, states: []state{asFound}, matters: rows.matters(one.ID)}
		choice, chosen := p.k.Choices[one.ID]
		switch {
		case chosen:
			if s := stateFor(choice.Option); s != asFound { // what fits as found fits then, too
				g.states = append(g.states, s)
			}
		case g.matters && !anyPart(one, func(o *survey.Overhead) bool { return o.MayCut == survey.CutNo }):
			if anyPart(one, p.cutHelps) {
				g.states = append(g.states, cut)
			}
			g.states = append(g.states, gone)
		}
		out = append(out, g)
	}
	return out
}

func anyPart(g kitchen.OverheadGroup, holds func(*survey.Overhead) bool) bool {
	return slices.ContainsFunc(g.Parts, holds)
}

// feeling tells which overhead groups rows feel.
type feeling struct {
	p           *proposer
	found, bare [][]space.Stretch // what may stand with all groups there, and with none
}

func (p *proposer) feeling() *feeling {
	found := p.k.Found()
	return &feeling{p, p.stretches(found), p.stretches(kitchen.Sky{Gone: found.Gone})}
}

func (p *proposer) stretches(sky kitchen.Sky) [][]space.Stretch {
	return layout.Stretches(p.k, p.f, sky)
}

// matters reports whether some row has other room once a group is gone, be the others
// still there or gone too.
func (f *feeling) matters(group string) bool {
	var less, only kitchen.Sky
	for _, h := range f.p.k.Found().Hung {
		if h.Overhead.Group == group {
			only.Hung = append(only.Hung, h)
		} else {
			less.Hung = append(less.Hung, h)
		}
	}
	return differ(f.p.stretches(less), f.found) || differ(f.p.stretches(only), f.bare)
}

func differ(a, b [][]space.Stretch) bool { return !slices.EqualFunc(a, b, slices.Equal) }

// cutLine is how high an overhead can be cut, in the survey's frame, lowered by what a
// cabinet needs above its top beyond the fit gap: up to its line any cabinet fits. The
// stub that is left must be worth keeping.
func (p *proposer) cutLine(o *survey.Overhead) length.Exact {
	need, gap := p.k.System.FitGap, p.k.System.FitGap
	for _, kind := range []cabinet.Kind{cabinet.Wall, cabinet.Tall} {
		n, _ := p.k.System.Headroom(kind)
		need = max(need, n)
	}
	ceiling := p.k.Room.CeilingOver(o).Lowest(o.From, o.To).Value
	return ceiling.Minus(max(o.Make.LeastStub, 1)).Minus(need - gap)
}

func (p *proposer) cutHelps(o *survey.Overhead) bool {
	return o.Underside.Lowest(o.From, o.To).Value.Less(p.cutLine(o))
}

// sky is what hangs where every group is in some state.
func (p *proposer) sky(in []state) kitchen.Sky {
	found := p.k.Found()
	out := kitchen.Sky{Gone: found.Gone}
	for _, h := range found.Hung {
		switch in[p.index[h.Overhead.Group]] {
		case gone:
			p.opened(&out, h)
		case cut:
			line := p.cutLine(h.Overhead)
			h.Cut = &line
			out.Hung = append(out.Hung, h)
		default:
			out.Hung = append(out.Hung, h)
		}
	}
	return out
}

// opened takes a stretch of an overhead away: where spans to open were chosen, those,
// else all of it.
func (p *proposer) opened(out *kitchen.Sky, h kitchen.Hung) {
	choice := p.k.Choices[h.Overhead.Group]
	if choice.Option != kitchen.OpenPart || len(choice.Spans) == 0 {
		out.Gone = append(out.Gone, h.Away())
		return
	}
	var spans []survey.Span
	for _, one := range choice.Spans {
		if one.Wall == h.Overhead.Wall {
			spans = append(spans, survey.Span{From: one.From, To: one.To})
		}
	}
	left := survey.Without([]survey.Span{{From: h.From, To: h.To}}, spans)
	for _, rest := range left {
		out.Hung = append(out.Hung, kitchen.Hung{Overhead: h.Overhead, From: rest.From, To: rest.To})
	}
	for _, away := range survey.Without([]survey.Span{{From: h.From, To: h.To}}, left) {
		out.Gone = append(out.Gone, kitchen.Gone{Overhead: h.Overhead, From: away.From, To: away.To})
	}
}

// mostSkies is how many combinations of states are looked at one by one; of more, only
// those in which all groups are alike but one.
const mostSkies = 81

// skies are the combinations of states that are looked at, and whether these are all.
func skies(groups []group) (out [][]state, all bool) {
	many := 1
	for _, g := range groups {
		if many *= len(g.states); many > mostSkies {
			return alike(groups), false
		}
	}
	out = [][]state{nil}
	for _, g := range groups {
		var next [][]state
		for _, have := range out {
			for _, s := range g.states {
				next = append(next, append(slices.Clone(have), s))
			}
		}
		out = next
	}
	return out, true
}

// alike are the combinations in which all groups are in like states, as far as they
// can be, and then those that differ from them in one group.
func alike(groups []group) (out [][]state) {
	add := func(s []state) {
		if !slices.ContainsFunc(out, func(o []state) bool { return slices.Equal(o, s) }) {
			out = append(out, s)
		}
	}
	var common [gone + 1][]state
	for s := range common {
		for _, g := range groups {
			common[s] = append(common[s], nearest(g.states, state(s)))
		}
		add(common[s])
	}
	for _, common := range common {
		for i, g := range groups {
			for _, other := range g.states {
				one := slices.Clone(common)
				one[i] = other
				if add(one); len(out) == mostSkies {
					return out
				}
			}
		}
	}
	return out
}

// nearest is the state that leaves no less room than one is asked for, else the one
// that leaves the most.
func nearest(have []state, s state) state {
	for _, one := range have {
		if one >= s {
			return one
		}
	}
	return have[len(have)-1]
}
