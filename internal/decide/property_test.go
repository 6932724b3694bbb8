package decide

import (
	"maps"
	"reflect"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/survey"
)

// anyRoom draws a wall with up to four overheads side by side over up to six
// cabinets, of every make, content and age.
func anyRoom(t *rapid.T) *kitchen.Kitchen {
	k := room(rapid.IntRange(2150, 2600).Draw(t, "ceiling"), noCabinets)
	k.Room.Built = rapid.SampledFrom([]int{0, 1960, 1977, 1978, 1980, 1981, 2001}).Draw(t, "built")
	k.Room.CodeSet = rapid.SampledFrom([]survey.CodeSet{survey.CodeUnspecified, survey.CodeNone, survey.CodeUSIRC}).Draw(t, "code")
	if rapid.Bool().Draw(t, "wants height") {
		wantsHeight(k)
	}
	k.Room.Walls[0].Overheads = nil
	for i := range rapid.IntRange(1, 4).Draw(t, "overheads") {
		k.Room.Walls[0].Overheads = append(k.Room.Walls[0].Overheads, anyOverhead(t, i))
	}
	for i := range rapid.IntRange(0, 6).Draw(t, "cabinets") {
		height := rapid.SampledFrom([]int{340, 500, 660, 900}).Draw(t, "height")
		k.Plan.Cabinets = append(k.Plan.Cabinets, wallCabinet("c"+count(i), 0, 600*i, 600, height))
	}
	return settled(k)
}

func anyOverhead(t *rapid.T, i int) survey.Overhead {
	from := 900*i + rapid.IntRange(0, 200).Draw(t, "from")
	o := soffit("s"+count(i), 0, from, from+rapid.IntRange(100, 700).Draw(t, "length"), rapid.IntRange(1700, 2145).Draw(t, "underside"))
	o.Kind = rapid.SampledFrom([]survey.OverheadKind{survey.Soffit, survey.ClosedGap, survey.LoweredCeiling, survey.Beam, survey.DuctBox}).Draw(t, "kind")
	o.Structure = rapid.SampledFrom([]survey.Structure{survey.StructureUnknown, survey.Framed, survey.Solid, survey.Bearing}).Draw(t, "structure")
	o.MayCut = rapid.SampledFrom([]survey.MayCut{survey.CutAsk, survey.CutYes, survey.CutNo}).Draw(t, "may cut")
	o.Carrier = rapid.SampledFrom([]survey.Carrier{survey.CarrierUnknown, survey.CarriedByOldCabinets}).Draw(t, "carrier")
	o.Painted = rapid.SampledFrom([]survey.Tri{survey.Unknown, survey.Yes, survey.No}).Draw(t, "painted")
	o.Textured = rapid.SampledFrom([]survey.Tri{survey.Unknown, survey.Yes, survey.No}).Draw(t, "textured")
	o.Inside.Looked = rapid.SampledFrom([]survey.Looked{survey.NotLooked, survey.ProbeHole, survey.Opened}).Draw(t, "looked")
	for range rapid.IntRange(0, 2).Draw(t, "services") {
		o.Inside.Services = append(o.Inside.Services, anyService(t, from))
	}
	return o
}

func anyService(t *rapid.T, from int) survey.Service {
	kinds := []survey.ServiceKind{survey.Wire, survey.Cable, survey.PipeRun, survey.Gas, survey.Sprinkler, survey.DuctRun, survey.StructureInside}
	movable := []survey.Movable{survey.MovableUnknown, survey.MovableEasily, survey.MovableWithWork, survey.NotMovable}
	return survey.Service{
		Kind: rapid.SampledFrom(kinds).Draw(t, "service"), From: mm(from), To: mm(from + 50),
		Underside: at(rapid.IntRange(2000, 2150).Draw(t, "service underside")),
		Movable:   rapid.SampledFrom(movable).Draw(t, "movable"),
	}
}

// copied is the same case again, so that a test can change it.
func copied(k *kitchen.Kitchen) *kitchen.Kitchen {
	out, r, p := *k, *k.Room, *k.Plan
	r.Walls = slices.Clone(r.Walls)
	for w := range r.Walls {
		r.Walls[w].Overheads = slices.Clone(r.Walls[w].Overheads)
		for o := range r.Walls[w].Overheads {
			in := &r.Walls[w].Overheads[o].Inside
			in.Services = slices.Clone(in.Services)
		}
	}
	p.Cabinets = slices.Clone(p.Cabinets)
	out.Room, out.Plan = &r, &p
	return &out
}

// worse are findings that put one more gate in front of something.
var worse = map[string]func(*kitchen.Kitchen){
	"gas inside": on(func(o *survey.Overhead) {
		o.Inside.Services = append(o.Inside.Services, survey.Service{Kind: survey.Gas, Underside: at(2400)})
	}),
	"sprinkler head": on(func(o *survey.Overhead) { o.Inside.Hints = []string{"sprinkler_head"} }),
	"immovable stack": on(func(o *survey.Overhead) {
		o.Inside.Services = append(o.Inside.Services, survey.Service{Kind: survey.PipeRun, From: o.From, To: o.To, Underside: at(2000), Movable: survey.NotMovable})
	}),
	"may not be cut": on(func(o *survey.Overhead) { o.MayCut = survey.CutNo }),
	"an old house":   built(1950),
	"textured":       on(textured),
	"painted":        on(func(o *survey.Overhead) { o.Painted = survey.Yes }),
	"no clearing":    func(k *kitchen.Kitchen) { k.Room.Cleared = survey.Cleared{} },
}

func TestMoreGatesNeverOpenAnything(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := anyRoom(t)
		before := decided(k).Overheads[0].Options
		name := rapid.SampledFrom(slices.Sorted(maps.Keys(worse))).Draw(t, "worse")
		hit := copied(k)
		worse[name](hit)
		for _, o := range decided(settled(hit)).Overheads[0].Options {
			was := of(before, o.Option)
			if o.Possible && !was.Possible {
				t.Fatalf("%s made %v possible", name, o.Option)
			}
		}
	})
}

func TestAnAdditionalGateNeverOpens(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draw := rapid.Custom(func(t *rapid.T) Gate {
			return Gate{Forbids: rapid.Bool().Draw(t, "forbids"), Licensed: rapid.Bool().Draw(t, "licensed")}
		})
		gates, more := rapid.SliceOf(draw).Draw(t, "gates"), draw.Draw(t, "more")
		if open(append(slices.Clone(gates), more)) && !open(gates) {
			t.Fatal("one more gate opened the way")
		}
	})
}

// The order in which overheads were surveyed says nothing about them.
func TestOrderOfOverheadsDoesNotMatter(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := anyRoom(t)
		mixed := copied(k)
		mixed.Room.Walls[0].Overheads = rapid.Permutation(mixed.Room.Walls[0].Overheads).Draw(t, "order")
		want := map[string]Advised{}
		for _, a := range decided(k).Advice {
			want[a.Group] = a
		}
		for _, a := range decided(settled(mixed)).Advice {
			if a != want[a.Group] {
				t.Fatalf("%s: %+v, was %+v", a.Group, a, want[a.Group])
			}
		}
	})
}

// Seen from the other end the case is the same.
func TestMirroredWallGetsTheSameAdvice(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := anyRoom(t)
		m := copied(k)
		wall := &m.Room.Walls[0]
		for i := range wall.Overheads {
			o := &wall.Overheads[i]
			o.From, o.To = wall.Length-o.To, wall.Length-o.From
			for s := range o.Inside.Services {
				v := &o.Inside.Services[s]
				v.From, v.To = wall.Length-v.To, wall.Length-v.From
			}
		}
		for i := range m.Plan.Cabinets {
			c := &m.Plan.Cabinets[i]
			c.From, c.To = wall.Length-c.To, wall.Length-c.From
		}
		if got, want := decided(settled(m)).Advice, decided(k).Advice; !slices.Equal(got, want) {
			t.Fatalf("mirrored %+v, was %+v", got, want)
		}
	})
}

// What is advised can be done, needs nobody's leave, and is listed; the same
// case gets the same answer.
func TestAdviceStandsOnItsOptions(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := anyRoom(t)
		d := decided(k)
		for i, a := range d.Advice {
			o := of(d.Overheads[i].Options, a.Option)
			gone := all(d.Overheads[i].Group.Parts, (*survey.Overhead).GoesWithOldCabinets)
			if a.Option != d.Overheads[i].Advice || !a.Gated && (!o.Possible || len(o.Gates) > 0) {
				t.Fatalf("advised %+v on %+v", a, o)
			}
			if a.Gated && !gone && (a.Option != kitchen.Keep || len(of(d.Overheads[i].Options, a.Once).Gates) == 0) {
				t.Fatalf("gated %+v", a)
			}
		}
		again := decided(k)
		d.reckoning, again.reckoning = nil, nil
		if !reflect.DeepEqual(d, again) {
			t.Fatal("the same case got another answer")
		}
	})
}

// A swap is a height of the system, taller for what comes down and lower under
// what stays.
func TestSwapsComeFromTheSystem(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		for _, over := range decided(anyRoom(t)).Overheads {
			for _, o := range over.Options {
				for _, s := range o.Swaps {
					taller := s.Height > s.Cabinet.Height
					listed := slices.Contains(demo().Sizes(cabinet.Wall).Heights, s.Height)
					if !listed || taller != (o.Option == kitchen.RemoveTaller) || s.Top != s.Cabinet.Underside+s.Height {
						t.Fatalf("%v swaps %+v", o.Option, s)
					}
				}
			}
		}
	})
}
