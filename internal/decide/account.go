package decide

import (
	"railhead/internal/combine"
	"railhead/internal/kitchen"
	"railhead/internal/money"
)

// account is a combination in money, taken apart.
type account struct {
	Combination
	charges  []combine.Charge
	together []Together
}

// net is what a combination nets, to the last place; the least of all where a wish
// for a cabinet is not granted.
func (r *reckoning) net(p *priced, kn knowledge, picks []int) money.Amount {
	problem := r.problem(p, kn, alone(picks))
	net, ok := problem.Value(make([]int, len(picks)))
	switch {
	case !ok:
		return -money.Most
	case len(r.joints) > 0 && r.ends(picks) > 0:
		return net.Plus(p.values.EvenLine.Amount)
	default:
		return net
	}
}

// account adds a combination up, each part in whole coins, so that what is told of
// the parts adds up to what is told of the whole. A wish for a cabinet that another
// overhead does not let through comes to nothing: the cabinet stays as planned.
func (r *reckoning) account(p *priced, kn knowledge, picks []int) account {
	coin := r.k.Prices.Currency
	a := account{Combination: Combination{Options: make([]kitchen.Option, len(picks))}}
	for g, i := range picks {
		e := r.expected(p, kn, g, i)
		a.Options[g] = r.options[g][i].Option
		a.Gain, a.Expected = a.Gain.Plus(e.gain.Rounded(coin)), a.Expected.Plus(e.mean().Rounded(coin))
	}
	problem := r.problem(p, kn, alone(picks))
	a.charges = problem.Charges(make([]int, len(picks)))
	var charged, exchanged money.Amount
	for _, c := range a.charges {
		charged = charged.Plus(c.CallOut).Plus(c.TopUp)
	}
	a.together = r.together(p, picks)
	for _, t := range a.together {
		a.Gain, exchanged = a.Gain.Plus(t.Gain.Rounded(coin)), exchanged.Plus(t.Cost)
	}
	a.Expected = a.Expected.Plus(charged.Rounded(coin)).Plus(exchanged.Rounded(coin))
	return a
}

// alone allows one option for each group.
func alone(picks []int) [][]int {
	out := make([][]int, len(picks))
	for g := range picks {
		out[g] = picks[g : g+1]
	}
	return out
}

// together is what belongs to no group alone: cabinets under several, and one even
// line.
func (r *reckoning) together(p *priced, picks []int) []Together {
	var out []Together
	for n := range r.joints {
		limit, wish := r.bearing(n, picks)
		o := p.shared[n][index(wish)][limit]
		if !o.possible {
			o = p.shared[n][0][limit]
		}
		if o.gain != 0 || o.cost != 0 {
			out = append(out, Together{gainShared, []string{r.joints[n].cabinet.Pointer}, o.gain, o.cost})
		}
	}
	if r.ends(picks) > 0 && p.values.EvenLine.Amount != 0 {
		out = append(out, Together{gainEvenLine, []string{p.values.EvenLine.Pointer}, p.values.EvenLine.Amount, 0})
	}
	return out
}

// bearing is what the picked options do to a joint cabinet together.
func (r *reckoning) bearing(joint int, picks []int) (limit uint8, wish bool) {
	limit = uint8(r.joints[joint].unlimited())
	for g, i := range picks {
		for _, e := range r.measured[g][i].effects {
			if e.Joint == joint {
				limit, wish = min(limit, e.Limit), wish || e.Wish
			}
		}
	}
	return limit, wish
}
