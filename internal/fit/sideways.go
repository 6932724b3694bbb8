package fit

import (
	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
)

func sideways(k *kitchen.Kitchen, c *cabinet.Placed) ([]Limit, []finding.Finding) { return nil, nil }
