package fit

import (
	"slices"
	"testing"

	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/survey"
)

// Room beside doors. A plain door needs its thickness beside a wall, 20 mm or
// 3/4 in, and the pull needs its projection more (common practice, no source).
func TestRoomBesideFronts(t *testing.T) {
	for _, c := range []struct {
		name  string
		given func() *kitchen.Kitchen // the first cabinet is held against the rest
		want  []string
	}{
		{"hinged hard against a side wall", func() *kitchen.Kitchen {
			k := room(3000*mm, 2000*mm)
			add(k, cabinet.Wall, 0, 2400*mm, 600*mm, door(cabinet.OpensRight))
			return k
		}, []string{"fit.filler.at_wall caution need 60 have 0"}},
		{"hinged on the other side", func() *kitchen.Kitchen {
			k := room(3000*mm, 2000*mm)
			add(k, cabinet.Wall, 0, 2400*mm, 600*mm, door(cabinet.OpensLeft))
			return k
		}, nil},
		{"a pair has a leaf at the wall", func() *kitchen.Kitchen {
			k := room(3000*mm, 2000*mm)
			add(k, cabinet.Wall, 0, 2400*mm, 600*mm, door(cabinet.OpensPair))
			return k
		}, []string{"fit.filler.at_wall caution need 60 have 0"}},
		{"room for door and pull exactly", func() *kitchen.Kitchen {
			k := room(3000*mm, 2000*mm)
			add(k, cabinet.Wall, 0, 2340*mm, 600*mm, door(cabinet.OpensRight))
			k.Plan.Fillers = []cabinet.Filler{{Kind: cabinet.Wall, Wall: 0, From: 2940 * mm, To: 3000 * mm}}
			return k
		}, nil},
		{"a door without a pull needs its thickness only", func() *kitchen.Kitchen {
			k := room(3000*mm, 2000*mm)
			a := add(k, cabinet.Wall, 0, 2385*mm, 600*mm, door(cabinet.OpensRight))
			a.Door.Pull = 0
			k.Plan.Fillers = []cabinet.Filler{{Kind: cabinet.Wall, Wall: 0, From: 2985 * mm, To: 3000 * mm}}
			return k
		}, []string{"fit.filler.at_wall caution need 20 have 15"}},
		{"a nib no deeper than the closed front is no side wall", func() *kitchen.Kitchen {
			k := room(3000*mm, 380*mm)
			add(k, cabinet.Wall, 0, 2400*mm, 600*mm, door(cabinet.OpensRight))
			return k
		}, nil},
		{"a nib that reaches along less than half of the leaf misses the pull", func() *kitchen.Kitchen {
			k := room(3000*mm, 600*mm)
			add(k, cabinet.Wall, 0, 2400*mm, 600*mm, door(cabinet.OpensRight))
			return k
		}, []string{"fit.filler.at_wall caution need 20 have 0"}},
		{"a nib that reaches along half of the leaf meets the pull", func() *kitchen.Kitchen {
			k := room(3000*mm, 660*mm)
			add(k, cabinet.Wall, 0, 2400*mm, 600*mm, door(cabinet.OpensRight))
			return k
		}, []string{"fit.filler.at_wall caution need 60 have 0"}},
		{"an end where nobody surveyed a wall", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 2400*mm, 600*mm, door(cabinet.OpensRight))
			return k
		}, []string{"fit.filler.at_wall_end note need 60 have 0"}},
		{"a soffit that ends at a wall proves the wall", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 2400*mm, 600*mm, door(cabinet.OpensRight))
			hang(k, 0, 0, 3000*mm, 0, 330*mm, 2200*mm, func(o *survey.Overhead) { o.Right = survey.EndWall })
			return k
		}, []string{"fit.filler.at_wall caution need 60 have 0"}},
		{"a soffit that begins at a wall proves the wall", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 0, 600*mm, door(cabinet.OpensLeft))
			hang(k, 0, 0, 2000*mm, 0, 330*mm, 2200*mm, func(o *survey.Overhead) { o.Left = survey.EndWall })
			return k
		}, []string{"fit.filler.at_wall caution need 60 have 0"}},
		{"a soffit that ends short of it proves nothing", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 2400*mm, 600*mm, door(cabinet.OpensRight))
			hang(k, 0, 0, 2000*mm, 0, 330*mm, 2200*mm, func(o *survey.Overhead) { o.Left, o.Right = survey.EndWall, survey.EndWall })
			return k
		}, []string{"fit.filler.at_wall_end note need 60 have 0"}},
		{"the worse of a side wall and a deep cheek before it", func() *kitchen.Kitchen {
			k := room(3000*mm, 2000*mm)
			add(k, cabinet.Wall, 0, 2645*mm, 300*mm, door(cabinet.OpensRight))
			add(k, cabinet.Tall, 0, 2960*mm, 40*mm)
			k.Plan.Fillers = []cabinet.Filler{{Kind: cabinet.Wall, Wall: 0, From: 2945 * mm, To: 2960 * mm}}
			return k
		}, []string{"fit.filler.at_neighbour caution need 60 have 15"}},
		{"beside a deeper tall cabinet", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm, door(cabinet.OpensRight))
			add(k, cabinet.Tall, 0, 1200*mm, 600*mm)
			return k
		}, []string{"fit.filler.at_neighbour caution need 20 have 0"}},
		{"a narrow door beside a deeper tall cabinet meets it with its pull", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 900*mm, 300*mm, door(cabinet.OpensRight))
			add(k, cabinet.Tall, 0, 1200*mm, 600*mm)
			return k
		}, []string{"fit.filler.at_neighbour caution need 60 have 0"}},
		{"beside a neighbour of equal depth", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm, door(cabinet.OpensRight))
			add(k, cabinet.Wall, 0, 1200*mm, 600*mm, door(cabinet.OpensLeft))
			return k
		}, nil},
		{"inside corner: drawers against the other run's pulls", func() *kitchen.Kitchen {
			k := room(3000*mm, 2000*mm)
			add(k, cabinet.Base, 0, 1750*mm, 600*mm, door(cabinet.OpensDrawer))
			add(k, cabinet.Base, 1, 600*mm, 600*mm, door(cabinet.OpensDrawer))
			k.Plan.Fillers = []cabinet.Filler{{Kind: cabinet.Base, Wall: 0, From: 2350 * mm, To: 2400 * mm}}
			return k
		}, []string{"fit.filler.at_corner caution need 60 have 50"}},
		{"inside corner: a door hinged at the corner", func() *kitchen.Kitchen {
			k := room(3000*mm, 2000*mm)
			add(k, cabinet.Base, 0, 1750*mm, 600*mm, door(cabinet.OpensRight))
			add(k, cabinet.Base, 1, 600*mm, 600*mm, door(cabinet.OpensDrawer))
			k.Plan.Fillers = []cabinet.Filler{{Kind: cabinet.Base, Wall: 0, From: 2350 * mm, To: 2400 * mm}}
			return k
		}, []string{"fit.filler.at_corner caution need 80 have 50"}},
		{"inside corner: the other run is out of the door's reach", func() *kitchen.Kitchen {
			k := room(3000*mm, 4000*mm)
			add(k, cabinet.Base, 0, 1750*mm, 600*mm, door(cabinet.OpensLeft))
			add(k, cabinet.Base, 1, 1200*mm, 600*mm, door(cabinet.OpensDrawer))
			k.Plan.Fillers = []cabinet.Filler{{Kind: cabinet.Base, Wall: 0, From: 2350 * mm, To: 2400 * mm}}
			return k
		}, nil},
		{"an open gap too narrow for a cabinet", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Base, 0, 600*mm, 600*mm)
			add(k, cabinet.Base, 0, 1250*mm, 600*mm)
			return k
		}, []string{"fit.gap.open note"}},
		{"the play between two cabinets is no gap", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Base, 0, 600*mm, 600*mm)
			add(k, cabinet.Base, 0, 1203*mm, 600*mm)
			return k
		}, nil},
		{"a gap with its filler", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Base, 0, 600*mm, 600*mm)
			add(k, cabinet.Base, 0, 1250*mm, 600*mm)
			k.Plan.Fillers = []cabinet.Filler{{Kind: cabinet.Base, Wall: 0, From: 1200 * mm, To: 1250 * mm}}
			return k
		}, nil},
		{"a gap that takes a cabinet", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Base, 0, 600*mm, 600*mm)
			add(k, cabinet.Base, 0, 1500*mm, 600*mm)
			return k
		}, nil},
		{"a gap 1 narrower than any cabinet, a filler at the other end", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Base, 0, 600*mm, 600*mm)
			add(k, cabinet.Base, 0, 1499*mm, 600*mm)
			k.Plan.Fillers = []cabinet.Filler{{Kind: cabinet.Base, Wall: 0, From: 550 * mm, To: 600 * mm}, {Kind: cabinet.Base, Wall: 0, From: 2099 * mm, To: 2150 * mm}}
			return k
		}, []string{"fit.gap.open note"}},
		{"an upper neighbour and a lower one are two rows", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Base, 0, 600*mm, 600*mm)
			add(k, cabinet.Wall, 0, 1250*mm, 600*mm)
			return k
		}, nil},
		{"a cabinet shallow before the wall opposite is no neighbour", func() *kitchen.Kitchen {
			k := room(3000*mm, 2000*mm, 3000*mm)
			add(k, cabinet.Base, 0, 600*mm, 600*mm)
			add(k, cabinet.Base, 2, 1150*mm, 600*mm)
			return k
		}, nil},
		{"a row between open ends slides in from there", func() *kitchen.Kitchen {
			k := room(1200 * mm)
			add(k, cabinet.Wall, 0, 600*mm, 600*mm)
			add(k, cabinet.Wall, 0, 0, 600*mm)
			k.Plan.Cabinets[0].Index, k.Plan.Cabinets[1].Index = 1, 0
			return k
		}, nil},
		{"a row from one wall to an open end slides in from there", func() *kitchen.Kitchen {
			k := room(600*mm, 1200*mm)
			add(k, cabinet.Wall, 1, 600*mm, 600*mm)
			add(k, cabinet.Wall, 1, 0, 600*mm)
			k.Plan.Cabinets[0].Index, k.Plan.Cabinets[1].Index = 1, 0
			return k
		}, nil},
		{"a row whose filler is cut to what is left", func() *kitchen.Kitchen {
			k := room(600*mm, 1230*mm, 600*mm)
			add(k, cabinet.Wall, 1, 600*mm, 600*mm)
			add(k, cabinet.Wall, 1, 0, 600*mm)
			k.Plan.Cabinets[0].Index, k.Plan.Cabinets[1].Index = 1, 0
			k.Plan.Fillers = []cabinet.Filler{{Kind: cabinet.Wall, Wall: 1, From: 1200 * mm, To: 1230 * mm}}
			return k
		}, nil},
		{"gap exact between two walls: no play for the last cabinet", func() *kitchen.Kitchen {
			k := room(600*mm, 1200*mm, 600*mm)
			add(k, cabinet.Wall, 1, 600*mm, 600*mm)
			add(k, cabinet.Wall, 1, 0, 600*mm)
			k.Plan.Cabinets[0].Index, k.Plan.Cabinets[1].Index = 1, 0
			return k
		}, []string{"fit.row.no_play caution need 3 have 0"}},
		{"gap with its play between two walls", func() *kitchen.Kitchen {
			k := room(600*mm, 1203*mm, 600*mm)
			add(k, cabinet.Wall, 1, 603*mm, 600*mm)
			add(k, cabinet.Wall, 1, 0, 600*mm)
			k.Plan.Cabinets[0].Index, k.Plan.Cabinets[1].Index = 1, 0
			return k
		}, nil},
		{"of two neighbours the first in the plan notes the gap", func() *kitchen.Kitchen {
			k := room(3000 * mm)
			add(k, cabinet.Base, 0, 600*mm, 600*mm)
			add(k, cabinet.Base, 0, 1250*mm, 600*mm)
			k.Plan.Cabinets[0].Index, k.Plan.Cabinets[1].Index = 1, 0
			return k
		}, nil},
	} {
		k := c.given()
		limits, found := sideways(k, &k.Plan.Cabinets[0])
		if got := toldAll(found); len(limits) != 0 || !slices.Equal(got, c.want) {
			t.Errorf("%s: %q (limits %q), want %q", c.name, got, limitsTold(limits), c.want)
		}
	}
}

// fixmycabinet.com, base cabinet fillers, 2010-06-15 (F): a pull of about 1 in
// and a door of 3/4 in make 1 3/4 in between a corner and the first drawer.
func TestPublishedCornerFiller(t *testing.T) {
	k := room(3000*mm, 2000*mm)
	wide := inch(t, "24")
	add(k, cabinet.Base, 0, 3000*mm-wide-wide, wide, door(cabinet.OpensDrawer), func(c *cabinet.Placed) { c.Depth = wide })
	add(k, cabinet.Base, 1, wide, wide, door(cabinet.OpensDrawer), func(c *cabinet.Placed) {
		c.Depth = wide
		c.Door.Thickness, c.Door.Pull = inch(t, "3/4"), inch(t, "1")
	})
	_, found := sideways(k, &k.Plan.Cabinets[0])
	i := slices.IndexFunc(found, func(f finding.Finding) bool { return f.Code == "fit.filler.at_corner" })
	if i < 0 || !found[i].Need.Value.Equal(inch(t, "1 3/4").Exact()) {
		t.Errorf("found %q, want a need of 1 3/4 in", toldAll(found))
	}
}
