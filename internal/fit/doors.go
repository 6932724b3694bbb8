package fit

import (
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// doors holds a cabinet's front against what hangs before and beside it, and
// against what stands in front of it. The top of the front is the cabinet's top.
func doors(k *kitchen.Kitchen, c *cabinet.Placed, sky kitchen.Sky) []finding.Finding {
	if c.Door != nil && c.Door.Opens == cabinet.OpensNot {
		return nil
	}
	d := &inFront{k: k, c: c, sky: sky}
	for _, p := range c.Native(k.Room) {
		d.lip(p)
	}
	if f, ok := frontOf(k.Room, c); ok {
		d.low(f)
		d.beside(f, false)
		d.beside(f, true)
		d.blocked(f)
		d.rise(f)
	}
	return d.findings
}

// inFront collects what a front meets.
type inFront struct {
	k        *kitchen.Kitchen
	c        *cabinet.Placed
	sky      kitchen.Sky
	findings []finding.Finding
}

// ordinaryFront is a front's thickness where nobody described one: 20 mm, or
// 3/4 in (common practice, no source).
const ordinaryFront = 20 * length.Millimetre

// lip minds overheads that reach further out than the cabinet: the front moves
// under their lip. It needs the fit gap to swing and to be adjusted; a lip below
// its top stops it.
func (d *inFront) lip(p cabinet.Patch) {
	thickness := ordinaryFront
	if d.c.Door != nil {
		thickness = max(d.c.Door.Thickness, 1)
	}
	if d.c.Door != nil && d.c.Door.Opens == cabinet.OpensUp {
		return // its rise asks for more
	}
	p.Near, p.Far = p.Far, p.Far+thickness
	for _, o := range hangingOver(d.k, d.sky, p) {
		have := o.low.Minus(d.c.Top)
		if have.CmpLength(d.k.System.FitGap) >= 0 {
			continue
		}
		d.add(finding.Finding{
			Code: "fit.door.under_lip", Severity: lipSeverity(o.overhead, have), Pointer: o.overhead.Pointer,
			Params: []finding.Param{place(o.at)},
			Need:   finding.Up(d.k.System.FitGap.Exact()), Have: finding.Down(have),
			Remedies: remedies(lowerRow, cutOverhead, shorter),
		})
	}
}

// lipSeverity: a front that cannot open must be answered, unless the overhead
// may be cut, which the trims then deal with.
func lipSeverity(o *survey.Overhead, have length.Exact) finding.Severity {
	if have.Sign() < 0 && o.MayCut != survey.CutYes {
		return finding.AsStop
	}
	return finding.AsCaution
}

func lowestOf(over []hungOver) (hungOver, bool) {
	if len(over) == 0 {
		return hungOver{}, false
	}
	out := over[0]
	for _, o := range over[1:] {
		if o.low.Less(out.low) {
			out = o
		}
	}
	return out, true
}

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

// blocked minds what stands in a front's sweep: the run around a corner, a wall
// opposite, the run along it with its closed fronts.
func (d *inFront) blocked(f front) {
	have, by, sure := f.leaf, "", true
	keep := func(near length.Length, pointer string, known bool) {
		if free := max(near-f.patch.Far, 0); free < have || free == have && known && !sure {
			have, by, sure = free, pointer, known
		}
	}
	here := viewFrom(d.k.Room, f.patch.Wall)
	for _, w := range here.facing {
		keep(w.distance, d.k.Room.Walls[w.wall].Pointer, true)
	}
	for _, s := range here.others(d.k, d.c) {
		near := s.Near
		if s.side == fromFacing {
			thickness, pull := f.closed(s.c)
			near -= thickness + pull
		}
		if _, _, any := common(f.patch.From, f.patch.To, s.From, s.To); any && s.Near >= f.patch.Far {
			keep(near, s.c.Pointer, true)
		}
	}
	d.unmapped(f, here, keep)
	if by == "" {
		return
	}
	severity := opens(f, have)
	if !sure {
		severity = finding.AsCaution
	}
	d.add(finding.Finding{
		Code: "fit.door.blocked", Severity: severity, Pointer: by,
		Need: finding.Up(f.leaf.Exact()), Have: finding.Down(have.Exact()),
		Remedies: remedies(otherFront, narrower, moveCabinet),
	})
}

// unmapped keeps the cabinets of walls that are only known to lie opposite: where
// along them the two face each other nobody surveyed, so it may be anywhere.
func (d *inFront) unmapped(f front, here view, keep func(length.Length, string, bool)) {
	for _, w := range here.facing {
		if w.mapped {
			continue
		}
		for i := range d.k.Plan.Cabinets {
			o := &d.k.Plan.Cabinets[i]
			if o.Wall == w.wall && levelled(d.k, d.c, o) {
				thickness, pull := f.closed(o)
				keep(w.distance-o.Depth-thickness-pull, o.Pointer, false)
			}
		}
	}
}

// add keeps one finding of a kind about one thing: the one with the least to
// spare.
func (d *inFront) add(f finding.Finding) { d.findings = keepWorst(d.findings, f) }
