package assess

import (
	"context"
	"os"
	"testing"
)

// BenchmarkAssess is the core's whole work on each room of testdata/cases,
// without reading and writing JSON.
func BenchmarkAssess(b *testing.B) {
	for _, name := range []string{"quarry-row-long-wall", "mill-lane-corner", "tower-flat-gap"} {
		body, err := os.ReadFile("../../testdata/cases/" + name + "/request.json")
		if err != nil {
			b.Fatal(err)
		}
		req := request(b, string(body))
		for part, parts := range map[string]Part{"all": All, "fit": Fit} {
			b.Run(name+"/"+part, func(b *testing.B) {
				b.ReportAllocs()
				for b.Loop() {
					if _, faults := Assess(context.Background(), req, parts); len(faults) > 0 {
						b.Fatal(faults)
					}
				}
			})
		}
	}
}
