package trim

import (
	"regexp"
	"slices"
	"testing"

	"railhead/internal/finding"
	"railhead/internal/rules"
)

var hole = regexp.MustCompile(`\{(\w+)\}`)

// worded reports whether a code is in the catalogue and its words use only what
// comes with it.
func worded(t testing.TB, code string, params []finding.Param, need, have *finding.Measure) {
	t.Helper()
	rule, ok := rules.Of(code)
	if !ok {
		t.Errorf("%s is not in the catalogue", code)
	}
	names := []string{}
	for _, p := range params {
		names = append(names, p.Name)
	}
	if need != nil {
		names = append(names, "need")
	}
	if have != nil {
		names = append(names, "have")
	}
	for _, m := range hole.FindAllStringSubmatch(rule.Says, -1) {
		if !slices.Contains(names, m[1]) {
			t.Errorf("%s: the words ask for %s, given are %v", code, m[1], names)
		}
	}
}

func wordedFindings(t testing.TB, findings []finding.Finding) {
	t.Helper()
	for _, f := range findings {
		worded(t, f.Code, f.Params, f.Need, f.Have)
		for _, r := range f.Remedies {
			worded(t, r.Code, r.Params, nil, nil)
		}
	}
}
