package takeoff

import (
	"testing"

	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/survey"
)

// One option of one overhead on a wall of 3 m with five cabinets; a room of eight
// overheads has some fifty of them.
func BenchmarkOf(b *testing.B) {
	var cabinets []cabinet.Placed
	for x := 0; x < 3000; x += 600 {
		cabinets = append(cabinets, hung(0, x, x+600, 2120))
	}
	k := cook([]survey.Wall{wall(3000, 2400, soffit(0, 3000, profile(0, 2100, 1500, 2095, 3000, 2103)))}, cabinets...)
	for _, o := range []kitchen.Option{kitchen.Keep, kitchen.Trim, kitchen.OpenPart, kitchen.RemoveClose, kitchen.RemoveOpen} {
		j := job(k, o)
		b.Run(o.String(), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				NewSite(k).Of(j)
			}
		})
	}
}
