package resolve

import (
	"maps"
	"math/big"
	"slices"

	"railhead/api"
)

// contents are what an overhead may turn out to hold.
var contents = [...]string{"empty", "few_wires", "many_wires", "pipe_or_duct", "immovable"}

// checkPriors refuses probabilities that are none, or that do not add up to 1.
func (b *body) checkPriors(in map[string]api.Amount, pointer string) {
	if in == nil {
		return
	}
	sum, ok := new(big.Rat), true
	for _, name := range slices.Sorted(maps.Keys(in)) {
		if !slices.Contains(contents[:], name) {
			b.fault("request.member.unknown", member(pointer, name))
			ok = false
			continue
		}
		p, read := b.amount(in[name], member(pointer, name))
		if ok = ok && read; read {
			sum.Add(sum, p)
		}
	}
	if ok && sum.Cmp(big.NewRat(1, 1)) != 0 {
		b.fault("survey.priors.not_one", pointer)
	}
}
