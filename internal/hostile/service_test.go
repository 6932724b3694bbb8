// Package hostile_test throws whatever it can at the service. It stands apart
// from the service's own tests so that a fuzzing build need not instrument the
// third-party validators that those use.
package hostile_test

import (
	"bytes"
	"context"
	"encoding/json"
	"io"
	"log/slog"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"railhead/api"
	"railhead/internal/assess"
	"railhead/internal/httpapi"
)

func service(f *testing.F) *httpapi.Service {
	f.Helper()
	s, err := httpapi.New(httpapi.Options{
		Log: slog.New(slog.NewTextHandler(io.Discard, nil)),
		Core: httpapi.Core{
			Assess: assess.Assess, Layouts: assess.Layouts, CheckLayouts: assess.CheckLayouts, Systems: assess.Systems, System: assess.System,
			Check: func(ctx context.Context, req *api.Request) []api.Fault {
				_, faults := assess.Assess(ctx, req, 0)
				return faults
			},
		},
	})
	if err != nil {
		f.Fatal(err)
	}
	return s
}

// seed adds the rooms of a folder of testdata.
func seed(f *testing.F, folder string) {
	f.Helper()
	rooms, err := filepath.Glob("../../testdata/" + folder + "/*/request.json")
	if err != nil || len(rooms) == 0 {
		f.Fatalf("no rooms: %v", err)
	}
	for _, path := range rooms {
		body, err := os.ReadFile(path)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(body)
	}
}

// FuzzService: whatever is posted, it is answered or refused, with JSON that
// holds no null, and the same way twice.
func FuzzService(f *testing.F) {
	s := service(f)
	seed(f, "cases")
	f.Fuzz(func(t *testing.T, body []byte) {
		first, again := said(t, s, body), said(t, s, body)
		if first != again {
			t.Fatalf("said once\n%s\nand then\n%s", first, again)
		}
	})
}

func said(t *testing.T, s *httpapi.Service, body []byte) string {
	t.Helper()
	answer, problem := s.Assess(httpapi.WithRequestID(context.Background(), "fuzz"), body)
	if problem != nil {
		if problem.Status >= 500 || len(problem.Errors) == 0 && problem.Status == 422 {
			t.Fatalf("%+v", problem)
		}
		var err error
		if answer, err = httpapi.Encode(problem); err != nil {
			t.Fatal(err)
		}
	}
	answered(t, answer)
	return string(answer)
}

func answered(t *testing.T, answer []byte) {
	t.Helper()
	if !json.Valid(answer) || strings.Contains(string(answer), ":null") {
		t.Fatalf("no answer: %s", answer)
	}
}

// FuzzLayouts is the same for what is asked of /v1/layouts.
func FuzzLayouts(f *testing.F) {
	h := service(f).Handler()
	seed(f, "layouts")
	f.Fuzz(func(t *testing.T, body []byte) {
		first, again := proposed(t, h, body), proposed(t, h, body)
		if first != again {
			t.Fatalf("said once\n%s\nand then\n%s", first, again)
		}
	})
}

func proposed(t *testing.T, h http.Handler, body []byte) string {
	t.Helper()
	r := httptest.NewRequestWithContext(t.Context(), http.MethodPost, "/v1/layouts", bytes.NewReader(body))
	r.Header.Set("Content-Type", "application/json")
	r.Header.Set("X-Request-Id", "fuzz")
	w := httptest.NewRecorder()
	h.ServeHTTP(w, r)
	if w.Code >= 500 {
		t.Fatalf("%d %s", w.Code, w.Body)
	}
	answered(t, w.Body.Bytes())
	return w.Body.String()
}
