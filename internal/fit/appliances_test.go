package fit

import (
	"slices"
	"testing"

	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

func wants(left, right, above length.Length, stated bool) func(*cabinet.Appliance) {
	return func(a *cabinet.Appliance) {
		a.Left, a.Right, a.Above = cabinet.Clearance{Need: left, Stated: stated}, cabinet.Clearance{Need: right, Stated: stated}, cabinet.Clearance{Need: above, Stated: stated}
	}
}

// An appliance takes its place as a fixed cabinet does, and wants more left free than that (common practice, no source);
// every number is a difference of two in the case.
func TestAppliances(t *testing.T) {
	for _, c := range []struct {
		name   string
		given  func(*kitchen.Kitchen) // the first cabinet is held against the rest
		limits []string
		found  []string
	}{
		{"a base cabinet into the fridge", func(k *kitchen.Kitchen) {
			add(k, cabinet.Base, 0, 600*mm, 600*mm)
			appliance(k, cabinet.Fridge, 0, 1180*mm, 600*mm, 1800*mm)
		}, []string{"/plan/appliances/0 along -20 blocked"}, []string{"fit.appliance.overlap stop need 600 have 580"}},
		{"a base cabinet against the fridge that wants to breathe", func(k *kitchen.Kitchen) {
			add(k, cabinet.Base, 0, 600*mm, 600*mm)
			appliance(k, cabinet.Fridge, 0, 1205*mm, 600*mm, 1800*mm, wants(13*mm, 13*mm, 25*mm, false))
		}, nil, []string{"fit.appliance.beside caution need 13 have 5"}},
		{"the same, as its instructions say", func(k *kitchen.Kitchen) {
			add(k, cabinet.Base, 0, 600*mm, 600*mm)
			appliance(k, cabinet.Fridge, 0, 1205*mm, 600*mm, 1800*mm, wants(13*mm, 13*mm, 25*mm, true))
		}, nil, []string{"fit.appliance.beside stop need 13 have 5"}},
		{"a fridge with all it wants", func(k *kitchen.Kitchen) {
			add(k, cabinet.Base, 0, 600*mm, 600*mm)
			appliance(k, cabinet.Fridge, 0, 1213*mm, 600*mm, 1800*mm, wants(13*mm, 13*mm, 25*mm, true))
		}, nil, nil},
		{"a wall cabinet over a low fridge", func(k *kitchen.Kitchen) {
			add(k, cabinet.Wall, 0, 600*mm, 600*mm)
			appliance(k, cabinet.Fridge, 0, 600*mm, 600*mm, 1435*mm, wants(13*mm, 13*mm, 25*mm, true))
		}, nil, nil},
		{"a wall cabinet too near above it", func(k *kitchen.Kitchen) {
			add(k, cabinet.Wall, 0, 600*mm, 600*mm)
			appliance(k, cabinet.Fridge, 0, 600*mm, 600*mm, 1440*mm, wants(13*mm, 13*mm, 25*mm, true))
		}, nil, []string{"fit.appliance.above stop need 25 have 20"}},
		{"a wall cabinet in the fridge", func(k *kitchen.Kitchen) {
			add(k, cabinet.Wall, 0, 600*mm, 600*mm)
			appliance(k, cabinet.Fridge, 0, 600*mm, 600*mm, 1800*mm)
		}, []string{"/plan/appliances/0 along -600 blocked"}, []string{"fit.appliance.overlap stop need 600 have 0"}},
		{"a wall cabinet over a range", func(k *kitchen.Kitchen) {
			add(k, cabinet.Wall, 0, 600*mm, 600*mm)
			appliance(k, cabinet.Range, 0, 600*mm, 600*mm, 900*mm, wants(0, 0, 762*mm, false))
		}, nil, []string{"fit.appliance.above caution need 762 have 560"}},
		{"a hood beside a wall cabinet", func(k *kitchen.Kitchen) {
			add(k, cabinet.Wall, 0, 0, 600*mm)
			appliance(k, cabinet.HoodOnWall, 0, 600*mm, 600*mm, 1700*mm)
		}, nil, nil},
		{"a hood in a wall cabinet", func(k *kitchen.Kitchen) {
			add(k, cabinet.Wall, 0, 10*mm, 600*mm)
			appliance(k, cabinet.HoodOnWall, 0, 600*mm, 600*mm, 1700*mm)
		}, []string{"/plan/appliances/0 along -10 blocked"}, []string{"fit.appliance.overlap stop need 600 have 590"}},
		{"a sink in its base cabinet", func(k *kitchen.Kitchen) {
			add(k, cabinet.Base, 0, 600*mm, 600*mm)
			appliance(k, cabinet.Sink, 0, 620*mm, 560*mm, 900*mm)
		}, nil, nil},
		{"a sink over a joint", func(k *kitchen.Kitchen) {
			add(k, cabinet.Base, 0, 600*mm, 600*mm)
			appliance(k, cabinet.Sink, 0, 700*mm, 560*mm, 900*mm)
		}, nil, []string{"fit.appliance.joint caution"}},
		{"a tall cabinet where the sink is", func(k *kitchen.Kitchen) {
			add(k, cabinet.Tall, 0, 600*mm, 600*mm)
			appliance(k, cabinet.Sink, 0, 1100*mm, 560*mm, 900*mm)
		}, []string{"/plan/appliances/0 along -100 blocked"}, []string{"fit.appliance.overlap stop need 600 have 500"}},
		{"around the corner, its flank free", func(k *kitchen.Kitchen) {
			add(k, cabinet.Base, 0, 1790*mm, 600*mm) // ends 610 off the corner
			appliance(k, cabinet.Dishwasher, 1, 0, 600*mm, 900*mm)
		}, nil, nil},
		{"around the corner, in the way", func(k *kitchen.Kitchen) {
			add(k, cabinet.Base, 0, 1810*mm, 600*mm)
			appliance(k, cabinet.Dishwasher, 1, 0, 600*mm, 900*mm)
		}, []string{"/plan/appliances/0 along -10 blocked"}, []string{"fit.appliance.overlap stop need 600 have 590"}},
		{"around the corner, a clearance in front of the fridge's wall", func(k *kitchen.Kitchen) {
			add(k, cabinet.Base, 0, 2400*mm, 600*mm)
			appliance(k, cabinet.Fridge, 1, 605*mm, 600*mm, 1800*mm, wants(13*mm, 0, 0, false))
		}, nil, []string{"fit.appliance.beside caution need 13 have 5"}},
		{"a door hinged beside a deeper fridge", func(k *kitchen.Kitchen) {
			add(k, cabinet.Base, 0, 600*mm, 600*mm, door(cabinet.OpensRight))
			appliance(k, cabinet.Fridge, 0, 1210*mm, 600*mm, 1800*mm, func(a *cabinet.Appliance) { a.Depth = 700 * mm })
		}, nil, []string{"fit.filler.at_neighbour caution need 20 have 10"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			k := room(3000*mm, 3000*mm)
			c.given(k)
			limits, found := sideways(k, &k.Plan.Cabinets[0])
			told := toldAll(found)
			if got := limitsTold(limits); !slices.Equal(got, c.limits) {
				t.Errorf("limits %q, want %q", got, c.limits)
			}
			if !slices.Equal(told, c.found) && len(told)+len(c.found) > 0 {
				t.Errorf("findings %q, want %q", told, c.found)
			}
		})
	}
}

// A soffit over nothing but a hood that is an appliance does not look lost.
func TestAHoodIsUnderASoffit(t *testing.T) {
	k := room(3000 * mm)
	hang(k, 0, 1000*mm, 1600*mm, 0, 330*mm, 2100*mm, func(o *survey.Overhead) { o.Kind = survey.Soffit })
	add(k, cabinet.Wall, 0, 0, 600*mm)
	if got := len(Footprint(k)); got != 1 {
		t.Fatalf("%d findings over nothing, want 1", got)
	}
	appliance(k, cabinet.HoodOnWall, 0, 1000*mm, 600*mm, 1700*mm)
	if got := Footprint(k); len(got) != 0 {
		t.Errorf("%v over a hood", got)
	}
}
