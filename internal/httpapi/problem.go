package httpapi

import (
	"fmt"
	"net/http"

	"railhead/api"
)

// trouble is one way to fail that says nothing of the body.
type trouble struct {
	status int
	code   string
	detail string
}

// Every way to fail, in one place. Refused bodies are in refused.go.
var (
	unknownPath     = trouble{http.StatusNotFound, "request.path.unknown", "Nothing is served at this path."}
	unknownSystem   = trouble{http.StatusNotFound, "system.id.unknown", "No built-in system has this id; GET /v1/systems lists them."}
	wrongMethod     = trouble{http.StatusMethodNotAllowed, "request.method.not_allowed", "This path does not take this method; the Allow header lists those it takes."}
	notAcceptable   = trouble{http.StatusNotAcceptable, "request.accept.unsupported", "This path does not answer in any media type that the Accept header takes."}
	slowBody        = trouble{http.StatusRequestTimeout, "request.body.too_slow", "The body did not arrive in time."}
	brokenBody      = trouble{http.StatusBadRequest, "request.body.broken", "The body ended before it was complete."}
	wrongMediaType  = trouble{http.StatusUnsupportedMediaType, "request.content_type.unsupported", "Send the body as JSON in UTF-8, with the header Content-Type: application/json."}
	encodedBody     = trouble{http.StatusUnsupportedMediaType, "request.content_encoding.unsupported", "Send the body as it is, without Content-Encoding."}
	badParameters   = trouble{http.StatusUnprocessableEntity, "request.parameters.refused", "The path or the query holds something that this operation does not take."}
	fault           = trouble{http.StatusInternalServerError, "server.fault", "Something went wrong here; the log knows it by the request id."}
	outOfTime       = trouble{http.StatusServiceUnavailable, "server.timeout", "The answer took too long; send a smaller room or try again later."}
	otherwiseFailed = trouble{0, "request.refused", "The request was refused."}
)

// tooLarge is a body beyond the limit.
func tooLarge(limit int64) trouble {
	detail := fmt.Sprintf("The body is larger than the limit of %d bytes.", limit)
	return trouble{http.StatusRequestEntityTooLarge, "request.body.too_large", detail}
}

func (t trouble) problem() *api.Problem {
	return &api.Problem{
		Type:   "about:blank",
		Title:  http.StatusText(t.status),
		Status: t.status,
		Code:   t.code,
		Detail: t.detail,
		Errors: []api.Fault{},
	}
}

// problemFor is the problem for a status that the framework chose.
func problemFor(status int) *api.Problem {
	for _, t := range []trouble{unknownPath, wrongMethod, notAcceptable, slowBody, brokenBody, wrongMediaType, badParameters, outOfTime} {
		if t.status == status {
			return t.problem()
		}
	}
	if status >= http.StatusInternalServerError {
		return fault.problem()
	}
	t := otherwiseFailed
	t.status = status
	return t.problem()
}
