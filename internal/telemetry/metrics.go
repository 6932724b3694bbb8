package telemetry

import (
	"net/http"
	"strconv"
	"time"

	"github.com/prometheus/client_golang/prometheus"
	"github.com/prometheus/client_golang/prometheus/collectors"
	"github.com/prometheus/client_golang/prometheus/promhttp"
)

// Metrics counts requests. Its labels are few: operations and statuses of the contract.
type Metrics struct {
	registry *prometheus.Registry
	requests *prometheus.CounterVec
	duration *prometheus.HistogramVec
}

// NewMetrics makes metrics of their own, beside no others.
func NewMetrics(version string) *Metrics {
	labels := []string{"operation", "status"}
	m := &Metrics{
		registry: prometheus.NewRegistry(),
		requests: prometheus.NewCounterVec(prometheus.CounterOpts{
			Name: "railhead_requests_total", Help: "Requests answered, by operation and status; 499 is a caller who hung up.",
		}, labels),
		duration: prometheus.NewHistogramVec(prometheus.HistogramOpts{
			Name: "railhead_request_duration_seconds", Help: "How long requests took.",
			Buckets: []float64{.001, .002, .005, .01, .02, .05, .1, .2, .5, 1, 2, 5, 10},
		}, labels),
	}
	build := prometheus.NewGauge(prometheus.GaugeOpts{
		Name: "railhead_build_info", Help: "Always 1.", ConstLabels: prometheus.Labels{"version": version},
	})
	build.Set(1)
	m.registry.MustRegister(m.requests, m.duration, build,
		collectors.NewGoCollector(), collectors.NewProcessCollector(collectors.ProcessCollectorOpts{}))
	return m
}

// Observe counts one request.
func (m *Metrics) Observe(operation string, status int, took time.Duration) {
	code := strconv.Itoa(status)
	m.requests.WithLabelValues(operation, code).Inc()
	m.duration.WithLabelValues(operation, code).Observe(took.Seconds())
}

func (m *Metrics) handler() http.Handler {
	return promhttp.HandlerFor(m.registry, promhttp.HandlerOpts{})
}
