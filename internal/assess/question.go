package assess

import (
	"cmp"
	"slices"

	"railhead/internal/finding"
	"railhead/internal/money"
)

// byWorth puts the questions whose answer is worth something first, dearest first.
func byWorth(in []finding.Question, worths map[string]money.Amount) []finding.Question {
	for i := range in {
		if worth, ok := worths[in[i].Pointer]; ok {
			in[i].Worth = &worth
		}
	}
	slices.SortStableFunc(in, func(a, b finding.Question) int { return cmp.Compare(worthOf(b), worthOf(a)) })
	return in
}

func worthOf(q finding.Question) money.Amount {
	if q.Worth == nil {
		return 0
	}
	return *q.Worth
}
