package report

import (
	"railhead/api"
	"railhead/internal/cabinet"
	"railhead/internal/decide"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/rules"
	"railhead/internal/survey"
)

// Told is everything that there is to tell of a decision.
type Told struct {
	decide.Decisions
	Applied  kitchen.AppliedOptions
	Informed decide.Informed
	Flips    []decide.Flip
	Lowered  *decide.Combination
}

// Decisions writes the advice with its options, reasons and money.
func (s Scale) Decisions(k *kitchen.Kitchen, d *Told) api.Decisions {
	out := api.Decisions{Room: s.room(k, d), Overheads: make([]api.OverheadDecision, 0, len(d.Overheads))}
	for g, o := range d.Overheads {
		out.Overheads = append(out.Overheads, s.overhead(d, g, o))
	}
	return out
}

func (s Scale) lowerRow(k *kitchen.Kitchen, d *Told, best *decide.Combination) *api.LowerRow {
	if d.Lower == nil {
		return nil
	}
	out := &api.LowerRow{
		Advice: map[string]string{},
		By:     s.upL(d.Lower.By), RowShift: s.requestLength(k.Plan.RowShift - s.lowered(d.Decisions)), Possible: d.Lower.Possible,
		Gates: each(d.Lower.Gates, func(c string) string { return c }), Spares: each(d.Lower.Spares, func(g string) string { return g }),
	}
	if low := d.Lowered; low != nil {
		out.Advice, out.ExpectedCost = names(d, low), s.money(low.Expected)
		out.Saves = s.money(low.Net().Minus(best.Net()))
	}
	return out
}

// lowered is how far to set the row lower: a whole step of the tape where legs
// and counter allow that.
func (s Scale) lowered(d decide.Decisions) length.Length {
	if step := d.Lower.By.RoundTo(s.Step, length.Up); step <= d.Lower.Most {
		return step
	}
	return d.Lower.By
}

// requestLength is a length as a request would give it: a number in the
// request's units where that is exact, else a string with its own unit.
func (s Scale) requestLength(l length.Length) api.Length {
	if text, ok := l.Decimal(s.Unit); ok {
		return api.Number(text)
	}
	return api.Quoted(l.Text(length.MM))
}

func (s Scale) overhead(d *Told, g int, o decide.Overhead) api.OverheadDecision {
	out := api.OverheadDecision{
		Overhead: o.Group.ID, Advice: o.Advice.String(), Reasons: each(o.Reasons, s.reason),
		Pointers:  each(o.Group.Parts, func(p *survey.Overhead) string { return p.Pointer }),
		Options:   make([]api.Option, 0, len(o.Options)),
		Contents:  s.odds(d.Odds(g)),
		Probe:     s.look(d.Informed.Probes[g]),
		Remeasure: s.look(d.Informed.Remeasure[g]),
	}
	for i, option := range o.Options {
		out.Options = append(out.Options, s.option(option, d.Money(g, i)))
	}
	return out
}

func (s Scale) option(o decide.Option, m *decide.Money) api.Option {
	out := api.Option{
		Option: o.Option.String(), Possible: o.Possible,
		Gates: each(o.Gates, func(g decide.Gate) api.Gate {
			rule, _ := rules.Of(g.Code)
			return api.Gate{Code: g.Code, Pointer: g.Pointer, Says: s.says(g.Code, g.Params), Who: rule.Who}
		}),
		Swaps: each(o.Swaps, func(w cabinet.Swap) api.Swap {
			return api.Swap{Cabinet: w.Cabinet.ID, Height: s.plan(w.Height), Top: s.plan(w.Top)}
		}),
		Needs: each(o.Needs, func(g string) string { return g }),
		Gains: []api.Gain{}, Lines: []api.CostLine{}, Hours: []api.TradeHours{},
	}
	if m != nil {
		s.inMoney(&out, m)
	}
	return out
}

func (s Scale) reason(r decide.Reason) api.Reason {
	return api.Reason{
		Factor: r.Factor.String(), Leans: r.Leans.String(), Code: r.Code,
		Because: s.says(r.Code, r.Params), Params: s.params(r.Params),
		Evidence: each(r.Evidence, func(p string) string { return p }),
	}
}
