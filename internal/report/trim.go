package report

import (
	"slices"

	"railhead/api"
	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/trim"
)

// Trims writes the cuts.
func (s Scale) Trims(k *kitchen.Kitchen, in []trim.Trim) []api.Trim {
	return each(in, func(t trim.Trim) api.Trim { return s.trim(k, t) })
}

func (s Scale) trim(k *kitchen.Kitchen, t trim.Trim) api.Trim {
	wall := t.Overhead.Wall
	out := api.Trim{
		ID: t.ID, Overhead: t.Overhead.ID, Wall: k.Room.Walls[wall].ID, Needed: t.Needed,
		Cabinets: each(t.Cabinets, func(c *cabinet.Placed) string { return c.ID }),
		From:     s.downL(t.From), To: s.upL(t.To), CutLine: s.upL(t.CutLine), Work: t.Work.String(),
		FromLaser: s.fromLaser(k, wall, t.CutLine, length.Up), FromBench: s.fromBench(k, wall, t.CutLine, length.Up),
		AboveRail: s.aboveRail(k, t),
		Stations:  each(t.Stations, func(st trim.Station) api.TrimStation { return s.trimStation(st, t) }),
		Returns:   each(t.Returns, s.trimReturn), Conflicts: each(t.Conflicts, s.conflict),
		MostRemoved: s.up(t.Most), BecauseOf: because(t.ByLift), Findings: s.Findings(t.Findings),
	}
	out.Steps = each(t.Steps, func(st trim.Step) api.Step { return s.step(st, out.AboveRail) })
	if t.FrameLine != nil {
		out.FrameLine = ptr(s.upL(*t.FrameLine))
	}
	return out
}

// step writes one step; what it counts from the rail is counted from the rail as
// it was struck.
func (s Scale) step(st trim.Step, aboveRail *api.Measure) api.Step {
	params := slices.Clone(st.Params)
	for i := range params {
		if params[i].Name == "above_rail" && aboveRail != nil {
			params[i] = finding.Word("above_rail", aboveRail.Tape)
		}
	}
	return api.Step{Code: st.Code, Says: s.says(st.Code, params), Params: s.params(params)}
}

func because(byLift bool) string {
	if byLift {
		return "lift"
	}
	return "fit_gap"
}

// aboveRail is the cut line above the rail's lower edge: the exact distance, with
// the tape mark that counts from the rail as it was struck.
func (s Scale) aboveRail(k *kitchen.Kitchen, t trim.Trim) *api.Measure {
	if t.RailEdge == nil {
		return nil
	}
	onSite := t.CutLine.Exact().Sub(s.struck(k, t.Overhead.Wall, *t.RailEdge)).Ceil()
	return ptr(s.marked(t.CutLine-*t.RailEdge, onSite, length.Up))
}

// trimStation rounds a station outward: the left part of a cut to the left, the
// right part to the right.
func (s Scale) trimStation(st trim.Station, t trim.Trim) api.TrimStation {
	side := length.Nearest
	switch {
	case st.At.CmpLength(t.From) <= 0:
		side = length.Down
	case st.At.CmpLength(t.To) >= 0:
		side = length.Up
	}
	return api.TrimStation{
		At: s.measure(st.At, side), Underside: s.down(st.Underside), Remove: s.up(st.Remove),
		AboveFloor: s.near(st.AboveFloor), OpenAbove: s.down(st.OpenAbove),
	}
}

func (s Scale) trimReturn(r trim.Return) api.TrimReturn {
	return api.TrimReturn{At: s.plan(r.At), Depth: s.plan(r.Depth), Meets: r.Meets.String()}
}

func (s Scale) conflict(c trim.Conflict) api.TrimConflict {
	return api.TrimConflict{Pointer: c.Pointer, At: s.plan(c.At), Level: s.down(c.Level), Short: s.up(c.Short)}
}
