package decide

import (
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// What is reckoned for a ceiling elsewhere, without all that nobody asks for, is
// what would be decided there.
func TestElsewhereIsDecidedTheSame(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := wildRoom(t)
		moved := k.CeilingMoved(mm(rapid.IntRange(-100, 300).Draw(t, "up")))
		want := decided(moved)
		other := decided(k).reckoning.elsewhere(moved)
		if got := other.choose(&other.priced, other.now, asTheyStand); got.net != want.best.net || !slices.Equal(got.picks, want.best.picks) {
			t.Fatalf("%v, decided %v", got, want.best)
		}
	})
}
