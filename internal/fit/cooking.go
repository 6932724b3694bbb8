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

// above the cooking surface: one thing that can burn.
type combustible struct {
	by, what  string
	underside length.Exact // above the datum
}

// overCooking checks what hangs over the cooking surface in the room as found
// and planned: wall cabinets, fillers, overheads.
func overCooking(k *kitchen.Kitchen) []finding.Finding {
	cook := k.Plan.Cooking
	if cook == nil {
		return nil
	}
	need := cookingNeed(cook)
	var out []finding.Finding
	for _, c := range combustibles(k, cookingArea(k)) {
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

func cookingNeed(cook *cabinet.Cooking) length.Length {
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

// cookingSeverity: the appliance's instructions bind everywhere, and so may the
// code where it applies or nobody said which applies. Where another code set
// holds, the number is only a guide.
func cookingSeverity(k *kitchen.Kitchen, cook *cabinet.Cooking) finding.Severity {
	if cook.Clearance == 0 && k.Room.CodeSet == survey.CodeNone {
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

// cookingArea is the floor area under the cooking surface.
func cookingArea(k *kitchen.Kitchen) cabinet.Patch {
	cook := k.Plan.Cooking
	area := cabinet.Patch{Wall: cook.Wall, From: cook.From, To: cook.To}
	for i := range k.Plan.Cabinets {
		c := &k.Plan.Cabinets[i]
		if c.Kind == cabinet.Base && c.Wall == cook.Wall && c.From < cook.To && cook.From < c.To {
			area.Far = max(area.Far, c.Depth)
		}
	}
	if area.Far == 0 {
		area.Far = cookingDepth
	}
	return area
}

// combustibles are the planned wall cabinets, the fillers and the overheads over
// an area. A filler of the wall row is taken to end where that row does.
func combustibles(k *kitchen.Kitchen, area cabinet.Patch) []combustible {
	var out []combustible
	here := viewFrom(k.Room, area.Wall)
	for i := range k.Plan.Cabinets {
		c := &k.Plan.Cabinets[i]
		for _, s := range here.sees(nil, c) {
			if c.Kind == cabinet.Wall && s.side != fromFacing && area.Overlaps(s.Patch) {
				out = append(out, combustible{c.Pointer, "cabinet", c.Underside.Exact()})
				break
			}
		}
	}
	row := k.System.WallUnderside + k.Plan.RowShift
	for i := range k.Plan.Fillers {
		f := &k.Plan.Fillers[i]
		if f.Wall == area.Wall && f.Kind == cabinet.Wall && !f.AnyKind && f.From < area.To && area.From < f.To && row > 0 {
			out = append(out, combustible{f.Pointer, "filler", row.Exact()})
		}
	}
	for _, o := range hangingOver(k, k.Found(), area) {
		out = append(out, combustible{o.overhead.Pointer, overheadWord(o.overhead.Kind), o.low})
	}
	return out
}

func overheadWord(k survey.OverheadKind) string {
	return [...]string{"soffit", "closed gap", "lowered ceiling", "beam", "duct box"}[k]
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
