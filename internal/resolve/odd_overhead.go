package resolve

import (
	"railhead/internal/finding"
	"railhead/internal/length"
	"railhead/internal/survey"
)

func (b *body) oddOverhead(w *wall, i int) {
	o := &w.Overheads[i]
	b.pointsOutside(o, w.in.Overheads[i].Thickness.Given())
	b.overlaps(w, i)
	b.oddEnds(o, w)
	b.oddInside(o, w)
	if o.Duct != nil && o.Duct.Diameter > min(o.Depth, o.To-o.From) {
		b.caution("survey.duct.wider_than_box", o.Pointer+"/duct/diameter")
		b.weigh(finding.Near(o.Duct.Diameter.Exact()), finding.Near(min(o.Depth, o.To-o.From).Exact()))
	}
}

// pointsOutside mentions levels that were read beyond the overhead's ends; they still count for its slope.
func (b *body) pointsOutside(o *survey.Overhead, hung bool) {
	if hung {
		return
	}
	for i, p := range o.Underside.Points() {
		if p.At < o.From || p.At > o.To {
			b.note("survey.profile.outside_overhead", item(o.Pointer, "underside", i)+"/at", size("at", p.At))
		}
	}
}

// overlaps mentions the earlier overheads of a wall that take up some of the same room: taking one down reveals the other.
func (b *body) overlaps(w *wall, i int) {
	o := &w.Overheads[i]
	for j := range i {
		p := &w.Overheads[j]
		if o.From < p.To && p.From < o.To && o.Out < p.Face() && p.Out < o.Face() {
			b.note("survey.overhead.overlaps", o.Pointer, finding.Word("other", p.Pointer),
				size("from", max(o.From, p.From)), size("to", min(o.To, p.To)))
		}
	}
}

// oddEnds mentions ends that the walls contradict.
func (b *body) oddEnds(o *survey.Overhead, w *wall) {
	in := w.in.Overheads[o.Index].Ends
	if in == nil {
		return
	}
	if in.Left != "" {
		b.oddEnd(o.Left, b.leftEnd(o), o.From == 0, w.Prev >= 0, o.Pointer+"/ends/left")
	}
	if in.Right != "" {
		b.oddEnd(o.Right, b.rightEnd(o), o.To == w.Length, w.Next >= 0, o.Pointer+"/ends/right")
	}
}

func (b *body) oddEnd(said, found survey.EndKind, atWall, joined bool, pointer string) {
	switch {
	case said == survey.EndWall && !atWall:
		b.caution("survey.ends.no_wall", pointer)
	case said == survey.EndCorner && found != survey.EndCorner && !(atWall && joined):
		b.caution("survey.ends.no_corner", pointer)
	case (said == survey.EndOpen || said == survey.EndCabinet) && atWall:
		b.caution("survey.ends.at_wall", pointer)
	}
}

// oddInside mentions contents that contradict the overhead, or that nobody can have seen.
func (b *body) oddInside(o *survey.Overhead, w *wall) {
	if o.Inside.Looked == survey.NotLooked && len(o.Inside.Seen)+len(o.Inside.Services) > 0 {
		b.caution("survey.inside.not_looked", o.Inside.Pointer+"/looked")
	}
	for i := range o.Inside.Services {
		s := &o.Inside.Services[i]
		under := o.Underside.Lowest(s.From, s.To).Value
		over := w.ceiling.Highest(s.From, s.To).Value
		if low := s.Underside.Value.Sub(under); low.Sign() < 0 {
			b.oddService("survey.service.under_overhead", s.Pointer, low.Neg())
		}
		if high := s.Underside.Value.Sub(over); high.Sign() > 0 {
			b.oddService("survey.service.above_ceiling", s.Pointer, high)
		}
	}
}

func (b *body) oddService(code, pointer string, by length.Exact) {
	b.caution(code, pointer+"/underside", finding.Size("by", finding.Up(by)))
}
