package httpapi

import (
	"net/http"
	"strings"

	"github.com/danielgtaylor/huma/v2"
	"github.com/danielgtaylor/huma/v2/adapters/humachi"
	"github.com/go-chi/chi/v5"
	"github.com/go-chi/chi/v5/middleware"
)

func (s *Service) router() (http.Handler, huma.API) {
	setKnobs()
	r := chi.NewRouter()
	r.Use(requestIDs, s.keepLog, s.observe, s.catch, secure, middleware.GetHead)
	r.NotFound(func(w http.ResponseWriter, r *http.Request) { fail(w, r, unknownPath.problem()) })
	r.MethodNotAllowed(otherMethod)
	described := humachi.New(r, contract())
	s.register(described)
	s.serveContract(r)
	return r, described
}

// otherMethod answers 405 with the methods that the path takes.
func otherMethod(w http.ResponseWriter, r *http.Request) {
	path := r.URL.Path
	if r.URL.RawPath != "" {
		path = r.URL.RawPath
	}
	var allowed []string
	for _, method := range []string{http.MethodGet, http.MethodPost} {
		if chi.RouteContext(r.Context()).Routes.Match(chi.NewRouteContext(), method, path) {
			allowed = append(allowed, method)
		}
		if method == http.MethodGet && len(allowed) > 0 {
			allowed = append(allowed, http.MethodHead)
		}
	}
	w.Header().Set("Allow", strings.Join(allowed, ", "))
	fail(w, r, wrongMethod.problem())
}

// secure sets headers that keep browsers from doing anything with an answer but reading it.
func secure(next http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		h := w.Header()
		h.Set("X-Content-Type-Options", "nosniff")
		h.Set("Content-Security-Policy", "default-src 'none'; frame-ancestors 'none'")
		h.Set("Referrer-Policy", "no-referrer")
		next.ServeHTTP(w, r)
	})
}
