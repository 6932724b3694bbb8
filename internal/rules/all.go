package rules

import (
	"slices"
	"strings"
	"sync"
)

// All is the whole catalogue in order of code.
var All = sync.OnceValue(func() []Rule {
	all := slices.Concat(surveyRules, planRules, fillRules, layoutRules, fitRules, railRules, trimRules, decideRules, cautionRules, assumptionRules, contentsRules, takeoffRules, rateRules, workRules, summaryRules)
	slices.SortFunc(all, func(a, b Rule) int { return strings.Compare(a.Code, b.Code) })
	return all
})
