package assess

import (
	"context"

	"go.opentelemetry.io/otel/trace"

	"railhead/internal/finding"
)

// stage starts a span for one stage of the work; spans never carry content of
// the request.
func stage(ctx context.Context, name string) (context.Context, trace.Span) {
	return tracer.Start(ctx, name)
}

func run(ctx context.Context, name string, work func()) {
	_, span := stage(ctx, name)
	defer span.End()
	work()
}

// unique drops questions that were asked before, by code and pointer.
func unique(in []finding.Question) []finding.Question {
	type key struct{ code, pointer string }
	seen := map[key]bool{}
	out := in[:0:0]
	for _, q := range in {
		k := key{q.Code, q.Pointer}
		if !seen[k] {
			out = append(out, q)
		}
		seen[k] = true
	}
	return out
}
