package assess

import (
	"bytes"
	"encoding/json"
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

var update = flag.Bool("update", false, "rewrite the answers of the rooms under testdata")

const (
	casesFolder   = "../../testdata/cases"
	layoutsFolder = "../../testdata/layouts"
)

// rooms are the rooms of a folder of testdata.
func rooms(t *testing.T, folder string) []string {
	t.Helper()
	folders, err := filepath.Glob(filepath.Join(folder, "*"))
	if err != nil || len(folders) == 0 {
		t.Fatalf("no rooms: %v", err)
	}
	return folders
}

// TestCases holds every room of testdata/cases against its answer, which was
// read line by line when it was written.
func TestCases(t *testing.T) {
	hold(t, casesFolder, func(t *testing.T, body string) any { return answer(t, body) })
}

// hold holds every room of a folder against its answer.
func hold(t *testing.T, folder string, answers func(t *testing.T, body string) any) {
	t.Helper()
	for _, room := range rooms(t, folder) {
		t.Run(filepath.Base(room), func(t *testing.T) {
			about := read(t, room, "about.txt")
			if strings.Count(about, "\n") != 1 {
				t.Errorf("about.txt holds one line, not %q", about)
			}
			got := indented(t, answers(t, read(t, room, "request.json")))
			golden := filepath.Join(room, "answer.json")
			if *update {
				if err := os.WriteFile(golden, []byte(got), 0o600); err != nil {
					t.Fatal(err)
				}
			}
			if want := read(t, room, "answer.json"); got != want {
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

func indented(t *testing.T, a any) string {
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

// TestNoListIsLeftOut looks for null anywhere in the answers of the rooms.
func TestNoListIsLeftOut(t *testing.T) {
	noneNull := func(room string, a any) {
		if strings.Contains(indented(t, a), ": null") {
			t.Errorf("%s: the answer holds null", filepath.Base(room))
		}
	}
	for _, room := range rooms(t, casesFolder) {
		noneNull(room, answer(t, read(t, room, "request.json")))
	}
	for _, room := range rooms(t, layoutsFolder) {
		noneNull(room, layouts(t, read(t, room, "request.json")))
	}
}
