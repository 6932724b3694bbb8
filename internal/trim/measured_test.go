package trim

import (
	"reflect"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/fit"
	"railhead/internal/kitchen"
	"railhead/internal/survey"
)

// What is measured of a cut is the same whether or not anybody is told of it.
func TestMeasuredIsThePlanWithoutItsWords(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := anyKitchen(t)
		applied := kitchen.AppliedOptions{}
		for _, g := range k.Groups() {
			g.Parts[0].Behind.Wall = rapid.SampledFrom([]survey.Tri{survey.Unknown, survey.Yes}).Draw(t, "wall behind")
			option := rapid.SampledFrom([]kitchen.Option{kitchen.Trim, kitchen.OpenPart}).Draw(t, "option")
			applied[g.ID] = kitchen.Applied{Option: option, By: rapid.SampledFrom([]kitchen.By{kitchen.ByChoice, kitchen.ByAdvice}).Draw(t, "by")}
		}
		found := fit.Check(k)
		told := Plan(k, found, applied)
		for i := range told {
			tr := &told[i]
			if boards := slices.ContainsFunc(tr.Steps, func(s Step) bool { return s.Code == "trim.step.board_behind" }); boards != tr.Boarded {
				t.Fatalf("%s: boarded %t, in the steps %t", tr.ID, tr.Boarded, boards)
			}
			tr.ID, tr.Conflicts, tr.Findings, tr.Steps = "", nil, nil, nil
		}
		if got := Measured(k, found, applied); !reflect.DeepEqual(got, told) {
			t.Fatalf("%+v, told %+v", got, told)
		}
	})
}
