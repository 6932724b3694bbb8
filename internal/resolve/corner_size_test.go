package resolve

import (
	"fmt"
	"testing"

	"railhead/internal/cabinet"
	"railhead/internal/length"
)

// cornered is a system with corner cabinets of all shapes, sent out of order and one of them twice.
const cornered = `{"legs": 100, "fit_gap": 2, "side_clearance": 3, "base": {"heights": [740], "widths": [600], "depths": [600, 560],
  "corners": [{"shape": "blind", "width": 1000}, {"shape": "l", "width": 1000, "other_width": 900}, {"shape": "diagonal", "width": 900, "other_width": "90 cm"},
    {"shape": "l", "width": 900, "other_width": 900}, {"shape": "blind", "width": "100 cm"}]}}`

func TestCornerSizesComeInOrder(t *testing.T) {
	const mm = length.Millimetre
	got := resolved(t, changed(t, plainRoom, change{"/system", cornered})).Kitchen.System.Base.Corners
	want := []cabinet.CornerSize{
		{Shape: cabinet.CornerL, Width: 900 * mm, OtherWidth: 900 * mm}, {Shape: cabinet.CornerL, Width: 1000 * mm, OtherWidth: 900 * mm},
		{Shape: cabinet.CornerDiagonal, Width: 900 * mm, OtherWidth: 900 * mm}, {Shape: cabinet.CornerBlind, Width: 1000 * mm},
	}
	if fmt.Sprint(got) != fmt.Sprint(want) {
		t.Errorf("%v, want %v", got, want)
	}
}

// A leg that ends where the other one is deep, or before, is no leg; the shallowest depth rules. What is wrong with a
// corner cabinet is wrong in any units.
func TestCornerSizesThatAreNone(t *testing.T) {
	for _, c := range []struct{ name, corner, want string }{
		{"as wide as it is deep", `{"shape": "l", "width": 560, "other_width": 900}`, "system.corner.too_narrow /system/base/corners/0/width"},
		{"a hair wider than the shallowest", `{"shape": "l", "width": "560.000001 mm", "other_width": 561}`, ""},
		{"a second leg within the first", `{"shape": "diagonal", "width": 900, "other_width": 300}`, "system.corner.too_narrow /system/base/corners/0/other_width"},
		{"a narrow blind one is one all the same", `{"shape": "blind", "width": 500}`, ""},
		{"a blind one around the corner", `{"shape": "blind", "width": 1000, "other_width": 600}`, "system.corner.other_width_of_blind /system/base/corners/0/other_width"},
		{"one leg of two", `{"shape": "diagonal", "width": 900}`, "body.member.missing /system/base/corners/0/other_width"},
		{"a leg the other way", `{"shape": "l", "width": -900, "other_width": 900}`, "system.length.not_positive /system/base/corners/0/width"},
	} {
		body := changed(t, plainRoom, change{"/system", cornered}, change{"/system/base/corners", "[" + c.corner + "]"})
		if c.want == "" {
			resolved(t, body)
			continue
		}
		sameLines(t, c.name, refused(t, body), []string{c.want})
	}
}

// A planned corner cabinet is held against the corner cabinets that the system makes, and not against its straight ones.
func TestPlannedCornersOffTheList(t *testing.T) {
	for _, c := range []struct{ name, shape, from, width, other, system, want string }{
		{"as listed", "l", "2100", "900", "900", cornered, ""},
		{"one leg longer", "l", "2000", "1000", "900", cornered, ""},
		{"the same one, said to stand on the other wall", "l", "2100", "900", "1000", cornered, ""},
		{"both legs longer", "l", "2000", "1000", "1000", cornered, "plan.size.off_list /plan/cabinets/0/corner/other_width"},
		{"a leg that is not made", "l", "2050", "950", "900", cornered, "plan.size.off_list /plan/cabinets/0/width"},
		{"a width of another shape", "diagonal", "2000", "1000", "900", cornered, "plan.size.off_list /plan/cabinets/0/width"},
		{"a blind one, however far it is said to reach", "blind", "1990", "1000", "77", cornered, ""},
		{"a blind one off the list", "blind", "1900", "1100", "600", cornered, "plan.size.off_list /plan/cabinets/0/width"},
		{"a shape that is not made", "blind", "1990", "1000", "600", `{"legs": 100, "fit_gap": 2, "base": {"heights": [740], "depths": [600], "corners": [{"shape": "l", "width": 900, "other_width": 900}]}}`,
			"plan.corner.not_made /plan/cabinets/0/corner/shape"},
		{"a system that says nothing of corners", "l", "2050", "950", "950", `{"legs": 100, "fit_gap": 2, "base": {"heights": [740], "widths": [600], "depths": [600]}}`, ""},
	} {
		planned := fmt.Sprintf(`[{"id": "k", "kind": "base", "wall": "a", "from": %s, "width": %s, "height": 740, "corner": {"other_wall": "b", "other_width": %s, "shape": %q}}]`,
			c.from, c.width, c.other, c.shape)
		got := resolved(t, changed(t, fourWalls, joins(0), change{"/system", c.system}, change{"/plan/cabinets", planned}))
		var off []string
		for _, f := range got.Findings {
			if f.Code == "plan.size.off_list" || f.Code == "plan.corner.not_made" {
				off = append(off, f.Code+" "+f.Pointer)
				worded(t, f.Code, f.Params, f.Need, f.Have)
			}
		}
		var want []string
		if c.want != "" {
			want = []string{c.want}
		}
		sameLines(t, c.name, off, want)
	}
}
