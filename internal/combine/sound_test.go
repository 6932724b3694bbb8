package combine

import (
	"math/rand/v2"
	"testing"

	"pgregory.net/rapid"
)

// drawChance is a chance left, often a telling one.
func drawChance(t *rapid.T, name string) int64 {
	return rapid.OneOf(rapid.SampledFrom([]int64{0, 1, certain / 2, certain - 1, certain}), rapid.Int64Range(0, certain)).Draw(t, name)
}

// Whatever more is called for, a trade never comes to cost so much more from one
// state than from another that worse and saves were wrong about it.
func TestWhatRestsOnRounding(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		most := rapid.SampledFrom([]int64{3, 100, 1e7, 1e13}).Draw(t, "most")
		amount := rapid.Int64Range(0, most)
		tr := trade{callOut: amount.Draw(t, "call-out"), minimum: amount.Draw(t, "minimum")}
		leftA, leftB := drawChance(t, "left a"), drawChance(t, "left b")
		if rapid.Bool().Draw(t, "close") {
			leftB = max(0, min(certain, leftA+rapid.Int64Range(-40, 40).Draw(t, "apart")))
		}
		a, b := amount.Draw(t, "labour a"), amount.Draw(t, "labour b")
		rest := liveTrade{keep: certain}
		more := rapid.SliceOfN(rapid.Custom(func(t *rapid.T) call {
			return call{unmoved: drawChance(t, "unmoved"), labour: rapid.Int64Range(0, most/2).Draw(t, "labour")}
		}), 0, 6).Draw(t, "more")
		for _, c := range more {
			rest.keep = partDown(rest.keep, c.unmoved)
			if c.unmoved > 0 && c.unmoved < certain {
				rest.steps++
			}
		}
		apart := tr.worse(leftA, a, leftB, b) - tr.saves(&rest, leftA, leftB)
		for _, c := range more {
			leftA, leftB, a, b = miss(leftA, c.unmoved), miss(leftB, c.unmoved), a+c.labour, b+c.labour
		}
		if got := tr.charge(leftA, a) - tr.charge(leftB, b); got > apart {
			t.Fatalf("costs %d more, at most %d were said", got, apart)
		}
	})
}

// No label comes to more than it was thought that it might, with whatever shares.
func TestNothingComesToMoreThanItsBound(t *testing.T) {
	for seed := range uint64(800) {
		r := rand.New(rand.NewPCG(10, seed))
		sh := anyShape(r)
		var s search
		if !s.prepare(sh.draw(r), nil) {
			continue
		}
		s.bound.tune(&s.task)
		for n := range s.bound.share {
			s.bound.share[n] = r.Int64N(certain + 1)
		}
		s.bound.prepare(&s.task, quickWork)
		var most []int64
		s.root()
		for k := range s.stages {
			s.grow(k)
			for i := range s.next.labels {
				l := &s.next.labels[i]
				s.nodes = append(s.nodes, node{l.parent, l.way})
				most = append(most, l.most)
				l.node = int32(len(s.nodes) - 1)
			}
			s.here, s.next = s.next, s.here
		}
		for _, l := range s.here.labels {
			for at := l.node; at > 0; at = s.nodes[at].parent {
				if l.worth > most[at-1] {
					t.Fatalf("%d %+v: comes to %d, at most %d was thought", seed, sh, l.worth, most[at-1])
				}
			}
		}
	}
}

// Chances multiplied up one by one never drift further apart than they stood.
func TestChancesStayAsClose(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b, u := drawChance(t, "a"), drawChance(t, "b"), drawChance(t, "unmoved")
		before, after := b-a, miss(b, u)-miss(a, u)
		if before >= 0 && (after < 0 || after > before) {
			t.Fatalf("%d apart, then %d", before, after)
		}
	})
}
