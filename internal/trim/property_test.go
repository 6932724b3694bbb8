package trim

import (
	"reflect"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/cabinet"
	"railhead/internal/fit"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

// anyKitchen draws two walls joined in a corner, a soffit in a part on each, and
// cabinets of three heights under them.
func anyKitchen(t *rapid.T) *kitchen.Kitchen {
	var walls []survey.Wall
	var cabinets []cabinet.Placed
	for i := range 2 {
		l := length.Length(rapid.IntRange(1500, 4000).Draw(t, "wall")) * mm
		w := wall(l, 2200*mm+drawn(t, "ceiling", 0, 400))
		w.Floor = profile(0, drawn(t, "floor 1", -10, 10), l, drawn(t, "floor 2", -10, 10))
		o := soffit(drawn(t, "from", 0, 700), l-drawn(t, "short of the end", 0, 700), level.Profile{})
		middle := (o.From + o.To) / 2
		o.Underside = profile(o.From, under(t), middle, under(t), middle, under(t), o.To, under(t))
		o.ID, o.Depth = []string{"s1", "s2"}[i], drawn(t, "depth", 100, 700)
		o.Make.LeastRun, o.Make.LeastStub = drawn(t, "least run", 0, 300), drawn(t, "least stub", 0, 100)
		w.Overheads = []survey.Overhead{o}
		walls = append(walls, w)
		for x := drawn(t, "first", 0, 300); x < l; {
			to := min(x+drawn(t, "width", 100, 900), l)
			c := hung(x, to, rapid.SampledFrom([]length.Length{1960 * mm, 2120 * mm, 2240 * mm}).Draw(t, "top"))
			c.Wall, x = i, to+drawn(t, "gap", 0, 400)
			c.Kind = rapid.SampledFrom([]cabinet.Kind{cabinet.Wall, cabinet.Tall}).Draw(t, "kind")
			cabinets = append(cabinets, c)
		}
	}
	walls[0].Overheads[0].Right, walls[1].Overheads[0].Left = survey.EndCorner, survey.EndCorner
	s := demo()
	s.Rail.Lift = drawn(t, "lift", 0, 40)
	return cook(corner(walls[0], walls[1]), s, cabinets...)
}

func drawn(t *rapid.T, name string, lo, hi int) length.Length {
	return length.Length(rapid.IntRange(lo, hi).Draw(t, name)) * mm
}

func under(t *rapid.T) length.Length { return drawn(t, "underside", 1900, 2190) }

func TestEveryCutServesItsCabinets(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := anyKitchen(t)
		trims := trimmed(k)
		for i, tr := range trims {
			for _, c := range tr.Cabinets {
				if tr.CutLine < c.Top {
					t.Fatalf("%s is cut at %v, below %v of cabinet %s", tr.ID, tr.CutLine, c.Top, c.ID)
				}
			}
			if tr.From < tr.Overhead.From || tr.To > tr.Overhead.To || tr.From >= tr.To {
				t.Fatalf("%s from %v to %v", tr.ID, tr.From, tr.To)
			}
			if i > 0 && trims[i-1].Overhead == tr.Overhead && tr.From-trims[i-1].To < tr.Overhead.Make.LeastRun {
				t.Fatalf("%v between two cuts", tr.From-trims[i-1].To)
			}
			stationsHold(t, k, tr)
		}
	})
}

// stationsHold: in order, from end to end, and each strip is what hangs below
// the cut line, or all of it.
func stationsHold(t *rapid.T, k *kitchen.Kitchen, tr Trim) {
	first, last := tr.Stations[0], tr.Stations[len(tr.Stations)-1]
	if first.At.CmpLength(tr.From) != 0 || last.At.CmpLength(tr.To) != 0 {
		t.Fatalf("%s: stations from %v to %v", tr.ID, first.At, last.At)
	}
	for i, s := range tr.Stations {
		if i > 0 && (s.At.Less(tr.Stations[i-1].At) || s.same(tr.Stations[i-1])) {
			t.Fatalf("%s: station %v after %v", tr.ID, s, tr.Stations[i-1])
		}
		want := length.Larger(length.Exact{}, tr.CutLine.Exact().Sub(s.Underside))
		if tr.Work == TakeDown {
			want = k.Above(tr.Overhead.Wall, k.Room.Walls[tr.Overhead.Wall].Ceiling.At(0, level.Left)).Sub(s.Underside)
		}
		if !s.Remove.Equal(want) || tr.Most.Less(s.Remove) {
			t.Fatalf("%s: %v comes off at %v, want %v, at most %v", tr.ID, s.Remove, s.At, want, tr.Most)
		}
	}
}

// Once a chosen trim is done no part of the soffit is nearer to a cabinet than
// the fit gap.
func TestNothingHangsInTheGapAfterwards(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := anyKitchen(t)
		sky := Sky(k, chosen(kitchen.Trim), trimmed(k))
		for i := range k.Plan.Cabinets {
			c := &k.Plan.Cabinets[i]
			for _, h := range sky.Hung {
				for _, p := range c.Patches(k.Room) {
					o := h.Overhead
					if !p.Overlaps(cabinet.Patch{Wall: o.Wall, From: h.From, To: h.To, Near: o.Out, Far: o.Face()}) {
						continue
					}
					low, _ := h.Lowest(max(p.From, h.From), min(p.To, h.To))
					if gap := k.Above(o.Wall, low).Minus(c.Top); gap.CmpLength(k.System.FitGap) < 0 {
						t.Fatalf("%v above cabinet %s under %s", gap, c.ID, o.ID)
					}
				}
			}
		}
	})
}

func TestAdvisedCutsAreNeeded(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := anyKitchen(t)
		for _, tr := range Plan(k, fit.Check(k), advised(kitchen.Trim)) {
			if !tr.Needed || tr.Work == None {
				t.Fatalf("%s: needed %v, %v", tr.ID, tr.Needed, tr.Work)
			}
		}
	})
}

func TestMirroredRoom(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := anyKitchen(t)
		want, got := images(k, trimmed(k), false), images(k, trimmed(mirrored(k)), true)
		if !reflect.DeepEqual(got, want) {
			t.Fatalf("mirrored\n%+v\nwant\n%+v", got, want)
		}
	})
}

// image is what a mirror must keep of a cut.
type image struct {
	overhead            string
	from, to, line, top length.Length
	work                Work
	needed, byLift      bool
	stations            []Station
	returns             []Return
}

func images(k *kitchen.Kitchen, trims []Trim, mirror bool) []image {
	var out []image
	for _, tr := range trims {
		im := image{tr.Overhead.ID, tr.From, tr.To, tr.CutLine, tr.RowTop, tr.Work, tr.Needed, tr.ByLift, slices.Clone(tr.Stations), slices.Clone(tr.Returns)}
		if mirror {
			l := k.Room.Walls[1-tr.Overhead.Wall].Length
			im.from, im.to = l-tr.To, l-tr.From
			for i := range im.stations {
				im.stations[i].At = l.Exact().Sub(im.stations[i].At)
			}
			for i := range im.returns {
				im.returns[i].At = l - im.returns[i].At
			}
			slices.Reverse(im.stations)
			slices.Reverse(im.returns)
		}
		out = append(out, im)
	}
	if mirror {
		slices.Reverse(out)
	}
	return out
}

// mirrored is the same kitchen seen in a mirror: the second wall is now the first.
func mirrored(k *kitchen.Kitchen) *kitchen.Kitchen {
	var walls []survey.Wall
	for _, w := range slices.Backward(k.Room.Walls) {
		l := w.Length
		o := w.Overheads[0]
		o.From, o.To, o.Underside = l-o.To, l-o.From, mirror(o.Underside, l)
		o.Left, o.Right = o.Right, o.Left
		w.Prev, w.Next = -1, -1
		w.Overheads, w.Floor, w.Ceiling = []survey.Overhead{o}, mirror(w.Floor, l), mirror(w.Ceiling, l)
		walls = append(walls, w)
	}
	var cabinets []cabinet.Placed
	for _, c := range slices.Backward(k.Plan.Cabinets) {
		l := k.Room.Walls[c.Wall].Length
		c.Wall, c.From, c.To = 1-c.Wall, l-c.To, l-c.From
		cabinets = append(cabinets, c)
	}
	return cook(corner(walls[0], walls[1]), k.System, cabinets...)
}

func mirror(p level.Profile, l length.Length) level.Profile {
	var points []level.Point
	for _, pt := range slices.Backward(p.Points()) {
		points = append(points, level.Point{At: l - pt.At, Height: pt.Height})
	}
	out, _ := level.NewProfile(points)
	return out
}

// A point measured on the straight line between two others changes nothing.
func TestCollinearPoint(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := anyKitchen(t)
		before := images(k, trimmed(k), false)
		for i := range k.Room.Walls {
			w := &k.Room.Walls[i]
			w.Overheads[0].Underside = withPoint(t, w.Overheads[0].Underside)
			w.Floor, w.Ceiling = withPoint(t, w.Floor), withPoint(t, w.Ceiling)
		}
		if after := images(k, trimmed(k), false); !reflect.DeepEqual(after, before) {
			t.Fatalf("with the points\n%+v\nwithout\n%+v", after, before)
		}
	})
}

func withPoint(t *rapid.T, p level.Profile) level.Profile {
	points := p.Points()
	if len(points) < 2 || points[0].At == points[1].At {
		return p
	}
	x := points[0].At + (points[1].At-points[0].At)*length.Length(rapid.IntRange(1, 9).Draw(t, "tenths"))/10
	if x == points[0].At || x == points[1].At {
		return p
	}
	extra := level.Point{At: x, Height: level.Fixed(p.At(x, level.Left))}
	out, _ := level.NewProfile(slices.Insert(slices.Clone(points), 1, extra))
	return out
}
