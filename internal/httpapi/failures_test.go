package httpapi

import (
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"io"
	"log/slog"
	"net/http"
	"net/http/httptest"
	"os"
	"strings"
	"testing"
	"time"

	"railhead/api"
	"railhead/internal/assess"
)

// Every way to fail is a problem with a code, and none tells more than it should.
func TestEveryWayToFailIsAProblem(t *testing.T) {
	whole := serviceWith(t, Options{MaxBody: 4096}).Handler()
	slow := serviceWith(t, Options{Core: slowCore(time.Minute), Timeout: 10 * time.Millisecond}).Handler()
	broken := serviceWith(t, Options{Core: brokenCore()}).Handler()
	big := `{"x": "` + strings.Repeat("y", 4096) + `"}`
	cases := []struct {
		name   string
		h      http.Handler
		call   call
		status int
		code   string
	}{
		{"an unknown path", whole, get("/v2/assessments"), 404, "request.path.unknown"},
		{"a path below a path", whole, get("/v1/systems/a/b"), 404, "request.path.unknown"},
		{"a slash too many", whole, post("/v1/assessments/", room), 404, "request.path.unknown"},
		{"an unknown system", whole, get("/v1/systems/nobodys"), 404, "system.id.unknown"},
		{"reading what is posted to", whole, get("/v1/assessments"), 405, "request.method.not_allowed"},
		{"deleting", whole, call{"DELETE", "/v1/systems", "", nil}, 405, "request.method.not_allowed"},
		{"a method of no standard", whole, call{"BREW", "/v1/systems", "", nil}, 405, "request.method.not_allowed"},
		{"a page is wanted", whole, post("/v1/assessments", room).with("Accept", "text/html"), 406, "request.accept.unsupported"},
		{"JSON is not wanted", whole, get("/v1/systems").with("Accept", "*/*, application/json;q=0"), 406, "request.accept.unsupported"},
		{"the contract as a page", whole, get("/openapi.json").with("Accept", "text/html"), 406, "request.accept.unsupported"},
		{"a body too large by its own account", whole, post("/v1/assessments", big), 413, "request.body.too_large"},
		{"a form", whole, post("/v1/assessments", room).with("Content-Type", "application/x-www-form-urlencoded"), 415, "request.content_type.unsupported"},
		{"no content type", whole, post("/v1/assessments", room).with("Content-Type", ""), 415, "request.content_type.unsupported"},
		{"Latin-1", whole, post("/v1/assessments", room).with("Content-Type", "application/json; charset=iso-8859-1"), 415, "request.content_type.unsupported"},
		{"a packed body", whole, post("/v1/assessments", room).with("Content-Encoding", "gzip"), 415, "request.content_encoding.unsupported"},
		{"no body", whole, post("/v1/assessments", ""), 400, "request.body.not_json"},
		{"no JSON", whole, post("/v1/fit-checks", `{"units": `), 400, "request.body.not_json"},
		{"a body that cannot be used", whole, post("/v1/assessments", `{"units": null}`), 422, "request.body.refused"},
		{"a room that cannot be", broken, post("/v1/rail-heights", room), 422, "request.body.refused"},
		{"what only layouts are told", whole, post("/v1/assessments", exampleLayout), 422, "request.body.refused"},
		{"walls to fill that are not there", whole, post("/v1/layouts", `{"fill": {"walls": []}}`), 422, "request.body.refused"},
		{"a layout that cannot be", broken, post("/v1/layouts", exampleLayout), 422, "request.body.refused"},
		{"reading layouts", whole, get("/v1/layouts"), 405, "request.method.not_allowed"},
		{"a query that means nothing", whole, get("/v1/systems?page=2"), 422, "request.parameters.refused"},
		{"a panic", broken, post("/v1/assessments", room), 500, "server.fault"},
		{"a panic over layouts", broken, post("/v1/layouts", room), 500, "server.fault"},
		{"an answer that is no JSON", broken, post("/v1/soffit-trims", room), 500, "server.fault"},
		{"a list that is no JSON", broken, get("/v1/systems"), 500, "server.fault"},
		{"an answer that takes too long", slow, post("/v1/assessments", room), 503, "server.timeout"},
		{"layouts that take too long", slow, post("/v1/layouts", room), 503, "server.timeout"},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			w := exchange(t, c.h, c.call.with("X-Request-Id", "job-17"))
			p := problemIn(t, w)
			if w.Code != c.status || p.Code != c.code || p.Status != c.status {
				t.Errorf("%d %s, want %d %s", w.Code, p.Code, c.status, c.code)
			}
			if p.RequestID != "job-17" || w.Header().Get("X-Request-Id") != "job-17" {
				t.Errorf("request id %q in the problem, %q in the header", p.RequestID, w.Header().Get("X-Request-Id"))
			}
			if strings.Contains(w.Body.String(), secret) {
				t.Errorf("the problem tells its cause: %s", w.Body)
			}
		})
	}
}

const secret = "Zq7secret"

// brokenCore panics for whole assessments and for layouts of which nothing is said, refuses rails and other layouts, and
// answers the rest with what is no JSON.
func brokenCore() Core {
	core := fakeCore()
	core.Assess = func(_ context.Context, _ *api.Request, parts assess.Part) (*api.Assessment, []api.Fault) {
		switch parts {
		case assess.All:
			panic(secret)
		case assess.Rails:
			return nil, []api.Fault{{Code: "survey.profile.off_wall", Detail: "x", Pointer: "/survey"}}
		}
		return &api.Assessment{Trims: []api.Trim{{From: api.Measure{MM: secret}}}}, nil
	}
	core.Layouts = func(_ context.Context, req *api.LayoutRequest) (*api.LayoutAnswer, []api.Fault) {
		if req.Fill == nil {
			panic(secret)
		}
		return nil, []api.Fault{{Code: "fill.wall.twice", Detail: "x", Pointer: "/fill/walls/1"}}
	}
	core.Systems = func() api.SystemList { return api.SystemList{Edition: secret + "\xff"} }
	return core
}

func problemIn(t *testing.T, w *httptest.ResponseRecorder) (p api.Problem) {
	t.Helper()
	if got := w.Header().Get("Content-Type"); got != "application/problem+json" {
		t.Errorf("content type %q", got)
	}
	body := w.Body.String()
	if err := json.Unmarshal([]byte(body), &p); err != nil {
		t.Fatalf("%v: %s", err, body)
	}
	if p.Type != "about:blank" || p.Title == "" || p.Detail == "" || !strings.HasSuffix(body, "}\n") {
		t.Errorf("an incomplete problem: %s", body)
	}
	nothingNull(t, w.Body.Bytes())
	return p
}

// nothingNull walks an answer; no part of it is null.
func nothingNull(t testing.TB, answer []byte) {
	t.Helper()
	var tree any
	if err := json.Unmarshal(answer, &tree); err != nil {
		t.Fatal(err)
	}
	var visit func(at any, pointer string)
	visit = func(at any, pointer string) {
		switch at := at.(type) {
		case nil:
			t.Errorf("null at %s", pointer)
		case map[string]any:
			for name, value := range at {
				visit(value, pointer+"/"+name)
			}
		case []any:
			for _, value := range at {
				visit(value, pointer+"/-")
			}
		}
	}
	visit(tree, "")
}

func TestTheLogKnowsTheCauseOfAFailure(t *testing.T) {
	for path, cause := range map[string]string{"/v1/assessments": secret, "/v1/soffit-trims": "/datum/at/mm", "/v1/systems": "/edition"} {
		var log bytes.Buffer
		h := serviceWith(t, Options{Core: brokenCore(), Log: slog.New(slog.NewJSONHandler(&log, nil))}).Handler()
		c := post(path, room)
		if path == "/v1/systems" {
			c = get(path)
		}
		exchange(t, h, c.with("X-Request-Id", "job-17"))
		if !strings.Contains(log.String(), cause) || !strings.Contains(log.String(), `"request_id":"job-17"`) {
			t.Errorf("%s: the log has only %s", path, &log)
		}
		if strings.Contains(log.String(), "96 1/2") {
			t.Errorf("%s: the log holds the body", path)
		}
	}
}

// failing is a body that breaks off.
type failing struct{ err error }

func (f failing) Read([]byte) (int, error) { return 0, f.err }

func TestBodiesThatBreakOff(t *testing.T) {
	h := serviceWith(t, Options{MaxBody: 4096}).Handler()
	for name, c := range map[string]struct {
		body   io.Reader
		status int
		code   string
	}{
		"too slow":                   {failing{os.ErrDeadlineExceeded}, 408, "request.body.too_slow"},
		"hung up":                    {failing{io.ErrUnexpectedEOF}, 400, "request.body.broken"},
		"reset":                      {failing{errors.New("reset")}, 400, "request.body.broken"},
		"too large as it comes":      {strings.NewReader(strings.Repeat(" ", 4097)), 413, "request.body.too_large"},
		"as large as may be, though": {strings.NewReader(room + strings.Repeat(" ", 4096-len(room))), 200, ""},
	} {
		r := httptest.NewRequest(http.MethodPost, "/v1/assessments", io.NopCloser(c.body))
		r.ContentLength = -1
		r.Header.Set("Content-Type", "application/json")
		w := httptest.NewRecorder()
		h.ServeHTTP(w, r)
		if w.Code != c.status || !strings.Contains(w.Body.String(), c.code) {
			t.Errorf("%s: %d %s", name, w.Code, w.Body)
		}
	}
}

func TestAllErrorsOfABodyComeWithTheCores(t *testing.T) {
	core := fakeCore()
	core.Check = func(context.Context, *api.Request) []api.Fault {
		return []api.Fault{{Code: "survey.wall.too_short", Detail: "x", Pointer: "/survey/walls/0/length"}, {Code: "y", Pointer: "/tape"}}
	}
	core.CheckLayouts = func(ctx context.Context, req *api.LayoutRequest) []api.Fault { return core.Check(ctx, &req.Request) }
	h := serviceWith(t, Options{Core: core}).Handler()
	for _, path := range []string{"/v1/assessments", "/v1/layouts"} {
		w := exchange(t, h, post(path, strings.Replace(room, `"units"`, `"tape": null, "colour": 1, "units"`, 1)))
		p := problemIn(t, w)
		var got []string
		for _, f := range p.Errors {
			got = append(got, f.Code+" "+f.Pointer)
		}
		want := "body.member.unknown /colour, survey.wall.too_short /survey/walls/0/length, body.value.null /tape"
		if strings.Join(got, ", ") != want || p.Detail != "The body has 3 errors." {
			t.Errorf("%s: %s\n%v", path, p.Detail, got)
		}
	}
}

// A caller who hangs up gets no answer, and counts as no failure of ours.
func TestACallerWhoHangsUpIsNotOurFailure(t *testing.T) {
	var operation string
	var status int
	s := serviceWith(t, Options{Core: slowCore(time.Minute), Observe: func(o string, got int, _ time.Duration) { operation, status = o, got }})
	ctx, cancel := context.WithCancel(context.Background())
	w := httptest.NewRecorder()
	time.AfterFunc(10*time.Millisecond, cancel)
	s.Handler().ServeHTTP(w, post("/v1/assessments", room).request().WithContext(ctx))
	if w.Body.Len() != 0 || status != statusGone || operation != "POST /v1/assessments" {
		t.Errorf("%s %d: %s", operation, status, w.Body)
	}
}
