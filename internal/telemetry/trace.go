package telemetry

import (
	"context"
	"errors"
	"fmt"
	"log/slog"
	"net/http"
	"strings"

	"go.opentelemetry.io/contrib/instrumentation/net/http/otelhttp"
	"go.opentelemetry.io/otel"
	"go.opentelemetry.io/otel/attribute"
	"go.opentelemetry.io/otel/exporters/otlp/otlptrace/otlptracehttp"
	"go.opentelemetry.io/otel/propagation"
	"go.opentelemetry.io/otel/sdk/resource"
	sdktrace "go.opentelemetry.io/otel/sdk/trace"
)

// Tracing is the service's tracing; off unless the standard OTEL_ variables
// ask for it: OTEL_TRACES_EXPORTER=otlp, or an OTLP endpoint. Everything else
// about it (endpoint, headers, sampler, resource) is read from those variables too.
type Tracing struct {
	provider *sdktrace.TracerProvider // nil when off
}

// StartTracing starts tracing where it is asked for.
func StartTracing(ctx context.Context, getenv func(string) string, version string, log *slog.Logger) (*Tracing, error) {
	on, err := wanted(getenv)
	if err != nil || !on {
		return &Tracing{}, err
	}
	exporter, err := otlptracehttp.New(ctx)
	if err != nil {
		return nil, fmt.Errorf("start tracing: %w", err)
	}
	about, err := resource.New(ctx,
		resource.WithAttributes(attribute.String("service.name", "railhead"), attribute.String("service.version", version)),
		resource.WithTelemetrySDK(), resource.WithFromEnv())
	if err != nil {
		return nil, fmt.Errorf("start tracing: %w", err)
	}
	provider := sdktrace.NewTracerProvider(sdktrace.WithBatcher(exporter), sdktrace.WithResource(about))
	otel.SetTracerProvider(provider)
	otel.SetTextMapPropagator(propagation.TraceContext{})
	otel.SetErrorHandler(otel.ErrorHandlerFunc(func(err error) { log.Warn("traces could not be sent", "cause", err) }))
	return &Tracing{provider}, nil
}

// wanted reads whether traces are asked for, and refuses what this service cannot do.
func wanted(getenv func(string) string) (bool, error) {
	if strings.EqualFold(getenv("OTEL_SDK_DISABLED"), "true") {
		return false, nil
	}
	endpoint := getenv("OTEL_EXPORTER_OTLP_ENDPOINT") + getenv("OTEL_EXPORTER_OTLP_TRACES_ENDPOINT")
	exporter := getenv("OTEL_TRACES_EXPORTER")
	switch {
	case exporter == "none", exporter == "" && endpoint == "":
		return false, nil
	case exporter != "" && exporter != "otlp":
		return false, errors.New("OTEL_TRACES_EXPORTER must be otlp or none")
	}
	for _, name := range []string{"OTEL_EXPORTER_OTLP_TRACES_PROTOCOL", "OTEL_EXPORTER_OTLP_PROTOCOL"} {
		if protocol := getenv(name); protocol != "" && protocol != "http/protobuf" {
			return false, fmt.Errorf("%s must be http/protobuf", name)
		}
	}
	return true, nil
}

// Handler traces requests; the handler below names the span once it knows the route.
func (t *Tracing) Handler(next http.Handler) http.Handler {
	if t.provider == nil {
		return next
	}
	return otelhttp.NewHandler(next, "request")
}

// Stop sends what is left.
func (t *Tracing) Stop(ctx context.Context) error {
	if t.provider == nil {
		return nil
	}
	return t.provider.Shutdown(ctx)
}
