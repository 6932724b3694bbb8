package fit

import (
	"railhead/internal/cabinet"
	"railhead/internal/finding"
)

// rise holds a lift-up front against the ceiling and whatever hangs over it.
func (d *inFront) rise(f front) {
	if d.c.Door.Opens != cabinet.OpensUp {
		return
	}
	p := f.patch
	ceiling := d.k.Room.Walls[p.Wall].Ceiling.Lowest(p.From, p.To)
	have, at, by := d.k.Above(p.Wall, ceiling.Value), ceiling.At, d.k.Room.Walls[p.Wall].Pointer+"/ceiling"
	p.Near, p.Far = p.Far, p.Far+d.c.Height // it swings out by up to its own height
	if low, ok := lowestOf(hangingOver(d.k, d.sky, p)); ok && low.low.Less(have) {
		have, at, by = low.low, low.at, low.overhead.Pointer
	}
	have = have.Minus(d.c.Top)
	switch rise := d.c.Door.Rise; {
	case rise > 0 && have.CmpLength(rise) < 0:
		d.add(finding.Finding{
			Code: "fit.door.rise", Severity: finding.AsStop, Pointer: by, Params: []finding.Param{place(at)},
			Need: finding.Up(rise.Exact()), Have: finding.Down(have),
			Remedies: remedies(otherFront, lowerRow, shorter),
		})
	case rise == 0 && have.CmpLength(d.c.Height) < 0:
		d.add(finding.Finding{
			Code: "fit.door.rise_unknown", Severity: finding.AsNote, Pointer: d.c.Pointer + "/door", Params: []finding.Param{place(at)},
			Have: finding.Down(have),
		})
	}
}
