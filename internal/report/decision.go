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

// Decisions writes the advice with its options and reasons.
func (s Scale) Decisions(k *kitchen.Kitchen, d decide.Decisions) api.Decisions {
	out := api.Decisions{
		Room:      api.RoomDecision{Basis: "rules", Advice: map[string]string{}, LowerRow: s.lowerRow(k, d)},
		Overheads: each(d.Overheads, s.overhead),
	}
	for _, a := range d.Advice {
		out.Room.Advice[a.Group] = a.Option.String()
	}
	return out
}

func (s Scale) lowerRow(k *kitchen.Kitchen, d decide.Decisions) *api.LowerRow {
	if d.Lower == nil {
		return nil
	}
	return &api.LowerRow{
		By: s.upL(d.Lower.By), RowShift: s.requestLength(k.Plan.RowShift - s.lowered(d)), Possible: d.Lower.Possible,
		Gates: each(d.Lower.Gates, func(c string) string { return c }), Spares: each(d.Lower.Spares, func(g string) string { return g }),
	}
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

func (s Scale) overhead(o decide.Overhead) api.OverheadDecision {
	return api.OverheadDecision{
		Overhead: o.Group.ID, Advice: o.Advice.String(), Options: each(o.Options, s.option), Reasons: each(o.Reasons, s.reason),
		Pointers: each(o.Group.Parts, func(p *survey.Overhead) string { return p.Pointer }),
	}
}

func (s Scale) option(o decide.Option) api.Option {
	return api.Option{
		Option: o.Option.String(), Possible: o.Possible,
		Gates: each(o.Gates, func(g decide.Gate) api.Gate {
			rule, _ := rules.Of(g.Code)
			return api.Gate{Code: g.Code, Pointer: g.Pointer, Says: s.says(g.Code, g.Params), Who: rule.Who}
		}),
		Swaps: each(o.Swaps, func(w cabinet.Swap) api.Swap {
			return api.Swap{Cabinet: w.Cabinet.ID, Height: s.plan(w.Height), Top: s.plan(w.Top)}
		}),
	}
}

func (s Scale) reason(r decide.Reason) api.Reason {
	return api.Reason{
		Factor: r.Factor.String(), Leans: r.Leans.String(), Code: r.Code,
		Because: s.says(r.Code, r.Params), Params: s.params(r.Params),
		Evidence: each(r.Evidence, func(p string) string { return p }),
	}
}
