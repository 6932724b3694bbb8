package fit

import (
	"slices"
	"testing"

	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

func fixed(o *survey.Overhead) { o.MayCut = survey.CutNo }

// Doors under, before and beside what hangs there; the cabinet is 360 deep and
// tops out at 2120, its fit gap is 2 (common practice, no source).
func TestDoors(t *testing.T) {
	for _, c := range []struct {
		name  string
		given func() *kitchen.Kitchen
		want  []string
	}{
		{"an overhead as deep as the cabinet leaves no lip", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm, door(cabinet.OpensLeft))
			hang(k, 0, 0, 3000*mm, 0, 360*mm, 2120*mm)
			return k
		}, nil},
		{"an overhead deeper than the cabinet, the door 1 below its lip", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm, door(cabinet.OpensLeft))
			hang(k, 0, 0, 3000*mm, 0, 400*mm, 2121*mm)
			return k
		}, []string{"fit.door.under_lip caution need 2 have 1"}},
		{"the door has its gap under the lip", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm, door(cabinet.OpensLeft))
			hang(k, 0, 0, 3000*mm, 0, 400*mm, 2122*mm)
			return k
		}, nil},
		{"the lip hangs below the door's top and stays", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm, door(cabinet.OpensLeft))
			hang(k, 0, 0, 3000*mm, 0, 400*mm, 2100*mm, fixed)
			return k
		}, []string{"fit.door.under_lip stop need 2 have -20"}},
		{"the lip hangs at the door's top", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm, door(cabinet.OpensLeft))
			hang(k, 0, 0, 3000*mm, 0, 400*mm, 2120*mm, fixed)
			return k
		}, []string{"fit.door.under_lip caution need 2 have 0"}},
		{"the lip hangs below the door's top and may be cut", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm, door(cabinet.OpensLeft))
			hang(k, 0, 0, 3000*mm, 0, 400*mm, 2100*mm)
			return k
		}, []string{"fit.door.under_lip caution need 2 have -20"}},
		{"a front that nobody described moves under the lip too", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm)
			hang(k, 0, 0, 3000*mm, 0, 400*mm, 2121*mm)
			return k
		}, []string{"fit.door.under_lip caution need 2 have 1"}},
		{"an open shelf has no front", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm, door(cabinet.OpensNot))
			hang(k, 0, 0, 3000*mm, 0, 400*mm, 2121*mm)
			return k
		}, nil},
		{"the soffit around the corner begins where the cabinet ends", func() *kitchen.Kitchen {
			k := room(3000*mm, 2000*mm)
			add(k, cabinet.Wall, 0, 1950*mm, 600*mm, door(cabinet.OpensLeft))
			hang(k, 1, 0, 2000*mm, 0, 450*mm, 2121*mm)
			return k
		}, nil},
		{"the soffit around the corner has its lip above the door", func() *kitchen.Kitchen {
			k := room(3000*mm, 2000*mm)
			add(k, cabinet.Wall, 0, 2000*mm, 600*mm, door(cabinet.OpensLeft))
			hang(k, 1, 0, 2000*mm, 0, 401*mm, 2121*mm)
			add(k, cabinet.Wall, 0, 2600*mm, 300*mm)
			return k
		}, []string{"fit.door.under_lip caution need 2 have 1"}},
		{"a beam in front, lower than the door's top: opens 440 of 600", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm, door(cabinet.OpensLeft))
			hang(k, 0, 0, 3000*mm, 800*mm, 200*mm, 2100*mm)
			return k
		}, []string{"fit.door.low_overhead caution need 600 have 440"}},
		{"a beam right in front", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm, door(cabinet.OpensLeft))
			hang(k, 0, 0, 3000*mm, 500*mm, 200*mm, 2100*mm)
			return k
		}, []string{"fit.door.low_overhead stop need 600 have 140"}},
		{"a beam that lets the door open half", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm, door(cabinet.OpensLeft))
			hang(k, 0, 0, 3000*mm, 660*mm, 200*mm, 2119*mm)
			return k
		}, []string{"fit.door.low_overhead caution need 600 have 300"}},
		{"a beam no lower than the door's top", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm, door(cabinet.OpensLeft))
			hang(k, 0, 0, 3000*mm, 660*mm, 200*mm, 2120*mm)
			return k
		}, nil},
		{"the nearer of two beams stops the door", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm, door(cabinet.OpensLeft))
			hang(k, 0, 0, 3000*mm, 900*mm, 50*mm, 2000*mm)
			hang(k, 0, 0, 3000*mm, 700*mm, 50*mm, 2100*mm)
			hang(k, 0, 0, 3000*mm, 800*mm, 50*mm, 2000*mm)
			return k
		}, []string{"fit.door.low_overhead caution need 600 have 340"}},
		{"a pair opens before the beam", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm, door(cabinet.OpensPair))
			hang(k, 0, 0, 3000*mm, 800*mm, 200*mm, 2100*mm)
			return k
		}, nil},
		{"a duct box deeper than the cabinet beside the hinges", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm, door(cabinet.OpensRight))
			hang(k, 0, 1210*mm, 1400*mm, 0, 450*mm, 1900*mm)
			return k
		}, []string{"fit.door.beside_overhead caution need 20 have 10"}},
		{"a duct box deeper than the cabinet, far enough from the hinges", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm, door(cabinet.OpensRight))
			hang(k, 0, 1220*mm, 1400*mm, 0, 450*mm, 1900*mm)
			return k
		}, nil},
		{"a duct box that ends at the door's top", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm, door(cabinet.OpensRight))
			hang(k, 0, 1210*mm, 1400*mm, 0, 450*mm, 2120*mm)
			return k
		}, nil},
		{"the worse of two boxes beside the hinges", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm, door(cabinet.OpensRight))
			hang(k, 0, 1215*mm, 1400*mm, 0, 450*mm, 1900*mm)
			hang(k, 0, 1205*mm, 1400*mm, 0, 440*mm, 2000*mm)
			hang(k, 0, 1210*mm, 1400*mm, 0, 430*mm, 1900*mm)
			return k
		}, []string{"fit.door.beside_overhead caution need 20 have 5"}},
		{"a duct box deeper than the cabinet away from the hinges", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm, door(cabinet.OpensLeft))
			hang(k, 0, 1210*mm, 1400*mm, 0, 450*mm, 1900*mm)
			return k
		}, nil},
		{"a duct box no deeper than the closed front", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm, door(cabinet.OpensRight))
			hang(k, 0, 1210*mm, 1400*mm, 0, 380*mm, 1900*mm)
			return k
		}, nil},
		{"a lift-up front under the ceiling: 380 above it", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm, liftUp(380))
			return k
		}, nil},
		{"a lift-up front that rises 1 too high", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm, liftUp(381))
			return k
		}, []string{"fit.door.rise stop need 381 have 380"}},
		{"a lift-up front under a deeper soffit", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm, liftUp(250))
			hang(k, 0, 0, 3000*mm, 0, 600*mm, 2200*mm)
			return k
		}, []string{"fit.door.rise stop need 250 have 80"}},
		{"a lift-up front before a soffit that is no deeper than the cabinet", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm, liftUp(250))
			hang(k, 0, 0, 3000*mm, 0, 360*mm, 2122*mm)
			return k
		}, nil},
		{"nobody said how far the lift-up front rises", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm, liftUp(0))
			return k
		}, []string{"fit.door.rise_unknown note have 380"}},
		{"nobody said how far it rises, and it cannot rise too far", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			k.Room.Walls[0].Ceiling = flat(2780 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm, liftUp(0))
			return k
		}, nil},
		{"a facing wall too near for the door: 1000 − 600", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			k.Room.Walls[0].Facing = &survey.Facing{Wall: 1, Distance: 1000 * mm}
			k.Room.Walls = append(k.Room.Walls, room(3000*mm).Room.Walls...)
			k.Room.Walls[1].Index = 1
			add(k, cabinet.Tall, 0, 600*mm, 600*mm, door(cabinet.OpensLeft))
			return k
		}, []string{"fit.door.blocked caution need 600 have 400"}},
		{"a facing run somewhere along a wall opposite: 1200 − 600 − 600 − its front", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			k.Room.Walls[0].Facing = &survey.Facing{Wall: 1, Distance: 1200 * mm}
			k.Room.Walls = append(k.Room.Walls, room(3000*mm).Room.Walls...)
			k.Room.Walls[1].Index = 1
			add(k, cabinet.Base, 0, 600*mm, 600*mm, door(cabinet.OpensLeft))
			add(k, cabinet.Base, 1, 0, 600*mm, door(cabinet.OpensNot))
			return k
		}, []string{"fit.door.blocked caution need 600 have 0"}},
		{"a galley around two corners: 1500 − 600 − 600 − 60", func() *kitchen.Kitchen {
			k := room(3000*mm, 1500*mm, 3000*mm)
			add(k, cabinet.Base, 0, 600*mm, 600*mm, door(cabinet.OpensLeft))
			add(k, cabinet.Base, 2, 2000*mm, 600*mm)
			return k
		}, []string{"fit.door.blocked stop need 600 have 240"}},
		{"a galley where nothing stands opposite", func() *kitchen.Kitchen {
			k := room(3000*mm, 1500*mm, 3000*mm)
			add(k, cabinet.Base, 0, 600*mm, 600*mm, door(cabinet.OpensLeft))
			add(k, cabinet.Base, 2, 600*mm, 600*mm)
			return k
		}, nil},
		{"the run around the corner stands before a front in the corner", func() *kitchen.Kitchen {
			k := room(3000*mm, 2000*mm)
			add(k, cabinet.Base, 0, 2400*mm, 600*mm, door(cabinet.OpensLeft))
			add(k, cabinet.Base, 1, 600*mm, 600*mm)
			return k
		}, []string{"fit.door.blocked stop need 600 have 0"}},
		{"a blind corner cabinet is made for that", func() *kitchen.Kitchen {
			k := room(3000*mm, 2000*mm)
			add(k, cabinet.Base, 0, 2100*mm, 900*mm, door(cabinet.OpensLeft), func(c *cabinet.Placed) {
				c.Corner = &cabinet.Corner{OtherWall: 1, Shape: cabinet.CornerBlind, AtRight: true}
			})
			add(k, cabinet.Base, 1, 660*mm, 600*mm)
			return k
		}, nil},
	} {
		k := c.given()
		if got := toldAll(doors(k, &k.Plan.Cabinets[0], k.Found())); !slices.Equal(got, c.want) {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
}

func liftUp(rise int) func(*cabinet.Placed) {
	return func(c *cabinet.Placed) {
		door(cabinet.OpensUp)(c)
		c.Door.Rise = length.Length(rise) * mm
	}
}

// After a cut the lip hangs at the cut, and the door moves under that.
func TestDoorUnderACutLip(t *testing.T) {
	k := room(3000 * mm)
	a := add(k, cabinet.Wall, 0, 600*mm, 600*mm, door(cabinet.OpensLeft))
	hang(k, 0, 0, 3000*mm, 0, 400*mm, 2000*mm)
	sky := k.Found()
	cut := (2122 * mm).Exact()
	sky.Hung[0].Cut = &cut
	if got := toldAll(doors(k, a, sky)); len(got) != 0 {
		t.Errorf("under a lip cut to 2122: %q", got)
	}
}
