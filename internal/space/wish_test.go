package space

import (
	"fmt"
	"slices"
	"testing"

	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/survey"
)

// What a row should line up with; the stations are those of the case (common practice, no source).
func TestWishes(t *testing.T) {
	k := room(4000*mm, 2000*mm)
	add(k, cabinet.Base, 0, 0, 600*mm)
	add(k, cabinet.Base, 0, 600*mm, 800*mm)
	add(k, cabinet.Wall, 0, 0, 300*mm)
	add(k, cabinet.Base, 1, 600*mm, 600*mm)
	appliance(k, cabinet.Dishwasher, 0, 1400*mm, 600*mm, 900*mm)
	appliance(k, cabinet.Sink, 0, 700*mm, 500*mm, 900*mm)
	appliance(k, cabinet.HoodOnWall, 0, 3300*mm, 600*mm, 1700*mm)
	window(k, 0, 700*mm, 1300*mm, 1050*mm, 2050*mm, 50*mm)
	k.Plan.Cooking = &cabinet.Cooking{Pointer: "/plan/cooking", From: 2400 * mm, To: 3000 * mm, Surface: 900 * mm, Hood: &cabinet.Hood{Kind: cabinet.Ducted}}
	hang(k, 0, 2600*mm, 2800*mm, 0, 300*mm, flat(1900*mm), func(o *survey.Overhead) { o.Kind = survey.DuctBox })
	for _, c := range []struct {
		kind               cabinet.Kind
		lines, gaps, whole string
	}{
		{cabinet.Wall, "[600 mm 1400 mm 2000 mm]",
			"[0 /survey/walls/0/openings/0 650-1350 1 /plan/cooking/hood 2400-3000 2 /survey/walls/0/overheads/0 2600-2800 1 /plan/appliances/2 3300-3900]", "[]"},
		{cabinet.Base, "[300 mm 3300 mm 3900 mm]", "[]", "[/plan/appliances/1 700-1200 /plan/cooking 2400-3000]"},
	} {
		r := Of(k, k.Found(), usual(t, k, 0, c.kind))
		var gaps, whole []string
		for _, g := range r.Gaps {
			gaps = append(gaps, fmt.Sprintf("%d %s %s-%s", g.Kind, g.By, g.From.MM(), g.To.MM()))
		}
		for _, w := range r.Whole {
			whole = append(whole, w.By+" "+spans([]survey.Span{w.Span}))
		}
		if fmt.Sprint(r.Lines) != c.lines || fmt.Sprint(gaps) != c.gaps || fmt.Sprint(whole) != c.whole {
			t.Errorf("%s: lines %v gaps %v whole %v", c.kind, r.Lines, gaps, whole)
		}
	}
}

func TestAHobInARangeAsksForNoCabinet(t *testing.T) {
	k := room(3000 * mm)
	k.Plan.Cooking = &cabinet.Cooking{Pointer: "/plan/cooking", From: 600 * mm, To: 1200 * mm, Surface: 900 * mm}
	appliance(k, cabinet.Range, 0, 600*mm, 600*mm, 900*mm)
	if r := Of(k, k.Found(), usual(t, k, 0, cabinet.Base)); len(r.Whole) != 0 {
		t.Errorf("%v", r.Whole)
	}
}

func TestAsksForWhatTheSystemMakes(t *testing.T) {
	k := room(3000 * mm)
	k.System.Tall = cabinet.Sizes{}
	if _, ok := Usual(k, 0, cabinet.Tall); ok {
		t.Error("the system makes nothing tall")
	}
	if ask, ok := Usual(k, 0, cabinet.Wall); !ok || ask != (Ask{Wall: 0, Kind: cabinet.Wall, Depth: 360 * mm, Spare: 2 * mm}) {
		t.Errorf("%+v", ask)
	}
}

// Equal kitchens have equal space, in the same order.
func TestSpaceIsDetermined(t *testing.T) {
	build := func() *kitchen.Kitchen {
		k := room(3000*mm, 2000*mm)
		hang(k, 0, 0, 3000*mm, 0, 300*mm, flat(2100*mm))
		hang(k, 1, 0, 2000*mm, 0, 300*mm, flat(2110*mm))
		add(k, cabinet.Base, 1, 0, 600*mm)
		return k
	}
	var first []string
	for range 5 {
		k := build()
		r := Of(k, k.Found(), usual(t, k, 0, cabinet.Tall))
		var all []string
		for _, b := range r.Boxes {
			all = append(all, fmt.Sprint(b.By, b.Meet))
		}
		for _, l := range r.Limits {
			all = append(all, fmt.Sprint(l.By, l.Meet, l.Soft))
		}
		if first == nil {
			first = all
		}
		if !slices.Equal(first, all) {
			t.Fatalf("%v, then %v", first, all)
		}
	}
}
