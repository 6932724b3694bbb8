package assess

import (
	"context"
	"slices"

	"go.opentelemetry.io/otel"

	"railhead/api"
	"railhead/internal/decide"
	"railhead/internal/estimate"
	"railhead/internal/finding"
	"railhead/internal/fit"
	"railhead/internal/hazard"
	"railhead/internal/kitchen"
	"railhead/internal/rail"
	"railhead/internal/report"
	"railhead/internal/resolve"
	"railhead/internal/stock"
	"railhead/internal/trim"
)

// Assess answers one request, or says everything that is wrong with it.
func Assess(ctx context.Context, req *api.Request, parts Part) (*api.Assessment, []api.Fault) {
	c, faults := resolved(ctx, req)
	if len(faults) > 0 {
		return nil, faults
	}
	r := compute(ctx, c, parts)
	_, span := stage(ctx, "report")
	defer span.End()
	return r.answer(parts), nil
}

// Check says everything that is wrong with a request without answering it.
func Check(ctx context.Context, req *api.Request) []api.Fault {
	_, faults := resolved(ctx, req)
	return faults
}

func resolved(ctx context.Context, req *api.Request) (*resolve.Case, []api.Fault) {
	_, span := stage(ctx, "resolve")
	defer span.End()
	c, faults := resolve.Request(req)
	return c, told(faults)
}

// told is what is wrong with a request, with its words.
func told(faults []resolve.Fault) []api.Fault {
	out := make([]api.Fault, 0, len(faults))
	for _, f := range faults {
		out = append(out, report.Scale{}.Fault(f.Code, f.Pointer, f.Params))
	}
	return out
}

// result is everything that was computed for one case.
type result struct {
	*resolve.Case
	found     []fit.Result
	rows      []fit.Row
	decisions decide.Decisions
	informed  decide.Informed
	flips     []decide.Flip
	lowered   *decide.Combination
	applied   kitchen.AppliedOptions
	trims     []trim.Trim
	after     []fit.After
	rails     []rail.Rail
	stock     *stock.Plan
	lines     []estimate.Line // of what is applied
	beyond    bool            // they come to more than can be told
}

// compute runs the core in order. Every part rests on the fit as found and on
// what is applied, so those are always computed; cutting rail stock is not.
func compute(ctx context.Context, c *resolve.Case, parts Part) *result {
	k := c.Kitchen
	r := &result{Case: c}
	run(ctx, "fit", func() {
		r.found, r.rows = fit.Check(k), fit.Rows(k)
		r.Findings = append(r.Findings, fit.WorkZone(k)...)
		r.Findings = append(r.Findings, fit.Footprint(k)...)
	})
	run(ctx, "decide", func() {
		r.decisions = decide.Decide(k, r.found, r.rows, fit.LowerRow(k, r.found))
		r.applied = r.decisions.Applied(k)
		r.informed = r.decisions.Inform()
		r.Questions = slices.Concat(r.Questions, r.decisions.Questions, r.informed.Questions())
		r.Findings = append(r.Findings, r.decisions.Findings...)
		r.Assumptions = append(r.Assumptions, r.decisions.Assumptions()...)
		r.NotAssessed = append(r.NotAssessed, r.decisions.NotAssessed()...)
	})
	r.price()
	run(ctx, "lowered", func() {
		r.lowered = r.decisions.Lowered()
		r.Findings = append(r.Findings, r.decisions.Alternatives(r.lowered, r.applied)...)
	})
	if parts&Decisions != 0 {
		run(ctx, "flips", func() { r.flips = r.decisions.Flips() })
	}
	run(ctx, "trim", func() { r.trims = trim.Plan(k, r.found, r.applied) })
	sky := trim.Sky(k, r.applied, r.trims)
	run(ctx, "after", func() { r.after = fit.AfterAll(k, r.found, sky, r.applied) })
	run(ctx, "rail", func() { r.rails = rail.Plan(k, k.Found(), sky) })
	for _, one := range r.rails {
		r.Questions = append(r.Questions, one.Questions...)
	}
	if parts&Rails != 0 {
		run(ctx, "stock", r.cutStock)
	}
	return r
}

// price are the lines of what is applied, unless senseless rates make them senseless.
func (r *result) price() {
	r.lines = r.decisions.Lines(r.applied)
	if r.beyond = estimate.Beyond(r.lines); r.beyond {
		r.NotAssessed = append(r.NotAssessed, finding.NotAssessed{Part: "estimate", Code: "not_assessed.beyond_money", Pointer: "/money/rates"})
	}
}

func (r *result) cutStock() {
	plan, missing := rail.Stock(r.Kitchen, r.rails)
	r.stock = plan
	r.NotAssessed = append(r.NotAssessed, missing...)
}

func (r *result) answer(parts Part) *api.Assessment {
	k, s := r.Kitchen, report.Scale{Unit: r.Units, Step: r.Tape, Currency: r.Kitchen.Prices.Currency}
	out := &api.Assessment{Common: r.common(s)}
	if parts&Fit != 0 {
		out.Rows, out.Fit = s.Rows(r.rows), s.Fits(r.found, r.after, k.Room.Readings)
	}
	if parts&Rails != 0 {
		out.Rails, out.RailStock = s.Rails(k, r.rails), s.RailStock(r.stock)
	}
	if parts&Trims != 0 {
		out.Trims = s.Trims(k, r.trims)
	}
	if parts&Decisions != 0 {
		out.Decisions = s.Decisions(k, &report.Told{
			Decisions: r.decisions, Applied: r.applied, Informed: r.informed, Flips: r.flips, Lowered: r.lowered,
		})
	}
	if parts&Estimate != 0 && !r.beyond {
		out.Estimate = s.Estimate(r.lines)
	}
	return out
}

func (r *result) common(s report.Scale) api.Common {
	datums := s.Datums(r.Kitchen)
	verdict := r.summary()
	return api.Common{
		Edition: Edition, Datum: datums[0], Datums: datums, Applied: report.Applied(r.applied),
		Summary:     s.Summary(verdict.String(), verdict.code(), r.summaryParams()),
		Findings:    s.Findings(r.Findings),
		Questions:   s.Questions(byWorth(unique(r.Questions), r.informed.Worths())),
		Cautions:    s.Cautions(hazard.Cautions(r.Kitchen, r.applied)),
		Assumptions: s.Assumptions(r.Assumptions),
		NotAssessed: report.NotAssessed(r.NotAssessed),
	}
}

var tracer = otel.Tracer("railhead/assess")
