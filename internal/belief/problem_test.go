package belief

import "railhead/internal/money"

// A decision problem as its source prints it: what each decision brings in each
// state, what is believed before, and a test that may be paid for.
type problem struct {
	prior    Belief
	payoffs  [][]money.Amount // by decision and state
	signals  [][]Chance       // by signal and state
	testCost money.Amount
}

func (p problem) best(b Belief) money.Amount {
	best := b.Mean(p.payoffs[0])
	for _, payoff := range p.payoffs[1:] {
		best = max(best, b.Mean(payoff))
	}
	return best
}

func percent(parts ...Chance) []Chance {
	for i := range parts {
		parts[i] *= Certain / 100
	}
	return parts
}

func units(amounts ...money.Amount) []money.Amount {
	for i := range amounts {
		amounts[i] *= money.Unit
	}
	return amounts
}

// wildcatter is Raiffa's oil wildcatter, in thousands of dollars; the states are
// dry, wet and soaking, the signals of the seismic test no, open and closed
// structure (F, camvac.hugin.com, Oil_Wildcatter, and data.biotracer.hugin.com).
func wildcatter() problem {
	return problem{
		prior:    percent(50, 30, 20),
		payoffs:  [][]money.Amount{units(-70, 50, 200), units(0, 0, 0)},
		signals:  [][]Chance{percent(60, 30, 10), percent(30, 40, 40), percent(10, 30, 50)},
		testCost: 10 * money.Unit,
	}
}

// uncertainCost is the same tree where drilling costs 150, 300 or 500 thousand
// with chances of .2, .6 and .2 and brings 0, 700 or 1200 (F, support.sas.com,
// SAS/OR, the DTREE procedure, getting started). The states are return by cost; the
// test tells of the return only.
func uncertainCost() problem {
	returns, costs := units(0, 700, 1200), units(150, 300, 500)
	chanceOfCost := percent(20, 60, 20)
	deposit := wildcatter()
	p := problem{
		payoffs: [][]money.Amount{nil, make([]money.Amount, len(returns)*len(costs))}, signals: make([][]Chance, len(deposit.signals)),
		testCost: 60 * money.Unit,
	}
	for i, back := range returns {
		for j, cost := range costs {
			p.prior = append(p.prior, deposit.prior[i]*chanceOfCost[j]/Certain)
			p.payoffs[0] = append(p.payoffs[0], back-cost)
			for s, likelihood := range deposit.signals {
				p.signals[s] = append(p.signals[s], likelihood[i])
			}
		}
	}
	return p
}

// goferbroke is the Goferbroke Company of Hillier and Lieberman, in thousands of
// dollars; the states are oil and dry, the signals favourable and unfavourable
// soundings (F, lindo.com, DECTREE, and docstoc 17813422).
func goferbroke() problem {
	return problem{
		prior:    percent(25, 75),
		payoffs:  [][]money.Amount{units(700, -100), units(90, 90)},
		signals:  [][]Chance{percent(60, 20), percent(40, 80)},
		testCost: 30 * money.Unit,
	}
}
