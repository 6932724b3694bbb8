package contents

import (
	"math/big"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/belief"
	"railhead/internal/hazard"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// rounding is how far a chance may be off because each step rounds to billionths;
// a dozen steps may add up.
const rounding belief.Chance = 50

func sum(b belief.Belief) (out belief.Chance) {
	for _, c := range b {
		out += c
	}
	return out
}

// A person who multiplies by each step's factors comes to the next odds.
func TestEveryStepCanBeMultipliedOut(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := anyKitchen(t)
		lookInto(t, k)
		findIn(t, k)
		odds, before := Of(k, Clusters(k)[0]), even()
		for _, s := range odds.Steps {
			if sum(s.After) != belief.Certain {
				t.Fatalf("after %s the odds add up to %d", s.Code, sum(s.After))
			}
			if !s.Given() {
				closeTo(t, s.Code, s.After, onPaper(before, s.Factors))
			}
			before = s.After
		}
		if !slices.Equal(before, odds.Now) {
			t.Fatalf("the last step leads to %s, the odds are %s", Text(before), Text(odds.Now))
		}
	})
}

// onPaper is the same product by plain fractions.
func onPaper(before belief.Belief, f Factors) []*big.Rat {
	out, whole := make([]*big.Rat, States), new(big.Rat)
	for s := range out {
		out[s] = new(big.Rat).Mul(big.NewRat(int64(before[s]), 1), big.NewRat(int64(f[s]), 1))
		whole.Add(whole, out[s])
	}
	for s := range out {
		out[s].Quo(out[s], whole)
	}
	return out
}

func closeTo(t *rapid.T, name string, got belief.Belief, want []*big.Rat) {
	for s := range got {
		off := new(big.Rat).Sub(big.NewRat(int64(got[s]), int64(belief.Certain)), want[s])
		if off.Abs(off).Cmp(big.NewRat(1, int64(belief.Certain))) > 0 {
			t.Fatalf("%s: %s is %d billionths, on paper %s", name, State(s), got[s], want[s].FloatString(10))
		}
	}
}

// What a hint is a hint at never gets less likely by it.
func TestHintsRaiseWhatTheyHintAt(t *testing.T) {
	at := map[string][]State{
		"bath_above": {PipeOrDuct}, "kitchen_above": {PipeOrDuct}, "upper_floor": {PipeOrDuct},
		"attic_above": {Empty}, "stack_in_line": {PipeOrDuct}, "fixture_below": {PipeOrDuct},
		"cable_enters": {FewWires}, "light_in_it": {FewWires}, "register_in_it": {PipeOrDuct},
		"sprinkler_head": {Immovable}, "warm_to_touch": {PipeOrDuct}, "sounds_hollow": {Empty},
	}
	for _, h := range hints {
		t.Run(h.name, func(t *testing.T) {
			rapid.Check(t, func(t *rapid.T) {
				k := anyKitchen(t)
				for i := range parts(k) {
					in := &parts(k)[i].Inside
					in.Hints = slices.DeleteFunc(in.Hints, func(s string) bool { return s == h.name })
				}
				before := Of(k, Clusters(k)[0])
				more := copied(k)
				hinted(h.name)(&parts(more)[0])
				after := Of(more, Clusters(more)[0])
				for _, s := range at[h.name] {
					if after.Now[s] < before.Now[s]-rounding {
						t.Fatalf("%s was %d and is %d billionths", s, before.Now[s], after.Now[s])
					}
				}
			})
		})
	}
}

// The longer the part that was seen to be empty, the less trouble is expected in
// the rest, of every kind.
func TestMoreSeenEmptyNeverRaisesTrouble(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := anyKitchen(t)
		i := rapid.IntRange(0, len(parts(k))-1).Draw(t, "part")
		size := parts(k)[i].To - parts(k)[i].From
		a := length.Length(rapid.Int64Range(0, int64(size)).Draw(t, "seen"))
		b := length.Length(rapid.Int64Range(int64(a), int64(size)).Draw(t, "more"))
		less, more := seenEmptyOver(k, i, a), seenEmptyOver(k, i, b)
		if less[Empty] > more[Empty]+rounding {
			t.Fatalf("empty by %d after %s seen, %d after %s", less[Empty], a, more[Empty], b)
		}
	})
}

func seenEmptyOver(k *kitchen.Kitchen, part int, seen length.Length) belief.Belief {
	k = copied(k)
	if o := &parts(k)[part]; seen > 0 {
		o.Inside.Looked, o.Inside.Seen = survey.ProbeHole, []survey.Span{{From: o.From, To: o.From + seen}}
	}
	return Of(k, Clusters(k)[0]).Now
}

// Seeing something never makes it less likely in the rest than seeing nothing.
func TestWhatIsSeenRunsOn(t *testing.T) {
	for s, kinds := range map[State][]survey.ServiceKind{
		FewWires: {survey.Wire}, ManyWires: {survey.Wire, survey.Wire, survey.Cable},
		PipeOrDuct: {survey.DuctRun}, Immovable: {survey.StructureInside},
	} {
		t.Run(s.String(), func(t *testing.T) {
			rapid.Check(t, func(t *rapid.T) {
				k := anyKitchen(t)
				o := &parts(k)[0]
				looked(survey.ProbeHole)(o)
				nothing := Of(k, Clusters(k)[0])
				found(kinds...)(o)
				something := Of(k, Clusters(k)[0])
				if something.Seen != s || something.Now[s] < nothing.Now[s]-rounding {
					t.Fatalf("seen %s: %d billionths, with nothing seen %d", something.Seen, something.Now[s], nothing.Now[s])
				}
			})
		})
	}
}

// mirrored is the room as a mirror shows it: every wall runs the other way.
func mirrored(k *kitchen.Kitchen) *kitchen.Kitchen {
	k = copied(k)
	for w := range k.Room.Walls {
		wall := &k.Room.Walls[w]
		wall.Prev, wall.Next = wall.Next, wall.Prev
		for i := range wall.Overheads {
			o := &wall.Overheads[i]
			o.From, o.To = wall.Length-o.To, wall.Length-o.From
			for j, s := range o.Inside.Seen {
				o.Inside.Seen[j] = survey.Span{From: wall.Length - s.To, To: wall.Length - s.From}
			}
		}
		fixtures := slices.Clone(wall.Fixtures)
		for i := range fixtures {
			fixtures[i].At = wall.Length - fixtures[i].At
		}
		wall.Fixtures = fixtures
	}
	if c := k.Plan.Cooking; c != nil {
		m, l := *c, k.Room.Walls[c.Wall].Length
		m.From, m.To = l-c.To, l-c.From
		k.Plan.Cooking = &m
	}
	return k
}

func TestTheMirrorImageHasTheSameOdds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := anyKitchen(t)
		lookInto(t, k)
		findIn(t, k)
		m := mirrored(k)
		a, b := Of(k, Clusters(k)[0]), Of(m, Clusters(m)[0])
		if !slices.Equal(a.Now, b.Now) || a.Unseen != b.Unseen || codes(a.Steps) != codes(b.Steps) {
			t.Fatalf("%s by %s, mirrored %s by %s", Text(a.Now), codes(a.Steps), Text(b.Now), codes(b.Steps))
		}
	})
}

// An overhead that is told as two parts is the same overhead.
func TestCutInTwoOnPaperItHasTheSameOdds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		seen := rapid.IntRange(1, 2999).Draw(t, "seen")
		cut := rapid.IntRange(1, 2999).Draw(t, "cut")
		whole := corner(over("s", 0, 0, 3000, looked(survey.Opened, 0, seen)))
		left := over("a", 0, 0, cut, group("g"), looked(survey.Opened, 0, min(seen, cut)))
		right := over("b", 0, cut, 3000, group("g"))
		if seen > cut {
			looked(survey.Opened, cut, seen)(&right)
		}
		split := corner(left, right)
		a, b := Of(whole, Clusters(whole)[0]), Of(split, Clusters(split)[0])
		if !slices.Equal(a.Now, b.Now) || a.Unseen != b.Unseen {
			t.Fatalf("whole %s (%d unseen), in two %s (%d)", Text(a.Now), a.Unseen, Text(b.Now), b.Unseen)
		}
	})
}

// Unseen agrees with what the cautions go by.
func TestAllSeenIsCertain(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := anyKitchen(t)
		lookInto(t, k)
		findIn(t, k)
		odds, all := Of(k, Clusters(k)[0]), true
		for i := range parts(k) {
			o := &parts(k)[i]
			if seen := hazard.SeenAll(o); seen != (UnseenOf(o) == 0) {
				t.Fatalf("%s of part %d unseen; all seen: %v", UnseenOf(o), i, seen)
			} else if !seen {
				all = false
			}
		}
		if all != (odds.Unseen == 0) || all && odds.Now[odds.Seen] != belief.Certain {
			t.Fatalf("all seen %v: %d unseen, seen %s, odds %s", all, odds.Unseen, odds.Seen, Text(odds.Now))
		}
	})
}
