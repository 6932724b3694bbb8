// Package telemetry is what operators see: logs, traces, metrics and health.
// None of it ever holds a request's body.
package telemetry

import (
	"context"
	"io"
	"log/slog"

	"go.opentelemetry.io/otel/trace"
)

// NewLog makes a log of JSON lines that name the trace they belong to.
func NewLog(w io.Writer, level slog.Level) *slog.Logger {
	return slog.New(traced{slog.NewJSONHandler(w, &slog.HandlerOptions{Level: level})})
}

// traced adds the trace's ids to what is logged within a request.
type traced struct{ slog.Handler }

func (t traced) Handle(ctx context.Context, record slog.Record) error {
	if span := trace.SpanContextFromContext(ctx); span.IsValid() {
		record.AddAttrs(slog.String("trace_id", span.TraceID().String()), slog.String("span_id", span.SpanID().String()))
	}
	return t.Handler.Handle(ctx, record)
}

func (t traced) WithAttrs(attrs []slog.Attr) slog.Handler { return traced{t.Handler.WithAttrs(attrs)} }

func (t traced) WithGroup(name string) slog.Handler { return traced{t.Handler.WithGroup(name)} }
