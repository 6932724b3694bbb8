package assess

import (
	"path/filepath"
	"slices"
	"testing"

	"railhead/api"
)

// TestLayoutCases holds every room of testdata/layouts against its answer, which was
// read line by line when it was written.
func TestLayoutCases(t *testing.T) {
	hold(t, layoutsFolder, func(t *testing.T, body string) any { return layouts(t, body) })
}

// Each of the rooms has several good plans, which differ in their cabinets; all of
// them, and those for each way to treat an overhead, can be pasted back and then fit.
func TestLayoutCasesAnswerSeveralPlans(t *testing.T) {
	for _, room := range rooms(t, layoutsFolder) {
		t.Run(filepath.Base(room), func(t *testing.T) {
			req := layoutRequest(t, read(t, room, "request.json"))
			got := layouts(t, read(t, room, "request.json"))
			if len(got.Layouts) < 2 {
				t.Fatalf("%d plans, want several", len(got.Layouts))
			}
			for i := range got.Layouts {
				for j := range i {
					if slices.EqualFunc(got.Layouts[i].Cabinets, got.Layouts[j].Cabinets, sameCabinet) {
						t.Errorf("plans %d and %d have the same cabinets", j+1, i+1)
					}
				}
			}
			for _, l := range all(got) {
				pastedBackFits(t, req, l)
			}
		})
	}
}

func sameCabinet(a, b api.Cabinet) bool {
	return a.Kind == b.Kind && a.Wall == b.Wall && a.From == b.From && a.Width == b.Width && a.Height == b.Height
}
