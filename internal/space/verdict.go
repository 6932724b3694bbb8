package space

import (
	"railhead/internal/fit"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// Verdict is what package fit says of a cabinet of the row over a stretch, for the
// room as found: the worst of what is beside and above it. Soft boxes and limits
// have no say in it.
func (r *Row) Verdict(from, to length.Length, at Levels) fit.Verdict {
	feet, out := r.feet(at), fit.Fits
	for i := range r.Boxes {
		if b := &r.Boxes[i]; !b.Soft && b.Of(from, to) && b.meets(feet, at.Top) {
			return fit.Blocked
		}
	}
	for i := range r.Limits {
		if l := &r.Limits[i]; !l.Soft && l.Of(from, to) {
			out = max(out, r.under(l, from, to, at.Top))
		}
	}
	return out
}

func (r *Row) under(l *Limit, from, to, top length.Length) fit.Verdict {
	margin := l.Height(r.k, from, to).Minus(top)
	switch {
	case margin.CmpLength(r.k.System.FitGap) >= 0:
		return fit.Fits
	case margin.Sign() >= 0:
		return fit.Snug
	case l.Overhead != nil && l.Overhead.MayCut != survey.CutNo:
		return fit.NeedsTrim
	default:
		return fit.Blocked
	}
}

// Most is the greatest height above the datum that a cabinet over a stretch may
// end at when it begins where its row does, with what it spares left open above
// it and with all that soft boxes and limits ask for. By is what sets it, empty
// where nothing does; false where nothing may stand there at all.
func (r *Row) Most(from, to length.Length) (top length.Exact, by string, ok bool) {
	feet := r.feet(r.Levels(0))
	top = length.Max.Exact()
	lower := func(to length.Exact, what string) {
		if to.Less(top) {
			top, by = to, what
		}
	}
	for i := range r.Limits {
		if l := &r.Limits[i]; l.Of(from, to) {
			lower(l.Height(r.k, from, to).Minus(l.spare), l.By)
		}
	}
	for i := range r.Boxes {
		if b := &r.Boxes[i]; b.Of(from, to) && b.High.CmpLength(feet) > 0 {
			lower(b.Low, b.By)
		}
	}
	return top, by, top.CmpLength(r.Low) > 0
}
