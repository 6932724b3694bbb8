package decide

import (
	"slices"

	"railhead/internal/belief"
	"railhead/internal/contents"
	"railhead/internal/estimate"
	"railhead/internal/kitchen"
	"railhead/internal/money"
)

// flipsFrom are the thresholds of the room's advice on every rate, every prior and
// every worth that it rests on.
func (r *reckoning) flipsFrom(advice []int) []Flip {
	var out []Flip
	for _, a := range slices.Concat(r.worthAxes(), r.rateAxes(), r.priorAxes()) {
		out = append(out, r.flips(&a, advice)...)
	}
	return out
}

// pricedAxis is a number on which only prices hang; what price returns holds until
// the next amount.
func (r *reckoning) pricedAxis(pointer string, now, high money.Amount, price func(money.Amount) *priced) axis {
	var last *priced
	var at int64 = -1
	cached := func(v int64) *priced {
		if v != at {
			last, at = price(money.Amount(v)), v
		}
		return last
	}
	return axis{
		pointer: pointer, now: int64(now), high: int64(high),
		text: func(v int64) string { return money.Amount(v).Decimal() },
		best: func(v int64) []int { return r.choose(cached(v), r.now, asTheyStand).picks },
		net:  func(v int64, picks []int) money.Amount { return r.net(cached(v), r.now, picks) },
	}
}

// mostWorth is as high as a threshold of a worth is looked for.
const mostWorth = 100_000 * money.Unit

func (r *reckoning) worthAxes() []axis {
	w := r.k.Prices.Worth
	axes := []struct {
		pointer string
		now     money.Amount
		high    money.Amount
		set     func(*kitchen.Worth, money.Amount)
	}{
		{"/money/to_ceiling_worth", w.ToCeiling.Amount, mostWorth, func(w *kitchen.Worth, a money.Amount) { w.ToCeiling.Amount = a }},
		{"/money/storage_per_litre", w.Litre.Amount, mostWorth / 100, func(w *kitchen.Worth, a money.Amount) { w.Litre.Amount = a }},
		{"/money/even_line_worth", w.EvenLine.Amount, mostWorth, func(w *kitchen.Worth, a money.Amount) { w.EvenLine.Amount = a }},
	}
	var out []axis
	for _, x := range axes {
		out = append(out, r.pricedAxis(x.pointer, x.now, max(x.high, x.now), r.atWorth(x.set)))
	}
	if w.Shorter != nil {
		set := func(w *kitchen.Worth, a money.Amount) {
			w.Shorter = &kitchen.Worthy{Amount: a, Pointer: w.Shorter.Pointer}
		}
		out = append(out, r.pricedAxis("/money/shorter_cabinet", w.Shorter.Amount, max(mostWorth, w.Shorter.Amount), r.atWorth(set)))
	}
	return out
}

// widely is how many times a rate the thresholds of it are looked for.
const widely = 20

// rateAxes are the rates that some option rests on, each as a single amount.
func (r *reckoning) rateAxes() []axis {
	var out []axis
	bills := r.bills()
	for _, code := range estimate.Codes() {
		if !r.rests(code, bills) {
			continue
		}
		rate := r.book.Rate(code)
		high := max(widely*rate.Likely, rate.High, money.Unit)
		a := r.pricedAxis(pointerOf(code, rate), rate.Likely, high, r.atRate(code, bills))
		a.mean = int64(rate.Mean())
		out = append(out, a)
	}
	return out
}

// pointerOf is the member that a plain amount for a rate is sent in.
func pointerOf(code string, rate estimate.Rate) string {
	if rate.Given && rate.Pointer != "" {
		return rate.Pointer
	}
	return "/money/rates/" + code
}

// rests reports whether any option hangs on a rate.
func (r *reckoning) rests(code string, bills [][]billed) bool {
	if isWorth(code) {
		return true
	}
	on, charged := restingOn(code), chargedBy(code)
	for g := range bills {
		for i := range bills[g] {
			if bills[g][i].restOn(on) || charged != estimate.NoTrade && r.ways[g][i].calls(charged) {
				return true
			}
		}
	}
	return r.exchangesRestOn(on)
}

// priorSteps is how finely thresholds of odds are told: in millionths.
const priorSteps = 1_000_000

// priorAxes are the odds of each state of each cluster's contents before anyone
// looked; the other states keep their proportion.
func (r *reckoning) priorAxes() []axis {
	var out []axis
	for c, cluster := range r.clusters {
		if cluster.UnseenLength() == 0 {
			continue
		}
		prior := r.odds[c].Prior
		for s := range prior {
			given := func(v int64) belief.Belief { return rescaled(prior, s, v) }
			knows := func(v int64) knowledge {
				return r.now.believing(c, contents.With(cluster, given(v)).Now, r.now.missing[c])
			}
			out = append(out, axis{
				pointer: cluster.PriorPointer() + "/" + contents.State(s).String(),
				now:     int64(prior[s]) * priorSteps / int64(belief.Certain), high: priorSteps,
				text: func(v int64) string { return (belief.Chance(v) * belief.Certain / priorSteps).Decimal() },
				with: func(v int64) []string { return chanceTexts(given(v)) },
				best: func(v int64) []int { return r.choose(&r.priced, knows(v), asTheyStand).picks },
				net:  func(v int64, picks []int) money.Amount { return r.net(&r.priced, knows(v), picks) },
			})
		}
	}
	return out
}

// rescaled is a belief with one state's chance at a step and the others in
// proportion; where the others had none, they are alike.
func rescaled(prior belief.Belief, s int, v int64) belief.Belief {
	fixed := belief.Chance(v) * belief.Certain / priorSteps
	others := slices.Clone(prior)
	others[s] = 0
	if prior[s] == belief.Certain {
		for i := range others {
			others[i] = 1
		}
		others[s] = 0
	}
	parts := money.Apportion(fixed.Not(), others)
	parts[s] = fixed
	return parts
}

func chanceTexts(b belief.Belief) []string {
	out := make([]string, len(b))
	for i, c := range b {
		out[i] = c.Decimal()
	}
	return out
}
