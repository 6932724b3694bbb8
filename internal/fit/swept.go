package fit

import (
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/length"
)

// low minds overheads that begin in front of the closed front, within its
// sweep, and hang lower than its top: the leaf opens as far as they let it.
func (d *inFront) low(f front) {
	var near *hungOver
	for _, o := range hangingOver(d.k, d.sky, f.sweep()) {
		if o.low.CmpLength(d.c.Top) < 0 && o.area.Near >= f.face() && (near == nil || o.area.Near < near.area.Near) {
			near = &o
		}
	}
	if near == nil {
		return
	}
	have := near.area.Near - f.patch.Far
	d.add(finding.Finding{
		Code: "fit.door.low_overhead", Severity: opens(f, have), Pointer: near.overhead.Pointer,
		Params: []finding.Param{place(near.at)},
		Need:   finding.Up(f.leaf.Exact()), Have: finding.Down(have.Exact()),
		Remedies: remedies(otherFront, narrower, shorter, cutOverhead),
	})
}

// opens weighs how far a front opens: less than half of what it should is no use.
func opens(f front, have length.Length) finding.Severity {
	if 2*have < f.leaf {
		return finding.AsStop
	}
	return finding.AsCaution
}

// beside minds overheads next to the cabinet that stand out further than its
// closed front and hang lower than its top, such as a duct box or the soffit
// over a lower neighbour: a leaf hinged there opens to about 90° at most. What
// also hangs over or before the front itself is told there.
func (d *inFront) beside(f front, right bool) {
	if !f.hinges(right) || f.leaf <= f.thickness {
		return
	}
	before := hangingOver(d.k, d.sky, f.sweep())
	var worst *tight
	for _, o := range hangingOver(d.k, d.sky, besideSweep(f, right)) {
		if slices.ContainsFunc(before, func(b hungOver) bool { return b.overhead == o.overhead }) {
			continue
		}
		have, need := gapTo(f.patch, right, o.area.From, o.area.To), f.aside(o.area.Far)
		if o.low.CmpLength(d.c.Top) >= 0 || have >= need {
			continue
		}
		t := tight{"fit.door.beside_overhead", o.overhead.Pointer, need, have}
		if worst == nil || t.need-t.have > worst.need-worst.have {
			worst = &t
		}
	}
	if worst != nil {
		d.add(worst.finding(f, right))
	}
}

// besideSweep is the floor area next to a front's sweep that an open leaf and
// its pull take up, beyond the face of the closed fronts.
func besideSweep(f front, right bool) cabinet.Patch {
	p := f.sweep()
	p.Near = f.face()
	if room := f.thickness + f.pull; right {
		p.From, p.To = p.To, p.To+room
	} else {
		p.From, p.To = p.From-room, p.From
	}
	return p
}
