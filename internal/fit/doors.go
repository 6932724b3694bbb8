package fit

import (
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
	p.Near, p.Far = p.Far, p.Far+FrontDepth(d.c.Door)
	if p.Near == p.Far {
		return
	}
	for _, o := range hangingOver(d.k, d.sky, p) {
		have := o.low.Minus(d.c.Top)
		if have.CmpLength(d.k.System.FitGap) >= 0 {
			continue
		}
		d.add(finding.Finding{
			Code: codeUnderLip, Severity: lipSeverity(o.overhead, have), Pointer: o.overhead.Pointer,
			Params: []finding.Param{place(o.at)},
			Need:   finding.Up(d.k.System.FitGap.Exact()), Have: finding.Down(have),
			Remedies: remedies(lowerRow, cutOverhead, shorter),
		})
	}
}

// FrontDepth is how deep before a cabinet its front moves where it asks for the fit
// gap above it; 0 for a lift-up front, whose rise asks for more, and for none.
func FrontDepth(d *cabinet.Door) length.Length {
	switch {
	case d == nil:
		return ordinaryFront
	case d.Opens == cabinet.OpensNot || d.Opens == cabinet.OpensUp:
		return 0
	default:
		return max(d.Thickness, 1)
	}
}

const codeUnderLip = "fit.door.under_lip"

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

// add keeps one finding of a kind about one thing: the one with the least to
// spare.
func (d *inFront) add(f finding.Finding) { d.findings = keepWorst(d.findings, f) }
