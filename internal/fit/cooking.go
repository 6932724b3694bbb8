package fit

import (
	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// From a cooking surface up to what can burn: IRC M1901.1 asks for 30 in
// (762 mm), and 24 in (610 mm; 609.6 exactly) where that is protected; for gas
// the fuel gas code's G2447.5 says the same. The appliance's own instructions
// come first, in either direction.
const (
	unprotectedHeight = 30 * length.Inch
	protectedHeight   = 24 * length.Inch
)

// hoodHeightUsual is the least height of a hood over the cooking surface where
// its instructions are not given: 24 in, which IRC M1503.2.1 asks for over an
// open-top broiler only.
const hoodHeightUsual = 24 * length.Inch

// cookingDepth is how far from the wall a cooking surface reaches where no base
// cabinet says so: the depth of an ordinary counter (common practice, no source).
const cookingDepth = 600 * length.Millimetre

// overCooking checks what hangs over the cooking surface in the room as found
// and planned: wall cabinets, fillers, overheads.
func overCooking(k *kitchen.Kitchen) []finding.Finding {
	cook := k.Plan.Cooking
	if cook == nil {
		return nil
	}
	need := CookingNeed(cook)
	var out []finding.Finding
	for _, c := range combustibles(k, CookingArea(k)) {
		have := c.underside.Minus(cook.Surface)
		if have.CmpLength(need) >= 0 {
			continue
		}
		out = append(out, finding.Finding{
			Code: cookingCode(cook), Severity: cookingSeverity(k, cook), Pointer: c.by,
			Params: []finding.Param{finding.Word("what", c.what), finding.Word("energy", [...]string{"gas", "electric", "induction"}[cook.Energy])},
			Need:   finding.Up(need.Exact()), Have: finding.Down(have),
			Remedies: cookingRemedies(cook),
		})
	}
	return append(out, belowUsual(cook, need)...)
}

// CookingNeed is the least height from a cooking surface up to what can burn.
func CookingNeed(cook *cabinet.Cooking) length.Length {
	if cook.Clearance > 0 {
		return cook.Clearance
	}
	return usualHeight(cook)
}

func usualHeight(cook *cabinet.Cooking) length.Length {
	if cook.Hood != nil && cook.Hood.Protected {
		return protectedHeight
	}
	return unprotectedHeight
}

func cookingCode(cook *cabinet.Cooking) string {
	if cook.Clearance > 0 {
		return "fit.cooking.instructions"
	}
	return "fit.cooking.combustible"
}

// cookingSeverity: the appliance's instructions bind everywhere, and so does the
// code where it applies. Where another code set holds, or nobody said which, the
// number is a guide and local code decides.
func cookingSeverity(k *kitchen.Kitchen, cook *cabinet.Cooking) finding.Severity {
	if cook.Clearance == 0 && k.Room.CodeSet != survey.CodeUSIRC {
		return finding.AsCaution
	}
	return finding.AsStop
}

func cookingRemedies(cook *cabinet.Cooking) []finding.Remedy {
	if cook.Clearance == 0 && usualHeight(cook) == unprotectedHeight {
		return remedies(shorter, protect, moveCooking)
	}
	return remedies(shorter, moveCooking)
}

// belowUsual minds instructions that allow less than the codes usually do.
func belowUsual(cook *cabinet.Cooking, need length.Length) []finding.Finding {
	if usual := usualHeight(cook); need < usual {
		return []finding.Finding{{
			Code: "fit.cooking.below_usual", Severity: finding.AsCaution, Pointer: cook.Pointer + "/clearance",
			Need: finding.Up(usual.Exact()), Have: finding.Down(need.Exact()),
		}}
	}
	return nil
}

// hoodHeight checks the hood over the cooking surface; a downdraft has none.
func hoodHeight(k *kitchen.Kitchen) []finding.Finding {
	cook := k.Plan.Cooking
	if cook == nil || cook.Hood == nil || cook.Hood.Kind == cabinet.Downdraft || cook.Hood.Underside == 0 {
		return nil
	}
	code, severity, need := "fit.hood.too_low", finding.AsStop, cook.Hood.Clearance
	if need == 0 {
		code, severity, need = "fit.hood.low", finding.AsCaution, hoodHeightUsual
	}
	have := cook.Hood.Underside - cook.Surface
	if have >= need {
		return nil
	}
	return []finding.Finding{{
		Code: code, Severity: severity, Pointer: cook.Pointer + "/hood",
		Need: finding.Up(need.Exact()), Have: finding.Down(have.Exact()),
		Remedies: remedies(raiseHood, moveCooking),
	}}
}
