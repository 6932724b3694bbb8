package fit

import (
	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
)

func doors(k *kitchen.Kitchen, c *cabinet.Placed, sky kitchen.Sky) []finding.Finding { return nil }
