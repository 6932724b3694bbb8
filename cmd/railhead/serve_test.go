package main

import (
	"bytes"
	"context"
	"fmt"
	"io"
	"net"
	"net/http"
	"os"
	"strings"
	"sync"
	"syscall"
	"testing"
	"time"

	"railhead/api"
	"railhead/internal/assess"
	"railhead/internal/httpapi"
)

const room = "../../testdata/cases/quarry-row-long-wall/request.json"

// running is the real program, started by its own command on free ports.
type running struct {
	public, admin string
	out           *lines
	ended         chan int
}

// lines is an output that may be read while it is written.
type lines struct {
	sync.Mutex
	bytes.Buffer
}

func (l *lines) Write(p []byte) (int, error) {
	l.Lock()
	defer l.Unlock()
	return l.Buffer.Write(p)
}

func (l *lines) String() string {
	l.Lock()
	defer l.Unlock()
	return l.Buffer.String()
}

func start(t *testing.T, core httpapi.Core, settings map[string]string) running {
	t.Helper()
	env := map[string]string{"RAILHEAD_ADDR": "127.0.0.1:0", "RAILHEAD_ADMIN_ADDR": "127.0.0.1:0"}
	for name, value := range settings {
		env[name] = value
	}
	r := running{out: &lines{}, ended: make(chan int, 1)}
	addrs := make(chan [2]net.Addr, 1)
	ctx, cancel := context.WithCancel(context.Background())
	p := program{stdout: r.out, stderr: r.out, getenv: func(name string) string { return env[name] }, core: core,
		listening: func(public, admin net.Addr) { addrs <- [2]net.Addr{public, admin} }}
	go func() { r.ended <- p.run(ctx, []string{"serve"}) }()
	select {
	case at := <-addrs:
		r.public, r.admin = "http://"+at[0].String(), "http://"+at[1].String()
	case code := <-r.ended:
		t.Fatalf("ended at once with %d: %s", code, r.out)
	}
	t.Cleanup(func() {
		cancel()
		select {
		case <-r.ended:
		case <-time.After(20 * time.Second):
			t.Error("the service did not end")
		}
	})
	waitFor(t, func() bool { return statusOf(r.admin+"/readyz") == 200 })
	return r
}

func statusOf(url string) int {
	response, err := http.Get(url)
	if err != nil {
		return 0
	}
	defer response.Body.Close()
	return response.StatusCode
}

func waitFor(t *testing.T, done func() bool) {
	t.Helper()
	for end := time.Now().Add(10 * time.Second); !done(); time.Sleep(5 * time.Millisecond) {
		if time.Now().After(end) {
			t.Fatal("waited in vain")
		}
	}
}

func post(url string, body []byte) (int, string, error) {
	response, err := http.Post(url+"/v1/assessments", "application/json", bytes.NewReader(body))
	if err != nil {
		return 0, "", err
	}
	defer response.Body.Close()
	text, err := io.ReadAll(response.Body)
	return response.StatusCode, string(text), err
}

// gated is a core that waits before it answers, and tells when it has begun.
func gated() (c httpapi.Core, begun chan struct{}, open chan struct{}) {
	begun, open = make(chan struct{}, 100), make(chan struct{})
	c = core()
	quick := c.Assess
	c.Assess = func(ctx context.Context, req *api.Request, parts assess.Part) (*api.Assessment, []api.Fault) {
		begun <- struct{}{}
		<-open
		return quick(ctx, req, parts)
	}
	return c, begun, open
}

func TestServeAnswersWhatAssessPrints(t *testing.T) {
	body, err := os.ReadFile(room)
	if err != nil {
		t.Fatal(err)
	}
	r := start(t, core(), nil)
	status, text, err := post(r.public, body)
	if printed := runs(t, "", nil, "assess", room); err != nil || status != 200 || text != printed.out {
		t.Errorf("%d, %v; the command prints %d bytes, the path answers %d", status, err, len(printed.out), len(text))
	}
	for path, want := range map[string]int{"/v1/systems": 200, "/openapi.yaml": 200, "/readyz": 404, "/metrics": 404} {
		if got := statusOf(r.public + path); got != want {
			t.Errorf("public %s: %d, want %d", path, got, want)
		}
	}
	waitFor(t, func() bool { return strings.Contains(r.out.String(), `"route":"/v1/assessments"`) })
	if strings.Contains(r.out.String(), "quarry") {
		t.Error("the log holds a body")
	}
	metrics, err := http.Get(r.admin + "/metrics")
	if err != nil {
		t.Fatal(err)
	}
	defer metrics.Body.Close()
	if counted, err := io.ReadAll(metrics.Body); err != nil || !strings.Contains(string(counted), `railhead_requests_total{operation="POST /v1/assessments",status="200"} 1`) {
		t.Errorf("not counted: %v", err)
	}
}

// SIGTERM: not ready at once, no new connections, and what is under way is answered.
func TestSigtermLetsRequestsFinish(t *testing.T) {
	body, err := os.ReadFile(room)
	if err != nil {
		t.Fatal(err)
	}
	c, begun, open := gated()
	r := start(t, c, nil)
	answered := make(chan string, 1)
	go func() {
		status, _, err := post(r.public, body)
		answered <- fmt.Sprint(status, err)
	}()
	<-begun
	if err := syscall.Kill(os.Getpid(), syscall.SIGTERM); err != nil {
		t.Fatal(err)
	}
	waitFor(t, func() bool { return statusOf(r.admin+"/readyz") == 503 && statusOf(r.admin+"/livez") == 200 })
	waitFor(t, func() bool { return statusOf(r.public+"/v1/systems") == 0 })
	select {
	case got := <-answered:
		t.Fatalf("answered before its time: %s", got)
	case code := <-r.ended:
		t.Fatalf("ended before its requests: %d", code)
	default:
	}
	close(open)
	if got := <-answered; got != "200 <nil>" {
		t.Errorf("the request under way: %s", got)
	}
	code := <-r.ended
	r.ended <- code
	if code != 0 {
		t.Errorf("exit %d: %s", code, r.out)
	}
}

// A request that outlives the drain is cut off, and the exit code says so.
func TestTheDrainEnds(t *testing.T) {
	body, err := os.ReadFile(room)
	if err != nil {
		t.Fatal(err)
	}
	c, begun, open := gated()
	r := start(t, c, map[string]string{"RAILHEAD_DRAIN": "50ms"})
	go func() { _, _, _ = post(r.public, body) }() // is cut off
	<-begun
	if err := syscall.Kill(os.Getpid(), syscall.SIGTERM); err != nil {
		t.Fatal(err)
	}
	code := <-r.ended
	r.ended <- code
	close(open)
	if code != 1 {
		t.Errorf("exit %d", code)
	}
}

func TestSlowCallersAreNotWaitedFor(t *testing.T) {
	r := start(t, core(), map[string]string{"RAILHEAD_READ_TIMEOUT": "150ms", "RAILHEAD_HEADER_TIMEOUT": "100ms"})
	connection, err := net.Dial("tcp", strings.TrimPrefix(r.public, "http://"))
	if err != nil {
		t.Fatal(err)
	}
	defer connection.Close()
	fmt.Fprint(connection, "POST /v1/assessments HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\nContent-Length: 100\r\n\r\n{")
	if err := connection.SetReadDeadline(time.Now().Add(10 * time.Second)); err != nil {
		t.Fatal(err)
	}
	answer, err := io.ReadAll(connection)
	if err != nil || !strings.Contains(string(answer), "408 Request Timeout") || !strings.Contains(string(answer), "request.body.too_slow") {
		t.Errorf("%s, %v", answer, err)
	}
}

func TestAnAddressThatIsTakenEndsTheService(t *testing.T) {
	taken, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	defer taken.Close()
	for _, name := range []string{"RAILHEAD_ADDR", "RAILHEAD_ADMIN_ADDR"} {
		env := map[string]string{"RAILHEAD_ADDR": "127.0.0.1:0", "RAILHEAD_ADMIN_ADDR": "127.0.0.1:0", name: taken.Addr().String()}
		if got := runs(t, "", env, "serve"); got.code != 1 || got.err == "" {
			t.Errorf("%s: %+v", name, got)
		}
	}
}

func TestHealthcheckAsksTheRunningService(t *testing.T) {
	r := start(t, core(), nil)
	env := map[string]string{"RAILHEAD_ADMIN_ADDR": strings.TrimPrefix(r.admin, "http://")}
	if got := runs(t, "", env, "healthcheck"); got.code != 0 {
		t.Errorf("%+v", got)
	}
	env["RAILHEAD_ADMIN_ADDR"] = strings.TrimPrefix(r.public, "http://") // answers, but is not ready by its 404
	if got := runs(t, "", env, "healthcheck"); got.code != 1 {
		t.Errorf("%+v", got)
	}
}

// Many callers at once, good and bad; the race detector watches.
func TestManyCallersAtOnce(t *testing.T) {
	body, err := os.ReadFile(room)
	if err != nil {
		t.Fatal(err)
	}
	r := start(t, core(), nil)
	_, want, err := post(r.public, body)
	if err != nil {
		t.Fatal(err)
	}
	var wait sync.WaitGroup
	for i := range 24 {
		wait.Add(1)
		go func() {
			defer wait.Done()
			if i%3 == 0 {
				if status, text, err := post(r.public, []byte(`{"units": 1}`)); err != nil || status != 422 {
					t.Errorf("%d %s %v", status, text, err)
				}
				return
			}
			if status, text, err := post(r.public, body); err != nil || status != 200 || text != want {
				t.Errorf("%d, another answer, %v", status, err)
			}
		}()
	}
	wait.Wait()
}
