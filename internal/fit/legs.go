package fit

import (
	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
)

func legs(k *kitchen.Kitchen, c *cabinet.Placed) []finding.Finding { return nil }
