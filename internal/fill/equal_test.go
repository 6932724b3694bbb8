package fill

import (
	"errors"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/money"
)

// Every way to fill small runs, tried one by one, against the search: the same lists of cabinets in the same order,
// worth the same.
func TestBestOfAllWays(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := drawRun(t, rapid.SampledFrom([]shape{tiny, wide}).Draw(t, "shape"))
		r.Best = rapid.IntRange(1, 8).Draw(t, "best")
		r.AnyOrder = rapid.Bool().Draw(t, "any order")
		compare(t, r, brute(r))
	})
}

// compare holds the answers to a run against all ways there are.
func compare(t *rapid.T, r *Run, want []found) {
	got, err := Fill(r)
	var no Errors
	if errors.As(err, &no) {
		if no[0].Code != CodeNoGap {
			t.Fatal(err)
		}
		return
	}
	want = want[:min(len(want), r.Best)]
	if len(want) != len(got) || (err == nil) != (len(want) > 0) {
		t.Fatalf("%d answers, want %d (%v)", len(got), len(want), err)
	}
	for i, a := range got {
		worth, key := readAnswer(t, r, a)
		if worth != want[i].worth || key != want[i].key {
			t.Fatalf("answer %d: %v %s, want %v %s\n%+v", i, worth, key, want[i].worth, want[i].key, a)
		}
	}
}

// readAnswer checks an answer against its run, and is what it is worth and its list of cabinets.
func readAnswer(t fataler, r *Run, a Answer) (money.Amount, string) {
	m := newModel(r)
	all, err := m.things(a)
	if err != nil {
		t.Fatalf("%v\n%+v", err, a)
	}
	worth, ok := m.judge(all)
	if !ok {
		t.Fatalf("not allowed: %+v", a)
	}
	var parts money.Amount
	for _, p := range a.Parts {
		parts += p.Worth
	}
	if a.Worth != worth || parts != worth {
		t.Fatalf("told to be worth %v, in parts %v; worth %v\n%+v", a.Worth, parts, worth, a)
	}
	return worth, m.key(all)
}

// fataler is what a test and a property have in common.
type fataler interface {
	Fatalf(format string, args ...any)
}
