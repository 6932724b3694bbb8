package httpapi

import (
	"context"
	"errors"
	"log/slog"
	"net/http"
	"runtime/debug"
	"time"

	"github.com/go-chi/chi/v5"
	"github.com/go-chi/chi/v5/middleware"
	"go.opentelemetry.io/otel/attribute"
	"go.opentelemetry.io/otel/trace"
)

// statusGone is what is logged and counted for callers who hang up; nothing is sent.
const statusGone = 499

type loggerKey struct{}

// keepLog puts the service's log where everything below finds it.
func (s *Service) keepLog(next http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		next.ServeHTTP(w, r.WithContext(context.WithValue(r.Context(), loggerKey{}, s.Log)))
	})
}

func logger(ctx context.Context) *slog.Logger {
	if log, ok := ctx.Value(loggerKey{}).(*slog.Logger); ok {
		return log
	}
	return slog.Default()
}

// observe logs, counts and names every request once it is answered. A body is never logged.
func (s *Service) observe(next http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		start := time.Now()
		watched := middleware.NewWrapResponseWriter(w, r.ProtoMajor)
		defer func() {
			took, status, route := time.Since(start), statusOf(watched, r), routeOf(r)
			s.Observe(operationOf(r, route), status, took)
			nameSpan(r, route)
			s.Log.LogAttrs(r.Context(), levelOf(status), "request",
				slog.String("request_id", requestID(r.Context())), slog.String("method", r.Method), slog.String("route", route),
				slog.Int("status", status), slog.Int("bytes", watched.BytesWritten()), slog.Float64("ms", float64(took.Microseconds())/1000))
		}()
		next.ServeHTTP(watched, r)
	})
}

func statusOf(w middleware.WrapResponseWriter, r *http.Request) int {
	switch {
	case w.Status() != 0:
		return w.Status()
	case r.Context().Err() != nil:
		return statusGone
	}
	return http.StatusOK
}

func levelOf(status int) slog.Level {
	if status >= http.StatusInternalServerError {
		return slog.LevelError
	}
	return slog.LevelInfo
}

// routeOf is the pattern that a request was routed by: one of few, whatever the caller asks for.
func routeOf(r *http.Request) string {
	if route := chi.RouteContext(r.Context()).RoutePattern(); route != "" {
		return route
	}
	return "other"
}

// methods that are counted by name; callers may send any word.
var methods = map[string]bool{http.MethodGet: true, http.MethodHead: true, http.MethodPost: true}

func operationOf(r *http.Request, route string) string {
	if !methods[r.Method] || route == "other" {
		return "other"
	}
	return r.Method + " " + route
}

func nameSpan(r *http.Request, route string) {
	span := trace.SpanFromContext(r.Context())
	span.SetName(operationOf(r, route))
	span.SetAttributes(attribute.String("http.route", route))
}

// catch answers a panic as a problem that tells nothing of it; the log has it.
func (s *Service) catch(next http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		defer func() {
			caught := recover()
			if caught == nil {
				return
			}
			if err, ok := caught.(error); ok && errors.Is(err, http.ErrAbortHandler) {
				panic(caught)
			}
			s.logPanic(r.Context(), caught)
			if watched, ok := w.(middleware.WrapResponseWriter); ok && watched.Status() != 0 {
				panic(http.ErrAbortHandler) // half an answer must not look whole
			}
			fail(w, r, fault.problem())
		}()
		next.ServeHTTP(w, r)
	})
}

func (s *Service) logPanic(ctx context.Context, caught any) {
	s.Log.ErrorContext(ctx, "a request panicked", "request_id", requestID(ctx), "cause", caught, "stack", string(debug.Stack()))
}
