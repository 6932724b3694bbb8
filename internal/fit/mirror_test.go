package fit

import (
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/rules"
	"railhead/internal/survey"
)

// anyKitchen draws a U-shaped kitchen with whatever may stand, hang and open in
// it, sensible or not, on a 10 mm grid so that things abut now and then.
func anyKitchen(t *rapid.T) *kitchen.Kitchen {
	grid := func(name string, low, high int) length.Length {
		return length.Length(rapid.IntRange(low/10, high/10).Draw(t, name)) * 10 * mm
	}
	k := room(grid("wall", 800, 3000), grid("wall", 800, 3000), grid("wall", 800, 3000))
	k.System.Legs, k.Plan.Counter = 120*mm, grid("counter", 850, 950)
	for i := range 3 {
		w := &k.Room.Walls[i]
		w.Ceiling, w.Floor = flat(grid("ceiling", 2100, 2500)), flat(grid("floor", -60, 0))
		for range rapid.IntRange(0, 2).Draw(t, "openings") {
			from := grid("opening", 0, 1500)
			window(k, i, from, from+grid("opening width", 100, 900), grid("sill", 600, 1500), grid("head", 1600, 2100), grid("casing", 0, 80))
		}
		for range rapid.IntRange(0, 3).Draw(t, "points") {
			kind := survey.FixtureKind(rapid.IntRange(0, int(survey.OtherFixture)).Draw(t, "point"))
			fixture(k, i, kind, grid("point at", 0, 2000), grid("point level", 100, 2000), grid("point out", 0, 100))
		}
		for range rapid.IntRange(0, 2).Draw(t, "overheads") {
			from := grid("overhead", 0, 1500)
			hang(k, i, from, from+grid("overhead length", 100, 2000), grid("overhead out", 0, 800), grid("overhead depth", 100, 700), grid("underside", 1600, 2300), func(o *survey.Overhead) {
				o.Kind = survey.OverheadKind(rapid.IntRange(0, 4).Draw(t, "overhead kind"))
				o.MayCut = survey.MayCut(rapid.IntRange(0, 2).Draw(t, "may cut"))
			})
		}
	}
	for range rapid.IntRange(1, 6).Draw(t, "cabinets") {
		kind := cabinet.Kind(rapid.IntRange(0, 2).Draw(t, "kind"))
		add(k, kind, rapid.IntRange(0, 2).Draw(t, "on wall"), grid("from", -50, 2000), grid("width", 200, 1000), func(c *cabinet.Placed) {
			c.Depth = grid("depth", 300, 650)
			if opens := rapid.IntRange(-1, int(cabinet.OpensDrawer)).Draw(t, "opens"); opens >= 0 {
				c.Door = &cabinet.Door{Opens: cabinet.Opens(opens), Rise: grid("rise", 0, 300), Thickness: 20 * mm, Pull: grid("pull", 0, 50)}
			}
		})
	}
	for range rapid.IntRange(0, 2).Draw(t, "fillers") {
		from := grid("filler", 0, 2000)
		k.Plan.Fillers = append(k.Plan.Fillers, cabinet.Filler{
			Pointer: "/plan/fillers/" + strconv.Itoa(len(k.Plan.Fillers)), Kind: cabinet.Kind(rapid.IntRange(0, 2).Draw(t, "filler kind")),
			AnyKind: rapid.Bool().Draw(t, "filler of no row"), Wall: rapid.IntRange(0, 2).Draw(t, "filler on wall"), From: from, To: from + grid("filler width", 10, 100),
		})
	}
	for range rapid.IntRange(0, 2).Draw(t, "old cabinets") {
		from := grid("old", 0, 2000)
		k.Plan.Old = append(k.Plan.Old, cabinet.Old{Wall: rapid.IntRange(0, 2).Draw(t, "old on wall"), From: from, To: from + grid("old width", 200, 900), Depth: 320 * mm})
	}
	for range rapid.IntRange(0, 2).Draw(t, "appliances") {
		kind := cabinet.ApplianceKind(rapid.IntRange(0, int(cabinet.OtherAppliance)).Draw(t, "appliance"))
		appliance(k, kind, rapid.IntRange(0, 2).Draw(t, "appliance on wall"), grid("appliance from", 0, 2000), grid("appliance width", 200, 900), grid("appliance top", 600, 2000), func(a *cabinet.Appliance) {
			a.Left.Need, a.Right.Need, a.Above.Need = grid("left", 0, 50), grid("right", 0, 50), grid("above", 0, 800)
			a.Left.Stated, a.Right.Stated = rapid.Bool().Draw(t, "left stated"), rapid.Bool().Draw(t, "right stated")
			a.Hangs, a.Underside = rapid.Bool().Draw(t, "hangs"), a.Top-grid("appliance height", 50, 600)
		})
	}
	from := grid("cooking", 0, 1500)
	k.Plan.Cooking = &cabinet.Cooking{Pointer: "/plan/cooking", Wall: rapid.IntRange(0, 2).Draw(t, "cooking on wall"), From: from, To: from + 600*mm, Surface: k.Plan.Counter,
		Hood: &cabinet.Hood{Underside: grid("hood", 1200, 1700)}}
	return k
}

// mirrored is the same kitchen seen in a mirror: the walls in reverse order,
// every station counted from the other end, hinges on the other side. Pointers
// stay with the things they name.
func mirrored(k *kitchen.Kitchen) *kitchen.Kitchen {
	out := *k
	room, plan := *k.Room, *k.Plan
	out.Room, out.Plan = &room, &plan
	last := len(k.Room.Walls) - 1
	turn := func(wall int, from, to length.Length) (length.Length, length.Length) {
		return k.Room.Walls[wall].Length - to, k.Room.Walls[wall].Length - from
	}
	room.Walls = nil
	for i := last; i >= 0; i-- {
		w := k.Room.Walls[i]
		w.Index, w.Prev, w.Next = last-i, last-i-1, last-i+1
		if w.Next > last {
			w.Next = -1
		}
		w.Openings, w.Fixtures, w.Overheads = slices.Clone(w.Openings), slices.Clone(w.Fixtures), slices.Clone(w.Overheads)
		for j := range w.Openings {
			w.Openings[j].From, w.Openings[j].To = turn(i, w.Openings[j].From, w.Openings[j].To)
		}
		for j := range w.Fixtures {
			w.Fixtures[j].At = w.Length - w.Fixtures[j].At
		}
		for j := range w.Overheads {
			o := &w.Overheads[j]
			o.Wall = w.Index
			o.From, o.To = turn(i, o.From, o.To)
			o.Left, o.Right = o.Right, o.Left
		}
		room.Walls = append(room.Walls, w)
	}
	plan.Cabinets, plan.Fillers, plan.Old = slices.Clone(plan.Cabinets), slices.Clone(plan.Fillers), slices.Clone(plan.Old)
	for i := range plan.Cabinets {
		c := &plan.Cabinets[i]
		c.From, c.To = turn(c.Wall, c.From, c.To)
		c.Wall = last - c.Wall
		if c.Door != nil {
			d := *c.Door
			d.Opens = [...]cabinet.Opens{cabinet.OpensNot, cabinet.OpensRight, cabinet.OpensLeft, cabinet.OpensPair, cabinet.OpensUp, cabinet.OpensDrawer}[d.Opens]
			c.Door = &d
		}
	}
	for i := range plan.Fillers {
		f := &plan.Fillers[i]
		f.From, f.To = turn(f.Wall, f.From, f.To)
		f.Wall = last - f.Wall
	}
	plan.Appliances = slices.Clone(plan.Appliances)
	for i := range plan.Appliances {
		a := &plan.Appliances[i]
		a.From, a.To = turn(a.Wall, a.From, a.To)
		a.Wall = last - a.Wall
		a.Left, a.Right = a.Right, a.Left
	}
	for i := range plan.Old {
		o := &plan.Old[i]
		o.From, o.To = turn(o.Wall, o.From, o.To)
		o.Wall = last - o.Wall
	}
	cook := *plan.Cooking
	cook.From, cook.To = turn(cook.Wall, cook.From, cook.To)
	cook.Wall = last - cook.Wall
	plan.Cooking = &cook
	return &out
}

// everything is all that this package says beside, before, under and over the
// cabinets, without the sides and stations that a mirror changes, sorted.
func everything(k *kitchen.Kitchen) []string {
	var out []string
	for i := range k.Plan.Cabinets {
		c := &k.Plan.Cabinets[i]
		limits, found := sideways(k, c)
		_, up := standing(k, c)
		all := limitsTold(limits)
		for _, f := range join(found, doors(k, c, k.Found()), up, legs(k, c)) {
			all = append(all, subject(f)+" "+told(f))
		}
		if h := hangingFound(k, c); h != nil {
			all = append(all, "hanging "+h.Verdict.String()+" "+h.Have.String())
		}
		for _, one := range all {
			out = append(out, c.ID+" "+one)
		}
	}
	for _, f := range append(WorkZone(k), Footprint(k)...) {
		out = append(out, f.Pointer+" "+told(f))
	}
	slices.Sort(out)
	return out
}

// subject is what a finding is about; where it names one of several that leave
// equally little, the first in the request's order, a mirror may name another.
func subject(f finding.Finding) string {
	if strings.HasPrefix(f.Code, "fit.door.") || strings.HasPrefix(f.Code, "fit.filler.at_") {
		return ""
	}
	return f.Pointer
}

func TestMirroringTheRoomMirrorsTheAnswer(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := anyKitchen(t)
		if got, want := everything(mirrored(k)), everything(k); !slices.Equal(got, want) {
			t.Fatalf("mirrored\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
		}
	})
}

func TestAnOverlapIsMutual(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := anyKitchen(t)
		in := func(a, b *cabinet.Placed) bool {
			limits, _ := sideways(k, a)
			return slices.ContainsFunc(limits, func(l Limit) bool { return l.By == b.Pointer })
		}
		for i := range k.Plan.Cabinets {
			for j := range i {
				a, b := &k.Plan.Cabinets[i], &k.Plan.Cabinets[j]
				if in(a, b) != in(b, a) {
					t.Fatalf("%s and %s do not agree", a.Pointer, b.Pointer)
				}
			}
		}
	})
}

func TestRaisingTheCeilingNeverMakesItWorse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := anyKitchen(t)
		raised := *k
		room := *k.Room
		raised.Room, room.Walls = &room, slices.Clone(room.Walls)
		by := length.Length(rapid.Int64Range(0, int64(300*mm)).Draw(t, "by"))
		for i := range room.Walls {
			room.Walls[i].Ceiling = room.Walls[i].Ceiling.Moved(by)
		}
		for i := range k.Plan.Cabinets {
			c := &k.Plan.Cabinets[i]
			if a, b := hangingFound(k, c), hangingFound(&raised, c); a != nil && b.Verdict > a.Verdict {
				t.Fatalf("%s hangs %s instead of %s", c.ID, b.Verdict, a.Verdict)
			}
			a, _ := standing(k, c)
			if b, _ := standing(&raised, c); a != nil && b.Verdict > a.Verdict {
				t.Fatalf("%s stands up %s instead of %s", c.ID, b.Verdict, a.Verdict)
			}
		}
	})
}

func TestACollinearPointChangesNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := anyKitchen(t)
		want := everything(k)
		for i := range k.Room.Walls {
			w := &k.Room.Walls[i]
			x := length.Length(rapid.Int64Range(0, int64(w.Length)).Draw(t, "at"))
			for _, p := range []*level.Profile{&w.Floor, &w.RoomFloor, &w.Ceiling} {
				*p, _ = level.NewProfile([]level.Point{{At: 0, Height: p.HeightAt(0, level.Left)}, {At: x, Height: p.HeightAt(x, level.Left)}})
			}
		}
		if got := everything(k); !slices.Equal(got, want) {
			t.Fatalf("with a collinear point\n%q\nwant\n%q", got, want)
		}
	})
}

// Every code said anywhere in a random kitchen stands in the catalogue, and its
// text and its remedies' ask for nothing that the finding does not carry.
func TestEveryCodeHasItsWords(t *testing.T) {
	asks := regexp.MustCompile(`\{(\w+)\}`)
	rapid.Check(t, func(t *rapid.T) {
		k := anyKitchen(t)
		found := append(WorkZone(k), Footprint(k)...)
		for i := range k.Plan.Cabinets {
			c := &k.Plan.Cabinets[i]
			_, beside := sideways(k, c)
			_, up := standing(k, c)
			found = append(found, join(beside, doors(k, c, k.Found()), up, legs(k, c))...)
		}
		for _, f := range found {
			rule, ok := rules.Of(f.Code)
			if !ok || f.Pointer == "" {
				t.Fatalf("%s at %q is not in the catalogue", f.Code, f.Pointer)
			}
			for _, name := range asks.FindAllStringSubmatch(rule.Says, -1) {
				if !carries(f, name[1]) {
					t.Fatalf("%s asks for %s", f.Code, name[0])
				}
			}
			for _, r := range f.Remedies {
				if _, ok := rules.Of(r.Code); !ok {
					t.Fatalf("%s is not in the catalogue", r.Code)
				}
			}
		}
	})
}

func carries(f finding.Finding, name string) bool {
	switch name {
	case "need":
		return f.Need != nil
	case "have":
		return f.Have != nil
	}
	return slices.ContainsFunc(f.Params, func(p finding.Param) bool { return p.Name == name })
}
