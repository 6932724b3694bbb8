package httpapi

import (
	"bytes"
	"context"
	"encoding/json"
	"io"
	"net/http"
	"net/http/httptest"
	"testing"

	"railhead/api"
	"railhead/internal/assess"
)

// The service beside a bare handler that does the same without any check: what
// the checks, the contract and the framework cost, in one run.

func BenchmarkService(b *testing.B) {
	benchmark(b, serviceWith(b, Options{Core: realCore()}).Handler())
}

func BenchmarkBareHandler(b *testing.B) {
	benchmark(b, http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		var req api.Request
		body, err := io.ReadAll(r.Body)
		if err == nil {
			err = json.Unmarshal(body, &req)
		}
		if err != nil {
			http.Error(w, "no", http.StatusBadRequest)
			return
		}
		answer, _ := assess.Assess(context.Background(), &req, assess.All)
		_ = json.NewEncoder(w).Encode(answer) // into memory
	}))
}

// BenchmarkCore is the trade core alone.
func BenchmarkCore(b *testing.B) {
	var req api.Request
	if err := json.Unmarshal(rooms(b)[0], &req); err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		if answer, _ := assess.Assess(context.Background(), &req, assess.All); answer == nil {
			b.Fatal("refused")
		}
	}
}

func benchmark(b *testing.B, h http.Handler) {
	body := rooms(b)[0]
	b.SetBytes(int64(len(body)))
	b.ReportAllocs()
	for b.Loop() {
		r := httptest.NewRequest(http.MethodPost, "/v1/assessments", bytes.NewReader(body))
		r.Header.Set("Content-Type", "application/json")
		w := httptest.NewRecorder()
		h.ServeHTTP(w, r)
		if w.Code != http.StatusOK {
			b.Fatal(w.Body)
		}
	}
}
