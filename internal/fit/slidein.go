package fit

import (
	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

// slideIn asks whether an upright carcass on its shortest legs gets to its place:
// under the ceiling and the overheads over its footprint, and under those over as
// much floor again in front of it.
func slideIn(k *kitchen.Kitchen, c *cabinet.Placed) []finding.Finding {
	w := wayIn{k: k, need: c.Height + shortestLeg(k.System)}
	for _, p := range c.Native(k.Room) {
		wall := &k.Room.Walls[p.Wall]
		w.under(leastBetween(wall.Ceiling, wall.Floor, p.From, p.To), wall.Pointer+"/ceiling", nil)
		front := p
		front.Near, front.Far = p.Far, 2*p.Far
		w.overheads(p, func(w *survey.Wall) level.Profile { return w.Floor })
		w.overheads(front, func(w *survey.Wall) level.Profile { return w.RoomFloor })
	}
	return w.findings
}

// wayIn collects what a carcass meets on its way.
type wayIn struct {
	k        *kitchen.Kitchen
	need     length.Length
	findings []finding.Finding
}

func (w *wayIn) overheads(area cabinet.Patch, floor func(*survey.Wall) level.Profile) {
	for _, over := range hangingOver(w.k, w.k.Found(), area) {
		wall := &w.k.Room.Walls[over.overhead.Wall]
		if s, ok := viewFrom(w.k.Room, wall.Index).area(over.area); ok {
			w.under(leastBetween(over.overhead.Underside, floor(wall), s.From, s.To), over.overhead.Pointer, over.overhead)
		}
	}
}

// under notes what leaves too little, or less than the fit gap to spare. What
// may be cut is the trims' business and need not be answered first.
func (w *wayIn) under(have length.Exact, by string, o *survey.Overhead) {
	if have.CmpLength(w.need+w.k.System.FitGap) >= 0 {
		return
	}
	f := finding.Finding{
		Code: "fit.standing.slide_in_tight", Severity: finding.AsCaution, Pointer: by,
		Need: finding.Up(w.need.Exact()), Have: finding.Down(have), Remedies: remedies(shorter, otherLegs),
	}
	if o != nil {
		f.Remedies = remedies(cutOverhead, shorter, otherLegs)
	}
	if have.CmpLength(w.need) < 0 {
		f.Code = "fit.standing.slide_in"
		if o == nil || o.MayCut != survey.CutYes {
			f.Severity = finding.AsStop
		}
	}
	w.findings = keepWorst(w.findings, f)
}
