package resolve

import (
	"railhead/internal/length"
	"railhead/internal/level"
)

// Much else counts from the units, from a laser line, from a floor. So that one slip in those hides no other, a guess is
// put in the place of what is not usable, and another one, and what is wrong whatever is guessed is wrong.

// guess is what is put in the place of what is not usable.
type guess struct {
	units, system length.Unit   // of the request's numbers, and of the system's own
	away          length.Length // how far off a level is put that is not known
}

// away is further off than any room reaches: levels that count from the same unknown one compare as they are, and
// compared with any other they are above it in one guess and below it in the next.
const (
	away       = 100_000 * length.Max
	nearEnough = 100 * length.Max
	mostLost   = 500
)

var guesses = [...]guess{{length.MM, length.MM, away}, {length.CM, length.IN, -away}, {length.IN, length.CM, -away}, {length.MM, length.MM, -away}}

// guessed is what of a guess was used.
type guessed struct{ units, levels bool }

// needed is how many guesses it takes until they differ in everything that was used, and where both are, in one of them
// while the other stays: else what one guess has wrong about a level the others may have wrong about the units.
func (g guessed) needed() int {
	switch {
	case g.units && g.levels:
		return len(guesses)
	case g.units:
		return 3
	case g.levels:
		return 2
	}
	return 1
}

// lost is the level of something that is not usable; the same for the same thing.
func (b *body) lost(thing string) level.Height {
	b.guessed.levels = true
	n, ok := b.losses[thing]
	if !ok {
		n = 1 + len(b.losses)%mostLost
		b.losses[thing] = n
	}
	return level.Fixed((b.guess.away * length.Length(n)).Exact())
}

// everywhere keeps the faults that are found whatever is guessed. A guess that puts what was in range out of it is none.
func everywhere(found [][]Fault) []Fault {
	var others []map[place]Fault
	for _, faults := range found[1:] {
		other := map[place]Fault{}
		for _, f := range faults {
			other[f.place()] = f
		}
		if outOfRange(faults) <= outOfRange(found[0]) {
			others = append(others, other)
		}
	}
	var out []Fault
	for _, f := range found[0] {
		if f, ok := f.among(others); ok {
			out = append(out, f)
		}
	}
	if len(out) == 0 {
		return found[0]
	}
	return out
}

func outOfRange(faults []Fault) (n int) {
	for _, f := range faults {
		if f.Code == length.CodeOutOfRange {
			n++
		}
	}
	return n
}

// place is what a fault is and where.
type place struct{ code, pointer string }

func (f Fault) place() place { return place{f.Code, f.Pointer} }

// among is a fault that others hold too, told with lengths that nobody guessed.
func (f Fault) among(others []map[place]Fault) (Fault, bool) {
	told, ok := f, f.nearby()
	for _, other := range others {
		same, found := other[f.place()]
		if !found {
			return Fault{}, false
		}
		if !ok {
			told, ok = same, same.nearby()
		}
	}
	return told, ok
}

// nearby reports whether no length that a fault tells is as far off as a guess.
func (f Fault) nearby() bool {
	for _, p := range f.Params {
		if p.Length != nil && abs(p.Length.Value).CmpLength(nearEnough) > 0 {
			return false
		}
	}
	return true
}
