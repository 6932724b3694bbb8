package takeoff

import (
	"fmt"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/cabinet"
	"railhead/internal/contents"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/money"
	"railhead/internal/survey"
)

func drawn(t *rapid.T, name string, lo, hi int) int { return rapid.IntRange(lo, hi).Draw(t, name) }

// anyKitchen draws two walls joined in a corner, a soffit in a part on each that
// meet there one way or the other, and cabinets under them that do not overlap.
func anyKitchen(t *rapid.T) *kitchen.Kitchen {
	return kitchenWith(t, rapid.Bool().Draw(t, "both parts fill the corner"))
}

func kitchenWith(t *rapid.T, both bool) *kitchen.Kitchen {
	depth, bottom := drawn(t, "depth", 200, 500), drawn(t, "new bottom", 0, 12)
	behind := survey.Behind{Ceiling: survey.Tri(drawn(t, "ceiling", 0, 2)), Wall: survey.Tri(drawn(t, "wall behind", 0, 2))}
	looked := survey.Looked(drawn(t, "looked", 0, 2))
	var walls []survey.Wall
	var cabinets []cabinet.Placed
	for i := range 2 {
		long := drawn(t, "wall", 1800, 4000)
		from, to := 0, long
		if i == 0 {
			from = drawn(t, "from", 0, 300)
		} else {
			to -= drawn(t, "short of the end", 0, 300)
			if !both {
				from = depth
			}
		}
		middle, under := (from+to)/2, func() int { return drawn(t, "underside", 1950, 2150) }
		o := soffit(from, to, profile(from, under(), middle, under(), middle, under(), to, under()))
		o.ID, o.Depth = []string{"a", "b"}[i], length.Length(depth)*mm
		o.Make.NewBottom, o.Behind, o.Inside.Looked = length.Length(bottom)*mm, behind, looked
		o.Inside.Services = []survey.Service{{
			Kind: survey.ServiceKind(drawn(t, "service", 0, 6)), From: o.From + 100*mm, To: o.To - 200*mm, Underside: fixed(2180),
			Movable: survey.Movable(drawn(t, "movable", 0, 3)),
		}}
		end := rapid.SampledFrom([]survey.EndKind{survey.EndOpen, survey.EndCabinet}).Draw(t, "end")
		if from == 0 || to == long {
			end = survey.EndWall
		}
		if i == 0 {
			o.Left, o.Right = end, survey.EndCorner
		} else {
			o.Left, o.Right = survey.EndCorner, end
		}
		w := wall(long, 2400, o)
		w.Ceiling = profile(0, drawn(t, "ceiling", 2200, 2500), middle, drawn(t, "ceiling", 2200, 2500), long, drawn(t, "ceiling", 2200, 2500))
		walls = append(walls, w)
		cabinets = append(cabinets, row(t, i, long)...)
	}
	return cook(corner(walls...), cabinets...)
}

// row draws cabinets along a wall; the corner's 360 mm stay free on the second.
func row(t *rapid.T, wall, long int) []cabinet.Placed {
	var out []cabinet.Placed
	x := wall * 360
	for x += drawn(t, "first", 0, 400); x < long-100; {
		to := min(x+drawn(t, "width", 100, 900), long)
		c := hung(wall, x, to, rapid.SampledFrom([]int{1960, 2120, 2160}).Draw(t, "top"))
		c.Kind = rapid.SampledFrom([]cabinet.Kind{cabinet.Wall, cabinet.Wall, cabinet.Tall, cabinet.Base}).Draw(t, "kind")
		out = append(out, c)
		x = to + drawn(t, "gap", 0, 400)
	}
	return out
}

func anyOption(t *rapid.T) kitchen.Option {
	return kitchen.Option(drawn(t, "option", int(kitchen.Keep), int(kitchen.Move)))
}

func everything(t Takeoff) []Item {
	out := slices.Concat(t.Items, t.Behind)
	for _, found := range t.Found {
		out = append(out, found...)
	}
	return out
}

// Whatever is told can be worked out again from what is written beside it.
func TestEveryQuantityCanBeWorkedOutAgain(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := anyKitchen(t)
		got := take(k, anyOption(t))
		for _, i := range everything(got) {
			reworked(t, i)
			if i.Quantity <= 0 || i.Pointer == "" || !slices.Contains(Works(), i.Work) {
				t.Fatalf("%+v", i)
			}
		}
		if len(got.Found[contents.Empty]) > 0 || got.Reach < 0 || got.Reach > 1_000_000_000 {
			t.Fatalf("found %v, reach %d", got.Found[contents.Empty], got.Reach)
		}
	})
}

// Taking it down takes off no less than any cut, part by part, however it is built.
func TestRemovalTakesOffNoLessThanATrim(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := anyKitchen(t)
		option := rapid.SampledFrom([]kitchen.Option{kitchen.Trim, kitchen.OpenPart}).Draw(t, "option")
		if rapid.Bool().Draw(t, "built otherwise") {
			buildOtherwise(t, k)
		}
		all, cut := take(k, kitchen.RemoveOpen), take(k, option)
		if cut.Reach > all.Reach {
			t.Fatalf("reach %d of the cuts, %d of all", cut.Reach, all.Reach)
		}
		for _, w := range []Work{BoardOff, FrameOff, RerouteWire, ReroutePipe, RerouteDuct, CeilingBoard, Waste, WasteMass} {
			if got, most := quantities(cut.Items)[w], quantities(all.Items)[w]; got > most+0.002 {
				t.Fatalf("%s: %v of the cuts, %v of all", w, got, most)
			}
		}
	})
}

// buildOtherwise draws how each part is built, alike or not.
func buildOtherwise(t *rapid.T, k *kitchen.Kitchen) {
	k.Prices.Figures = kitchen.Figures{kitchen.Members: money.Quantity(drawn(t, "members", 1000, 5000))}
	spacing := length.Length(drawn(t, "spacing", 50, 1000)) * mm
	for i := range k.Room.Walls {
		o := &k.Room.Walls[i].Overheads[0]
		o.Make.Spacing, o.Depth = spacing, length.Length(drawn(t, "own depth", 200, 500))*mm
		o.Structure = survey.Structure(drawn(t, "structure", 0, 3))
	}
}

// same compares two measurings by kind of work; each part rounds by itself.
func same(t *rapid.T, name string, a, b []Item, works []Work) {
	t.Helper()
	have, want := quantities(a), quantities(b)
	for _, w := range works {
		if err := near(have[w], want[w], 0.0025); err != nil {
			t.Fatalf("%s: %s %v", name, w, err)
		}
	}
}

// In a mirror everything measures the same. Where both parts fill the corner its
// square counts with the first, which in the mirror is the other one: that bears on
// cuts whose strip runs out just there, so cuts are mirrored without it, and on how
// many hangers each part's framing is told to have.
func TestMirroredRoomMeasuresTheSame(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		o := anyOption(t)
		both, works := o.TakesDown() && rapid.Bool().Draw(t, "both parts fill the corner"), Works()
		if both {
			works = slices.DeleteFunc(works, func(w Work) bool { return w == FrameOff || w == Waste || w == WasteMass })
		}
		k := kitchenWith(t, both)
		got, image := take(k, o), take(mirrored(k), o)
		same(t, o.String(), image.Items, got.Items, works)
		same(t, o.String(), image.Behind, got.Behind, Works())
		for s := range got.Found {
			same(t, o.String(), image.Found[s], got.Found[s], Works())
		}
		if image.Reach != got.Reach {
			t.Fatalf("reach %d, in the mirror %d", got.Reach, image.Reach)
		}
	})
}

// mirrored is the same kitchen seen in a mirror: the second wall is now the first.
func mirrored(k *kitchen.Kitchen) *kitchen.Kitchen {
	var walls []survey.Wall
	for _, w := range slices.Backward(k.Room.Walls) {
		l := w.Length
		o := w.Overheads[0]
		o.From, o.To, o.Left, o.Right = l-o.To, l-o.From, o.Right, o.Left
		o.Underside, w.Ceiling = mirror(o.Underside, l), mirror(w.Ceiling, l)
		o.Inside.Services = slices.Clone(o.Inside.Services)
		for i := range o.Inside.Services {
			s := &o.Inside.Services[i]
			s.From, s.To = l-s.To, l-s.From
		}
		w.Prev, w.Next, w.Overheads = -1, -1, []survey.Overhead{o}
		walls = append(walls, w)
	}
	var cabinets []cabinet.Placed
	for _, c := range slices.Backward(k.Plan.Cabinets) {
		l := k.Room.Walls[c.Wall].Length
		c.Wall, c.From, c.To = 1-c.Wall, l-c.To, l-c.From
		cabinets = append(cabinets, c)
	}
	return cook(corner(walls...), cabinets...)
}

func mirror(p level.Profile, l length.Length) level.Profile {
	var points []level.Point
	for _, pt := range slices.Backward(p.Points()) {
		points = append(points, level.Point{At: l - pt.At, Height: pt.Height})
	}
	out, fault := level.NewProfile(points)
	if fault != nil {
		panic(fault)
	}
	return out
}

// An overhead described in two parts of one thing, end to end, is the same work;
// only framing is measured from end to end of each part.
func TestTwoPartsOfOneThingMeasureTheSame(t *testing.T) {
	works := []Work{BoardOff, BoardOn, Cut, Patch, Paint, ClosingPanel, Filler, RerouteWire, ReroutePipe, RerouteDuct}
	rapid.Check(t, func(t *rapid.T) {
		k := anyKitchen(t)
		k.Room.Walls[0].Next, k.Room.Walls[1].Prev = -1, -1
		k.Room.Walls[1].Overheads = nil
		w := &k.Room.Walls[0]
		w.Overheads[0].Right = survey.EndWall
		o := rapid.SampledFrom([]kitchen.Option{kitchen.RemoveOpen, kitchen.RemoveClose, kitchen.RemoveTaller}).Draw(t, "option")
		one := take(k, o)

		left, right := w.Overheads[0], w.Overheads[0]
		at := left.From + (left.To-left.From)*length.Length(drawn(t, "tenths", 1, 9))/10
		left.To, left.Right, right.From, right.Left = at, survey.EndCorner, at, survey.EndCorner
		left.Inside.Services, right.Inside.Services = split(left.Inside.Services, at)
		w.Overheads = []survey.Overhead{left, right}
		two := take(cook(k.Room.Walls, k.Plan.Cabinets...), o)
		same(t, o.String(), two.Items, one.Items, works)
		same(t, o.String(), two.Behind, one.Behind, Works())
	})
}

// split parts what runs inside at a station.
func split(in []survey.Service, at length.Length) (left, right []survey.Service) {
	for _, s := range in {
		l, r := s, s
		l.To, r.From = min(s.To, at), max(s.From, at)
		if l.From < l.To {
			left = append(left, l)
		}
		if r.From < r.To {
			right = append(right, r)
		}
	}
	return left, right
}

// A point surveyed on the straight line between two others changes no formula.
func TestPointOnAStraightLine(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k, o := anyKitchen(t), anyOption(t)
		before := take(k, o)
		for i := range k.Room.Walls {
			w := &k.Room.Walls[i]
			w.Ceiling, w.Overheads[0].Underside = withPoint(t, w.Ceiling), withPoint(t, w.Overheads[0].Underside)
		}
		after := take(k, o)
		if len(before.Items) != len(after.Items) {
			t.Fatalf("%d items, then %d", len(before.Items), len(after.Items))
		}
		for i := range before.Items {
			if a, b := before.Items[i], after.Items[i]; a.Formula != b.Formula || !slices.Equal(a.Inputs, b.Inputs) {
				t.Fatalf("%s: %q of %v, then %q of %v", a.Work, a.Formula, a.Inputs, b.Formula, b.Inputs)
			}
		}
	})
}

func withPoint(t *rapid.T, p level.Profile) level.Profile {
	points := p.Points()
	x := points[0].At + (points[1].At-points[0].At)*length.Length(drawn(t, "tenths", 1, 9))/10
	if x == points[0].At || x == points[1].At {
		return p
	}
	extra := level.Point{At: x, Height: level.Fixed(p.At(x, level.Left))}
	out, fault := level.NewProfile(slices.Insert(slices.Clone(points), 1, extra))
	if fault != nil {
		panic(fault)
	}
	return out
}

// What is reckoned bare is what is told, less the words, also where one site is
// asked for several options.
func TestBareIsTheSameWork(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := anyKitchen(t)
		site := NewSite(k)
		for range 4 {
			j := job(k, anyOption(t))
			for i := range k.Plan.Cabinets {
				if c := &k.Plan.Cabinets[i]; rapid.Bool().Draw(t, "swap") {
					h := c.Height + length.Length(drawn(t, "taller", -200, 240))*mm
					j.Swaps = append(j.Swaps, cabinet.Swap{Cabinet: c, Height: h, Top: c.Underside + h})
				}
			}
			told := NewSite(k).Of(j)
			j.Bare = true
			if got, want := fmt.Sprintf("%+v", site.Of(j)), fmt.Sprintf("%+v", wordless(told)); got != want {
				t.Fatalf("%s: %s, told %s", j.Option, got, want)
			}
		}
	})
}

func wordless(t Takeoff) Takeoff {
	strip := func(in []Item) (out []Item) {
		for _, i := range in {
			out = append(out, Item{Work: i.Work, Pointer: i.Pointer, Quantity: i.Quantity})
		}
		return out
	}
	out := Takeoff{Items: strip(t.Items), Reach: t.Reach, Behind: strip(t.Behind)}
	for s := range t.Found {
		out.Found[s] = strip(t.Found[s])
	}
	return out
}
