package assess

import (
	"railhead/api"
	"railhead/internal/cabinet"
	"railhead/internal/report"
)

// Systems lists the built-in cabinet systems.
func Systems() api.SystemList {
	out := api.SystemList{Edition: Edition, Systems: []api.SystemSummary{}}
	for _, b := range cabinet.BuiltIns() {
		out.Systems = append(out.Systems, report.SystemSummary(b))
	}
	return out
}

// System is one built-in in full; false where there is none of that id.
func System(id string) (api.SystemDetail, bool) {
	b, ok := cabinet.BuiltIn(id)
	if !ok {
		return api.SystemDetail{}, false
	}
	return api.SystemDetail{SystemSummary: report.SystemSummary(b), Edition: Edition, System: report.System(b)}, true
}
