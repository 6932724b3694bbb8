package resolve

import (
	"maps"
	"math/big"
	"slices"

	"railhead/api"
	"railhead/internal/belief"
	"railhead/internal/contents"
)

// priors reads what an overhead may turn out to hold, by state of contents; nil where nothing is given or it is refused.
// What is left out is taken for impossible, and together they are certain.
func (b *body) priors(in map[string]api.Amount, pointer string) []belief.Chance {
	if in == nil {
		return nil
	}
	given, sum, ok := noPriors(), new(big.Rat), true
	for _, name := range slices.Sorted(maps.Keys(in)) {
		state, known := stateOf(name)
		if !known {
			b.fault("body.member.name", member(pointer, name))
			ok = false
			continue
		}
		chance, read := b.amount(in[name], member(pointer, name))
		if ok = ok && read; read {
			given[state] = chance
			sum.Add(sum, chance)
		}
	}
	switch {
	case !ok:
		return nil
	case sum.Cmp(big.NewRat(1, 1)) != 0:
		b.fault("survey.priors.not_one", pointer)
		return nil
	}
	return belief.FromRats(given)
}

func noPriors() []*big.Rat {
	none := make([]*big.Rat, contents.States)
	for i := range none {
		none[i] = new(big.Rat)
	}
	return none
}

// stateOf finds a state of contents by its name.
func stateOf(name string) (contents.State, bool) {
	for s := range contents.States {
		if s.String() == name {
			return s, true
		}
	}
	return 0, false
}
