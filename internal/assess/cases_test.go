package assess

import (
	"bytes"
	"encoding/json"
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"railhead/api"
)

var update = flag.Bool("update", false, "rewrite the answers of testdata/cases")

// TestCases holds every room of testdata/cases against its answer, which was
// read line by line when it was written.
func TestCases(t *testing.T) {
	folders, err := filepath.Glob("../../testdata/cases/*")
	if err != nil || len(folders) == 0 {
		t.Fatalf("no cases: %v", err)
	}
	for _, folder := range folders {
		t.Run(filepath.Base(folder), func(t *testing.T) {
			about := read(t, folder, "about.txt")
			if strings.Count(about, "\n") != 1 {
				t.Errorf("about.txt holds one line, not %q", about)
			}
			got := indented(t, answer(t, read(t, folder, "request.json")))
			golden := filepath.Join(folder, "answer.json")
			if *update {
				if err := os.WriteFile(golden, []byte(got), 0o600); err != nil {
					t.Fatal(err)
				}
			}
			if want := read(t, folder, "answer.json"); got != want {
				t.Errorf("the answer is not the one in %s; first difference:\n%s", golden, firstDifference(want, got))
			}
		})
	}
}

func read(t *testing.T, folder, name string) string {
	t.Helper()
	text, err := os.ReadFile(filepath.Join(folder, name))
	if err != nil {
		t.Fatal(err)
	}
	return string(text)
}

func indented(t *testing.T, a *api.Assessment) string {
	t.Helper()
	var out bytes.Buffer
	enc := json.NewEncoder(&out)
	enc.SetEscapeHTML(false)
	enc.SetIndent("", "  ")
	if err := enc.Encode(a); err != nil {
		t.Fatal(err)
	}
	return out.String()
}

func firstDifference(want, got string) string {
	w, g := strings.Split(want, "\n"), strings.Split(got, "\n")
	for i := range w {
		if i >= len(g) || w[i] != g[i] {
			return "want " + strings.Join(w[i:min(i+3, len(w))], "\n") + "\ngot  " + strings.Join(g[min(i, len(g)):min(i+3, len(g))], "\n")
		}
	}
	return "got more: " + strings.Join(g[len(w):], "\n")
}

// TestNoListIsLeftOut looks for null anywhere in the answers of the cases.
func TestNoListIsLeftOut(t *testing.T) {
	folders, _ := filepath.Glob("../../testdata/cases/*")
	for _, folder := range folders {
		if text := indented(t, answer(t, read(t, folder, "request.json"))); strings.Contains(text, ": null") {
			t.Errorf("%s: the answer holds null", filepath.Base(folder))
		}
	}
}
