package fit

import (
	"slices"
	"testing"

	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// Stretches of a soffit over old and new cabinets (common practice, no source).
func TestFootprint(t *testing.T) {
	for _, c := range []struct {
		name  string
		given func(*kitchen.Kitchen)
		want  []string
	}{
		{"old, new and nothing", func(k *kitchen.Kitchen) {
			old(k, 0, 0, 1200)
			add(k, cabinet.Wall, 0, 600*mm, 1200*mm)
		}, []string{"fit.footprint.unfinished_wall 0 600", "fit.footprint.over_nothing 1800 3000"}},
		{"new cabinets under all of it", func(k *kitchen.Kitchen) {
			old(k, 0, 0, 3000)
			add(k, cabinet.Wall, 0, 0, 1500*mm)
			add(k, cabinet.Tall, 0, 1500*mm, 1480*mm)
		}, nil}, // 20 are left, a sliver
		{"base cabinets do not reach up to it", func(k *kitchen.Kitchen) {
			add(k, cabinet.Base, 0, 0, 3000*mm)
		}, []string{"fit.footprint.over_nothing 0 3000"}},
		{"a filler beside the last cabinet, a base filler is none", func(k *kitchen.Kitchen) {
			add(k, cabinet.Wall, 0, 0, 2000*mm)
			k.Plan.Fillers = []cabinet.Filler{{Kind: cabinet.Wall, Wall: 0, From: 2000 * mm, To: 2100 * mm}, {Kind: cabinet.Base, Wall: 0, From: 2100 * mm, To: 2200 * mm}, {Kind: cabinet.Wall, Wall: 1, From: 2300 * mm, To: 2400 * mm}}
		}, []string{"fit.footprint.over_nothing 2100 3000"}},
		{"a gap closed on old cabinets only is never kept over nothing", func(k *kitchen.Kitchen) {
			o := &k.Room.Walls[0].Overheads[0]
			o.Kind, o.Carrier = survey.ClosedGap, survey.CarriedByOldCabinets
			old(k, 0, -100, 1000)
			add(k, cabinet.Wall, 0, 500*mm, 2600*mm)
		}, []string{"fit.footprint.unfinished_wall 0 500"}},
		{"a gap closed up to the ceiling may be", func(k *kitchen.Kitchen) {
			o := &k.Room.Walls[0].Overheads[0]
			o.Kind, o.Carrier = survey.ClosedGap, survey.CarriedByCeiling
			add(k, cabinet.Wall, 0, 500*mm, 2600*mm)
		}, []string{"fit.footprint.over_nothing 0 500"}},
		{"a hood hangs there", func(k *kitchen.Kitchen) {
			add(k, cabinet.Wall, 0, 0, 2000*mm)
			k.Plan.Cooking = &cabinet.Cooking{Wall: 0, From: 2000 * mm, To: 2600 * mm, Hood: &cabinet.Hood{}}
		}, []string{"fit.footprint.over_nothing 2600 3000"}},
		{"a downdraft hangs nowhere", func(k *kitchen.Kitchen) {
			add(k, cabinet.Wall, 0, 0, 2000*mm)
			k.Plan.Cooking = &cabinet.Cooking{Wall: 0, From: 2000 * mm, To: 2600 * mm, Hood: &cabinet.Hood{Kind: cabinet.Downdraft}}
		}, []string{"fit.footprint.over_nothing 2000 3000"}},
		{"two old cabinets in a row are one stretch", func(k *kitchen.Kitchen) {
			old(k, 0, 0, 1000)
			old(k, 0, 1000, 2000)
			add(k, cabinet.Wall, 0, 2000*mm, 1000*mm)
		}, []string{"fit.footprint.unfinished_wall 0 2000"}},
		{"an old cabinet of the joined wall reaches around the corner", func(k *kitchen.Kitchen) {
			old(k, 1, 0, 500)
			add(k, cabinet.Wall, 0, 0, 2680*mm)
		}, []string{"fit.footprint.unfinished_wall 2680 3000"}},
	} {
		k := room(3000*mm, 2000*mm)
		hang(k, 0, 0, 3000*mm, 0, 330*mm, 2200*mm)
		c.given(k)
		got := []string{}
		for _, f := range Footprint(k) {
			got = append(got, f.Code+" "+param(f, "from")+" "+param(f, "to"))
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
}

func TestBeamsBelongToTheBuilding(t *testing.T) {
	k := room(3000 * mm)
	hang(k, 0, 0, 3000*mm, 0, 330*mm, 2200*mm, func(o *survey.Overhead) { o.Kind = survey.Beam })
	add(k, cabinet.Wall, 0, 0, 600*mm)
	if got := Footprint(k); len(got) != 0 {
		t.Errorf("a beam over nothing: %q", toldAll(got))
	}
}

func old(k *kitchen.Kitchen, wall, from, to int) {
	k.Plan.Old = append(k.Plan.Old, cabinet.Old{Kind: cabinet.Wall, Wall: wall, From: length.Length(from) * mm, To: length.Length(to) * mm, Depth: 320 * mm})
}

func param(f finding.Finding, name string) string {
	for _, p := range f.Params {
		if p.Name == name && p.Length != nil {
			return p.Length.Value.Round(p.Length.Round).MM()
		}
	}
	return ""
}
