package rail

import (
	"reflect"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

// anyKitchen draws one wall with cabinets in a row, a soffit, a window and a
// pipe. Its stations are multiples of 60 mm, so that evenly divided runs have
// exact joints and a mirrored tie cannot round to another nanometre.
func anyKitchen(t *rapid.T) *kitchen.Kitchen {
	grid := func(name string, lo, hi int) length.Length {
		return length.Length(rapid.IntRange(lo, hi).Draw(t, name)) * 60 * mm
	}
	w := wall(grid("wall", 20, 120))
	w.Backing = rapid.SampledFrom([]survey.Backing{survey.BackingUnknown, survey.WoodStud, survey.Masonry}).Draw(t, "backing")
	w.StudsKnown = rapid.Bool().Draw(t, "studs known")
	if w.StudsKnown {
		w.Studs = studs(grid("first stud", 0, 6)+7*mm, 406*mm, w.Length)
	}
	rise := func(name string) length.Length {
		return length.Length(rapid.IntRange(-20, 20).Draw(t, name)) * mm
	}
	w.Floor = profile(0, rise("floor 1"), w.Length/2, rise("floor 2"), w.Length/2, rise("floor 3"), w.Length, rise("floor 4"))
	from := min(grid("soffit", 0, 100), w.Length-60*mm)
	w.Overheads = []survey.Overhead{soffit(from, w.Length, profile(from, 2070*mm+rise("left"), w.Length, 2100*mm+rise("right")))}
	at := grid("window", 1, 100)
	w.Openings = []survey.Opening{{From: at, To: at + 600*mm, Sill: fixed(1000 * mm), Head: fixed(2040*mm + rise("head")), Casing: 30 * mm}}
	w.Fixtures = []survey.Fixture{{Kind: survey.Pipe, At: grid("pipe", 1, 100), Level: fixed(2060 * mm), Width: 20 * mm, Height: 20 * mm, Out: rise("out").Abs()}}
	var cabinets []cabinet.Placed
	for x := length.Length(0); x+600*mm <= w.Length; x += 600 * mm {
		if rapid.IntRange(0, 4).Draw(t, "cabinet") > 0 {
			cabinets = append(cabinets, hung(x, x+600*mm))
		}
	}
	return cook(room(w), demo(), cabinets...)
}

// mirrored is the same kitchen seen in a mirror.
func mirrored(k *kitchen.Kitchen) *kitchen.Kitchen {
	w := k.Room.Walls[0]
	l := w.Length
	w.Floor = mirror(w.Floor, l)
	w.Studs = slices.Clone(w.Studs)
	for i := range w.Studs {
		w.Studs[i] = l - w.Studs[i]
	}
	slices.Reverse(w.Studs)
	o := w.Overheads[0]
	o.From, o.To, o.Underside = l-o.To, l-o.From, mirror(o.Underside, l)
	w.Overheads = []survey.Overhead{o}
	d := w.Openings[0]
	d.From, d.To = l-d.To, l-d.From
	w.Openings = []survey.Opening{d}
	f := w.Fixtures[0]
	f.At = l - f.At
	w.Fixtures = []survey.Fixture{f}
	var cabinets []cabinet.Placed
	for _, c := range slices.Backward(k.Plan.Cabinets) {
		c.From, c.To = l-c.To, l-c.From
		cabinets = append(cabinets, c)
	}
	return cook(room(w), k.System, cabinets...)
}

func mirror(p level.Profile, l length.Length) level.Profile {
	var points []level.Point
	for _, pt := range slices.Backward(p.Points()) {
		points = append(points, level.Point{At: l - pt.At, Height: pt.Height})
	}
	out, _ := level.NewProfile(points)
	return out
}

func TestRailsHoldTogether(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := anyKitchen(t)
		system, w := k.System.Rail, &k.Room.Walls[0]
		for _, r := range planned(k) {
			end := length.Length(-1)
			for _, p := range r.Pieces {
				if p.From < end || p.From >= p.To || p.From < 0 || p.To > w.Length || p.Length() > system.Stock[0] {
					t.Fatalf("piece %v after %v on a wall of %v", p, end, w.Length)
				}
				end = p.To
				wellFixed(t, system, w, p, r.Fixings)
			}
			sorted(t, r.Stations)
		}
	})
}

func wellFixed(t *rapid.T, system *cabinet.Rail, w *survey.Wall, p Piece, all []Fixing) {
	var at []length.Length
	for _, f := range all {
		if f.At <= p.From || f.At >= p.To {
			continue
		}
		at = append(at, f.At)
		if f.Into == Stud && !anyWithin(w.Studs, f.At-StudReach, f.At+StudReach) {
			t.Fatalf("no stud at %v", f.At)
		}
	}
	if len(at) < 2 || at[0]-p.From > system.EndInset || p.To-at[len(at)-1] > system.EndInset {
		t.Fatalf("piece %v held at %v", p, at)
	}
	for i := 1; i < len(at); i++ {
		if gap := at[i] - at[i-1]; gap <= 0 || gap > system.LongestSpan {
			t.Fatalf("piece %v: gap of %v between screws", p, gap)
		}
	}
}

func sorted(t *rapid.T, stations []Station) {
	for i := 1; i < len(stations); i++ {
		a, b := stations[i-1], stations[i]
		if b.At < a.At || b.At == a.At && b.AboveFloor.Equal(a.AboveFloor) {
			t.Fatalf("stations %v then %v", a, b)
		}
	}
}

// Mirroring the wall mirrors pieces, screws and checks. Only a joint that lies
// equally near to two stud bays has to choose a side; such rooms are left out.
func TestMirroredWall(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := anyKitchen(t)
		there, back := planned(k), planned(mirrored(k))
		if len(there) != len(back) {
			t.Fatalf("%d rails, mirrored %d", len(there), len(back))
		}
		for i := range there {
			if l := k.Room.Walls[0].Length; tied(&k.Room.Walls[0], there[i].Pieces) {
				continue
			} else if got, want := seenInMirror(back[i], l), plain(there[i]); !reflect.DeepEqual(got, want) {
				t.Fatalf("mirrored %v, want %v", got, want)
			}
		}
	})
}

type image struct {
	pieces   []survey.Span
	fixings  []Fixing
	stations []Station
}

func plain(r Rail) image {
	return image{spans(r.Pieces), slices.Clone(r.Fixings), slices.Clone(r.Stations)}
}

func seenInMirror(r Rail, l length.Length) image {
	out := plain(r)
	for i, s := range out.pieces {
		out.pieces[i] = survey.Span{From: l - s.To, To: l - s.From}
	}
	for i := range out.fixings {
		out.fixings[i].At = l - out.fixings[i].At
	}
	for i := range out.stations {
		out.stations[i].At = l - out.stations[i].At
	}
	slices.Reverse(out.pieces)
	slices.Reverse(out.fixings)
	slices.Reverse(out.stations)
	return out
}

// tied reports whether a run's even joint falls on a stud.
func tied(w *survey.Wall, pieces []Piece) bool {
	for i := 0; i < len(pieces); i++ {
		from := i
		for pieces[i].Joint {
			i++
		}
		n := length.Length(i - from + 1)
		for j := length.Length(1); j < n; j++ {
			if slices.Contains(w.Studs, share(pieces[from].From, pieces[i].To, j, n)) {
				return true
			}
		}
	}
	return false
}

// A floor point measured on the straight line between two others is one more
// check and changes nothing else.
func TestCollinearFloorPoint(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := anyKitchen(t)
		before := planned(k)
		w := &k.Room.Walls[0]
		points := slices.Clone(w.Floor.Points())
		x := w.Length / 4
		extra := level.Point{At: x, Height: level.Fixed(w.Floor.At(x, level.Left))}
		w.Floor, _ = level.NewProfile(slices.Insert(points, 1, extra))
		for i, r := range planned(k) {
			r.Stations = slices.DeleteFunc(r.Stations, func(s Station) bool { return s.At == x && !hasStation(before[i], x) })
			if !reflect.DeepEqual(r, before[i]) {
				t.Fatalf("with the point %+v, before %+v", r, before[i])
			}
		}
	})
}

func hasStation(r Rail, x length.Length) bool {
	return slices.ContainsFunc(r.Stations, func(s Station) bool { return s.At == x })
}
