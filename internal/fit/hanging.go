package fit

import (
	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
)

func hanging(k *kitchen.Kitchen, c *cabinet.Placed, sky kitchen.Sky) *Hanging { return nil }
