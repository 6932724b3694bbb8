package trim

import (
	"slices"
	"strconv"
	"testing"

	"railhead/internal/cabinet"
	"railhead/internal/fit"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

const (
	mm = length.Millimetre
	in = length.Inch
)

func profile(pairs ...length.Length) level.Profile {
	var points []level.Point
	for i := 0; i < len(pairs); i += 2 {
		points = append(points, level.Point{At: pairs[i], Height: fixed(pairs[i+1])})
	}
	p, _ := level.NewProfile(points)
	return p
}

func fixed(v length.Length) level.Height { return level.Fixed(v.Exact()) }

// wall is an unjoined wall with a level floor at 0 and a level ceiling.
func wall(l, ceiling length.Length, overheads ...survey.Overhead) survey.Wall {
	return survey.Wall{
		ID: "w", Length: l, Prev: -1, Next: -1, Overheads: overheads,
		FoundFloor: profile(0, 0), Floor: profile(0, 0), RoomFloor: profile(0, 0), Ceiling: profile(0, ceiling),
	}
}

// soffit is a framed soffit between walls, made the usual way.
func soffit(from, to length.Length, under level.Profile) survey.Overhead {
	return survey.Overhead{
		ID: "s1", Group: "s", From: from, To: to, Depth: 330 * mm, Underside: under,
		Structure: survey.Framed, MayCut: survey.CutYes, Left: survey.EndWall, Right: survey.EndWall,
		Make: survey.Make{Lining: 12500 * length.Micrometre, BottomMember: 38 * mm, LeastStub: 50 * mm, LeastRun: 150 * mm, HungFrom: survey.HungWall},
	}
}

// room joins up walls in one level group and fills in indexes and pointers.
func room(walls ...survey.Wall) *survey.Room {
	out := &survey.Room{Walls: walls, Groups: []survey.Group{{}}}
	for i := range out.Walls {
		w := &out.Walls[i]
		w.Index, w.Pointer = i, "/survey/walls/"+strconv.Itoa(i)
		out.Groups[0].Walls = append(out.Groups[0].Walls, i)
		for j := range w.Overheads {
			o := &w.Overheads[j]
			o.Wall, o.Index, o.Pointer = i, j, w.Pointer+"/overheads/"+strconv.Itoa(j)
		}
	}
	return out
}

// corner joins the right end of one wall to the left end of the next.
func corner(a, b survey.Wall) *survey.Room {
	a.Next, b.Prev = 1, 0
	return room(a, b)
}

// demo is the invented rail-hung system of the trade model.
func demo() *cabinet.System {
	return &cabinet.System{
		Legs: 120 * mm, WallUnderside: 1460 * mm, FitGap: 2 * mm, SideClearance: 3 * mm,
		Rail: &cabinet.Rail{Drop: 64 * mm, Profile: 32 * mm, HangerUp: 12 * mm, HangerDown: 8 * mm, Lift: 10 * mm},
	}
}

// hung is a wall cabinet with its top at a height; 2120 mm is the demo system's
// row of 660.
func hung(from, to, top length.Length) cabinet.Placed {
	return cabinet.Placed{Kind: cabinet.Wall, From: from, To: to, Depth: 360 * mm, Height: 660 * mm, Underside: top - 660*mm, Top: top}
}

func cook(r *survey.Room, s *cabinet.System, cabinets ...cabinet.Placed) *kitchen.Kitchen {
	plan := &cabinet.Plan{Cabinets: cabinets}
	for i := range plan.Cabinets {
		c := &plan.Cabinets[i]
		c.Index = i
		if c.ID == "" {
			c.ID = string(rune('a' + i%26))
		}
	}
	return &kitchen.Kitchen{Room: r, System: s, Plan: plan, Datums: kitchen.Datums(r, plan, nil)}
}

func chosen(o kitchen.Option, spans ...survey.WallSpan) kitchen.AppliedOptions {
	return kitchen.AppliedOptions{"s": {Option: o, By: kitchen.ByChoice, Spans: spans}}
}

func advised(o kitchen.Option) kitchen.AppliedOptions {
	return kitchen.AppliedOptions{"s": {Option: o, By: kitchen.ByAdvice}}
}

// trimmed are the cuts when the soffit is to be trimmed.
func trimmed(k *kitchen.Kitchen) []Trim { return Plan(k, fit.Check(k), chosen(kitchen.Trim)) }

func one(t testing.TB, trims []Trim) Trim {
	t.Helper()
	for _, tr := range trims {
		wordedFindings(t, tr.Findings)
		for _, s := range tr.Steps {
			worded(t, s.Code, s.Params, nil, nil)
		}
	}
	if len(trims) != 1 {
		t.Fatalf("%d trims, want one: %+v", len(trims), trims)
	}
	return trims[0]
}

func codes(t Trim) []string {
	var out []string
	for _, f := range t.Findings {
		out = append(out, f.Code)
	}
	return out
}

func has(t Trim, code string) bool { return slices.Contains(codes(t), code) }

func stepCodes(t Trim) []string {
	var out []string
	for _, s := range t.Steps {
		out = append(out, s.Code[len("trim.step."):])
	}
	return out
}

type strip struct{ at, remove length.Length }

// strips are the stations of a cut whose stations and strips are whole.
func strips(t testing.TB, tr Trim) []strip {
	t.Helper()
	var out []strip
	for _, s := range tr.Stations {
		at, ok1 := s.At.Whole()
		remove, ok2 := s.Remove.Whole()
		if !ok1 || !ok2 {
			t.Fatalf("station at %v takes %v: not whole", s.At, s.Remove)
		}
		out = append(out, strip{at, remove})
	}
	return out
}
