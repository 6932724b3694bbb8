package decide

import (
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
	certain estimate.Sum
	found   [contents.States]estimate.Sum
	behind  estimate.Sum
	closing estimate.Sum // of the gap, where the taller row turns out not to fit
}

func (r *reckoned) reckon(b *estimate.Book, m *measured) {
	r.certain, r.behind, r.closing = b.Sum(m.Items), b.Sum(m.Behind), b.Sum(m.closing)
	for s := range m.Found {
		r.found[s] = b.Sum(m.Found[s])
	}
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

// under weighs what may turn up.
func (r *reckoned) under(c chances) expected {
	halt := c.found[contents.Immovable]
	e := expected{gain: r.gain, cost: r.certain}
	e.gain = e.gain.Plus(c.closing.Of(r.misfit.Minus(r.gain)))
	e.gain = e.gain.Plus(halt.Of(r.stopped.Minus(e.gain)))
	inside := spared()
	for s := range r.found {
		e.add(&r.found[s], c.found[s], &inside)
	}
	behind, closing := spared(), spared()
	e.add(&r.behind, c.behind, &behind)
	e.add(&r.closing, c.closing, &closing)
	for t := range e.chance {
		e.chance[t] = times(times(inside[t], behind[t]), closing[t]).Not()
		if r.certain.Needs[t] {
			e.chance[t] = belief.Certain
		}
	}
	return e
}

// sparing is the chance that each trade is not called for by one unknown.
type sparing [estimate.Trades]belief.Chance

func spared() (out sparing) {
	for t := range out {
		out[t] = belief.Certain
	}
	return out
}

// add counts work that comes up with a chance.
func (e *expected) add(s *estimate.Sum, chance belief.Chance, not *sparing) {
	if chance == 0 {
		return
	}
	e.cost = e.cost.Plus(s.At(chance))
	for t, needed := range s.Needs {
		if needed {
			not[t] -= chance
		}
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

// way is the option for the search over the room.
func (e *expected) way() combine.Way {
	w := combine.Way{Worth: e.gain.Minus(e.cost.Bought)}
	for t, chance := range e.chance {
		if chance > 0 {
			w.Calls = append(w.Calls, combine.Call{Trade: t, Chance: chance, Labour: e.cost.Labour[t]})
		}
	}
	return w
}

// times is the chance that two independent things both are so.
func times(a, b belief.Chance) belief.Chance {
	return (a*b + belief.Certain/2) / belief.Certain
}
