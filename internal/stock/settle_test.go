package stock

import "testing"

// A position met before leads nowhere again, unless less was paid on the way to it this time.
func TestPositionMetBefore(t *testing.T) {
	task := reduce(problem(0, []order{{6, 2}, {5, 2}, {3, 4}}, 10))
	s := newSearch(task, bare())
	s.price = 100 * task.longest().price
	w := &settler{losses: &losses{s: s}, failed: map[uint64]int64{}}
	at := position{state: 17, paid: 30}
	w.remember(at)
	for paid, want := range map[int64]bool{29: false, 30: true, 31: true} {
		at.paid = paid
		if got := w.hopeless(at); got != want {
			t.Errorf("paid %d: hopeless %v", paid, got)
		}
	}
	other := position{state: 18, paid: 31}
	if w.hopeless(other) {
		t.Error("a position never met")
	}
}

func TestRememberingIsBounded(t *testing.T) {
	w := &settler{failed: map[uint64]int64{}}
	for state := range uint64(maxFailed + 10) {
		w.remember(position{state: state})
	}
	if n := len(w.failed); n > maxFailed || n == 0 {
		t.Errorf("%d remembered", n)
	}
}

// More states than a machine word can number are left to the other ways.
func TestTooManyStates(t *testing.T) {
	var orders []order
	for i := range 70 {
		orders = append(orders, order{100 + i, 1})
	}
	task := reduce(problem(0, orders, 500))
	s := newSearch(task, bare())
	s.settle(make([]int64, len(task.widths)))
	if !s.open {
		t.Error("settled")
	}
}
