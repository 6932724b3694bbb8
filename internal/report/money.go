package report

import (
	"strconv"

	"railhead/api"
	"railhead/internal/belief"
	"railhead/internal/combine"
	"railhead/internal/contents"
	"railhead/internal/decide"
	"railhead/internal/estimate"
	"railhead/internal/kitchen"
	"railhead/internal/money"
	"railhead/internal/takeoff"
)

// money writes an amount in whole coins.
func (s Scale) money(a money.Amount) string { return a.Text(s.Currency) }

// room writes the room's best combination and what stands beside it.
func (s Scale) room(k *kitchen.Kitchen, d *Told) api.RoomDecision {
	r := d.Room(d.Applied)
	out := api.RoomDecision{
		Basis: "money", Proven: d.Proven, Currency: s.Currency.Code, Advice: map[string]string{}, LowerRow: s.lowerRow(k, d, &r.Best),
		ExpectedCost: s.money(r.Best.Expected), Gain: s.money(r.Best.Gain), Net: s.money(r.Best.Net()),
		Together: s.together(r.Together),
		RunnerUp: s.beside(d, r.RunnerUp, &r.Best), Once: s.beside(d, r.Once, &r.Best),
		Applied: api.AppliedWorth{
			Gain: s.money(r.Applied.Gain), ExpectedCost: s.money(r.Applied.Expected), Net: s.money(r.Applied.Net()),
			WorseBy: s.money(r.Best.Net().Minus(r.Applied.Net())),
		},
		Flips: each(d.Flips, s.flip),
	}
	for _, a := range d.Advice {
		out.Advice[a.Group] = a.Option.String()
	}
	out.Shared = s.shared(r.Charges)
	return out
}

// shared writes the trades' charges so that they add up, as the estimate's lines do.
func (s Scale) shared(charges []combine.Charge) []api.SharedCharge {
	var parts []money.Amount
	for _, c := range charges {
		parts = append(parts, c.CallOut, c.TopUp)
	}
	parts = money.SplitTo(s.Currency, parts)
	out := []api.SharedCharge{}
	for t, c := range charges {
		if c.CallOut != 0 || c.TopUp != 0 {
			out = append(out, api.SharedCharge{
				Trade: estimate.Trade(t).String(), Chance: c.Chance.Decimal(), CallOut: s.money(parts[2*t]), TopUp: s.money(parts[2*t+1]),
			})
		}
	}
	return out
}

// together writes worths so that gains and costs add up as the room's do.
func (s Scale) together(in []decide.Together) []api.TogetherWorth {
	costs := make([]money.Amount, len(in))
	for i, t := range in {
		costs[i] = t.Cost
	}
	costs = money.SplitTo(s.Currency, costs)
	out := make([]api.TogetherWorth, len(in))
	for i, t := range in {
		out[i] = api.TogetherWorth{Code: t.Code, Evidence: t.Evidence, Worth: s.money(t.Gain.Rounded(s.Currency).Minus(costs[i]))}
	}
	return out
}

// beside writes another combination against the best.
func (s Scale) beside(d *Told, c, best *decide.Combination) *api.RunnerUp {
	if c == nil {
		return nil
	}
	return &api.RunnerUp{
		Advice: names(d, c), ExpectedCost: s.money(c.Expected), Net: s.money(c.Net()), WorseBy: s.money(best.Net().Minus(c.Net())),
	}
}

// names are a combination's options by group.
func names(d *Told, c *decide.Combination) map[string]string {
	out := make(map[string]string, len(c.Options))
	for g, o := range c.Options {
		out[d.Overheads[g].Group.ID] = o.String()
	}
	return out
}

func (s Scale) flip(f decide.Flip) api.Flip {
	out := api.Flip{Pointer: f.Pointer, At: f.At, Now: f.Now, Overhead: f.Group, From: f.From.String(), To: f.To.String()}
	if f.With != nil {
		out.With = map[string]string{}
		for state, chance := range f.With {
			out.With[contents.State(state).String()] = chance
		}
	}
	return out
}

// inMoney writes what an option comes to by itself.
func (s Scale) inMoney(out *api.Option, m *decide.Money) {
	lines := estimate.Merged(m.Lines)
	rows, total := estimate.Settle(lines, s.Currency)
	cost := s.cost(total, m.Cost.Deviation)
	out.Cost, out.Gain = &cost, s.money(m.Gain)
	out.Net = s.money(m.Gain.Rounded(s.Currency).Minus(total.Mean))
	out.Gains, out.Hours = s.gains(m.Gains), hours(m.Lines)
	for i := range lines {
		out.Lines = append(out.Lines, s.costLine(&lines[i], rows[i]))
	}
}

// gains writes what a gain is made of, so that it adds up.
func (s Scale) gains(in []decide.Gain) []api.Gain {
	worths := make([]money.Amount, len(in))
	for i := range in {
		worths[i] = in[i].Worth()
	}
	worths = money.SplitTo(s.Currency, worths)
	out := make([]api.Gain, len(in))
	for i, g := range in {
		out[i] = api.Gain{
			Code: g.Code, Says: s.says(g.Code, nil), Quantity: g.Quantity.Decimal(), Unit: g.Unit,
			Rate: g.Rate.Decimal(), Worth: s.money(worths[i]),
		}
	}
	return out
}

func (s Scale) cost(r estimate.Row, deviation money.Amount) api.Cost {
	return api.Cost{
		Low: s.money(r.Low), Likely: s.money(r.Likely), High: s.money(r.High), Mean: s.money(r.Mean), SD: s.money(deviation),
	}
}

// Estimate writes lines and what they come to.
func (s Scale) Estimate(all []estimate.Line) *api.Estimate {
	lines, total := estimate.Merged(all), estimate.TotalOf(all)
	rows, sum := estimate.Settle(lines, s.Currency)
	out := &api.Estimate{
		Currency: s.Currency.Code, Lines: make([]api.EstimateLine, 0, len(lines)), Hours: hours(all),
		Total: api.EstimateTotal{
			Cost: s.cost(sum, total.Deviation), Tax: s.money(sum.Tax),
			P10: s.money(total.P10), P50: s.money(total.P50), P90: s.money(total.P90),
		},
	}
	for i := range lines {
		out.Lines = append(out.Lines, s.line(&lines[i], rows[i], i))
	}
	return out
}

// line writes a line of the estimate.
func (s Scale) line(l *estimate.Line, r estimate.Row, i int) api.EstimateLine {
	out := api.EstimateLine{
		ID: "l" + strconv.Itoa(i+1), Overhead: l.Group, Pointer: l.Pointer, CostLine: s.costLine(l, r),
		Says: s.says(l.Code, nil), Tax: s.money(r.Tax), Assumed: l.Assumed,
	}
	if l.TaxPercent != 0 {
		out.TaxPercent = l.TaxPercent.Decimal()
	}
	return out
}

// costLine writes what a line is reckoned from.
func (s Scale) costLine(l *estimate.Line, r estimate.Row) api.CostLine {
	out := api.CostLine{
		Kind: l.Kind.String(), Code: l.Code, Trade: l.Trade.String(),
		Unit: l.Unit, Quantity: l.Quantity.Decimal(), Rate: l.Rate.Decimal(), RateCode: l.RateCode, HoursCode: l.HoursCode,
		Low: s.money(r.Low), Likely: s.money(r.Likely), High: s.money(r.High), Mean: s.money(r.Mean),
		Pool: l.Pool(), Formula: l.Formula, Inputs: each(l.Inputs, func(in takeoff.Input) api.EstimateInput { return api.EstimateInput(in) }),
	}
	if l.If < belief.Certain {
		out.Chance, out.If = l.If.Decimal(), s.condition(l)
	}
	return out
}

// condition is what must turn out for a line to come up.
func (s Scale) condition(l *estimate.Line) string {
	switch {
	case l.Kind == estimate.Shared:
		return "called"
	case l.State != contents.Empty:
		return l.State.String()
	case l.Misfit:
		return "row_does_not_fit"
	default:
		return "ceiling_missing_behind"
	}
}

func hours(lines []estimate.Line) []api.TradeHours {
	out := []api.TradeHours{}
	for t, q := range estimate.Hours(lines) {
		if q != 0 {
			out = append(out, api.TradeHours{Trade: estimate.Trade(t).String(), Hours: q.Decimal()})
		}
	}
	return out
}

// odds writes what is believed of contents; nothing where all of them were seen.
func (s Scale) odds(o contents.Odds, shared []string, unseen bool) *api.Odds {
	if !unseen {
		return nil
	}
	return &api.Odds{
		Prior: chances(o.Prior), Now: chances(o.Now), Shared: each(shared, func(g string) string { return g }),
		Steps: each(o.Steps, func(t contents.Step) api.OddsStep {
			return api.OddsStep{
				Code: t.Code, Evidence: each(t.Evidence, func(p string) string { return p }),
				Says: s.says(t.Code, t.Params), Params: s.params(t.Params),
			}
		}),
	}
}

func chances(b belief.Belief) map[string]string {
	out := make(map[string]string, len(b))
	for state, c := range b {
		out[contents.State(state).String()] = c.Decimal()
	}
	return out
}

func (s Scale) look(l *decide.Look) *api.Probe {
	if l == nil {
		return nil
	}
	return &api.Probe{
		Pointer: l.Pointer, Worth: s.money(l.Worth), Perfect: s.money(l.Perfect), Cost: s.money(l.Cost), DoIt: l.DoIt(),
		Covers: each(l.Covers, func(g string) string { return g }),
	}
}
