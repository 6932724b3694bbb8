package decide

import (
	"slices"

	"railhead/internal/belief"
	"railhead/internal/cabinet"
	"railhead/internal/combine"
	"railhead/internal/contents"
	"railhead/internal/estimate"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/money"
	"railhead/internal/survey"
	"railhead/internal/takeoff"
	"railhead/internal/trim"
)

// reckoning is a room in money: what every option of every group comes to, for
// whatever is believed of what is unknown. It is measured once and priced anew
// for every rate book.
type reckoning struct {
	k       *kitchen.Kitchen
	site    *takeoff.Site
	bare    bool // nobody asks for its lines
	ms      []*matter
	options [][]Option // by group
	given
	joints    []joint
	measured  [][]measured // by group and option
	tops      lines        // at which cabinets may end
	others    combine.Line
	exchanges [][2][]exchange // of each joint
	run       length.Length   // of all wall and tall cabinets
	solver    *combine.Solver
	things    []combine.Thing // of the last problem
	spare     []combine.Way
	priced
	now knowledge
}

// measured is the work of one option, with the cabinets that it alone exchanges.
type measured struct {
	takeoff.Takeoff
	closing  []takeoff.Item // closing the gap where a taller row turns out not to fit
	gained   []gained
	swaps    []cabinet.Swap
	taken    bool // it was measured
	competes bool // for the advice, where no gate stands against it
	done     bool // the option can be done at all, if only by the licensed trade
	line     combine.Line
	effects  []combine.Effect
}

// priced is what depends on rates and worths.
type priced struct {
	book    *estimate.Book
	values  values
	charges []combine.Trade // by trade
	ways    [][]reckoned    // by group and option
	shared  [][2][]outcome  // by joint, without and with a wish, by limit
}

// outcome is what a joint cabinet is worth under a limit.
type outcome struct {
	gain, cost money.Amount
	possible   bool
}

// knowledge is what is believed of the room's unknowns.
type knowledge struct {
	odds    []belief.Belief // by cluster, of the contents that nobody has seen
	missing []belief.Chance // by cluster: that the ceiling's board is missing behind
	fits    []belief.Chance // by group: that its taller row fits once it is gone
}

// given is what hangs on no level of a cabinet or ceiling: what overheads hide, as
// far as the request and the trade tell, and the rates.
type given struct {
	clusters []contents.Cluster
	odds     []contents.Odds // by cluster
	cluster  []int           // of each group
	hidden   knowledge       // of no taller row
	rates    *estimate.Book
	fees     []combine.Trade // by trade, at these rates
}

func givenIn(k *kitchen.Kitchen) given {
	out := given{clusters: contents.Clusters(k), cluster: make([]int, len(k.Groups())), rates: estimate.NewBook(k.Prices)}
	out.fees = chargesOf(out.rates)
	for c, one := range out.clusters {
		odds := contents.Of(k, one)
		out.odds = append(out.odds, odds)
		out.hidden.odds = append(out.hidden.odds, unseenOdds(one, odds.Now))
		out.hidden.missing = append(out.hidden.missing, behindMissing(one))
		for _, g := range one.Groups {
			out.cluster[g] = c
		}
	}
	return out
}

// effort is how much one search for the best combination may cost, in partial
// choices grown: some tenths of a second. Rooms of a hundred overheads stay far
// below it unless dozens of them share several trades' least charges.
const effort = 50_000

// reckoningOf measures and prices options: those that may be advised as the gates
// stand, or all that can be done at all.
func reckoningOf(k *kitchen.Kitchen, ms []*matter, options [][]Option, known given, d doors) *reckoning {
	r := &reckoning{bare: d == asTheyStand, k: k, site: takeoff.NewSite(k), ms: ms, options: options, given: known, joints: jointsOf(ms), now: known.hidden, solver: &combine.Solver{Effort: effort}}
	r.run = runOf(k)
	for g, m := range ms {
		r.now.fits = append(r.now.fits, m.taller.chance)
		r.measured = append(r.measured, make([]measured, len(options[g])))
		r.can(g)
	}
	for g := range ms {
		if d == opened {
			for i := range options[g] {
				r.measure(g, i)
			}
		} else {
			r.measureWhatCompetes(g)
		}
		r.close(g)
	}
	r.levels()
	for n := range r.joints {
		r.exchanges = append(r.exchanges, r.exchangesOf(&r.joints[n]))
	}
	r.priced = r.price(r.rates, k.Prices.Worth)
	return r
}

// measureWhatCompetes measures only what may be advised as the gates stand.
func (r *reckoning) measureWhatCompetes(g int) {
	r.measure(g, 0)
	v, allowed := valuesOf(r.run, r.k.Prices.Worth, r.rates), r.allowed(g, r.now, asTheyStand)
	keep := r.stayOf(g, allowed, &v)
	for _, i := range allowed {
		if i == 0 {
			continue
		}
		if r.needless(g, i, keep, &v) {
			r.measured[g][i].competes = false
		} else {
			r.measure(g, i)
		}
	}
}

// can notes which options of a group can be done at all, if only by the licensed
// trade.
func (r *reckoning) can(g int) {
	for i, o := range r.options[g] {
		r.measured[g][i].done = licensed(o.Gates)
		r.measured[g][i].competes = r.measured[g][i].done && (o.Option != kitchen.Keep || r.mayStay(g))
		r.measured[g][i].effects = r.effects(g, o.Option)
	}
}

// unseenOdds are a cluster's odds where something of it is unseen. What was seen
// is work that is sure; where all was, nothing more can turn up.
func unseenOdds(c contents.Cluster, now belief.Belief) belief.Belief {
	if c.UnseenLength() == 0 {
		return belief.Point(int(contents.States), int(contents.Empty))
	}
	return now
}

// behindMissing is the chance for the first part of which nobody has seen it:
// what is behind one is most likely behind all that it runs on into.
func behindMissing(c contents.Cluster) belief.Chance {
	for _, p := range c.Parts {
		if missing, assumed := contents.BehindMissing(p); assumed && !p.GoesWithOldCabinets() {
			return missing
		}
	}
	return 0
}

// measure takes an option off, unless nobody can do it and nobody chose it.
func (r *reckoning) measure(g, i int) {
	m, o, out := r.ms[g], r.options[g][i].Option, &r.measured[g][i]
	choice, chosen := r.k.Choices[m.group.ID]
	if !out.done && (!chosen || choice.Option != o) {
		return
	}
	r.gain(g, i)
	out.taken = true
	out.Takeoff = r.site.Of(takeoff.Job{
		Group: m.group, Option: o, Cuts: m.cutsOf(o), Swaps: out.swaps, Reached: m.reachedBy(o), Bare: r.bare,
	})
}

// gain notes what an option gains, and the cabinets that it alone exchanges.
func (r *reckoning) gain(g, i int) {
	m, o, out := r.ms[g], r.options[g][i].Option, &r.measured[g][i]
	out.swaps = r.alone(m.swaps(o))
	out.gained = m.gained(o, out.swaps)
}

// close gives the taller row the work of closing the gap where it does not fit.
func (r *reckoning) close(g int) {
	if fits := r.now.fits[g]; fits == 0 || fits == belief.Certain {
		return
	}
	taller, closed := r.place(g, kitchen.RemoveTaller), r.place(g, kitchen.RemoveClose)
	if r.bare && !r.measured[g][taller].taken {
		return
	}
	if !r.measured[g][closed].taken {
		r.measure(g, closed)
	}
	r.measured[g][taller].closing = closingOf(r.measured[g][closed].Items)
}

// closingOf is the work of closing a gap among that of taking down and closing.
func closingOf(items []takeoff.Item) []takeoff.Item {
	var out []takeoff.Item
	for _, i := range items {
		if i.Work == takeoff.ClosingPanel || i.Work == takeoff.Filler {
			out = append(out, i)
		}
	}
	return out
}

// cutsOf are the cuts that an option makes.
func (m *matter) cutsOf(o kitchen.Option) []trim.Trim {
	switch o {
	case kitchen.Trim:
		return m.trims
	case kitchen.OpenPart:
		return m.opened
	default:
		return nil
	}
}

// reachedBy tells which services an option's work comes to.
func (m *matter) reachedBy(o kitchen.Option) func(*survey.Overhead, *survey.Service) bool {
	return func(p *survey.Overhead, s *survey.Service) bool { return m.reached(o, p, s) }
}

// alone are the swaps of cabinets that stand under one group only.
func (r *reckoning) alone(swaps []cabinet.Swap) []cabinet.Swap {
	return slices.DeleteFunc(slices.Clone(swaps), func(s cabinet.Swap) bool { return r.isJoint(s.Cabinet) })
}

func (r *reckoning) isJoint(c *cabinet.Placed) bool {
	return slices.ContainsFunc(r.joints, func(j joint) bool { return j.cabinet == c })
}

// price puts every option into money under a rate book and worths.
func (r *reckoning) price(b *estimate.Book, w kitchen.Worth) priced {
	p := priced{book: b, charges: r.fees, ways: make([][]reckoned, len(r.ms))}
	if b != r.rates {
		p.charges = chargesOf(b)
	}
	for g := range r.ms {
		p.ways[g] = make([]reckoned, len(r.measured[g]))
		for i := range r.measured[g] {
			for l, items := range r.measured[g][i].lists() {
				p.ways[g][i].sums[l] = b.Sum(items)
			}
		}
	}
	r.value(&p, w)
	p.shared = p.outcomesOf(r.exchanges)
	return p
}

// value puts what every option gains into money.
func (r *reckoning) value(p *priced, w kitchen.Worth) {
	p.values = valuesOf(r.run, w, p.book)
	for g := range r.ms {
		keep, closed := p.values.worth(r.measured[g][0].gained), p.values.worth(r.measured[g][r.place(g, kitchen.RemoveClose)].gained)
		for i := range r.measured[g] {
			way := &p.ways[g][i]
			way.gain, way.stopped, way.misfit, way.known = p.values.worth(r.measured[g][i].gained), keep, closed, false
		}
	}
}

// outcomesOf are what the joint cabinets' exchanges come to.
func (p *priced) outcomesOf(exchanges [][2][]exchange) (out [][2][]outcome) {
	for n := range exchanges {
		out = append(out, p.outcomes(&exchanges[n]))
	}
	return out
}

func chargesOf(b *estimate.Book) []combine.Trade {
	out := make([]combine.Trade, estimate.Trades)
	for t := range out {
		callOut, minimum := b.Charges(estimate.Trade(t))
		out[t] = combine.Trade{CallOut: callOut.Mean(), Minimum: minimum.Mean()}
	}
	return out
}

// exchange is what a joint cabinet becomes under a limit.
type exchange struct {
	items    []takeoff.Item
	gained   []gained
	possible bool
	line     combine.Line // where it then ends
}

// exchangesOf are a joint cabinet's exchanges, without and with a wish, by limit.
func (r *reckoning) exchangesOf(j *joint) (out [2][]exchange) {
	for wish := range out {
		for limit := range j.unlimited() + 1 {
			s, swapped, possible := j.swap(uint8(limit), wish == 1)
			e := exchange{possible: possible, line: r.tops.of([]length.Length{j.cabinet.Top})}
			if swapped {
				e.line = r.tops.of([]length.Length{s.Top})
				swaps := []cabinet.Swap{s}
				e.items, e.gained = r.exchange(swaps), gainedBy(swaps, wish == 1 && r.reachCeiling(j))
			}
			out[wish] = append(out[wish], e)
		}
	}
	return out
}

// reachCeiling reports whether the taller rows of all groups over a joint cabinet go
// up to the ceiling.
func (r *reckoning) reachCeiling(j *joint) bool {
	return all(j.groups, func(g int) bool {
		_, taller := r.ms[g].tallerFor(j.cabinet)
		return !taller || r.ms[g].reachesCeiling()
	})
}

// outcomes are what a joint cabinet's exchanges come to.
func (p *priced) outcomes(all *[2][]exchange) (out [2][]outcome) {
	for wish := range out {
		out[wish] = make([]outcome, len(all[wish]))
		for limit := range all[wish] {
			e := &all[wish][limit]
			cost := p.book.Sum(e.items)
			out[wish][limit] = outcome{p.values.worth(e.gained), sumOf(&cost), e.possible}
		}
	}
	return out
}

// levels numbers the lines at which each option leaves the tops under its group.
func (r *reckoning) levels() {
	for g := range r.ms {
		for i := range r.measured[g] {
			r.measured[g][i].line = r.tops.of(r.topsAfter(g, r.options[g][i].Option))
		}
	}
	r.others = r.tops.of(r.topsUnderNothing())
}

// exchange is the work of exchanging cabinets alone.
func (r *reckoning) exchange(swaps []cabinet.Swap) []takeoff.Item {
	return r.site.Of(takeoff.Job{Option: kitchen.RemoveTaller, Swaps: swaps, Bare: r.bare}).Items
}
