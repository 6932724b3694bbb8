package rail

import (
	"testing"

	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

const (
	mm = length.Millimetre
	in = length.Inch
)

// profile is a profile of pairs: station, level.
func profile(pairs ...length.Length) level.Profile {
	var points []level.Point
	for i := 0; i < len(pairs); i += 2 {
		points = append(points, level.Point{At: pairs[i], Height: level.Fixed(pairs[i+1].Exact())})
	}
	p, _ := level.NewProfile(points)
	return p
}

func fixed(v length.Length) level.Height { return level.Fixed(v.Exact()) }

// wall is an unjoined wall of timber studs, level floor and ceiling.
func wall(l length.Length) survey.Wall {
	return survey.Wall{
		ID: "w", Pointer: "/survey/walls/0", Length: l, Prev: -1, Next: -1, Backing: survey.WoodStud,
		Floor: profile(0, 0), RoomFloor: profile(0, 0), Ceiling: profile(0, 2500*mm),
	}
}

func studs(first, spacing, to length.Length) []length.Length {
	var out []length.Length
	for at := first; at <= to; at += spacing {
		out = append(out, at)
	}
	return out
}

// room joins up walls: one level group for all of them.
func room(walls ...survey.Wall) *survey.Room {
	out := &survey.Room{Walls: walls, Groups: []survey.Group{{}}}
	for i := range out.Walls {
		w := &out.Walls[i]
		w.Index = i
		out.Groups[0].Walls = append(out.Groups[0].Walls, i)
		for j := range w.Overheads {
			w.Overheads[j].Wall, w.Overheads[j].Index = i, j
		}
	}
	return out
}

func soffit(from, to length.Length, under level.Profile) survey.Overhead {
	return survey.Overhead{
		ID: "s1", Group: "s1", Pointer: "/survey/walls/0/overheads/0", From: from, To: to, Depth: 330 * mm,
		Underside: under, Structure: survey.Framed,
	}
}

// demo is the invented rail-hung system of the trade model.
func demo() *cabinet.System {
	return &cabinet.System{
		Legs: 120 * mm, WallUnderside: 1460 * mm, FitGap: 2 * mm, SideClearance: 3 * mm,
		Rail: &cabinet.Rail{
			Drop: 64 * mm, Profile: 32 * mm, Stock: []length.Length{2400 * mm}, Kerf: 3 * mm,
			HangerUp: 12 * mm, HangerDown: 8 * mm, Lift: 10 * mm, EndInset: 40 * mm, LongestSpan: 610 * mm,
		},
	}
}

// hung is a wall cabinet whose top is 2120 mm above the datum.
func hung(from, to length.Length) cabinet.Placed {
	return cabinet.Placed{Kind: cabinet.Wall, From: from, To: to, Depth: 360 * mm, Height: 660 * mm, Underside: 1460 * mm, Top: 2120 * mm}
}

func cook(r *survey.Room, s *cabinet.System, cabinets ...cabinet.Placed) *kitchen.Kitchen {
	plan := &cabinet.Plan{Cabinets: cabinets}
	for i := range plan.Cabinets {
		plan.Cabinets[i].Index = i
	}
	return &kitchen.Kitchen{Room: r, System: s, Plan: plan, Datums: kitchen.Datums(r, plan, nil)}
}

// planned are the rails of a kitchen where nothing changes under the ceiling.
func planned(k *kitchen.Kitchen) []Rail { return Plan(k, k.Found(), k.Found()) }

func one(t testing.TB, rails []Rail) Rail {
	t.Helper()
	if len(rails) != 1 {
		t.Fatalf("%d rails, want one", len(rails))
	}
	return rails[0]
}

// codes are those of the findings and questions, whose words are checked too.
func codes(t testing.TB, r Rail) []string {
	t.Helper()
	out := []string{}
	wordedFindings(t, r.Findings)
	for _, f := range r.Findings {
		out = append(out, f.Code)
	}
	for _, q := range r.Questions {
		worded(t, q.Code, q.Params, nil, nil)
		out = append(out, q.Code)
	}
	return out
}

func spans(pieces []Piece) []survey.Span {
	out := []survey.Span{}
	for _, p := range pieces {
		out = append(out, survey.Span{From: p.From, To: p.To})
	}
	return out
}
