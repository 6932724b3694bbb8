package decide

import (
	"cmp"
	"math/bits"
	"slices"

	"railhead/internal/kitchen"
	"railhead/internal/money"
)

// Flip is a threshold of the advice: with the member of the request at At or
// beyond, it differs.
type Flip struct {
	Pointer  string
	At, Now  string // as the request would give them
	Group    string // the first group whose advice differs
	From, To kitchen.Option
	With     []string // all odds of the contents, by state, where At is one of them
	near     float64  // how far it is from now, for its size
}

// axis is one number of the request that the advice hangs on, in whole steps.
type axis struct {
	pointer        string
	low, now, high int64
	mean           int64 // of a rate with a spread: what it is expected to be
	text           func(int64) string
	with           func(int64) []string
	best           func(int64) []int // the advised options with the number at a step
	// net is what a combination nets there; nil where comparing two is as much work
	// as finding the best.
	net func(int64, []int) money.Amount
}

// flips are the nearest thresholds either way. Where the advice with a rate's likely
// value, without its spread, differs from the advice, they are sought from its mean;
// where that differs too, the axis tells none.
func (r *reckoning) flips(a *axis, advice []int) []Flip {
	if !slices.Equal(a.best(a.now), advice) {
		if a.mean == 0 || !slices.Equal(a.best(a.mean), advice) {
			return nil
		}
		a.now = a.mean
	}
	var out []Flip
	for _, end := range [...]int64{a.low, a.high} {
		if end == a.now {
			continue
		}
		if other := a.best(end); !slices.Equal(other, advice) {
			at, to := a.search(advice, a.now, end, other)
			out = append(out, r.flip(a, at, advice, to))
		}
	}
	return out
}

// search finds the first step from same towards differs at which the advice
// differs, and what it is there. Between two combinations whose worths are straight
// lines the first guess is right or one step off; else it halves.
func (a *axis) search(advice []int, same, differs int64, to []int) (int64, []int) {
	var ahead, behind money.Amount
	if a.net != nil { // each net in the order that finds prices as they were last
		behind, ahead = a.lead(differs, to, advice), a.lead(same, advice, to)
	}
	for turn := 0; apart(same, differs) > 1; turn++ {
		mid := same + (differs-same)/2
		switch {
		case a.net != nil && turn%4 < 3:
			mid = crossing(same, differs, ahead, behind)
		case a.net == nil && turn == 0: // where something begins to fit
			mid = differs + (same-differs)/apart(same, differs)
		}
		at := a.best(mid)
		keeps, other := slices.Equal(at, advice), !slices.Equal(at, to)
		if keeps {
			same = mid
		} else {
			differs, to = mid, at
		}
		if a.net == nil {
			continue
		}
		if !keeps {
			behind = a.lead(differs, to, advice)
		}
		if keeps || other {
			ahead = a.lead(same, advice, to)
		}
	}
	return differs, to
}

// lead is how far one combination is ahead of another with the number at a step.
func (a *axis) lead(v int64, one, other []int) money.Amount {
	return a.net(v, one).Minus(a.net(v, other))
}

// crossing is where the line between two combinations' worths crosses, strictly
// between the steps: at the first, one is so far ahead, and at the other behind.
func crossing(same, differs int64, ahead, behind money.Amount) int64 {
	span := apart(same, differs)
	step := int64(1)
	if ahead > 0 && ahead+behind > 0 {
		hi, lo := bits.Mul64(uint64(span), uint64(ahead))
		q, _ := bits.Div64(hi, lo, uint64(ahead+behind))
		step = max(1, min(span-1, int64(q)))
	}
	if differs < same {
		return same - step
	}
	return same + step
}

func apart(a, b int64) int64 { return max(a, b) - min(a, b) }

func (r *reckoning) flip(a *axis, at int64, advice, to []int) Flip {
	out := Flip{Pointer: a.pointer, At: a.text(at), Now: a.text(a.now), near: float64(apart(at, a.now)) / float64(max(1, a.now, -a.now))}
	if a.with != nil {
		out.With = a.with(at)
	}
	for g := range advice {
		if advice[g] != to[g] {
			out.Group, out.From, out.To = r.ms[g].group.ID, r.options[g][advice[g]].Option, r.options[g][to[g]].Option
			break
		}
	}
	return out
}

// nearest puts thresholds in order of how near they are, for their size.
func nearest(in []Flip) []Flip {
	slices.SortStableFunc(in, func(a, b Flip) int {
		return cmp.Or(cmp.Compare(a.near, b.near), cmp.Compare(a.Pointer, b.Pointer), cmp.Compare(a.At, b.At))
	})
	return in
}
