package main

import (
	"bytes"
	"io"
	"net/http"
	"net/http/httptest"
	"os"
	"strings"
	"sync"
	"syscall"
	"testing"
)

// Traces reach a collector by the standard variables: one span for the request,
// named by its route, and one for each stage, all under the caller's own trace.
func TestTracesReachACollector(t *testing.T) {
	var mu sync.Mutex
	var sent bytes.Buffer
	collector := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		mu.Lock()
		defer mu.Unlock()
		if _, err := io.Copy(&sent, r.Body); err != nil {
			t.Error(err)
		}
	}))
	defer collector.Close()
	t.Setenv("OTEL_EXPORTER_OTLP_ENDPOINT", collector.URL) // the exporter reads the environment by itself
	r := start(t, core(), map[string]string{"OTEL_EXPORTER_OTLP_ENDPOINT": collector.URL})

	body, err := os.ReadFile(room)
	if err != nil {
		t.Fatal(err)
	}
	request, err := http.NewRequest(http.MethodPost, r.public+"/v1/assessments", bytes.NewReader(body))
	if err != nil {
		t.Fatal(err)
	}
	const trace = "0af7651916cd43dd8448eb211c80319c" // the example of W3C Trace Context, 3.2
	request.Header.Set("Content-Type", "application/json")
	request.Header.Set("Traceparent", "00-"+trace+"-b7ad6b7169203331-01")
	response, err := http.DefaultClient.Do(request)
	if err != nil {
		t.Fatal(err)
	}
	defer response.Body.Close()
	waitFor(t, func() bool { return strings.Contains(r.out.String(), `"trace_id":"`+trace+`"`) })
	if err := syscall.Kill(os.Getpid(), syscall.SIGTERM); err != nil {
		t.Fatal(err)
	}
	r.ended <- <-r.ended // ending sends what is left

	mu.Lock()
	defer mu.Unlock()
	for _, name := range []string{"POST /v1/assessments", "decode", "resolve", "fit", "encode", "railhead", "http.route"} {
		if !bytes.Contains(sent.Bytes(), []byte(name)) {
			t.Errorf("no span or attribute %q was sent", name)
		}
	}
	if bytes.Contains(sent.Bytes(), []byte("pencil")) || bytes.Contains(sent.Bytes(), []byte("gypsum_board")) {
		t.Error("the traces hold a body")
	}
}
