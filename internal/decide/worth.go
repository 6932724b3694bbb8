package decide

import (
	"slices"

	"railhead/internal/belief"
	"railhead/internal/combine"
	"railhead/internal/contents"
	"railhead/internal/estimate"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/survey"
	"railhead/internal/takeoff"
)

// Room is the room's best combination and what stands beside it.
func (d *Decisions) Room(applied kitchen.AppliedOptions) Room {
	r := d.reckoning
	best := r.account(&r.priced, r.now, d.best.picks)
	out := Room{
		Best: best.Combination, Charges: best.charges, Together: best.together,
		Applied: *r.combination(r.applied(applied)),
	}
	if second, ok := r.second(&r.priced, r.now, r.allAllowed(r.now, asTheyStand), d.best); ok {
		out.RunnerUp = r.combination(second.picks)
	}
	if !slices.Equal(d.best.picks, d.once.picks) {
		out.Once = r.combination(d.once.picks)
	}
	return out
}

func (r *reckoning) combination(picks []int) *Combination {
	a := r.account(&r.priced, r.now, picks)
	return &a.Combination
}

// Money is an option of a group in money, by their places; nil where it cannot be
// done.
func (d *Decisions) Money(group, option int) *Money { return d.reckoning.money(group, option) }

// Lines are the lines of what the applied options come to.
func (d *Decisions) Lines(applied kitchen.AppliedOptions) []estimate.Line {
	return d.reckoning.lines(d.reckoning.applied(applied))
}

// Flips are the thresholds at which the advice changes, nearest first.
func (d *Decisions) Flips() []Flip {
	if !d.Proven {
		return nil
	}
	r, advice := d.reckoning, d.best.picks
	other := *r // the search for the ceiling's shares nothing that the other changes
	other.solver, other.things, other.spare = &combine.Solver{Effort: effort}, nil, nil
	ofCeiling := beside(func() []Flip { return other.ceilingFlips(advice) })
	return nearest(append(r.flipsFrom(advice), ofCeiling()...))
}

// Odds is what is believed of a group's contents, and the groups that share them;
// false where all of them were seen.
func (d *Decisions) Odds(group int) (contents.Odds, []string, bool) {
	r := d.reckoning
	c := r.cluster[group]
	var shared []string
	for _, g := range r.clusters[c].Groups {
		shared = append(shared, r.ms[g].group.ID)
	}
	return r.odds[c], shared, r.ms[group].blind()
}

// Assumptions are the rates, odds and figures that the decision rests on and
// nobody gave, each once.
func (d *Decisions) Assumptions() []finding.Assumption {
	r := d.reckoning
	lines := r.book.Price("", r.oneOfEach())
	lines = append(lines, r.book.Shared(r.mayCall(), nil)...)
	out := r.book.Assumptions(lines, "worth.open_gap", "worth.stray_overhead", "material.probe")
	if len(r.ms) > 0 {
		out = append(out, takeoff.Assumptions(r.k.Prices.Figures)...)
	}
	for c := range r.clusters {
		out = append(out, r.odds[c].Assumptions(r.clusters[c])...)
	}
	for _, o := range r.k.Overheads() {
		if o.Behind.Wall == survey.Unknown && !o.GoesWithOldCabinets() {
			out = append(out, finding.Assumption{
				Code: "assume.overhead.wall_behind", Value: finding.Word("value", "unfinished"), Override: o.Pointer + "/behind/wall",
			})
		}
	}
	return out
}

// NotAssessed are the odds that the request gives for parts of one thing beside
// those that hold, and looks and thresholds where the search was ended.
func (d *Decisions) NotAssessed() []finding.NotAssessed {
	var out []finding.NotAssessed
	for c, o := range d.reckoning.odds {
		out = append(out, o.NotAssessed()...)
		if d.reckoning.clusters[c].UnseenLength() == 0 && !o.Assumed {
			out = append(out, finding.NotAssessed{Part: "odds", Code: "not_assessed.priors_seen", Pointer: o.Given})
		}
	}
	if !d.Proven {
		out = append(out, finding.NotAssessed{Part: "thresholds", Code: "not_assessed.too_entangled", Pointer: "/survey/walls"})
	}
	return out
}

// mayCall are the trades that any option calls for.
func (r *reckoning) mayCall() (out [estimate.Trades]estimate.Call) {
	for g := range r.ways {
		for i := range r.ways[g] {
			for t := range out {
				if charges(estimate.Trade(t)) && r.ways[g][i].calls(estimate.Trade(t)) {
					out[t].Chance = belief.Certain
				}
			}
		}
	}
	return out
}

// charges reports whether a trade may charge anything beside its labour.
func charges(t estimate.Trade) bool {
	callOut, minimum := estimate.ChargeCodes(t)
	return callOut != "" || minimum != ""
}
