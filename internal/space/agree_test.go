package space

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/cabinet"
	"railhead/internal/fit"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// place is a cabinet of a row somewhere along its wall.
type place struct {
	from, to length.Length
	at       Levels
}

// anyRow draws a row that a kitchen is asked for; now and then one that fills the
// room to the wall opposite.
func anyRow(t draw, k *kitchen.Kitchen) Ask {
	wall := &k.Room.Walls[t.n("row on wall", 0, len(k.Room.Walls)-1)]
	depth := t.depth("row depth", 300, 700)
	switch {
	case t.n("very deep", 0, 5) > 0:
	case wall.Next >= 0 && t.yes("to the wall opposite"):
		depth = k.Room.Walls[wall.Next].Length + t.hair("depth")
	default:
		depth = t.grid("great depth", 300, 2600)
	}
	return Ask{Wall: wall.Index, Kind: cabinet.Kind(t.n("row", 0, 2)), Depth: depth, Spare: k.System.FitGap}
}

func (t draw) hair(name string) length.Length { return length.Length(t.n(name+" hair", -1, 1)) }

// anyPlace draws a cabinet of a row: in its row or at levels of its own, at the
// edges of things and of free stretches, a hair beside them, or anywhere.
func anyPlace(t draw, r *Row) place {
	p := place{at: r.Levels(t.grid("height of it", 100, 1000) + t.hair("height"))}
	if r.Kind == cabinet.Tall {
		p.at.Top += 1200 * mm
	}
	if r.Kind == cabinet.Wall && t.n("at levels of its own", 0, 3) == 0 {
		p.at.Low = min(p.at.Low+t.grid("up", -400, 400), p.at.Top-10*mm)
	}
	edges := edgesOf(r, p.at)
	p.from, p.to = t.edge("from", edges), t.edge("to", edges)
	if p.from > p.to {
		p.from, p.to = p.to, p.from
	}
	if p.from == p.to || t.n("of ordinary width", 0, 3) == 0 {
		p.to = p.from + t.grid("width of it", 10, 900)
	}
	return p
}

func edgesOf(r *Row, at Levels) []length.Length {
	edges := []length.Length{0, r.Length}
	for _, b := range r.Boxes {
		edges = append(edges, b.MostFrom+1, b.LeastTo-1)
	}
	for _, l := range r.Limits {
		edges = append(edges, l.From, l.To, l.MostFrom, l.LeastTo)
	}
	for _, s := range r.Free(at) {
		edges = append(edges, s.From, s.To)
	}
	return slices.DeleteFunc(edges, func(x length.Length) bool { return x.Abs() > 10*length.Metre })
}

func (t draw) edge(name string, edges []length.Length) length.Length {
	if t.n(name+" at an edge", 0, 3) == 0 {
		return t.grid(name, -50, 2600)
	}
	return edges[t.n(name+" of", 0, len(edges)-1)] + t.hair(name)
}

// with is the kitchen with a cabinet in a place, and that cabinet's index.
func with(k *kitchen.Kitchen, r *Row, p place, door *cabinet.Door) (*kitchen.Kitchen, int) {
	out, plan := *k, *k.Plan
	plan.Cabinets = slices.Clone(plan.Cabinets)
	out.Plan = &plan
	add(&out, r.Kind, r.Wall, p.from, p.to-p.from, func(c *cabinet.Placed) {
		c.Depth, c.Underside, c.Top, c.Height, c.Door = r.Depth, p.at.Low, p.at.Top, p.at.Top-p.at.Low, door
	})
	return &out, len(plan.Cabinets) - 1
}

// anySky is what may hang after some work: stretches as found, cut, or gone.
func anySky(t draw, k *kitchen.Kitchen) kitchen.Sky {
	var out kitchen.Sky
	for _, h := range k.Found().Hung {
		cut := h.From + length.Length(rapid.Int64Range(0, int64(h.To-h.From)).Draw(t.T, "cut at"))
		for _, s := range []survey.Span{{From: h.From, To: cut}, {From: cut, To: h.To}} {
			piece := kitchen.Hung{Overhead: h.Overhead, From: s.From, To: s.To}
			switch {
			case s.From >= s.To:
			case t.yes("gone"):
				out.Gone = append(out.Gone, kitchen.Gone{Overhead: h.Overhead, From: s.From, To: s.To})
			case t.yes("trimmed"):
				line := t.grid("cut line", 1900, 2300).Exact()
				piece.Cut = &line
				out.Hung = append(out.Hung, piece)
			default:
				out.Hung = append(out.Hung, piece)
			}
		}
	}
	return out
}

// Beforehand as afterwards: a cabinet of any size anywhere along a wall, in rooms
// with slopes, overheads, openings and corners, gets the verdict that package fit
// gives it once it is planned.
func TestTheVerdictIsThatOfFit(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		t := draw{rt}
		k := anyKitchen(t)
		r := Of(k, k.Found(), anyRow(t, k))
		for range 4 {
			p := anyPlace(t, r)
			planned, n := with(k, r, p, nil)
			want := fit.Check(planned)[n]
			if got := r.Verdict(p.from, p.to, p.at); got != want.Verdict {
				t.Fatalf("%v %v: %s, package fit says %s by %s", r.Ask, p, got, want.Verdict, want.Limit.By)
			}
		}
	})
}

func TestTheVerdictUnderWhatHangsAfterwards(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		t := draw{rt}
		k := anyKitchen(t)
		sky := anySky(t, k)
		r := Of(k, sky, anyRow(t, k))
		p := anyPlace(t, r)
		planned, n := with(k, r, p, nil)
		want := fit.AfterAll(planned, fit.Check(planned), sky, kitchen.AppliedOptions{})[n]
		got := r.Verdict(p.from, p.to, p.at)
		if got == fit.NeedsTrim {
			got = fit.Blocked // nothing more is cut
		}
		if got != want.Verdict {
			t.Fatalf("%v %v: %s, package fit says %s by %s", r.Ask, p, got, want.Verdict, want.By)
		}
	})
}

// softly are the findings of package fit that free places are kept clear of.
func softly(k *kitchen.Kitchen, r *fit.Result) bool {
	told := func(code string) bool {
		return strings.HasPrefix(code, "fit.appliance.") && code != "fit.appliance.joint" || code == "fit.facing.may_overlap" ||
			code == "fit.point.panel_covered" || code == "fit.door.under_lip"
	}
	for _, f := range r.Findings {
		if told(f.Code) {
			return true
		}
	}
	for _, f := range fit.WorkZone(k) {
		if f.Code == "fit.cooking.combustible" && f.Pointer == r.Cabinet.Pointer {
			return true
		}
	}
	return r.Hanging != nil && r.Hanging.Verdict == fit.HangBlocked
}

func free(r *Row, p place) bool {
	return slices.ContainsFunc(r.Free(p.at), func(s survey.Span) bool { return s.From <= p.from && p.to <= s.To })
}

// What lies in a free stretch fits, with nothing to say against it; what lies in
// none does not, or stands in the way of something.
func TestFreeStretchesAreWhereCabinetsFit(t *testing.T) {
	inside, outside := 0, 0
	rapid.Check(t, func(rt *rapid.T) {
		t := draw{rt}
		k := anyKitchen(t)
		r := Of(k, k.Found(), anyRow(t, k))
		for range 4 {
			p := anyPlace(t, r)
			planned, n := with(k, r, p, nil)
			got := &fit.Check(planned)[n]
			fits := got.Verdict == fit.Fits && !softly(planned, got)
			switch is := free(r, p); {
			case is && !fits:
				t.Fatalf("%v %v is free in %v, and package fit says %s by %s, %v", r.Ask, p, r.Free(p.at), got.Verdict, got.Limit.By, got.Findings)
			case is:
				inside++
			case fits && !kept(r, p):
				t.Fatalf("%v %v is not free in %v, and package fit has nothing against it", r.Ask, p, r.Free(p.at))
			default:
				outside++
			}
		}
	})
	if inside == 0 || outside == 0 {
		t.Errorf("%d cabinets were free and %d were not: nothing was tested", inside, outside)
	}
}

// kept reports whether a place is kept free for what package fit has no finding
// for: a tall cabinet at the cooking surface, an overhead across the room near a
// cabinet's front, the one corner that Free leaves out.
func kept(r *Row, p place) bool {
	for i := range r.Boxes {
		b := &r.Boxes[i]
		if b.Soft && (b.By == "/plan/cooking" || b.What == Opposite) && b.Of(p.from, p.to) {
			return true
		}
	}
	for i := range r.Limits {
		l := &r.Limits[i]
		narrow := l.LeastTo-1 >= l.MostFrom+1
		if (l.Soft || narrow) && len(r.low(l, p.at.Top)) > 0 {
			return true
		}
	}
	return false
}

// Around a corner a seen ceiling takes the place of the surveyed one for narrow
// cabinets, which the overhead before it covers from side to side.
func TestCeilingsSeenAroundTheCorner(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		t := draw{rt}
		k := room(slices.Repeat([]length.Length{2000 * mm}, t.n("walls", 2, 4))...)
		if t.yes("a step off the square") {
			k.Room.Walls[0].Length += t.grid("longer", -300, 300)
		}
		for i := range k.Room.Walls {
			k.Room.Walls[i].Ceiling = t.profile("ceiling", 2080, 2110)
			for range t.n("overheads", 1, 2) {
				from := t.grid("from", 0, 500)
				if t.yes("at the left end") {
					from = 0
				}
				to := 2000*mm - max(t.grid("to", -500, 500), 0)
				hang(k, i, from, to, max(t.grid("out", -30, 20), 0), t.grid("depth", 300, 700), flat(2090*mm), func(o *survey.Overhead) {
					h := at(t.grid("behind", 2100, 2140))
					o.Behind.CeilingLevel = &h
				})
			}
		}
		sky := k.Found()
		if t.yes("all gone") {
			sky = kitchen.Sky{}
		}
		r := Of(k, sky, Ask{Wall: t.n("on", 0, len(k.Room.Walls)-1), Kind: cabinet.Wall, Depth: t.grid("row", 300, 600), Spare: k.System.FitGap})
		if t.n("to the wall opposite", 0, 4) == 0 {
			ask := r.Ask
			ask.Depth = 2000 * mm
			r = Of(k, sky, ask)
		}
		p := place{at: r.Levels(t.grid("height", 610, 650))}
		edges := edgesOf(r, p.at)
		if t.yes("at a face") {
			edges = nil
			for _, o := range k.Overheads() {
				edges = append(edges, o.Face(), r.Length-o.Face())
			}
		}
		p.from, p.to = t.edge("a", edges), t.edge("b", edges)
		switch t.n("touching", 0, 3) {
		case 0:
			p.from = 0
		case 1:
			p.to = r.Length
		}
		if p.from >= p.to {
			p.from, p.to = p.to, p.from+1
		}
		planned, n := with(k, r, p, nil)
		want := fit.AfterAll(planned, fit.Check(planned), sky, kitchen.AppliedOptions{})[n].Verdict
		got := r.Verdict(p.from, p.to, p.at)
		if got == fit.NeedsTrim {
			got = fit.Blocked
		}
		if got != want {
			t.Fatalf("%v %v: %s, package fit says %s", r.Ask, p, got, want)
		}
		if free(r, p) && want != fit.Fits {
			t.Fatalf("%v %v is free in %v, and package fit says %s", r.Ask, p, r.Free(p.at), want)
		}
	})
}
