package trim

import (
	"testing"

	"railhead/internal/fit"
	"railhead/internal/kitchen"
)

// BenchmarkPlan is one long wall with a sloping soffit and a full row.
func BenchmarkPlan(b *testing.B) {
	k := cook(room(wall(6000*mm, 2500*mm, soffit(0, 6000*mm, profile(0, 2100*mm, 3000*mm, 2110*mm, 6000*mm, 2130*mm)))), demo())
	for x := 0 * mm; x < 6000*mm; x += 600 * mm {
		k.Plan.Cabinets = append(k.Plan.Cabinets, hung(x, x+600*mm, 2120*mm))
	}
	found := fit.Check(k)
	for b.Loop() {
		Plan(k, found, chosen(kitchen.Trim))
	}
}
