package fit

import (
	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
)

func standing(k *kitchen.Kitchen, c *cabinet.Placed) (*Standing, []finding.Finding) { return nil, nil }
