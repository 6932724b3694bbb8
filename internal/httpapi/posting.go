package httpapi

import (
	"context"
	"net/http"
	"reflect"

	"github.com/danielgtaylor/huma/v2"

	"railhead/api"
	"railhead/internal/assess"
)

// posting is one path that reads a body.
type posting struct {
	path, id, summary, description string
	tag                            string
	body                           bodyForm
	answer                         reflect.Type
	respond                        responder
}

// responder answers a body, or says everything that is wrong with it.
type responder func(ctx context.Context, s *Service, body []byte) (any, []api.Fault)

// postings are the paths that read a body; the command line answers as the first one does.
var postings = []posting{
	{
		"/v1/assessments", "assess", "Assess a room",
		"Everything in one answer: fit and rows, rails and their stock, trims, decisions, estimate.",
		tagAssess, requestForm, reflect.TypeFor[api.Assessment](),
		assessing(assess.All, func(a *api.Assessment) any { return a }),
	},
	{
		"/v1/fit-checks", "checkFit", "Check what fits",
		"Each planned cabinet against everything around it, and each row of the system against the room.",
		tagAssess, requestForm, reflect.TypeFor[api.FitAnswer](),
		assessing(assess.Fit, func(a *api.Assessment) any { return api.FitAnswer{Common: a.Common, Rows: a.Rows, Fit: a.Fit} }),
	},
	{
		"/v1/rail-heights", "findRailHeights", "Find the rails' heights",
		"Where the rails go, their pieces and fixings, and the stock to cut them from.",
		tagAssess, requestForm, reflect.TypeFor[api.RailAnswer](),
		assessing(assess.Rails, func(a *api.Assessment) any {
			return api.RailAnswer{Common: a.Common, Rails: a.Rails, RailStock: a.RailStock}
		}),
	},
	{
		"/v1/soffit-trims", "planTrims", "Plan the cuts",
		"Where each overhead is cut, what comes off, what is in the way, and the steps in order.",
		tagAssess, requestForm, reflect.TypeFor[api.TrimAnswer](),
		assessing(assess.Trims, func(a *api.Assessment) any { return api.TrimAnswer{Common: a.Common, Trims: a.Trims} }),
	},
	{
		"/v1/soffit-decisions", "decideOverheads", "Keep it, trim it or take it down",
		"The best combination of options for the room in money and risk: what each option costs and is worth, what gates it, the reasons with their evidence, what finding out more is worth, and where the advice would change.",
		tagAssess, requestForm, reflect.TypeFor[api.DecisionAnswer](),
		assessing(assess.Decisions, func(a *api.Assessment) any { return api.DecisionAnswer{Common: a.Common, Decisions: a.Decisions} }),
	},
	{
		"/v1/estimates", "estimateCosts", "Estimate what it costs",
		"The line items of the options that are applied, grouped by overhead and room, each with its quantity, rate, spread and the figures behind it.",
		tagAssess, requestForm, reflect.TypeFor[api.EstimateAnswer](),
		assessing(assess.Estimate, func(a *api.Assessment) any { return api.EstimateAnswer{Common: a.Common, Estimate: a.Estimate} }),
	},
	{
		"/v1/layouts", "proposeLayouts", "Propose cabinets for the walls",
		"The best ways to fill the walls with cabinets of the system, each with its worth in money and the choices about overheads that go with it. Cabinets, fillers and choices can be pasted into a request as they are.",
		tagLayouts, layoutForm, reflect.TypeFor[api.LayoutAnswer](),
		func(ctx context.Context, s *Service, body []byte) (any, []api.Fault) {
			return respond(ctx, s.layouts, s.Core.CheckLayouts, s.Core.Layouts, body)
		},
	},
}

// assessing answers a request by some parts of an assessment.
func assessing(parts assess.Part, pick func(*api.Assessment) any) responder {
	return func(ctx context.Context, s *Service, body []byte) (any, []api.Fault) {
		answer := func(ctx context.Context, req *api.Request) (any, []api.Fault) {
			a, faults := s.Core.Assess(ctx, req, parts)
			if len(faults) > 0 {
				return nil, faults
			}
			return pick(a), nil
		}
		return respond(ctx, s.requests, s.Core.Check, answer, body)
	}
}

// operation describes the path.
func (p posting) operation(r huma.Registry) huma.Operation {
	return huma.Operation{
		OperationID: p.id, Method: http.MethodPost, Path: p.path, Tags: []string{p.tag},
		Summary: p.summary, Description: p.description,
		Responses: responses(r, r.Schema(p.answer, true, ""), 400, 406, 408, 413, 415, 422, 500, 503),
	}
}
