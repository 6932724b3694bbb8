package decide

import (
	"slices"

	"railhead/internal/belief"
	"railhead/internal/contents"
	"railhead/internal/kitchen"
	"railhead/internal/money"
	"railhead/internal/takeoff"
)

// Look is what finding something out before deciding is worth.
type Look struct {
	Pointer string       // the member of the request that the look would fill
	Worth   money.Amount // expected worth of the look, before what it costs
	Perfect money.Amount // expected worth of knowing for sure
	Cost    money.Amount
	Covers  []string // the groups that it tells about
}

// DoIt reports whether the look is worth more than it costs.
func (l *Look) DoIt() bool { return l.Worth > l.Cost }

// probe is what a probe hole into a cluster is worth: what it shows of the contents
// and of what is behind. Nil where all of it was seen: nobody drills into what is
// open, and what is behind only has to be told.
func (r *reckoning) probe(c int) *Look {
	cluster := r.clusters[c]
	at := cluster.ProbeAt()
	if at == nil {
		return nil
	}
	prior := contents.WithBehind(r.now.odds[c], r.now.missing[c])
	best := belief.Remembered(func(b belief.Belief) money.Amount {
		odds, missing := split(b)
		return r.choose(&r.priced, r.now.believing(c, odds, missing), asTheyStand).net
	})
	out := &Look{Pointer: at.Inside.Pointer, Cost: r.priceOf(takeoff.Probe)}
	out.Perfect = belief.Perfect(prior, best)
	out.Worth = min(belief.Sample(prior, contents.ProbeWithBehind(contents.Probe(cluster)), best), out.Perfect)
	for _, g := range cluster.Groups {
		out.Covers = append(out.Covers, r.ms[g].group.ID)
	}
	return out
}

// behind is what knowing whether the ceiling goes on behind is worth by itself.
func (r *reckoning) behind(c int) money.Amount {
	missing := r.now.missing[c]
	return belief.Perfect(belief.Belief{missing.Not(), missing}, func(b belief.Belief) money.Amount {
		return r.choose(&r.priced, r.now.believing(c, r.now.odds[c], b[1]), asTheyStand).net
	})
}

// split takes a belief of contents and of what is behind apart.
func split(b belief.Belief) (odds belief.Belief, missing belief.Chance) {
	n := len(b) / 2
	odds = make(belief.Belief, n)
	for s := range odds {
		odds[s] = b[s] + b[s+n]
		missing += b[s+n]
	}
	return odds, missing
}

// believing is the knowledge with another belief of one cluster.
func (kn knowledge) believing(c int, odds belief.Belief, missing belief.Chance) knowledge {
	kn.odds, kn.missing = slices.Clone(kn.odds), slices.Clone(kn.missing)
	kn.odds[c], kn.missing[c] = odds, missing
	return kn
}

// remeasure is what measuring the ceiling over a group again is worth; nil where
// its doubt does not reach the taller row.
func (r *reckoning) remeasure(g int) *Look {
	fits := r.now.fits[g]
	if fits == 0 || fits == belief.Certain {
		return nil
	}
	prior := belief.Belief{fits.Not(), fits}
	best := belief.Remembered(func(b belief.Belief) money.Amount {
		kn := r.now
		kn.fits = slices.Clone(kn.fits)
		kn.fits[g] = b[1]
		return r.choose(&r.priced, kn, asTheyStand).net
	})
	right := belief.Chance(r.k.Prices.Figures.Of(kitchen.RemeasuredRight)) * belief.Certain / belief.Chance(money.One)
	signals := [][]belief.Chance{{right, right.Not()}, {right.Not(), right}}
	out := &Look{
		Pointer: r.k.Room.Readings[r.ms[g].taller.doubt().Largest].Pointer,
		Cost:    r.priceOf(takeoff.Remeasure), Covers: []string{r.ms[g].group.ID},
		Perfect: belief.Perfect(prior, best),
	}
	out.Worth = min(belief.Sample(prior, signals, best), out.Perfect)
	return out
}

// priceOf is what one piece of some work is expected to cost.
func (r *reckoning) priceOf(w takeoff.Work) money.Amount {
	s := r.book.Sum([]takeoff.Item{{Work: w, Quantity: money.One}})
	return sumOf(&s)
}
