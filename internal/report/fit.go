package report

import (
	"railhead/api"
	"railhead/internal/fit"
	"railhead/internal/length"
	"railhead/internal/level"
)

// Fits writes every cabinet's fit with what it is once the options are carried out.
func (s Scale) Fits(in []fit.Result, after []fit.After, readings []level.Reading) []api.Fit {
	out := make([]api.Fit, len(in))
	for i := range in {
		out[i] = s.fit(&in[i], readings)
		out[i].After = s.after(after[i])
	}
	return out
}

func (s Scale) fit(r *fit.Result, readings []level.Reading) api.Fit {
	f := api.Fit{
		Cabinet: r.Cabinet.ID, Verdict: r.Verdict.String(), Cure: r.Cure.String(),
		MeasureAgain: r.Again, WorstVerdict: r.Worst.String(),
		Top: s.plan(r.Cabinet.Top), Underside: s.plan(r.Cabinet.Underside),
		Margin: s.down(r.Margin), Uncertainty: s.upL(r.Doubt),
		LimitedBy: r.Limit.By, LimitedAt: s.plan(r.Limit.At),
		Limits: each(r.Limits, s.limit), Findings: s.Findings(r.Findings),
	}
	if r.Cure == fit.CureLowerRow {
		f.LowerRowBy = ptr(s.upL(r.LowerBy))
	}
	switch {
	case r.Again && r.Edge != "":
		f.MeasureWhat = r.Edge
	case r.Again && r.Reading >= 0:
		f.MeasureWhat = readings[r.Reading].Pointer
	}
	f.Hanging = s.hanging(r.Hanging)
	if st := r.Standing; st != nil {
		f.Standing = &api.Standing{Verdict: st.Verdict.String(), Need: s.upL(st.Need), Have: s.down(st.Have)}
	}
	return f
}

func (s Scale) limit(l fit.Limit) api.Limit {
	return api.Limit{
		By: l.By, Axis: l.Axis.String(), At: s.plan(l.At), Margin: s.down(l.Margin), Verdict: l.Verdict.String(),
	}
}

func (s Scale) after(a fit.After) api.FitAfter {
	return api.FitAfter{
		Verdict: a.Verdict.String(), Margin: s.down(a.Margin), LimitedBy: a.By, Basis: basis(a.Assumed),
		Hanging: s.hanging(a.Hanging), Findings: s.Findings(a.Findings),
	}
}

func (s Scale) hanging(h *fit.Hanging) *api.Hanging {
	if h == nil {
		return nil
	}
	return &api.Hanging{Verdict: h.Verdict.String(), Need: s.up(h.Need), Have: s.down(h.Have)}
}

func basis(assumed bool) string {
	if assumed {
		return "assumed"
	}
	return "seen"
}

// Rows writes the comparison of the system's rows with the room.
func (s Scale) Rows(in []fit.Row) []api.Row { return each(in, s.row) }

func (s Scale) row(r fit.Row) api.Row {
	out := api.Row{
		Top: s.plan(r.Top), CeilingNeeded: s.upL(r.Top), CeilingForFits: s.upL(r.ForFits),
		WallHeight: s.maybe(r.WallHeight), TallHeight: s.maybe(r.TallHeight),
		Kept: s.rowRoom(r.Kept), Removed: s.rowRoom(r.Removed),
	}
	out.Removed.Basis = basis(r.Removed.Assumed)
	return out
}

func (s Scale) maybe(l *length.Length) *api.Measure {
	if l == nil {
		return nil
	}
	return ptr(s.plan(*l))
}

func (s Scale) rowRoom(r fit.RowRoom) api.RowRoom {
	return api.RowRoom{Have: s.down(r.Have), Margin: s.down(r.Margin), Verdict: r.Verdict.String(), By: r.By}
}
