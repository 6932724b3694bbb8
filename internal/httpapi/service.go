// Package httpapi serves the contract: operations, limits and every way to
// fail. It knows the wire types and what to ask of the trade core, and nothing
// of the trade.
package httpapi

import (
	"cmp"
	"log/slog"
	"net/http"
	"time"

	"github.com/danielgtaylor/huma/v2"

	"railhead/api"
	"railhead/internal/decode"
	"railhead/openapi"
)

// Options are what a service is made with.
type Options struct {
	Core Core
	// MaxBody is the largest body that is read, in bytes; default 1 MiB.
	MaxBody int64
	// Timeout is how long an answer may take; default 10 s.
	Timeout time.Duration
	// Log takes one line a request, and the causes of failures; default slog.Default().
	Log *slog.Logger
	// Observe hears of every request that was answered.
	Observe func(operation string, status int, took time.Duration)
}

// Service answers requests. It keeps nothing between them.
type Service struct {
	Options
	requests *decode.Decoder[api.Request]
	layouts  *decode.Decoder[api.LayoutRequest]
	served   Documents
}

// New makes a service.
func New(o Options) (*Service, error) {
	o.MaxBody = cmp.Or(o.MaxBody, 1<<20)
	o.Timeout = cmp.Or(o.Timeout, 10*time.Second)
	o.Log = cmp.Or(o.Log, slog.Default())
	if o.Observe == nil {
		o.Observe = func(string, int, time.Duration) {}
	}
	contract, err := decode.Read(openapi.JSON)
	if err != nil {
		return nil, err
	}
	requests, err := decode.New[api.Request](contract)
	if err != nil {
		return nil, err
	}
	layouts, err := decode.New[api.LayoutRequest](contract)
	if err != nil {
		return nil, err
	}
	served := Documents{JSON: openapi.JSON, YAML: openapi.YAML, JSON30: openapi.JSON30}
	return &Service{Options: o, requests: requests, layouts: layouts, served: served}, nil
}

// Handler is the public side of the service.
func (s *Service) Handler() http.Handler {
	handler, _ := s.router()
	return handler
}

// Contract writes the contract as the code has it; what is served is the committed copy.
func Contract() (Documents, error) {
	_, described := (&Service{}).router()
	return documents(described.OpenAPI())
}

func (s *Service) register(described huma.API) {
	r := described.OpenAPI().Components.Schemas
	registerSchemas(r)
	for _, p := range postings {
		op := p.operation(r)
		op.Middlewares = huma.Middlewares{acceptsJSON, s.withBody}
		huma.Register(described, op, s.answer(p))
		// Described only now: else the framework would read and check the body too.
		described.OpenAPI().Paths[p.path].Post.RequestBody = p.body.described(r)
	}
	list, one := systemsOperation(r), systemOperation(r)
	list.Middlewares, one.Middlewares = huma.Middlewares{acceptsJSON}, huma.Middlewares{acceptsJSON}
	huma.Register(described, list, s.listSystems)
	huma.Register(described, one, s.getSystem)
	openAnswers(r)
}
