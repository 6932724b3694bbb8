package httpapi

import (
	"net/http"
	"reflect"
	"strconv"

	"github.com/danielgtaylor/huma/v2"

	"railhead/api"
	"railhead/internal/assess"
)

const (
	tagAssess  = "assessments"
	tagSystems = "systems"
)

// assessing is one path that reads a request.
type assessing struct {
	path, id, summary, description string
	parts                          assess.Part
	answer                         reflect.Type
	pick                           func(*api.Assessment) any
}

var assessingPaths = []assessing{
	{
		"/v1/assessments", "assess", "Assess a room",
		"Everything in one answer: fit and rows, rails and their stock, trims, decisions, estimate.",
		assess.All, reflect.TypeFor[api.Assessment](), func(a *api.Assessment) any { return a },
	},
	{
		"/v1/fit-checks", "checkFit", "Check what fits",
		"Each planned cabinet against everything around it, and each row of the system against the room.",
		assess.Fit, reflect.TypeFor[api.FitAnswer](), func(a *api.Assessment) any { return api.FitAnswer{Common: a.Common, Rows: a.Rows, Fit: a.Fit} },
	},
	{
		"/v1/rail-heights", "findRailHeights", "Find the rails' heights",
		"Where the rails go, their pieces and fixings, and the stock to cut them from.",
		assess.Rails, reflect.TypeFor[api.RailAnswer](), func(a *api.Assessment) any {
			return api.RailAnswer{Common: a.Common, Rails: a.Rails, RailStock: a.RailStock}
		},
	},
	{
		"/v1/soffit-trims", "planTrims", "Plan the cuts",
		"Where each overhead is cut, what comes off, what is in the way, and the steps in order.",
		assess.Trims, reflect.TypeFor[api.TrimAnswer](), func(a *api.Assessment) any { return api.TrimAnswer{Common: a.Common, Trims: a.Trims} },
	},
	{
		"/v1/soffit-decisions", "decideOverheads", "Keep it, trim it or take it down",
		"The best combination of options for the room in money and risk: what each option costs and is worth, what gates it, the reasons with their evidence, what finding out more is worth, and where the advice would change.",
		assess.Decisions, reflect.TypeFor[api.DecisionAnswer](), func(a *api.Assessment) any { return api.DecisionAnswer{Common: a.Common, Decisions: a.Decisions} },
	},
	{
		"/v1/estimates", "estimateCosts", "Estimate what it costs",
		"The line items of the options that are applied, grouped by overhead and room, each with its quantity, rate, spread and the figures behind it.",
		assess.Estimate, reflect.TypeFor[api.EstimateAnswer](), func(a *api.Assessment) any { return api.EstimateAnswer{Common: a.Common, Estimate: a.Estimate} },
	},
}

// assessOperation describes a path that reads a request.
func assessOperation(r huma.Registry, a assessing) huma.Operation {
	return huma.Operation{
		OperationID: a.id, Method: http.MethodPost, Path: a.path, Tags: []string{tagAssess},
		Summary: a.summary, Description: a.description,
		Responses: responses(r, r.Schema(a.answer, true, ""), 400, 406, 408, 413, 415, 422, 500, 503),
	}
}

func systemsOperation(r huma.Registry) huma.Operation {
	return huma.Operation{
		OperationID: "listSystems", Method: http.MethodGet, Path: "/v1/systems", Tags: []string{tagSystems},
		Summary: "List the built-in systems", Description: "Generic trade sizes, each with its source. A request may name one by its id, or send its own.",
		Responses: cached(r, object[api.SystemList](r), 406, 422, 500),
	}
}

func systemOperation(r huma.Registry) huma.Operation {
	return huma.Operation{
		OperationID: "getSystem", Method: http.MethodGet, Path: "/v1/systems/{id}", Tags: []string{tagSystems},
		Summary: "Get one built-in system", Description: "All its parameters; the system member can be pasted into a request.",
		Responses: cached(r, object[api.SystemDetail](r), 404, 406, 422, 500),
	}
}

// cached are the responses of what can be asked for again with If-None-Match.
func cached(r huma.Registry, answer *huma.Schema, failures ...int) map[string]*huma.Response {
	all := responses(r, answer, failures...)
	all["304"] = &huma.Response{Description: "Not changed since the ETag that was sent.", Headers: headers("ETag")}
	return all
}

func responses(r huma.Registry, answer *huma.Schema, failures ...int) map[string]*huma.Response {
	all := map[string]*huma.Response{
		"200": {Description: "The answer.", Headers: headers("ETag", requestIDHeader), Content: content("application/json", answer)},
	}
	for _, status := range failures {
		all[strconv.Itoa(status)] = &huma.Response{
			Description: failureWords[status],
			Headers:     headers(requestIDHeader),
			Content:     content("application/problem+json", object[api.Problem](r)),
		}
	}
	return all
}

var failureWords = map[int]string{
	400: "The body is not JSON.",
	404: "There is no such thing.",
	406: "The Accept header takes nothing that is served here.",
	408: "The body did not arrive in time.",
	413: "The body is too large.",
	415: "The body is not sent as application/json.",
	422: "What was sent cannot be used; all errors of a body are listed.",
	500: "Something went wrong here.",
	503: "The answer took too long.",
}

func content(mediaType string, schema *huma.Schema) map[string]*huma.MediaType {
	return map[string]*huma.MediaType{mediaType: {Schema: schema}}
}

var headerWords = map[string]string{
	"ETag":          "A hash of the answer's bytes.",
	requestIDHeader: "The id of the request, as sent or as given.",
}

func headers(names ...string) map[string]*huma.Param {
	all := map[string]*huma.Param{}
	for _, name := range names {
		all[name] = &huma.Param{Description: headerWords[name], Schema: &huma.Schema{Type: huma.TypeString}}
	}
	return all
}
