package propose

import (
	"railhead/internal/decide"
	"railhead/internal/kitchen"
	"railhead/internal/survey"
)

// ways are the ways to treat an overhead that are told of, from the least work to the
// most. Taking it down for a taller row is none of its own: the rows are chosen here.
var ways = []kitchen.Option{kitchen.Keep, kitchen.Trim, kitchen.OpenPart, kitchen.RemoveClose, kitchen.RemoveOpen, kitchen.Move}

// treat finds the best layout for each way to treat each overhead group that matters.
func (p *proposer) treat() {
	for i := range p.all {
		if p.all[i].matters {
			p.out.Overheads = append(p.out.Overheads, p.treated(&p.all[i]))
		}
	}
}

func (p *proposer) treated(g *group) Overhead {
	out := Overhead{Group: g.ID}
	choice, chosen := p.k.Choices[g.ID]
	for _, o := range ways {
		if o == kitchen.Move && anyPart(g.OverheadGroup, func(one *survey.Overhead) bool { return one.Kind != survey.DuctBox }) {
			continue
		}
		if !chosen || choice.Option == o {
			out.Options = append(out.Options, p.option(g, o))
		}
	}
	return out
}

func (p *proposer) option(g *group, o kitchen.Option) Option {
	out := Option{Option: o}
	only := func(group string, other kitchen.Option) bool { return group != g.ID || other == o }
	best := p.best(1, only, decide.Somebody)
	if p.chose(g.ID, o) && len(p.out.Layouts) > 0 {
		best = []*Layout{&p.out.Layouts[0]} // what was chosen holds there, too
	}
	if len(best) > 0 {
		out.Layout, out.Possible = best[0], true
		for _, gate := range best[0].Gates {
			if gate.Group == g.ID {
				out.Gates = append(out.Gates, gate.Gate)
				out.Possible = out.Possible && !gate.Forbids
			}
		}
	} else if c := p.madeFor(g, o); c != nil {
		out.Gates, out.Possible = c.Decided.Before(g.ID, o)
	}
	return out
}

// madeFor is the first plan that was made for what an option leaves of a group, else
// the first of all.
func (p *proposer) madeFor(g *group, o kitchen.Option) *candidate {
	for _, c := range p.plans {
		if c.states[p.index[g.ID]] == stateFor(o) {
			return c
		}
	}
	if len(p.plans) > 0 {
		return p.plans[0]
	}
	return nil
}
