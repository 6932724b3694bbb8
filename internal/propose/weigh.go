package propose

import (
	"cmp"
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/decide"
	"railhead/internal/finding"
	"railhead/internal/fit"
	"railhead/internal/kitchen"
	"railhead/internal/layout"
	"railhead/internal/length"
	"railhead/internal/money"
	"railhead/internal/survey"
	"railhead/internal/trim"
)

// candidate is a plan that was filled under some sky.
type candidate struct {
	*Layout
	states []state
	parts  []layout.Part // before what hangs on options
	found  []fit.Result
	// bound is what it can be worth at most with any options, by the gates that may be
	// passed; the least of all where none are left.
	bound map[decide.Gates]money.Amount
}

// weigh readies a candidate for the choice of options. The worth of one even line and
// of going up to the ceiling are counted for the plan, and not once more for options.
func (p *proposer) weigh(l *Layout, states []state) *candidate {
	c := &candidate{Layout: l, states: states, parts: l.Parts, bound: map[decide.Gates]money.Amount{}}
	k := *c.Kitchen
	k.Prices.Worth.EvenLine.Amount, k.Prices.Worth.ToCeiling.Amount = 0, 0
	c.found = fit.Check(&k)
	c.Decided = decide.Decide(&k, c.found, nil, nil)
	p.out.Proven = p.out.Proven && c.Decided.Proven
	return c
}

// choice is a candidate with options that were chosen for it, and what it can be worth
// at most.
type choice struct {
	*candidate
	decide.Pick
	bound money.Amount
}

// best are the best layouts with options that groups may have, behind no gates but
// those that may be passed; no two with the same cabinets. Those that are held up count
// only where there are no others.
func (p *proposer) best(want int, may func(group string, o kitchen.Option) bool, g decide.Gates) []*Layout {
	var out, hindered []*Layout
	for _, c := range p.inOrder(g) {
		if p.solver.Stopped() || len(out) == want && c.bound[g] <= out[want-1].Total {
			break
		}
		for _, one := range p.picks(c, may, g) {
			if len(out) == want && one.bound <= out[want-1].Total {
				continue
			}
			switch l := p.settled(&one); {
			case l == nil:
			case l.HeldUp():
				hindered = among(hindered, l, want)
			default:
				out = among(out, l, want)
			}
		}
	}
	if len(out) == 0 {
		return hindered
	}
	return out
}

// inOrder are the candidates that have any options behind such gates, in order of what
// they can be worth at most with them.
func (p *proposer) inOrder(g decide.Gates) (out []*candidate) {
	for _, c := range p.plans {
		if _, known := c.bound[g]; !known {
			c.bound[g] = -money.Most
			for _, one := range p.picks(c, anyOption, g) {
				c.bound[g] = max(c.bound[g], one.bound)
			}
		}
		if c.bound[g] > -money.Most {
			out = append(out, c)
		}
	}
	slices.SortStableFunc(out, func(a, b *candidate) int { return cmp.Compare(b.bound[g], a.bound[g]) })
	return out
}

// among puts a layout among the best ones, in place of one with the same cabinets that
// is worth less.
func among(all []*Layout, l *Layout, want int) []*Layout {
	if i := slices.IndexFunc(all, func(o *Layout) bool { return o.name == l.name }); i >= 0 {
		if all[i].Total >= l.Total {
			return all
		}
		all = slices.Delete(all, i, i+1)
	}
	all = append(all, l)
	slices.SortStableFunc(all, func(a, b *Layout) int { return cmp.Compare(b.Total, a.Total) })
	return all[:min(want, len(all))]
}

// picks are the best options for a candidate: of all that it may have, and, where
// going up to the ceiling is worth something, of those that let it.
func (p *proposer) picks(c *candidate, may func(group string, o kitchen.Option) bool, g decide.Gates) (out []choice) {
	high := []bool{false}
	if p.k.Prices.Worth.ToCeiling.Amount > 0 {
		high = append(high, true)
	}
	for _, down := range high {
		pick, ok := c.Decided.Among(func(group string, o kitchen.Option) bool {
			i := p.index[group]
			fits := p.chose(group, o) || !p.all[i].matters && o != kitchen.RemoveTaller || leaves(o, c.states[i])
			return fits && may(group, o) && (!down || c.states[i] == asFound || stateFor(o) == gone)
		}, g)
		if ok {
			out = append(out, choice{c, pick, p.most(c, max(pick.Net, pick.Told))})
		}
	}
	return out
}

// most is what a candidate is worth at most with options that net something.
func (p *proposer) most(c *candidate, net money.Amount) money.Amount {
	worth := p.k.Prices.Worth
	out := net.Plus(worth.ToCeiling.Amount).Plus(worth.EvenLine.Amount)
	for _, part := range c.parts {
		out = out.Plus(part.Worth)
	}
	return out
}

// settled is a candidate with its options; nil where not all that is new fits then.
func (p *proposer) settled(c *choice) *Layout {
	out := *c.Layout
	out.Options, out.Proven = c.Pick.Options, p.out.Proven
	high, ok := p.fits(&out, c.found)
	if !ok {
		return nil
	}
	for _, one := range p.all {
		for _, gate := range c.Pick.Gates[one.ID] {
			out.Gates = append(out.Gates, Gate{one.ID, gate})
		}
	}
	out.Parts = append(slices.Clone(c.parts), p.others(&out, high, c.Pick.Told)...)
	for _, part := range out.Parts {
		out.Total = out.Total.Plus(part.Worth)
		if part.Name == layout.Storage {
			out.Litres = part.Quantity
		}
	}
	return &out
}

func (p *proposer) chose(group string, o kitchen.Option) bool {
	choice, chosen := p.k.Choices[group]
	return chosen && choice.Option == o
}

// fits reports whether everything new fits once the options are carried out, and how
// much of the run of wall and tall cabinets then goes up to the ceiling.
func (p *proposer) fits(l *Layout, found []fit.Result) (high length.Length, ok bool) {
	k, applied := l.Kitchen, l.Applied()
	sky := trim.Sky(k, applied, trim.Measured(k, found, applied))
	narrow := k.Prices.Figures.Length(kitchen.NarrowGap)
	for i, after := range fit.AfterAll(k, found, sky, applied) {
		one, fresh := &k.Plan.Cabinets[i], i >= len(p.out.Stays.Cabinets)
		if fresh && after.Verdict > fit.Snug {
			return 0, false
		}
		if !fresh && after.Verdict == fit.Blocked {
			l.Blocked = append(l.Blocked, i)
		}
		if fresh {
			later := stops(after.Findings)
			l.Hindered = l.Hindered || len(later) > 0
			l.Stops = slices.Concat(l.Stops, p.lasting(stops(found[i].Findings)), later)
		}
		l.Assumed = l.Assumed || fresh && after.Assumed
		if one.Kind != cabinet.Base && after.Margin.CmpLength(narrow) < 0 && !hangsOver(k, sky, one) {
			high += one.Width() + closing(k.Plan, one)
		}
	}
	return high, true
}

// stops are the findings that must be answered before work starts. What hangs as found
// is left to what hangs later.
func stops(in []finding.Finding) (out []finding.Finding) {
	for _, f := range in {
		if f.Severity == finding.AsStop {
			out = append(out, f)
		}
	}
	return out
}

// lasting are the findings that are not for what hangs as found.
func (p *proposer) lasting(in []finding.Finding) []finding.Finding {
	return slices.DeleteFunc(in, func(f finding.Finding) bool {
		return slices.ContainsFunc(p.k.Overheads(), func(o *survey.Overhead) bool { return o.Pointer == f.Pointer })
	})
}

// closing is the width of the fillers to the left of a cabinet, and of the last one to
// its right where no other cabinet follows: they go up as far as it does.
func closing(plan *cabinet.Plan, c *cabinet.Placed) (out length.Length) {
	for i := range plan.Fillers {
		f := &plan.Fillers[i]
		if f.Wall != c.Wall || f.Kind == cabinet.Base {
			continue
		}
		follows := slices.ContainsFunc(plan.Cabinets, func(o cabinet.Placed) bool { return o.Wall == f.Wall && o.Kind != cabinet.Base && o.From == f.To })
		if f.To == c.From || f.From == c.To && !follows {
			out += f.To - f.From
		}
	}
	return out
}

func hangsOver(k *kitchen.Kitchen, sky kitchen.Sky, c *cabinet.Placed) bool {
	for _, h := range sky.Hung {
		over := cabinet.UnderStretch(h.Overhead, h.From, h.To)
		for _, patch := range c.Patches(k.Room) {
			if patch.Overlaps(over) {
				return true
			}
		}
	}
	return false
}

// others are the parts of the worth that hang on options, or on the whole plan.
func (p *proposer) others(l *Layout, high length.Length, net money.Amount) []layout.Part {
	tops := map[length.Length]bool{}
	for i := range l.Kitchen.Plan.Cabinets {
		if c := &l.Kitchen.Plan.Cabinets[i]; c.Kind != cabinet.Base {
			tops[c.Top] = true
		}
	}
	var out []layout.Part
	add := func(n layout.PartName, q money.Quantity, worth money.Amount) {
		if worth != 0 {
			out = append(out, layout.Part{Name: n, Quantity: q, Worth: worth})
		}
	}
	worth := p.k.Prices.Worth
	if high = min(high, p.run); high > 0 {
		percent := money.Quantity(money.Amount(100*money.One).Share(int64(high), int64(p.run)))
		add(layout.ToCeiling, percent, worth.ToCeiling.Share(int64(high), int64(p.run)))
	}
	if len(tops) == 1 {
		add(layout.EvenLine, money.One, worth.EvenLine.Amount)
	}
	add(layout.Overheads, money.One, net)
	return out
}
