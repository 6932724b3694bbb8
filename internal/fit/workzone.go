package fit

import (
	"railhead/internal/finding"
	"railhead/internal/kitchen"
)

// WorkZone checks heights over the counter and the cooking surface.
func WorkZone(k *kitchen.Kitchen) []finding.Finding { return nil }
