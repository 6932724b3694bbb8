// Package hostile_test throws whatever it can at the service. It stands apart
// from the service's own tests so that a fuzzing build need not instrument the
// third-party validators that those use.
package hostile_test

import (
	"context"
	"encoding/json"
	"io"
	"log/slog"
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
			Assess: assess.Assess, Systems: assess.Systems, System: assess.System,
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

// FuzzService: whatever is posted, it is answered or refused, with JSON that
// holds no null, and the same way twice.
func FuzzService(f *testing.F) {
	s := service(f)
	rooms, err := filepath.Glob("../../testdata/cases/*/request.json")
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
	if !json.Valid(answer) || strings.Contains(string(answer), ":null") {
		t.Fatalf("no answer: %s", answer)
	}
	return string(answer)
}
