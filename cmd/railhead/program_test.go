package main

import (
	"bytes"
	"context"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"railhead/openapi"
)

// ran is what a command did.
type ran struct {
	code     int
	out, err string
}

func runs(t *testing.T, in string, env map[string]string, args ...string) ran {
	t.Helper()
	var out, err bytes.Buffer
	p := program{stdin: strings.NewReader(in), stdout: &out, stderr: &err, getenv: func(name string) string { return env[name] }, core: core()}
	code := p.run(context.Background(), args)
	return ran{code, out.String(), err.String()}
}

func TestAssessRefusesOnStandardError(t *testing.T) {
	got := runs(t, `{"units": "mm"`, nil, "assess", "-")
	if got.code != 2 || got.out != "" || !strings.Contains(got.err, `"code":"request.body.not_json"`) || !strings.Contains(got.err, `"request_id":"command"`) {
		t.Errorf("%+v", got)
	}
	got = runs(t, strings.Repeat(" ", 1025), map[string]string{"RAILHEAD_MAX_BODY": "1024"}, "assess")
	if got.code != 2 || !strings.Contains(got.err, "request.body.too_large") {
		t.Errorf("%+v", got)
	}
}

func TestALengthThatIsNoneIsOneError(t *testing.T) {
	got := runs(t, `{"units":"mm","survey":{"walls":[{"id":"long","length":3600,"floor":[{"at":0,"height":"1 furlong"}],"ceiling":[{"at":0,"height":2500}]}]},"system":"demo-rail"}`, nil, "assess")
	if strings.Count(got.err, `"pointer":`) != 1 || !strings.Contains(got.err, `"pointer":"/survey/walls/0/floor/0/height"`) {
		t.Errorf("%+v", got)
	}
}

func TestAssessNeedsAFileThatIsThere(t *testing.T) {
	for _, args := range [][]string{{"assess", filepath.Join(t.TempDir(), "none.json")}, {"assess", "a", "b"}} {
		if got := runs(t, "", nil, args...); got.code != 1 || got.out != "" || got.err == "" {
			t.Errorf("%v: %+v", args, got)
		}
	}
}

func TestAssessReadsAFileOrStandardInput(t *testing.T) {
	body, err := os.ReadFile(room)
	if err != nil {
		t.Fatal(err)
	}
	file, in := runs(t, "", nil, "assess", room), runs(t, string(body), nil, "assess")
	if file.code != 0 || file.err != "" || file.out != in.out || !strings.HasPrefix(file.out, `{"edition":`) {
		t.Errorf("%+v", file)
	}
}

func TestOpenapiPrintsTheContract(t *testing.T) {
	for flags, want := range map[string][]byte{"": openapi.JSON, "--yaml": openapi.YAML, "--3.0": openapi.JSON30} {
		if got := runs(t, "", nil, append([]string{"openapi"}, strings.Fields(flags)...)...); got.code != 0 || got.out != string(want) {
			t.Errorf("%q: exit %d", flags, got.code)
		}
	}
	for _, flags := range []string{"--3.0 --yaml", "--html", "file"} {
		if got := runs(t, "", nil, append([]string{"openapi"}, strings.Fields(flags)...)...); got.code != 1 || got.out != "" {
			t.Errorf("%q: %+v", flags, got)
		}
	}
}

func TestVersionAndHelp(t *testing.T) {
	if got := runs(t, "", nil, "version"); got.code != 0 || !strings.Contains(got.out, "edition") {
		t.Errorf("%+v", got)
	}
	for _, args := range [][]string{{"help"}, {}} {
		got := runs(t, "", nil, args...)
		for _, word := range []string{"serve", "assess [FILE|-]", "healthcheck", "RAILHEAD_ADMIN_ADDR", "OTEL_"} {
			if got.code != 0 || !strings.Contains(got.out, word) {
				t.Errorf("%v does not tell %s: %+v", args, word, got)
			}
		}
	}
	for _, args := range [][]string{{"--help"}, {"-h"}, {"serve", "--help"}, {"assess", "-h"}} {
		if got := runs(t, "", nil, args...); got.code != 0 || !strings.HasPrefix(got.out, "Usage:") {
			t.Errorf("%v: %+v", args, got)
		}
	}
	for _, args := range [][]string{{"serve", "now"}, {"version", "x"}, {"healthcheck", "x"}, {"help", "x"}} {
		if got := runs(t, "", nil, args...); got.code != 1 || got.out != "" || got.err == "" {
			t.Errorf("%v: %+v", args, got)
		}
	}
	if got := runs(t, "", nil, "sreve"); got.code != 1 || !strings.Contains(got.err, "help") {
		t.Errorf("%+v", got)
	}
}

func TestBadSettingsEndEveryCommandThatReadsThem(t *testing.T) {
	bad := map[string]string{"RAILHEAD_ADDR": "nowhere", "RAILHEAD_DRAIN": "soon"}
	for _, name := range []string{"serve", "assess", "healthcheck"} {
		got := runs(t, "", bad, name)
		if got.code != 1 || !strings.Contains(got.err, "RAILHEAD_ADDR") || !strings.Contains(got.err, "RAILHEAD_DRAIN") {
			t.Errorf("%s: %+v", name, got)
		}
	}
	if got := runs(t, "", map[string]string{"OTEL_TRACES_EXPORTER": "zipkin"}, "serve"); got.code != 1 || !strings.Contains(got.err, "OTEL_TRACES_EXPORTER") {
		t.Errorf("%+v", got)
	}
}

func TestListenersAreReachableFromTheirOwnMachine(t *testing.T) {
	for addr, want := range map[string]string{
		"0.0.0.0:81": "127.0.0.1:81", ":81": "127.0.0.1:81", "[::]:81": "[::1]:81", "10.0.0.7:81": "10.0.0.7:81", "localhost:81": "localhost:81",
	} {
		if got := reachable(addr); got != want {
			t.Errorf("%s: %s, want %s", addr, got, want)
		}
	}
}
