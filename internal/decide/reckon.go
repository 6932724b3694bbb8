package decide

import (
	"slices"

	"railhead/internal/belief"
	"railhead/internal/combine"
	"railhead/internal/contents"
	"railhead/internal/estimate"
	"railhead/internal/money"
)

// reckoned is one option in money, before anything is believed of what is
// unknown.
type reckoned struct {
	gain    money.Amount // once it is done as meant
	stopped money.Amount // where something immovable stops it: what keeping is worth
	misfit  money.Amount // where the taller row turns out not to fit
	sums    [lists]estimate.Sum

	heard   bool // the trades that are called, and under what chances
	hearing chances
	called  [estimate.Trades]belief.Chance

	known bool // the last way, and under what
	under chances
	fees  *combine.Trade
	way   combine.Way
}

// calls reports whether the option may call a trade.
func (r *reckoned) calls(t estimate.Trade) bool {
	return slices.ContainsFunc(r.sums[:], func(s estimate.Sum) bool { return s.Needs[t] })
}

// wayUnder is the option for the search over the room. It is kept: from one search
// to the next most options stay what they were.
func (r *reckoned) wayUnder(c chances, fees []combine.Trade) combine.Way {
	if !r.known || c != r.under || r.fees != &fees[0] {
		e := r.expected(c)
		r.known, r.under, r.fees, r.way = true, c, &fees[0], e.way(r.counted(c, fees))
	}
	return r.way
}

// counted is the labour of each trade that counts towards the least that the trade
// comes for: that of certain work. What may turn up is on top of it, since nobody
// can plan by it. Where the trade comes only for what may turn up, each finding
// counts up to that least charge. So what an option nets is, for each unknown, the
// mean of what it nets in each of its states.
func (r *reckoned) counted(c chances, fees []combine.Trade) (out [estimate.Trades]money.Amount) {
	certain := &r.sums[listCertain]
	for t, needed := range certain.Needs {
		if needed {
			out[t] = certain.Labour[t]
		}
	}
	count := func(s *estimate.Sum, chance belief.Chance) {
		for t, labour := range s.Labour {
			if labour > 0 && chance > 0 && !certain.Needs[t] {
				out[t] = out[t].Plus(chance.Of(min(fees[t].Minimum, labour)))
			}
		}
	}
	for s, chance := range c.found {
		count(&r.sums[listFound+s], chance)
	}
	count(&r.sums[listBehind], c.behind)
	count(&r.sums[listClosing], c.closing)
	return out
}

// chances are how probable it is that each unknown turns out against an option.
type chances struct {
	found   [contents.States]belief.Chance // that contents are there and in the way
	behind  belief.Chance                  // that the ceiling's board is missing
	closing belief.Chance                  // that the taller row does not fit
}

// expected is an option in money under what is believed: what it is worth, what it
// costs by itself, and each trade's chance of being needed.
type expected struct {
	gain   money.Amount
	cost   estimate.Sum
	chance [estimate.Trades]belief.Chance
}

// expected weighs what may turn up.
func (r *reckoned) expected(c chances) expected {
	misfit, stopped := r.risks(c)
	e := expected{gain: r.gain.Plus(misfit).Plus(stopped), cost: r.sums[listCertain]}
	for s, chance := range c.found {
		e.add(&r.sums[listFound+s], chance)
	}
	e.add(&r.sums[listBehind], c.behind)
	e.add(&r.sums[listClosing], c.closing)
	e.chance = r.calling(c)
	return e
}

// calling is each trade's chance of being needed. It hangs on no rate, and is kept
// for the last chances.
func (r *reckoned) calling(c chances) [estimate.Trades]belief.Chance {
	if r.heard && c == r.hearing {
		return r.called
	}
	inside, behind, closing := spared(), spared(), spared()
	for s, chance := range c.found {
		inside.spare(&r.sums[listFound+s], chance)
	}
	behind.spare(&r.sums[listBehind], c.behind)
	closing.spare(&r.sums[listClosing], c.closing)
	for t := range r.called {
		r.called[t] = times(times(inside[t], behind[t]), closing[t]).Not()
		if r.sums[listCertain].Needs[t] {
			r.called[t] = belief.Certain
		}
	}
	r.heard, r.hearing = true, c
	return r.called
}

// risks are what the gain is expected to change by where the taller row turns out not
// to fit, and where something immovable then stops the work.
func (r *reckoned) risks(c chances) (misfit, stopped money.Amount) {
	misfit = c.closing.Of(r.misfit.Minus(r.gain))
	stopped = c.found[contents.Immovable].Of(r.stopped.Minus(r.gain.Plus(misfit)))
	return misfit, stopped
}

// risked are the risks beside the gains, so that these add up.
func (r *reckoned) risked(c chances) []Gain {
	var out []Gain
	misfit, stopped := r.risks(c)
	if misfit != 0 {
		out = append(out, riskOf(gainMisfit, c.closing, r.misfit.Minus(r.gain), misfit))
	}
	if stopped != 0 {
		out = append(out, riskOf(gainStopped, c.found[contents.Immovable], r.stopped.Minus(r.gain.Plus(misfit)), stopped))
	}
	return out
}

// sparing is the chance that each trade is not called for by one unknown.
type sparing [estimate.Trades]belief.Chance

func spared() (out sparing) {
	for t := range out {
		out[t] = belief.Certain
	}
	return out
}

// spare takes a chance off where work needs a trade.
func (not *sparing) spare(s *estimate.Sum, chance belief.Chance) {
	for t, needed := range s.Needs {
		if needed {
			not[t] -= chance
		}
	}
}

// add counts work that comes up with a chance.
func (e *expected) add(s *estimate.Sum, chance belief.Chance) {
	if chance != 0 && *s != (estimate.Sum{}) {
		e.cost.Add(s, chance)
	}
}

// mean is what the option is expected to cost by itself.
func (e *expected) mean() money.Amount { return sumOf(&e.cost) }

func sumOf(s *estimate.Sum) money.Amount {
	out := s.Bought
	for _, l := range s.Labour {
		out = out.Plus(l)
	}
	return out
}

// way is the option for the search over the room, with the labour that counts
// towards least charges apart.
func (e *expected) way(counted [estimate.Trades]money.Amount) combine.Way {
	n := 0
	for _, chance := range e.chance {
		if chance > 0 {
			n++
		}
	}
	w := combine.Way{Worth: e.gain.Minus(e.cost.Bought), Calls: make([]combine.Call, 0, n)}
	for t, chance := range e.chance {
		if chance > 0 {
			w.Calls = append(w.Calls, combine.Call{Trade: t, Chance: chance, Labour: counted[t]})
		}
		w.Worth = w.Worth.Minus(e.cost.Labour[t].Minus(counted[t]))
	}
	return w
}

// times is the chance that two independent things both are so.
func times(a, b belief.Chance) belief.Chance {
	return (a*b + belief.Certain/2) / belief.Certain
}
