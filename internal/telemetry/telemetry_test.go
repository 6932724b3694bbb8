package telemetry

import (
	"bytes"
	"context"
	"log/slog"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"
	"time"

	sdktrace "go.opentelemetry.io/otel/sdk/trace"
)

func env(values map[string]string) func(string) string {
	return func(name string) string { return values[name] }
}

func TestTracingIsOffUnlessTheStandardVariablesAskForIt(t *testing.T) {
	cases := []struct {
		name    string
		values  map[string]string
		on, bad bool
	}{
		{"nothing is said", nil, false, false},
		{"an endpoint", map[string]string{"OTEL_EXPORTER_OTLP_ENDPOINT": "http://c:4318"}, true, false},
		{"an endpoint for traces", map[string]string{"OTEL_EXPORTER_OTLP_TRACES_ENDPOINT": "http://c:4318/v1/traces"}, true, false},
		{"by its exporter", map[string]string{"OTEL_TRACES_EXPORTER": "otlp"}, true, false},
		{"none", map[string]string{"OTEL_TRACES_EXPORTER": "none", "OTEL_EXPORTER_OTLP_ENDPOINT": "http://c:4318"}, false, false},
		{"disabled", map[string]string{"OTEL_SDK_DISABLED": "true", "OTEL_TRACES_EXPORTER": "otlp"}, false, false},
		{"another exporter", map[string]string{"OTEL_TRACES_EXPORTER": "zipkin"}, false, true},
		{"another protocol", map[string]string{"OTEL_TRACES_EXPORTER": "otlp", "OTEL_EXPORTER_OTLP_PROTOCOL": "grpc"}, false, true},
		{"its own protocol", map[string]string{"OTEL_TRACES_EXPORTER": "otlp", "OTEL_EXPORTER_OTLP_TRACES_PROTOCOL": "http/protobuf"}, true, false},
	}
	for _, c := range cases {
		on, err := wanted(env(c.values))
		if on != c.on || (err != nil) != c.bad {
			t.Errorf("%s: %v, %v", c.name, on, err)
		}
	}
}

func TestTracingThatIsOffCostsNothing(t *testing.T) {
	off, err := StartTracing(context.Background(), env(nil), "test", slog.Default())
	if err != nil {
		t.Fatal(err)
	}
	h := http.NotFoundHandler()
	if got := off.Handler(h); got == nil || off.provider != nil || off.Stop(context.Background()) != nil {
		t.Error("tracing that is off does something")
	}
}

func TestLogsNameTheirTrace(t *testing.T) {
	var out bytes.Buffer
	log := NewLog(&out, slog.LevelInfo)
	ctx, span := sdktrace.NewTracerProvider().Tracer("test").Start(context.Background(), "x")
	defer span.End()
	log.With("a", 1).WithGroup("g").InfoContext(ctx, "within")
	if id := span.SpanContext().TraceID().String(); !strings.Contains(out.String(), id) || !strings.Contains(out.String(), "span_id") {
		t.Errorf("%s does not name %s", &out, id)
	}
	out.Reset()
	log.Info("outside")
	log.Debug("too fine")
	if strings.Contains(out.String(), "trace_id") || strings.Contains(out.String(), "too fine") {
		t.Errorf("%s", &out)
	}
}

func admin(t *testing.T, h http.Handler, method, path string) *httptest.ResponseRecorder {
	t.Helper()
	w := httptest.NewRecorder()
	h.ServeHTTP(w, httptest.NewRequest(method, path, nil))
	return w
}

func TestHealthIsAskedByGetAndHead(t *testing.T) {
	health, h := &Health{}, http.Handler(nil)
	h = Admin(health, NewMetrics("test"))
	want := func(path string, status int) {
		t.Helper()
		for _, method := range []string{"GET", "HEAD"} {
			if w := admin(t, h, method, path); w.Code != status {
				t.Errorf("%s %s: %d, want %d", method, path, w.Code, status)
			}
		}
	}
	want("/livez", 200)
	want("/readyz", 503)
	health.SetReady(true)
	want("/readyz", 200)
	health.SetReady(false)
	want("/readyz", 503)
	want("/livez", 200)
	want("/else", 404)
	if w := admin(t, h, "POST", "/readyz"); w.Code != 405 || w.Header().Get("Allow") == "" {
		t.Errorf("POST: %d", w.Code)
	}
}

func TestMetricsCountByOperationAndStatus(t *testing.T) {
	m := NewMetrics("1.2.3")
	m.Observe("POST /v1/assessments", 200, 3*time.Millisecond)
	m.Observe("POST /v1/assessments", 200, 3*time.Millisecond)
	m.Observe("other", 404, time.Millisecond)
	text := admin(t, Admin(&Health{}, m), "GET", "/metrics").Body.String()
	for _, line := range []string{
		`railhead_requests_total{operation="POST /v1/assessments",status="200"} 2`,
		`railhead_requests_total{operation="other",status="404"} 1`,
		`railhead_request_duration_seconds_bucket{operation="POST /v1/assessments",status="200",le="0.002"} 0`,
		`railhead_request_duration_seconds_bucket{operation="POST /v1/assessments",status="200",le="0.005"} 2`,
		`railhead_build_info{version="1.2.3"} 1`,
		`go_goroutines`,
	} {
		if !strings.Contains(text, line) {
			t.Errorf("no %s", line)
		}
	}
}
