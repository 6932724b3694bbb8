package decide

import (
	"slices"

	"railhead/internal/belief"
	"railhead/internal/cabinet"
	"railhead/internal/combine"
	"railhead/internal/contents"
	"railhead/internal/kitchen"
	"railhead/internal/money"
)

// plan is one option for every group, by its place in the group's list, and what
// the room then nets.
type plan struct {
	picks []int
	net   money.Amount
}

// doors says which gates count as open.
type doors int

const (
	asTheyStand doors = iota // only options without a gate
	opened                   // also those whose gates somebody can open
)

// choose finds the best combination for the room.
func (r *reckoning) choose(p *priced, kn knowledge, d doors) plan {
	return r.best(p, kn, r.allAllowed(kn, d))
}

func (r *reckoning) allAllowed(kn knowledge, d doors) [][]int {
	out := make([][]int, len(r.ms))
	for g := range r.ms {
		out[g] = r.allowed(g, kn, d)
	}
	return out
}

// best is the best combination among some options of each group. Where wishes for
// one cabinet cannot all be met the least work is left.
func (r *reckoning) best(p *priced, kn knowledge, allowed [][]int) plan {
	out, found := plan{make([]int, len(r.ms)), -money.Most}, false
	most, sure := money.Amount(0), false // what the room comes to, wherever its tops end
	for n, a := range r.attempts(p, kn, allowed) {
		if sure && out.net >= most.Plus(a.bonus) {
			break // no line comes to more
		}
		picks, net, ok := r.solver.Best(a.problem)
		if n == 0 {
			most, sure = net, ok && r.solver.Proven()
		}
		if net = net.Plus(a.bonus); ok && (!found || net > out.net) {
			out, found = plan{picked(a.allowed, picks), net}, true
		}
	}
	return out
}

// second is the best combination that differs somewhere; false where there is none.
func (r *reckoning) second(p *priced, kn knowledge, allowed [][]int, first plan) (out plan, found bool) {
	for _, a := range r.attempts(p, kn, allowed) {
		picks, net, ok := r.solver.RunnerUp(a.problem, a.at(first.picks))
		if net = net.Plus(a.bonus); ok && (!found || net > out.net) {
			out, found = plan{picked(a.allowed, picks), net}, true
		}
	}
	return out, found
}

func picked(allowed [][]int, picks []int) []int {
	out := make([]int, len(picks))
	for g := range picks {
		out[g] = allowed[g][picks[g]]
	}
	return out
}

// allowed are the options of a group that may be advised: those with no gate in
// front and, where gates count as open, those that somebody can open; what only the
// licensed trade can open counts where nothing else is left, and what may not be
// cut stays. Options that change the plan for shorter cabinets compete only where
// the request puts a price on that, and a system makes them; else the plan stands as
// sent. Where nothing is left it stays. What goes with the old cabinets goes whatever
// stands in front of it: its gates stop the work, not the choice.
func (r *reckoning) allowed(g int, kn knowledge, d doors) []int {
	if d == opened && r.ms[g].mayNotCut() && !r.ms[g].goesAnyhow() {
		return []int{0}
	}
	var free, licensed []int
	for i, o := range r.options[g] {
		switch {
		case !r.measured[g][i].competes:
		case d == asTheyStand && len(r.standing(g, o, kn)) > 0 && !r.ms[g].goesAnyhow():
		case o.Possible:
			free = append(free, i)
		default:
			licensed = append(licensed, i)
		}
	}
	switch {
	case len(free) > 0:
		return free
	case len(licensed) > 0:
		return licensed
	default:
		return []int{0}
	}
}

// mayStay reports whether keeping a group competes.
func (r *reckoning) mayStay(g int) bool { return !r.planStands(g) && r.ms[g].exchangeable() }

// exchangeable reports whether every cabinet in whose way the group is has a shorter
// one that stands clear under it.
func (m *matter) exchangeable() bool {
	swaps := m.shorter()
	return all(m.overlaps, func(o overlap) bool {
		return slices.ContainsFunc(swaps, func(s cabinet.Swap) bool { return s.Cabinet == o.cabinet })
	})
}

// planStands reports whether keeping a group would need shorter cabinets than the
// plan as sent has.
func (r *reckoning) planStands(g int) bool {
	return r.ms[g].inTheWay() && r.k.Prices.Worth.Shorter == nil
}

// standing are the gates of an option that still stand. A row that more likely fits
// than not, since somebody measured again, needs that no more.
func (r *reckoning) standing(g int, o Option, kn knowledge) []Gate {
	if len(o.Gates) == 1 && o.Gates[0].Code == gateCeilingDoubt && kn.fits[g] >= belief.Certain/2 {
		return nil
	}
	return o.Gates
}

// problem is the room as a search over combinations; it holds until the next one.
func (r *reckoning) problem(p *priced, kn knowledge, allowed [][]int) *combine.Problem {
	out := &combine.Problem{Trades: p.charges, Things: r.things[:0]}
	if len(r.joints) == 0 {
		out.Even = combine.Even{Worth: p.values.EvenLine.Amount, Others: r.others}
	}
	for i := range r.joints {
		shared := p.shared[i]
		out.Joints = append(out.Joints, combine.Joint{
			Unlimited: uint8(r.joints[i].unlimited()),
			Outcome: func(limit uint8, wish bool) (money.Amount, bool) {
				o := shared[index(wish)][limit]
				return o.gain.Minus(o.cost), o.possible
			},
		})
	}
	if r.spare == nil {
		r.spare = make([]combine.Way, r.many())
	}
	spare := r.spare
	for g := range allowed {
		ways := spare[:len(allowed[g]):len(allowed[g])]
		spare = spare[len(ways):]
		for n, i := range allowed[g] {
			ways[n] = p.ways[g][i].wayUnder(r.chances(kn, g, i), p.charges)
			ways[n].Line, ways[n].Effects = r.measured[g][i].line, r.measured[g][i].effects
		}
		out.Things = append(out.Things, combine.Thing{Ways: ways})
	}
	r.things = out.Things
	return out
}

// many is how many options all groups have together.
func (r *reckoning) many() int {
	n := 0
	for g := range r.options {
		n += len(r.options[g])
	}
	return n
}

func index(wish bool) int {
	if wish {
		return 1
	}
	return 0
}

// effects are what an option does to the cabinets that its group shares.
func (r *reckoning) effects(g int, o kitchen.Option) []combine.Effect {
	var out []combine.Effect
	for n := range r.joints {
		if j := &r.joints[n]; slices.Contains(j.groups, g) {
			out = append(out, j.effect(n, r.ms[g], o))
		}
	}
	return out
}

// expected is an option under what is believed.
func (r *reckoning) expected(p *priced, kn knowledge, g, i int) expected {
	return p.ways[g][i].expected(r.chances(kn, g, i))
}

// chances are how probable it is that each unknown turns out against an option:
// contents count where somebody has not looked and the work reaches them.
func (r *reckoning) chances(kn knowledge, g, i int) chances {
	var c chances
	cluster := r.cluster[g]
	if r.ms[g].blind() {
		for s, p := range kn.odds[cluster] {
			c.found[s] = times(p, r.measured[g][i].Reach)
		}
		c.found[contents.Empty] = 0
	}
	c.behind = kn.missing[cluster]
	if r.options[g][i].Option == kitchen.RemoveTaller {
		c.closing = kn.fits[g].Not()
	}
	return c
}

// place is where an option stands in a group's list.
func (r *reckoning) place(g int, o kitchen.Option) int {
	return slices.IndexFunc(r.options[g], func(have Option) bool { return have.Option == o })
}
