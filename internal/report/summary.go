package report

import (
	"railhead/api"
	"railhead/internal/finding"
)

// Summary writes the room's verdict with its words.
func (s Scale) Summary(verdict, code string, params []finding.Param) api.Summary {
	return api.Summary{Verdict: verdict, Says: s.says(code, params)}
}
