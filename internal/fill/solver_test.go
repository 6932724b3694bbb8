package fill

import (
	"errors"
	"fmt"
	"math"
	"os"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/mip"
)

// A mixed-integer program of each run, solved by HiGHS, comes to the same. Without HiGHS all ways are tried instead, as
// far as there are few enough.
func TestAsMixedIntegerProgram(t *testing.T) {
	solver := mip.Installed(t)
	if solver == nil {
		for _, r := range randomRuns(400, tiny) {
			r.Best = 1
			worth, possible := filled1(t, r)
			all := brute(r)
			if possible != (len(all) > 0) || possible && worth != int64(all[0].worth) {
				t.Errorf("worth %d, %v; all ways: %v", worth, possible, all)
			}
		}
		return
	}
	names, runs := proofs()
	var programs []*mip.Model
	for i, r := range runs {
		programs = append(programs, newProgram(names[i], r).Model)
	}
	most, none := 0, 0
	for i, got := range solver.Solve(t, programs...) {
		worth, possible := filled1(t, runs[i])
		switch {
		case !possible && got.Status == mip.Impossible:
			none++
		case possible && got.Status == mip.Optimal && int64(math.Round(got.Objective)) == worth:
			most++
		default:
			t.Errorf("%s: worth %d, %v; HiGHS %+v\n%+v", got.Name, worth, possible, got, *runs[i])
		}
	}
	t.Logf("%d runs worth the same, %d impossible to both", most, none)
	if most < 2*len(runs)/3 {
		t.Errorf("%d of %d runs are no proof", most, len(runs))
	}
}

// proofs are the runs that HiGHS solves: a few random ones, and with CI set many, the cases and the hard ones.
func proofs() (names []string, runs []*Run) {
	ci := os.Getenv("CI") != ""
	n := 40
	if ci {
		n = 320
	}
	for i, r := range randomRuns(n, middle) {
		names, runs = append(names, fmt.Sprint("random ", i)), append(runs, r)
	}
	for _, c := range slices.Concat(cases, hard) {
		if ci {
			names, runs = append(names, c.name), append(runs, c.run)
		}
	}
	return names, runs
}

// filled1 is the worth of the best answer to a run.
func filled1(t *testing.T, r *Run) (int64, bool) {
	t.Helper()
	got, err := Fill(r)
	var impossible *Infeasible
	if errors.As(err, &impossible) {
		return 0, false
	}
	if err != nil {
		t.Fatal(err)
	}
	return int64(got[0].Worth), true
}

// randomRuns are so many runs without slips, always the same ones.
func randomRuns(n int, of shape) []*Run {
	gen := rapid.Custom(func(t *rapid.T) *Run { return drawRun(t, of) })
	var out []*Run
	for seed := 1; len(out) < n; seed++ {
		r := gen.Example(seed)
		if len(reduce(r).checkPairs()) == 0 {
			out = append(out, r)
		}
	}
	return out
}
