package space

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/fit"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

func ordinary() *cabinet.Door {
	return &cabinet.Door{Opens: cabinet.OpensPair, Thickness: 20 * mm, Pull: 40 * mm}
}

// A door 20 mm thick with a pull of 40 mm needs both beside a side wall and at a corner's other run, whose own front it
// clears as well: 20 + 20 + 40 (common practice, no source).
func TestEnds(t *testing.T) {
	for _, c := range []struct {
		name    string
		kind    cabinet.Kind
		given   func(*kitchen.Kitchen)
		stretch int
		right   bool
		want    End
	}{
		{"an end where nobody surveyed a wall", cabinet.Base, func(*kitchen.Kitchen) {}, 0, false,
			End{What: WallEnd, By: "/survey/walls/0/length", Joined: -1, Shows: true, Hinged: 60 * mm}},
		{"a bare corner", cabinet.Base, func(*kitchen.Kitchen) {}, 0, true,
			End{What: WallEnd, By: "/survey/walls/0/length", Joined: 1, Hinged: 60 * mm}},
		{"a run around the corner", cabinet.Base, func(k *kitchen.Kitchen) { add(k, cabinet.Base, 1, 0, 1200*mm) }, 0, true,
			End{What: Corner, By: "/plan/cabinets/0", Joined: -1, Hinged: 80 * mm, Other: 60 * mm}},
		{"a run around the corner that leaves the corner empty", cabinet.Base, func(k *kitchen.Kitchen) { add(k, cabinet.Base, 1, 700*mm, 600*mm) }, 0, true,
			End{What: Corner, By: "/plan/cabinets/0", Joined: -1, Hinged: 80 * mm, Other: 60 * mm}},
		{"a window", cabinet.Wall, func(k *kitchen.Kitchen) { window(k, 0, 1400*mm, 2200*mm, 1050*mm, 2050*mm, 70*mm) }, 0, true,
			End{What: Opening, By: "/survey/walls/0/openings/0", Joined: -1, Shows: true}},
		{"a neighbour as deep", cabinet.Base, func(k *kitchen.Kitchen) { add(k, cabinet.Base, 0, 1000*mm, 600*mm) }, 0, true,
			End{What: Cabinet, By: "/plan/cabinets/0", Joined: -1}},
		{"a tall neighbour that stands out", cabinet.Wall, func(k *kitchen.Kitchen) { add(k, cabinet.Tall, 0, 1000*mm, 600*mm) }, 0, true,
			End{What: Cabinet, By: "/plan/cabinets/0", Joined: -1, Hinged: 60 * mm}},
		{"a fridge with some of the room that a door wants", cabinet.Base, func(k *kitchen.Kitchen) {
			appliance(k, cabinet.Fridge, 0, 1000*mm, 600*mm, 1800*mm, func(a *cabinet.Appliance) { a.Depth, a.Left.Need = 700*mm, 13*mm })
		}, 0, true, End{What: Appliance, By: "/plan/appliances/0", Joined: -1, Hinged: 47 * mm}},
		{"a duct box", cabinet.Wall, func(k *kitchen.Kitchen) { hang(k, 0, 1000*mm, 1200*mm, 0, 300*mm, flat(1800*mm)) }, 1, false,
			End{What: Overhead, By: "/survey/walls/0/overheads/0", Joined: -1, Shows: true}},
		{"a ceiling that comes down", cabinet.Wall, func(k *kitchen.Kitchen) { k.Room.Walls[0].Ceiling = slope(0, 2100*mm, 1000*mm, 2200*mm) }, 0, false,
			End{What: Ceiling, By: "/survey/walls/0/ceiling", Joined: -1, Shows: true}},
	} {
		t.Run(c.name, func(t *testing.T) {
			k := room(3000*mm, 2000*mm)
			c.given(k)
			ask := usual(t, k, 0, c.kind)
			ask.Door = ordinary()
			r := Of(k, k.Found(), ask)
			at := r.Levels([...]length.Length{660 * mm, 2000 * mm, 740 * mm}[c.kind])
			ends := r.Ends(r.Free(at)[c.stretch], at)
			got := ends[0]
			if c.right {
				got = ends[1]
			}
			if got != c.want {
				t.Errorf("%+v, want %+v", got, c.want)
			}
		})
	}
}

// tight are the fillers that package fit misses beside a cabinet on one side.
func tight(found []finding.Finding, right bool) bool {
	side := "left"
	if right {
		side = "right"
	}
	return slices.ContainsFunc(found, func(f finding.Finding) bool {
		return strings.HasPrefix(f.Code, "fit.filler.at_") && slices.ContainsFunc(f.Params, func(p finding.Param) bool { return p.Text == side })
	})
}

// A cabinet that keeps off the end of its stretch by what the end asks for gets no
// word about fillers there, whatever its width up to the row's depth and however it opens; and the end
// asks for no more than some door there needs.
func TestEndsAskForWhatFitAsksFor(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		t := draw{rt}
		k := anyKitchen(t)
		ask := anyRow(t, k)
		ask.Door = &cabinet.Door{Opens: cabinet.OpensPair, Thickness: t.grid("thickness", 10, 30), Pull: t.grid("pull", 0, 50)}
		r := Of(k, k.Found(), ask)
		at := r.Levels(t.grid("height", 200, 700))
		for _, s := range r.Free(at) {
			for i, end := range r.Ends(s, at) {
				right := i == 1
				needs := func(off, width length.Length, opens cabinet.Opens) bool {
					p := place{s.From + off, s.From + off + width, at}
					if right {
						p.from, p.to = s.To-off-width, s.To-off
					}
					if p.from < s.From || p.to > s.To {
						return false
					}
					door := *ask.Door
					door.Opens = opens
					planned, n := with(k, r, p, &door)
					return tight(fit.Check(planned)[n].Findings, right)
				}
				here, away := cabinet.OpensLeft, cabinet.OpensRight
				if right {
					here, away = away, here
				}
				width := min(t.grid("width", 10, 900), r.Depth)
				for _, opens := range []cabinet.Opens{here, cabinet.OpensPair} {
					if needs(end.Hinged, width, opens) {
						t.Fatalf("%v in %v, %d: a door %d needs more than %s", r.Ask, s, i, opens, end.Hinged)
					}
				}
				for _, opens := range []cabinet.Opens{away, cabinet.OpensDrawer} {
					if needs(end.Other, width, opens) {
						t.Fatalf("%v in %v, %d: a front %d needs more than %s", r.Ask, s, i, opens, end.Other)
					}
				}
				if end.Hinged > 0 && end.Hinged <= s.To-s.From && !needs(0, 1, here) && !needs(0, s.To-s.From, here) {
					t.Fatalf("%v in %v, %d: no door there needs %s", r.Ask, s, i, end.Hinged)
				}
			}
		}
	})
}

func TestASideWallThatTheSurveyShows(t *testing.T) {
	k := room(3000 * mm)
	hang(k, 0, 0, 3000*mm, 0, 300*mm, flat(2300*mm), func(o *survey.Overhead) { o.Left = survey.EndWall })
	r := Of(k, k.Found(), usual(t, k, 0, cabinet.Base))
	at := r.Levels(740 * mm)
	if ends := r.Ends(survey.Span{To: 3000 * mm}, at); ends[0].Shows || !ends[1].Shows || ends[0].Hinged != 0 {
		t.Errorf("%+v: a wall at the left, nobody knows at the right, and no door was told of", ends)
	}
}
