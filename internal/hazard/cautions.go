package hazard

import (
	"railhead/internal/finding"
	"railhead/internal/kitchen"
)

// Cautions are the hazards of the work that the applied options call for, in a
// fixed order, none twice for one pointer.
func Cautions(k *kitchen.Kitchen, applied kitchen.AppliedOptions) []finding.Caution {
	return []finding.Caution{{Code: "caution.local_code.rules", Pointer: "/survey/code_set"}}
}
