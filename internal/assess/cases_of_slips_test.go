package assess

import (
	"context"
	"slices"
	"testing"
)

func TestSlipsThatAreSaid(t *testing.T) {
	facing := `{"survey": {"walls": [
		{"id": "w", "length": 3600, "facing": {"wall": "v", "distance": 900}, "floor": [{"at": 0, "height": 0}], "ceiling": [{"at": 0, "height": 2500}]},
		{"id": "v", "length": 3600, "floor": [{"at": 0, "height": 0}], "ceiling": [{"at": 0, "height": 2500}]}]},
		"plan": {"cabinets": [{"id": "a", "kind": "tall", "wall": "w", "from": 0, "width": 600, "height": 2000}, {"id": "b", "kind": "base", "wall": "v", "from": 0, "width": 600, "height": 740}]}}`
	for _, c := range []struct{ name, patch, finding, summary string }{
		{"a row shifted under the floor", `{"plan": {"row_shift": -1500, "counter": 900}}`, "fit.underside.under_floor", "answers_needed"},
		{"two runs that may collide across a galley", facing, "fit.facing.may_overlap", "answers_needed"},
	} {
		t.Run(c.name, func(t *testing.T) {
			a := answer(t, merged(t, plain, c.patch))
			if f := fitOf(t, a, "a"); !has(codes(f.Findings), c.finding) || a.Summary.Verdict != c.summary {
				t.Errorf("findings %v, summary %s; want %s, %s", codes(f.Findings), a.Summary.Verdict, c.finding, c.summary)
			}
		})
	}
}

func TestFourWallsThatCannotClose(t *testing.T) {
	side := func(id string, long int) string {
		return format(`{"id": %q, "length": %d, "joins_next": true, "floor": [{"at": 0, "height": 0}], "ceiling": [{"at": 0, "height": 2500}]}`, id, long)
	}
	for _, c := range []struct {
		name string
		long int
		want bool
	}{{"100 short", 3500, true}, {"within the tolerances", 3600, false}} {
		t.Run(c.name, func(t *testing.T) {
			a := answer(t, merged(t, plain, `{"survey": {"walls": [`+side("w", 3600)+","+side("x", 3000)+","+side("y", c.long)+","+side("z", 3000)+`]}}`))
			if got := has(codes(a.Findings), "survey.room.not_closed"); got != c.want {
				t.Errorf("findings %v, want survey.room.not_closed: %v", codes(a.Findings), c.want)
			}
		})
	}
}

func TestEveryPartListsTheSameAsNotAssessed(t *testing.T) {
	body := merged(t, plain, `{"system": {"rail": {"stock": null}}}`)
	whole := answer(t, body)
	if whole.RailStock != nil || len(whole.NotAssessed) == 0 {
		t.Fatalf("stock %+v, not assessed %+v", whole.RailStock, whole.NotAssessed)
	}
	part, _ := Assess(context.Background(), request(t, body), Fit)
	if !slices.Equal(part.NotAssessed, whole.NotAssessed) {
		t.Errorf("alone %+v, in the whole %+v", part.NotAssessed, whole.NotAssessed)
	}
}
