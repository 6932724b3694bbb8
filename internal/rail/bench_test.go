package rail

import "testing"

// BenchmarkPlan is one long wall with a sloping soffit, a full row and studs.
func BenchmarkPlan(b *testing.B) {
	w := wall(6000 * mm)
	w.StudsKnown, w.Studs = true, studs(200*mm, 400*mm, 6000*mm)
	w.Overheads = append(w.Overheads, soffit(0, 6000*mm, profile(0, 2070*mm, 6000*mm, 2110*mm)))
	k := cook(room(w), demo())
	for x := 0 * mm; x < 6000*mm; x += 600 * mm {
		k.Plan.Cabinets = append(k.Plan.Cabinets, hung(x, x+600*mm))
	}
	for b.Loop() {
		planned(k)
	}
}
