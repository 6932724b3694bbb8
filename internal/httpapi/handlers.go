package httpapi

import (
	"context"
	"net/http"

	"github.com/danielgtaylor/huma/v2"
	"github.com/danielgtaylor/huma/v2/adapters/humachi"
	"github.com/go-chi/chi/v5"

	"railhead/api"
)

// sending lets a handler write its own bytes: answers are encoded once, and hashed as they go out.
func sending(send func(w http.ResponseWriter, r *http.Request)) (*huma.StreamResponse, error) {
	return &huma.StreamResponse{Body: func(c huma.Context) {
		r, w := humachi.Unwrap(c)
		send(w, r)
	}}, nil
}

func (s *Service) answer(p posting) func(context.Context, *struct{}) (*huma.StreamResponse, error) {
	return func(ctx context.Context, _ *struct{}) (*huma.StreamResponse, error) {
		body := bodyOf(ctx)
		return sending(func(w http.ResponseWriter, r *http.Request) {
			answer, problem := s.inTime(ctx, p, body)
			switch {
			case r.Context().Err() != nil: // the caller has gone
			case problem != nil:
				fail(w, r, problem)
			default:
				newReply("application/json", answer).send(w, r)
			}
		})
	}
}

func (s *Service) listSystems(context.Context, *struct{}) (*huma.StreamResponse, error) {
	return s.sendJSON(s.Core.Systems())
}

type systemID struct {
	ID string `path:"id" doc:"The system's id."`
}

func (s *Service) getSystem(_ context.Context, in *systemID) (*huma.StreamResponse, error) {
	system, known := s.Core.System(in.ID)
	if !known {
		return sending(func(w http.ResponseWriter, r *http.Request) { fail(w, r, unknownSystem.problem()) })
	}
	return s.sendJSON(system)
}

func (s *Service) sendJSON(answer any) (*huma.StreamResponse, error) {
	body, err := Encode(answer)
	if err != nil {
		return nil, err
	}
	return sending(newReply("application/json", body).send)
}

// serveContract serves the contract's forms.
func (s *Service) serveContract(r chi.Router) {
	serve := func(path, mediaType string, document []byte) {
		r.Get(path, only(mediaType, newReply(mediaType, document).send))
	}
	serve("/openapi.json", "application/json", s.served.JSON)
	serve("/openapi.yaml", "application/yaml", s.served.YAML)
	serve("/openapi-3.0.json", "application/json", s.served.JSON30)
}

// frameworkProblem is the problem for what the HTTP framework refuses or fails at by itself.
func frameworkProblem(c huma.Context, status int, errs []error) *api.Problem {
	p := problemFor(status)
	if c == nil {
		return p
	}
	p.RequestID = requestID(c.Context())
	if status >= http.StatusInternalServerError {
		logger(c.Context()).ErrorContext(c.Context(), "a request failed", "causes", errs)
	}
	return p
}
