package decide

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/kitchen"
	"railhead/internal/money"
)

// thousands checks a property on some thousands of rooms.
func thousands(t *testing.T, property func(*rapid.T)) {
	for range 20 {
		rapid.Check(t, property)
	}
}

// cent is as far as floating point, and rounding each line to a ten-thousandth and
// each chance to a billionth, may take two ways of adding up apart.
const cent = 0.01

func inUnits(a money.Amount) float64 { return float64(a) / float64(money.Unit) }

// places are a combination's options by their places in the groups' lists.
func places(d *Decisions, options []kitchen.Option) []int {
	out := make([]int, len(options))
	for g, o := range options {
		out[g] = slices.IndexFunc(d.Overheads[g].Options, func(have Option) bool { return have.Option == o })
	}
	return out
}

// most is the highest net among the combinations that some rule admits; minus
// infinity where there is none.
func (s *slow) most(admits func(picks []int) bool) float64 {
	most := math.Inf(-1)
	s.each(func(picks []int) {
		if admits(picks) {
			if net, possible := s.net(picks); possible {
				most = max(most, net)
			}
		}
	})
	return most
}

func anything([]int) bool { return true }

// The advice is what trying out every combination of allowed options finds best,
// and what it nets is what the combination is worth when it is worked out slowly.
func TestAdviceIsTheBestOfAllCombinations(t *testing.T) {
	thousands(t, func(t *rapid.T) {
		k := wildRoom(t)
		d := decided(k)
		gatesStand(t, &d)
		s := slowly(k, &d)
		best, most := d.best.picks, s.most(anything)
		if math.IsInf(most, -1) {
			if slices.Max(best) > 0 {
				t.Fatalf("nothing is possible, and advised is %v", best)
			}
			return
		}
		net, possible := s.net(best)
		if !possible || net < most-cent {
			t.Fatalf("advised %v (possible %v) nets %f, the best %f", best, possible, net, most)
		}
		if math.Abs(inUnits(d.best.net)-net) > cent {
			t.Fatalf("the search says that %v nets %f, worked out it is %f", best, inUnits(d.best.net), net)
		}
		s.holdsUp(t, d.Room(d.Applied(k)))
	})
}

// holdsUp holds what is told of the room against what is worked out.
func (s *slow) holdsUp(t *rapid.T, room Room) {
	best := places(s.d, room.Best.Options)
	if !slices.Equal(best, s.d.best.picks) {
		t.Fatalf("told %v, decided %v", best, s.d.best.picks)
	}
	// Each group's gain and cost, each joint worth and what is shared are told in
	// whole cents, so each may be half of one off.
	parts := 2*len(best) + len(room.Together) + 1
	if off := math.Abs(inUnits(room.Best.Net() - s.d.best.net)); off > float64(parts)*cent/2 {
		t.Fatalf("the account nets %f, the search %f", inUnits(room.Best.Net()), inUnits(s.d.best.net))
	}
	other := s.most(func(picks []int) bool { return !slices.Equal(picks, best) })
	switch {
	case room.RunnerUp == nil:
		if !math.IsInf(other, -1) {
			t.Fatalf("no runner-up, and one nets %f", other)
		}
	default:
		second := places(s.d, room.RunnerUp.Options)
		if net, possible := s.net(second); !possible || slices.Equal(second, best) || net < other-cent {
			t.Fatalf("the runner-up %v (possible %v) nets %f, the best that differs %f", second, possible, net, other)
		}
	}
	for g := range best {
		other := s.most(func(picks []int) bool { return picks[g] != best[g] })
		_, behind, ok := s.d.reckoning.otherwise(g, s.d.best)
		if ok == math.IsInf(other, -1) || ok && math.Abs(inUnits(s.d.best.net.Minus(behind))-other) > float64(2*parts)*cent/2 {
			t.Fatalf("group %d done otherwise (%v) is %f behind %f; it nets %f", g, ok, inUnits(behind), inUnits(s.d.best.net), other)
		}
	}
}

// gatesStand: whatever the prices, no option is picked or advised that a gate stands
// in front of. Where every option is gated the group stays, and the advice says so;
// what goes with the old cabinets cannot stay.
func gatesStand(t *rapid.T, d *Decisions) {
	for g, o := range d.Overheads {
		if all(o.Group.Parts, goesWithOld) {
			continue // it goes whatever stands in front of it
		}
		if picked := o.Options[d.best.picks[g]]; len(picked.Gates) > 0 && picked.Option != kitchen.Keep {
			t.Fatalf("picked %v behind %v", picked.Option, picked.Gates)
		}
		gates := of(o.Options, o.Advice).Gates
		switch gated := d.Advice[g].Gated; {
		case gated && o.Advice != kitchen.Keep, !gated && len(gates) > 0 && o.Advice != kitchen.Keep:
			t.Fatalf("advised %v behind %v, gated %v", o.Advice, gates, gated)
		}
	}
}
