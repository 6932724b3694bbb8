package propose

import (
	"encoding/json"
	"os"
	"testing"

	"railhead/api"
	"railhead/internal/resolve"
)

// Whole rooms of our scenario, with every option of every overhead.
func BenchmarkPropose(b *testing.B) {
	for _, name := range []string{"quarry-row-long-wall", "mill-lane-corner", "ferry-yard-two-trims"} {
		b.Run(name, func(b *testing.B) {
			body, err := os.ReadFile("../../testdata/cases/" + name + "/request.json")
			if err != nil {
				b.Fatal(err)
			}
			var req api.LayoutRequest
			if err := json.Unmarshal(body, &req); err != nil {
				b.Fatal(err)
			}
			c, f, faults := resolve.LayoutRequest(&req)
			if len(faults) > 0 {
				b.Fatal(faults)
			}
			for b.Loop() {
				if p := Propose(c.Kitchen, f, nil); len(p.Layouts) == 0 {
					b.Fatal("nothing is proposed")
				}
			}
		})
	}
}
