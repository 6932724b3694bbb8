package layout

import (
	"slices"
	"strconv"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/cabinet"
	"railhead/internal/fit"
	"railhead/internal/money"
)

// Package fit, which decides whether cabinets fit, finds nothing against what is
// placed: not above it, not beside it, not around the corner.
func TestWhatIsPlacedFits(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := wildRoom(t)
		answers, _, _ := new(Solver).Best(r, 3)
		for i := range answers {
			k, plan := *r.Kitchen, *r.Kitchen.Plan
			stay := len(plan.Cabinets)
			plan.Cabinets = slices.Concat(plan.Cabinets, answers[i].Cabinets)
			plan.Fillers = answers[i].Fillers
			for n := range plan.Cabinets {
				c := &plan.Cabinets[n]
				c.Index, c.Pointer, c.ID = n, "/plan/cabinets/"+strconv.Itoa(n), strconv.Itoa(n)
			}
			k.Plan = &plan
			for _, one := range fit.Check(&k) {
				if one.Cabinet.Index >= stay && one.Verdict != fit.Fits {
					t.Fatalf("answer %d: %v of %s from %s, %s wide and high to %s on wall %d: %v %v", i+1, one.Verdict, one.Cabinet.Kind,
						one.Cabinet.From, one.Cabinet.Width(), one.Cabinet.Top, one.Cabinet.Wall, one.Limits, one.Findings)
				}
			}
		}
	})
}

// What is told of an answer's parts adds up to what it was found by, and its litres
// are those of its cabinets.
func TestPartsAddUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := wildRoom(t)
		answers, _, _ := new(Solver).Best(r, 2)
		for _, a := range answers {
			sum, litres, cabinets := money.Amount(0), money.Quantity(0), 0
			for i := range a.Cabinets {
				litres += Litres(&a.Cabinets[i])
			}
			for _, p := range a.Parts {
				sum += p.Worth
				switch p.Name {
				case Storage:
					if p.Quantity != litres {
						t.Fatalf("%v litres told, the cabinets have %v", p.Quantity.Decimal(), litres.Decimal())
					}
				case Cabinets:
					cabinets = int(p.Quantity / money.One)
				}
			}
			if sum != a.Worth || cabinets != len(a.Cabinets) {
				t.Fatalf("parts come to %s and %d cabinets, the answer to %s and %d", sum.Decimal(), cabinets, a.Worth.Decimal(), len(a.Cabinets))
			}
		}
	})
}

// Everything of a row lies side by side: no filler, panel or open stretch in the place
// of a cabinet or of each other.
func TestNothingIsInTheSamePlaceTwice(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := wildRoom(t)
		answers, _, _ := new(Solver).Best(r, 1)
		if len(answers) == 0 {
			return
		}
		a := &answers[0]
		type piece struct {
			what     string
			wall     int
			kind     cabinet.Kind
			from, to int64
		}
		var all []piece
		for i := range a.Cabinets {
			c := &a.Cabinets[i]
			for _, p := range c.Native(r.Kitchen.Room) {
				all = append(all, piece{"cabinet", p.Wall, c.Kind, int64(p.From), int64(p.To)})
			}
		}
		for _, f := range a.Fillers {
			all = append(all, piece{"filler", f.Wall, f.Kind, int64(f.From), int64(f.To)})
		}
		for _, p := range a.Panels {
			all = append(all, piece{"panel", p.Wall, a.Cabinets[p.Cabinet].Kind, int64(p.From), int64(p.To)})
		}
		for _, o := range a.Open {
			all = append(all, piece{"open", o.Wall, o.Kind, int64(o.From), int64(o.To)})
		}
		for i, x := range all {
			for _, y := range all[:i] {
				same := x.kind == y.kind || x.kind == cabinet.Tall || y.kind == cabinet.Tall
				if x.wall == y.wall && same && x.from < y.to && y.from < x.to {
					t.Fatalf("%+v and %+v of %+v", x, y, a)
				}
			}
		}
	})
}
