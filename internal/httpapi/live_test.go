package httpapi

import (
	"fmt"
	"io"
	"net/http"
	"net/http/httptest"
	"strings"
	"sync"
	"testing"
)

type answered struct {
	status int
	length int64
	header http.Header
	body   []byte
}

func liveServer(t *testing.T, h http.Handler) *httptest.Server {
	t.Helper()
	server := httptest.NewServer(h)
	t.Cleanup(server.Close)
	return server
}

func ask(t *testing.T, server *httptest.Server, method, path string) answered {
	t.Helper()
	r, err := http.NewRequest(method, server.URL+path, nil)
	if err != nil {
		t.Fatal(err)
	}
	response, err := server.Client().Do(r)
	if err != nil {
		t.Fatal(err)
	}
	defer response.Body.Close()
	body, err := io.ReadAll(response.Body)
	if err != nil {
		t.Fatal(err)
	}
	return answered{response.StatusCode, response.ContentLength, response.Header, body}
}

// Requests side by side get each its own answer; the race detector watches.
func TestRequestsSideBySide(t *testing.T) {
	server := liveServer(t, serviceWith(t, Options{}).Handler())
	var wait sync.WaitGroup
	for i := range 50 {
		wait.Add(1)
		go func() {
			defer wait.Done()
			body, status := room, 200
			if i%2 == 0 {
				body, status = fmt.Sprintf(`{"colour%d": 1}`, i), 422
			}
			response, err := http.Post(server.URL+"/v1/assessments", "application/json", strings.NewReader(body))
			if err != nil {
				t.Error(err)
				return
			}
			defer response.Body.Close()
			text, err := io.ReadAll(response.Body)
			if err != nil || response.StatusCode != status || status == 422 && !strings.Contains(string(text), fmt.Sprintf(`"/colour%d"`, i)) {
				t.Errorf("request %d: %d %s, %v", i, response.StatusCode, text, err)
			}
		}()
	}
	wait.Wait()
}
