package report

import (
	"railhead/api"
	"railhead/internal/cabinet"
	"railhead/internal/length"
)

// SystemSummary writes a built-in's name and where its sizes come from.
func SystemSummary(b cabinet.BuiltInSystem) api.SystemSummary {
	hung := "strips"
	if b.System.Rail != nil {
		hung = "rail"
	}
	return api.SystemSummary{ID: b.ID, Says: b.Says, Hung: hung, Source: b.Source}
}

// System writes a built-in in the form that a request takes, so that it can be
// pasted, changed and sent.
func System(b cabinet.BuiltInSystem) api.InlineSystem {
	s, w := &b.System, Scale{Unit: b.Units}
	out := api.InlineSystem{
		Units: b.Units.String(), Legs: w.requestLength(s.Legs), FitGap: w.requestLength(s.FitGap),
		SideClearance: w.requestLength(s.SideClearance), Rail: w.rail(s.Rail), Mass: mass(b.Mass),
	}
	if t := s.LegTravel; t != nil {
		out.LegTravel = &api.LegTravel{Up: w.requestLength(t.Up), Down: w.requestLength(t.Down)}
	}
	if z := s.Wall; len(z.Heights) > 0 {
		out.Wall = &api.WallSizes{
			Heights: w.lengths(z.Heights), Widths: w.lengths(z.Widths), Depths: w.lengths(z.Depths), Corners: w.cornerSizes(z.Corners),
			Underside: w.requestLength(s.WallUnderside),
		}
	}
	if z := s.Tall; len(z.Heights) > 0 {
		out.Tall = &api.TallSizes{
			Heights: w.lengths(z.Heights), Widths: w.lengths(z.Widths), Depths: w.lengths(z.Depths), Corners: w.cornerSizes(z.Corners),
		}
	}
	if z := s.Base; len(z.Heights) > 0 {
		out.Base = &api.BaseSizes{
			Heights: w.lengths(z.Heights), Widths: w.lengths(z.Widths), Depths: w.lengths(z.Depths), Corners: w.cornerSizes(z.Corners),
			Counter: w.requestLength(s.Counter),
		}
	}
	return out
}

func (s Scale) rail(r *cabinet.Rail) *api.RailSystem {
	if r == nil {
		return nil
	}
	return &api.RailSystem{
		Drop: s.requestLength(r.Drop), Profile: s.requestLength(r.Profile), Stock: s.lengths(r.Stock), Kerf: s.requestLength(r.Kerf),
		HangerUp: s.requestLength(r.HangerUp), HangerDown: s.requestLength(r.HangerDown), Lift: s.requestLength(r.Lift),
		EndInset: s.requestLength(r.EndInset), LongestSpan: s.requestLength(r.LongestSpan),
	}
}

func (s Scale) lengths(in []length.Length) []api.Length { return each(in, s.requestLength) }

func (s Scale) cornerSizes(in []cabinet.CornerSize) []api.CornerSize {
	return each(in, func(c cabinet.CornerSize) api.CornerSize {
		out := api.CornerSize{Shape: c.Shape.String(), Width: s.requestLength(c.Width)}
		if c.Shape != cabinet.CornerBlind {
			out.OtherWidth = s.requestLength(c.OtherWidth)
		}
		return out
	})
}

func mass(m cabinet.MassPerArea) *api.MassPerArea {
	if m == (cabinet.MassPerArea{}) {
		return nil
	}
	amount := func(text string) api.Amount { return api.Amount{Text: text} }
	return &api.MassPerArea{WallPerM2Front: amount(m.Wall), TallPerM2Front: amount(m.Tall), BasePerM2Front: amount(m.Base)}
}
