package takeoff

import (
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

func (m *measuring) figures() kitchen.Figures { return m.k.Prices.Figures }

// spacing of an overhead's framing.
func (m *measuring) spacing(o *survey.Overhead) length.Length {
	if o.Make.Spacing > 0 {
		return o.Make.Spacing
	}
	return m.figures().Length(kitchen.Spacing)
}

// density of an overhead's lining; what nobody named is taken to be gypsum board.
func density(o *survey.Overhead) kitchen.Figure {
	switch o.Finish {
	case "plaster":
		return kitchen.PlasterDensity
	case "wood":
		return kitchen.WoodDensity
	case "tile":
		return kitchen.TileDensity
	case "metal":
		return kitchen.MetalDensity
	default:
		return kitchen.GypsumDensity
	}
}

// Assumptions are the figures that the request does not give, each with the member
// that would.
func Assumptions(given kitchen.Figures) []finding.Assumption {
	var out []finding.Assumption
	for _, f := range kitchen.AllFigures() {
		if _, ok := given[f]; ok {
			continue
		}
		value := finding.Word("value", given.Of(f).Decimal())
		if f.Unit() == "m" {
			value = finding.Size("value", finding.Near(given.Length(f).Exact()))
		}
		out = append(out, finding.Assumption{Code: "assume.takeoff." + f.String(), Value: value, Override: "/money/figures/" + f.String()})
	}
	return out
}
