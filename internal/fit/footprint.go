package fit

import (
	"railhead/internal/finding"
	"railhead/internal/kitchen"
)

// Footprint says what each overhead stands over.
func Footprint(k *kitchen.Kitchen) []finding.Finding { return nil }
