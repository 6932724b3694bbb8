package mip

import (
	"bufio"
	"bytes"
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"testing"
)

// Result is what HiGHS says of a model.
type Result struct {
	Name      string  `json:"name"`
	Status    string  `json:"status"`
	Objective float64 `json:"objective"`
	Seconds   float64 `json:"seconds"` // of reading and solving, without starting up
}

// What a Status may be of a model that is solved.
const (
	Optimal    = "Optimal"
	Impossible = "Infeasible"
)

// Solver is an installed HiGHS.
type Solver struct{ script string }

// Installed is the solver that .ci/run installs. Where it is not installed it is nil, and the test is to be content with
// what it can try itself; but with CI set it must be there.
func Installed(t testing.TB) *Solver {
	t.Helper()
	root := moduleRoot(t)
	_, err := os.Stat(filepath.Join(root, ".ci", "node_modules", "highs", "package.json"))
	switch {
	case err == nil:
		return &Solver{filepath.Join(root, ".ci", "highs.mjs")}
	case os.Getenv("CI") != "":
		t.Fatal(err)
	}
	return nil
}

func moduleRoot(t testing.TB) string {
	t.Helper()
	at, err := os.Getwd()
	if err != nil {
		t.Fatal(err)
	}
	for {
		if _, err := os.Stat(filepath.Join(at, "go.mod")); err == nil {
			return at
		}
		up := filepath.Dir(at)
		if up == at {
			t.Fatal("outside of the module")
		}
		at = up
	}
}

// Solve solves models one after the other.
func (s *Solver) Solve(t testing.TB, models ...*Model) []Result {
	t.Helper()
	var in bytes.Buffer
	enc := json.NewEncoder(&in)
	for _, m := range models {
		if err := enc.Encode(map[string]string{"name": m.Name, "lp": m.LP()}); err != nil {
			t.Fatal(err)
		}
	}
	cmd := exec.CommandContext(t.Context(), "node", s.script) // #nosec G204 -- the script is the module's own
	cmd.Stdin = &in
	var told bytes.Buffer
	cmd.Stderr = &told
	out, err := cmd.Output()
	if err != nil {
		t.Fatalf("%v: %s", err, told.String())
	}
	results := read(t, out)
	if len(results) != len(models) {
		t.Fatalf("%d results of %d models", len(results), len(models))
	}
	return results
}

func read(t testing.TB, out []byte) []Result {
	t.Helper()
	var results []Result
	lines := bufio.NewScanner(bytes.NewReader(out))
	for lines.Scan() {
		var r Result
		if err := json.Unmarshal(lines.Bytes(), &r); err != nil {
			t.Fatalf("%v: %s", err, lines.Text())
		}
		results = append(results, r)
	}
	return results
}
