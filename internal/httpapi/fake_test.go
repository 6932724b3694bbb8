package httpapi

import (
	"context"
	"io"
	"log/slog"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"
	"time"

	"railhead/api"
	"railhead/internal/assess"
)

const room = `{"units": "in", "survey": {"walls": [{"id": "w", "length": 120, "floor": [{"at": 0, "height": 0}], "ceiling": [{"at": 0, "height": "96 1/2 in"}]}]}, "system": "demo-rail"}`

var someMeasure = api.Measure{MM: "803.275", Inches: "31.625", Tape: "31 5/8 in"}

// fakeCore answers every good body with one small assessment.
func fakeCore() Core {
	return Core{
		Assess: func(context.Context, *api.Request, assess.Part) (*api.Assessment, []api.Fault) {
			return &api.Assessment{
				Common: api.Common{
					Edition: "test", Datum: api.Datum{Wall: "w", At: someMeasure, FloorFall: someMeasure, By: "all_walls"},
					Applied: map[string]api.Applied{"b": {Option: "keep", By: "default"}, "a": {Option: "trim", By: "choice"}},
					Summary: api.Summary{Verdict: "go", Says: `<"Größe" & more>`},
				},
				Decisions: api.Decisions{Room: api.RoomDecision{Basis: "money"}},
				Estimate:  &api.Estimate{Currency: "EUR"},
			}, nil
		},
		Check: func(context.Context, *api.Request) []api.Fault { return nil },
		Layouts: func(context.Context, *api.LayoutRequest) (*api.LayoutAnswer, []api.Fault) {
			datum := api.Datum{Wall: "w", At: someMeasure, FloorFall: someMeasure, By: "all_walls"}
			return &api.LayoutAnswer{Edition: "test", Layouts: []api.Layout{{Rank: 1, Datum: datum, Because: `<"Größe" & more>`}}}, nil
		},
		CheckLayouts: func(context.Context, *api.LayoutRequest) []api.Fault { return nil },
		Systems: func() api.SystemList {
			return api.SystemList{Edition: "test", Systems: []api.SystemSummary{{ID: "demo-rail", Says: "x", Hung: "rail", Source: "x"}}}
		},
		System: func(id string) (api.SystemDetail, bool) {
			legs := api.Number("120")
			return api.SystemDetail{SystemSummary: api.SystemSummary{ID: id, Hung: "rail"}, Edition: "test", System: api.InlineSystem{Legs: legs, FitGap: legs}}, id == "demo-rail"
		},
	}
}

var quiet = slog.New(slog.NewTextHandler(io.Discard, nil))

func serviceWith(t testing.TB, o Options) *Service {
	t.Helper()
	if o.Core.Assess == nil {
		o.Core = fakeCore()
	}
	if o.Log == nil {
		o.Log = quiet
	}
	s, err := New(o)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// call is one request of a test.
type call struct {
	method, path, body string
	header             map[string]string
}

func post(path, body string) call { return call{"POST", path, body, nil} }
func get(path string) call        { return call{"GET", path, "", nil} }

func (c call) with(name, value string) call {
	header := map[string]string{name: value}
	for k, v := range c.header {
		header[k] = v
	}
	return call{c.method, c.path, c.body, header}
}

func (c call) request() *http.Request {
	r := httptest.NewRequest(c.method, c.path, strings.NewReader(c.body))
	if c.method == http.MethodPost {
		r.Header.Set("Content-Type", "application/json")
	}
	for name, value := range c.header {
		r.Header.Del(name)
		if value != "" {
			r.Header.Set(name, value)
		}
	}
	return r
}

// exchange makes the call, and has a third party check both sides of it against the contract.
func exchange(t testing.TB, h http.Handler, c call) *httptest.ResponseRecorder {
	t.Helper()
	w := httptest.NewRecorder()
	h.ServeHTTP(w, c.request())
	againstContract(t, c, w)
	return w
}

func slowCore(wait time.Duration) Core {
	core := fakeCore()
	quick := core.Assess
	core.Assess = func(ctx context.Context, req *api.Request, parts assess.Part) (*api.Assessment, []api.Fault) {
		select {
		case <-ctx.Done():
		case <-time.After(wait):
		}
		return quick(ctx, req, parts)
	}
	core.Layouts = func(ctx context.Context, _ *api.LayoutRequest) (*api.LayoutAnswer, []api.Fault) {
		select {
		case <-ctx.Done():
		case <-time.After(wait):
		}
		return &api.LayoutAnswer{}, nil
	}
	return core
}
