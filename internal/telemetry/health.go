package telemetry

import (
	"net/http"
	"sync/atomic"
)

// Health is whether the service wants requests.
type Health struct{ ready atomic.Bool }

// SetReady says whether new requests are wanted from now on.
func (h *Health) SetReady(ready bool) { h.ready.Store(ready) }

// Admin is the operators' side: health and metrics. Asking is not logged.
func Admin(h *Health, m *Metrics) http.Handler {
	mux := http.NewServeMux()
	mux.HandleFunc("GET /livez", func(w http.ResponseWriter, _ *http.Request) { say(w, http.StatusOK, "alive") })
	mux.HandleFunc("GET /readyz", func(w http.ResponseWriter, _ *http.Request) {
		if h.ready.Load() {
			say(w, http.StatusOK, "ready")
		} else {
			say(w, http.StatusServiceUnavailable, "not ready")
		}
	})
	mux.Handle("GET /metrics", m.handler())
	return mux
}

func say(w http.ResponseWriter, status int, word string) {
	w.Header().Set("Content-Type", "text/plain; charset=utf-8")
	w.Header().Set("Cache-Control", "no-store")
	w.WriteHeader(status)
	_, _ = w.Write([]byte(word + "\n"))
}
