package space

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

func usual(t testing.TB, k *kitchen.Kitchen, wall int, kind cabinet.Kind) Ask {
	t.Helper()
	ask, ok := Usual(k, wall, kind)
	if !ok {
		t.Fatal("the system makes none")
	}
	return ask
}

func spans(in []survey.Span) string {
	var out []string
	for _, s := range in {
		out = append(out, s.From.MM()+"-"+s.To.MM())
	}
	return strings.Join(out, " ")
}

func slope(points ...length.Length) level.Profile {
	var out []level.Point
	for i := 0; i < len(points); i += 2 {
		out = append(out, level.Point{At: points[i], Height: at(points[i+1])})
	}
	p, _ := level.NewProfile(out)
	return p
}

// Where a row's cabinets may stand. Every station is a sum of lengths in the case, or where a slope crosses top plus fit
// gap: the 660 row ends at 2120 and wants 2122 (common practice, no source).
func TestFreeStretches(t *testing.T) {
	for _, c := range []struct {
		name   string
		kind   cabinet.Kind
		height length.Length
		given  func(*kitchen.Kitchen)
		want   string
	}{
		{"a bare wall", cabinet.Wall, 660 * mm, func(*kitchen.Kitchen) {}, "0-3000"},
		{"a window with its casing", cabinet.Wall, 660 * mm, func(k *kitchen.Kitchen) { window(k, 0, 1400*mm, 2200*mm, 1050*mm, 2050*mm, 70*mm) }, "0-1330 2270-3000"},
		{"over a low window", cabinet.Wall, 660 * mm, func(k *kitchen.Kitchen) { window(k, 0, 1400*mm, 2200*mm, 900*mm, 1390*mm, 70*mm) }, "0-3000"},
		{"under the window", cabinet.Base, 740 * mm, func(k *kitchen.Kitchen) { window(k, 0, 1400*mm, 2200*mm, 1050*mm, 2050*mm, 70*mm) }, "0-3000"},
		{"beside a door", cabinet.Base, 740 * mm, func(k *kitchen.Kitchen) {
			k.Room.Walls[0].Openings = []survey.Opening{{Kind: survey.Door, From: 100 * mm, To: 900 * mm, ToFloor: true, Head: at(2030 * mm), Casing: 60 * mm}}
		}, "0-40 960-3000"},
		{"over a socket", cabinet.Wall, 660 * mm, func(k *kitchen.Kitchen) { fixture(k, 0, survey.Socket, 700*mm, 1500*mm, 0) }, "0-3000"},
		{"beside a pipe that stands off the wall", cabinet.Wall, 660 * mm, func(k *kitchen.Kitchen) { fixture(k, 0, survey.Pipe, 700*mm, 1500*mm, 30*mm) }, "0-660 740-3000"},
		{"beside the electrical panel", cabinet.Wall, 660 * mm, func(k *kitchen.Kitchen) { fixture(k, 0, survey.Panel, 700*mm, 1500*mm, 0) }, "0-660 740-3000"},
		{"under a soffit", cabinet.Wall, 660 * mm, func(k *kitchen.Kitchen) { hang(k, 0, 1000*mm, 2000*mm, 0, 330*mm, flat(2100*mm)) }, "0-1000 2000-3000"},
		{"a shorter row under it", cabinet.Wall, 340 * mm, func(k *kitchen.Kitchen) { hang(k, 0, 1000*mm, 2000*mm, 0, 330*mm, flat(2100*mm)) }, "0-3000"},
		{"snug is not free", cabinet.Wall, 660 * mm, func(k *kitchen.Kitchen) { hang(k, 0, 1000*mm, 2000*mm, 0, 330*mm, flat(2122*mm-1)) }, "0-1000 2000-3000"},
		{"the fit gap to the nanometre", cabinet.Wall, 660 * mm, func(k *kitchen.Kitchen) { hang(k, 0, 1000*mm, 2000*mm, 0, 330*mm, flat(2122*mm)) }, "0-3000"},
		{"under a slope", cabinet.Wall, 660 * mm, func(k *kitchen.Kitchen) { k.Room.Walls[0].Ceiling = slope(0, 2100*mm, 1000*mm, 2200*mm) }, "220-3000"},
		{"under a slope that crosses between two nanometres", cabinet.Wall, 660 * mm, func(k *kitchen.Kitchen) {
			k.Room.Walls[0].Ceiling = slope(0, 2121*mm, 1000*mm, 2124*mm)
		}, "333.333334-3000"},
		{"between two slopes", cabinet.Wall, 660 * mm, func(k *kitchen.Kitchen) {
			k.Room.Walls[0].Ceiling = slope(0, 2100*mm, 1000*mm, 2200*mm, 2000*mm, 2100*mm)
		}, "220-1780"},
		{"up to a step", cabinet.Wall, 660 * mm, func(k *kitchen.Kitchen) {
			k.Room.Walls[0].Ceiling = slope(0, 2200*mm, 1000*mm, 2200*mm, 1000*mm, 2110*mm)
		}, "0-1000"},
		{"under a beam across the corner", cabinet.Wall, 660 * mm, func(k *kitchen.Kitchen) { hang(k, 1, 0, 2000*mm, 0, 400*mm, flat(2100*mm)) }, "0-2600"},
		{"before a lower ceiling around the corner", cabinet.Wall, 660 * mm, func(k *kitchen.Kitchen) { k.Room.Walls[1].Ceiling = flat(2110 * mm) }, "0-2999.999999"},
		{"beside what stays", cabinet.Base, 740 * mm, func(k *kitchen.Kitchen) { add(k, cabinet.Tall, 0, 600*mm, 600*mm) }, "0-600 1200-3000"},
		{"beside the run around the corner", cabinet.Base, 740 * mm, func(k *kitchen.Kitchen) { add(k, cabinet.Base, 1, 0, 600*mm) }, "0-2400"},
		{"before a corner cabinet's other leg", cabinet.Base, 740 * mm, func(k *kitchen.Kitchen) {
			add(k, cabinet.Base, 1, 0, 900*mm, func(c *cabinet.Placed) { c.Corner = &cabinet.Corner{OtherWall: 0, OtherWidth: 800 * mm} })
		}, "0-2200"},
		{"beside a fridge that breathes", cabinet.Base, 740 * mm, func(k *kitchen.Kitchen) {
			appliance(k, cabinet.Fridge, 0, 600*mm, 600*mm, 1800*mm, func(a *cabinet.Appliance) { a.Left.Need, a.Right.Need = 13*mm, 13*mm })
		}, "0-587 1213-3000"},
		{"over a sink", cabinet.Base, 740 * mm, func(k *kitchen.Kitchen) { appliance(k, cabinet.Sink, 0, 600*mm, 600*mm, 900*mm) }, "0-3000"},
		{"a tall one at the sink", cabinet.Tall, 2000 * mm, func(k *kitchen.Kitchen) { appliance(k, cabinet.Sink, 0, 600*mm, 600*mm, 900*mm) }, "0-600 1200-3000"},
		{"over a range", cabinet.Wall, 660 * mm, func(k *kitchen.Kitchen) {
			appliance(k, cabinet.Range, 0, 600*mm, 600*mm, 900*mm, func(a *cabinet.Appliance) { a.Above.Need = 762 * mm })
		}, "0-600 1200-3000"},
		{"over a hob without a hood, 762 above it", cabinet.Wall, 660 * mm, func(k *kitchen.Kitchen) {
			k.Plan.Cooking = &cabinet.Cooking{From: 600 * mm, To: 1200 * mm, Surface: 698 * mm}
		}, "0-3000"},
		{"a hair less", cabinet.Wall, 660 * mm, func(k *kitchen.Kitchen) {
			k.Plan.Cooking = &cabinet.Cooking{From: 600 * mm, To: 1200 * mm, Surface: 698*mm + 1}
		}, "0-600 1200-3000"},
		{"beside a hood", cabinet.Wall, 660 * mm, func(k *kitchen.Kitchen) {
			k.Plan.Cooking = &cabinet.Cooking{From: 600 * mm, To: 1200 * mm, Surface: 600 * mm, Hood: &cabinet.Hood{Kind: cabinet.Ducted}}
		}, "0-600 1200-3000"},
		{"a base row at the hob", cabinet.Base, 740 * mm, func(k *kitchen.Kitchen) {
			k.Plan.Cooking = &cabinet.Cooking{From: 600 * mm, To: 1200 * mm, Surface: 900 * mm}
		}, "0-3000"},
		{"beside its own row's filler", cabinet.Wall, 660 * mm, func(k *kitchen.Kitchen) {
			k.Plan.Fillers = []cabinet.Filler{{Kind: cabinet.Wall, From: 2950 * mm, To: 3000 * mm}, {Kind: cabinet.Base, From: 0, To: 40 * mm}}
		}, "0-2950"},
		{"a beam where cabinets are hooked on", cabinet.Wall, 660 * mm, func(k *kitchen.Kitchen) { hang(k, 0, 1000*mm, 2000*mm, 400*mm, 200*mm, flat(2100*mm)) }, "0-1000 2000-3000"},
		{"the same further out", cabinet.Wall, 660 * mm, func(k *kitchen.Kitchen) { hang(k, 0, 1000*mm, 2000*mm, 410*mm, 200*mm, flat(2100*mm)) }, "0-3000"},
		{"a run opposite that may be anywhere", cabinet.Base, 740 * mm, func(k *kitchen.Kitchen) {
			k.Room.Walls[1].Prev, k.Room.Walls[0].Next = -1, -1
			k.Room.Walls[0].Facing = &survey.Facing{Wall: 1, Distance: 1199 * mm}
			add(k, cabinet.Base, 1, 0, 600*mm)
		}, ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			k := room(3000*mm, 2000*mm)
			c.given(k)
			r := Of(k, k.Found(), usual(t, k, 0, c.kind))
			if got := spans(r.Free(r.Levels(c.height))); got != c.want {
				t.Errorf("free %s, want %s", got, c.want)
			}
		})
	}
}

func TestHeightsAlongTheWall(t *testing.T) {
	k := room(4000 * mm)
	k.Room.Walls[0].Ceiling = slope(0, 2200*mm, 1000*mm, 2200*mm, 1000*mm, 2400*mm)
	hang(k, 0, 2000*mm, 2500*mm, 0, 300*mm, flat(1900*mm))
	window(k, 0, 3000*mm, 4000*mm, 1000*mm, 2100*mm, 0)
	r := Of(k, k.Found(), usual(t, k, 0, cabinet.Wall))
	var got []string
	for _, s := range r.Heights([]length.Length{340 * mm, 660 * mm, 900 * mm}) {
		got = append(got, fmt.Sprintf("%s-%s %d", s.From.MM(), s.To.MM(), s.Levels))
	}
	want := []string{"0-1000 2", "1000-2000 3", "2000-2500 1", "2500-3000 3", "3000-4000 0"}
	if !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
}

// The short cabinet over a fridge hangs with the row's top, not with its underside.
func TestLevelsOfTheirOwn(t *testing.T) {
	k := room(3000 * mm)
	appliance(k, cabinet.Fridge, 0, 600*mm, 600*mm, 1750*mm, func(a *cabinet.Appliance) { a.Above.Need = 30 * mm })
	r := Of(k, k.Found(), usual(t, k, 0, cabinet.Wall))
	for _, c := range []struct{ low, want string }{{"1780", "0-3000"}, {"1779", "0-600 1200-3000"}} {
		low, _ := length.Parse(c.low + " mm")
		if got := spans(r.Free(Levels{low, 2120 * mm})); got != c.want {
			t.Errorf("from %s: free %s, want %s", c.low, got, c.want)
		}
	}
}

func TestTheGreatestTop(t *testing.T) {
	k := room(3000*mm, 2000*mm)
	k.Room.Walls[0].Ceiling = slope(0, 2100*mm, 1000*mm, 2200*mm)
	window(k, 0, 2000*mm, 2500*mm, 2000*mm, 2200*mm, 50*mm)
	r := Of(k, k.Found(), usual(t, k, 0, cabinet.Wall))
	for _, c := range []struct {
		name     string
		from, to int
		want, by string
		ok       bool
	}{
		{"under the slope's low end", 100, 700, "2108", "/survey/walls/0/ceiling", true},
		{"under a high window", 1800, 2000, "1950", "/survey/walls/0/openings/0", true},
		{"beside it", 1300, 1900, "2198", "/survey/walls/0/ceiling", true},
		{"off the wall", 2900, 3100, "-100000", "/survey/walls/0/length", false},
	} {
		top, by, ok := r.Most(length.Length(c.from)*mm, length.Length(c.to)*mm)
		if whole, _ := top.Whole(); whole.MM() != c.want || by != c.by || ok != c.ok {
			t.Errorf("%s: %s by %s %v, want %s by %s %v", c.name, whole.MM(), by, ok, c.want, c.by, c.ok)
		}
	}
}

// Three ways to say one thing: the greatest top over a place, the free stretches
// of its heights, and the wall in stretches for heights in order.
func TestTheWaysToSayItAgree(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		t := draw{rt}
		k := anyKitchen(t)
		r := Of(k, k.Found(), anyRow(t, k))
		heights := []length.Length{200 * mm, 340 * mm, 660 * mm, 900 * mm}
		if r.Kind == cabinet.Tall {
			heights = []length.Length{1840 * mm, 2000 * mm, 2240 * mm}
		}
		stretches := r.Heights(heights)
		for range 4 {
			p := anyPlace(t, r)
			for n, h := range heights {
				p.at = r.Levels(h)
				top, _, ok := r.Most(p.from, p.to)
				under := ok && top.CmpLength(p.at.Top) >= 0
				is := free(r, p)
				if is && !under || under && !is && !kept(r, p) {
					t.Fatalf("%v %v: free %v in %v, greatest top %s %v", r.Ask, p, is, r.Free(p.at), top, ok)
				}
				if p.from < 0 || p.to > r.Length {
					continue
				}
				along := !slices.ContainsFunc(stretches, func(s Stretch) bool { return s.From < p.to && p.from < s.To && s.Levels <= n })
				if along != is {
					t.Fatalf("%v %v: free %v, along %v %v", r.Ask, p, is, stretches, along)
				}
			}
		}
	})
}
