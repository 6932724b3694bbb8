package fit

import (
	"sort"

	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// Rows compares every row of the system with the room: with the overheads as
// found, and with those gone that may be cut.
func Rows(k *kitchen.Kitchen) []Row {
	rows, places := TopLines(k), covered(k)
	kept, removed := asFound(k), cleared(k)
	overKept, overRemoved := kept.overAll(places), removed.overAll(places)
	for i := range rows {
		rows[i].Kept = kept.under(overKept, rows[i].Top)
		rows[i].Removed = removed.under(overRemoved, rows[i].Top)
	}
	return rows
}

// TopLines are the levels at which the system's wall and tall cabinets end,
// lowest first, not compared with the room; heights that share one are one row.
func TopLines(k *kitchen.Kitchen) []Row {
	byTop := map[length.Length]*Row{}
	at := func(top length.Length) *Row {
		if byTop[top] == nil {
			byTop[top] = &Row{Top: top, ForFits: top + k.System.FitGap}
		}
		return byTop[top]
	}
	for _, h := range k.System.Wall.Heights {
		at(k.System.WallUnderside + k.Plan.RowShift + h).WallHeight = &h
	}
	for _, h := range k.System.Tall.Heights {
		at(k.System.Legs + k.Plan.RowShift + h).TallHeight = &h
	}
	out := make([]Row, 0, len(byTop))
	for _, r := range byTop {
		out = append(out, *r)
	}
	sort.Slice(out, func(i, j int) bool { return out[i].Top < out[j].Top })
	return out
}

// cleared is the room with every overhead gone that may be cut.
func cleared(k *kitchen.Kitchen) stage {
	s := asFound(k)
	var stay []kitchen.Hung
	for _, h := range s.sky.Hung {
		if h.Overhead.MayCut == survey.CutYes {
			s.sky.Gone = append(s.sky.Gone, kitchen.Gone{Overhead: h.Overhead, From: h.From, To: h.To})
		} else {
			stay = append(stay, h)
		}
	}
	s.sky.Hung = stay
	return s
}

// covered are the places that a row would cover: where wall and tall cabinets
// are planned, else the whole walls at the depth of the system's shallowest.
func covered(k *kitchen.Kitchen) []cabinet.Placed {
	var out []cabinet.Placed
	for _, c := range k.Plan.Cabinets {
		if c.Kind != cabinet.Base {
			out = append(out, c)
		}
	}
	if len(out) > 0 {
		return out
	}
	depth := shallowest(k.System)
	for i := range k.Room.Walls {
		w := &k.Room.Walls[i]
		out = append(out, cabinet.Placed{Kind: cabinet.Wall, Wall: i, To: w.Length, Depth: depth})
	}
	return out
}

func shallowest(s *cabinet.System) length.Length {
	for _, d := range [][]length.Length{s.Wall.Depths, s.Tall.Depths, s.Base.Depths} {
		if len(d) > 0 {
			return d[0]
		}
	}
	return length.Millimetre
}

// overAll is everything above a row's places; it is the same for every top line.
func (s stage) overAll(places []cabinet.Placed) []obstacle {
	var out []obstacle
	for i := range places {
		out = append(out, s.over(places[i].Patches(s.k.Room))...)
	}
	return out
}

// under is what there is for a top line under obstacles.
func (s stage) under(over []obstacle, top length.Length) RowRoom {
	limits := make([]Limit, len(over))
	assumed := false
	for i, o := range over {
		limits[i] = s.limit(o, top)
		assumed = assumed || o.assumed
	}
	tight, rule := tightest(limits), ruling(limits)
	return RowRoom{Have: tight.Margin.Plus(top), Margin: tight.Margin, Verdict: rule.Verdict, By: rule.By, Assumed: assumed}
}
