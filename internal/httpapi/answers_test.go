package httpapi

import (
	"bytes"
	"context"
	"net/http"
	"strings"
	"testing"
	"time"
)

func TestEveryPathAnswers(t *testing.T) {
	s := serviceWith(t, Options{})
	h := s.Handler()
	members := map[string]string{
		"/v1/assessments": `"decisions"`, "/v1/fit-checks": `"fit"`, "/v1/rail-heights": `"rails"`, "/v1/soffit-trims": `"trims"`, "/v1/soffit-decisions": `"decisions"`,
		"/v1/estimates": `"estimate"`, "/v1/layouts": `"layouts"`,
	}
	if len(members) != len(postings) {
		t.Errorf("%d paths are asked of %d", len(members), len(postings))
	}
	for path, member := range members {
		w := exchange(t, h, post(path, room))
		body := w.Body.String()
		if w.Code != 200 || w.Header().Get("Content-Type") != "application/json" || !strings.Contains(body, member) || !strings.HasSuffix(body, "}\n") {
			t.Errorf("%s: %d %s", path, w.Code, body)
		}
		nothingNull(t, w.Body.Bytes())
		if again := exchange(t, h, post(path, room)); !bytes.Equal(again.Body.Bytes(), w.Body.Bytes()) || again.Header().Get("ETag") != w.Header().Get("ETag") {
			t.Errorf("%s: the same request got another answer", path)
		}
	}
	for _, path := range []string{"/v1/systems", "/v1/systems/demo-rail"} {
		if w := exchange(t, h, get(path)); w.Code != 200 {
			t.Errorf("%s: %d %s", path, w.Code, w.Body)
		} else {
			nothingNull(t, w.Body.Bytes())
		}
	}
}

func TestTextsAreNotEscapedForPages(t *testing.T) {
	w := exchange(t, serviceWith(t, Options{}).Handler(), post("/v1/assessments", room))
	if !strings.Contains(w.Body.String(), `"<\"Größe\" & more>"`) {
		t.Errorf("%s", w.Body)
	}
}

func TestTheCommandAndThePathAnswerTheSameBytes(t *testing.T) {
	s := serviceWith(t, Options{})
	answer, problem := s.Assess(context.Background(), []byte(room))
	if w := exchange(t, s.Handler(), post("/v1/assessments", room)); problem != nil || !bytes.Equal(answer, w.Body.Bytes()) {
		t.Errorf("%v %s", problem, answer)
	}
	_, problem = s.Assess(WithRequestID(context.Background(), "x"), []byte(`{`))
	if problem == nil || problem.Status != 400 || problem.RequestID != "x" {
		t.Errorf("%+v", problem)
	}
}

func TestWhatIsKnownIsNotSentAgain(t *testing.T) {
	h := serviceWith(t, Options{}).Handler()
	for _, path := range []string{"/v1/systems", "/v1/systems/demo-rail", "/openapi.json", "/openapi.yaml", "/openapi-3.0.json"} {
		first := exchange(t, h, get(path))
		tag := first.Header().Get("ETag")
		if first.Code != 200 || !strings.HasPrefix(tag, `"`) || first.Body.Len() == 0 {
			t.Fatalf("%s: %d, tag %s", path, first.Code, tag)
		}
		for _, known := range []string{tag, "W/" + tag, `"other", ` + tag, "*"} {
			w := exchange(t, h, get(path).with("If-None-Match", known))
			if w.Code != http.StatusNotModified || w.Body.Len() != 0 || w.Header().Get("ETag") != tag {
				t.Errorf("%s, %s: %d with %d bytes", path, known, w.Code, w.Body.Len())
			}
		}
		if w := exchange(t, h, get(path).with("If-None-Match", `"other"`)); w.Code != 200 {
			t.Errorf("%s, another tag: %d", path, w.Code)
		}
	}
	if w := exchange(t, h, post("/v1/assessments", room).with("If-None-Match", "*")); w.Code != 200 {
		t.Errorf("what is posted is always answered: %d", w.Code)
	}
}

func TestHeadIsGetWithoutTheBody(t *testing.T) {
	server := liveServer(t, serviceWith(t, Options{}).Handler())
	for _, path := range []string{"/v1/systems", "/openapi.json", "/v1/systems/nobodys"} {
		g, h := ask(t, server, "GET", path), ask(t, server, "HEAD", path)
		if g.status != h.status || h.length != g.length || g.length <= 0 || len(h.body) != 0 || g.header.Get("ETag") != h.header.Get("ETag") {
			t.Errorf("%s: GET %d of %d bytes, HEAD %d of %d bytes", path, g.status, g.length, h.status, h.length)
		}
	}
}

func TestAllowNamesTheMethods(t *testing.T) {
	h := serviceWith(t, Options{}).Handler()
	for path, want := range map[string]string{"/v1/assessments": "POST", "/v1/systems": "GET, HEAD", "/v1/systems/x": "GET, HEAD", "/openapi.yaml": "GET, HEAD"} {
		if got := exchange(t, h, call{"PUT", path, "", nil}).Header().Get("Allow"); got != want {
			t.Errorf("%s: %q, want %q", path, got, want)
		}
	}
}

func TestAcceptIsRead(t *testing.T) {
	h := serviceWith(t, Options{}).Handler()
	for accept, status := range map[string]int{
		"": 200, "*/*": 200, "application/json": 200, "application/*": 200, "application/problem+json": 200, "text/html, application/json;q=0.1": 200,
		"text/html;q=0.9, */*;q=0.8": 200, "APPLICATION/JSON; charset=utf-8": 200, "application/json, application/problem+json": 200,
		"text/*": 406, "application/json;q=0": 406, "nonsense": 406, "*/*;q=0": 406, "application/json;q=0, */*": 406,
	} {
		if w := exchange(t, h, get("/v1/systems").with("Accept", accept)); w.Code != status {
			t.Errorf("%q: %d, want %d", accept, w.Code, status)
		}
	}
}

func TestRequestIDsAreKeptWhereTheyAreSane(t *testing.T) {
	h := serviceWith(t, Options{}).Handler()
	for id, kept := range map[string]bool{"job-17_a.b": true, "": false, "a b": false, "<script>": false, strings.Repeat("a", 65): false, "a\tb": false} {
		got := exchange(t, h, get("/v1/systems").with("X-Request-Id", id)).Header().Get("X-Request-Id")
		if (got == id) != kept || len(got) == 0 {
			t.Errorf("%q became %q", id, got)
		}
	}
}

func TestBrowsersMayDoNothingWithAnswers(t *testing.T) {
	h := serviceWith(t, Options{}).Handler()
	for _, path := range []string{"/v1/systems", "/nowhere"} {
		w := exchange(t, h, get(path))
		if w.Header().Get("X-Content-Type-Options") != "nosniff" || w.Header().Get("Content-Security-Policy") == "" {
			t.Errorf("%s: %v", path, w.Header())
		}
	}
}

// Labels of metrics are few, whatever callers ask for.
func TestWhatIsCountedIsBounded(t *testing.T) {
	seen := map[string]bool{}
	h := serviceWith(t, Options{Observe: func(operation string, _ int, _ time.Duration) { seen[operation] = true }}).Handler()
	for _, c := range []call{get("/a"), get("/b"), get("/v1/systems/a"), get("/v1/systems/b"), {"X", "/v1/systems", "", nil}, {"PUT", "/v1/systems/a", "", nil}, post("/v1/assessments", "")} {
		exchange(t, h, c)
	}
	for operation := range seen {
		switch operation {
		case "other", "GET /v1/systems/{id}", "POST /v1/assessments":
		default:
			t.Errorf("counted %q", operation)
		}
	}
}
