package contents

import (
	"railhead/internal/belief"
	"railhead/internal/survey"
)

// BehindMissing is the chance that the ceiling's board is missing behind an
// overhead, and whether that is assumed: nobody has seen it.
func BehindMissing(o *survey.Overhead) (missing belief.Chance, assumed bool) {
	switch o.Behind.Ceiling {
	case survey.Yes:
		return 0, false
	case survey.No:
		return belief.Certain, false
	default:
		return behindRows[o.Kind].missing, true
	}
}

// BehindPointer is the member that says whether the ceiling goes on behind.
func BehindPointer(o *survey.Overhead) string { return o.Pointer + "/behind/ceiling" }
