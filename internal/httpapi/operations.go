package httpapi

import (
	"net/http"
	"strconv"

	"github.com/danielgtaylor/huma/v2"

	"railhead/api"
)

const (
	tagAssess  = "assessments"
	tagLayouts = "layouts"
	tagSystems = "systems"
)

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
