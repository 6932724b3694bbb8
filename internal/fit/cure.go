package fit

import (
	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// cure finds the cheapest thing that helps each cabinet: lowering the row before
// any cut, a trim before opening, opening a part before taking down.
func cure(k *kitchen.Kitchen, results []Result) {
	allowed, _ := mayLower(k)
	lower := LowerRow(k, results)
	for i := range results {
		r := &results[i]
		need := lowering(k, r)
		switch {
		case r.Verdict <= Snug:
			r.Cure = CureNone
		case need > 0 && need <= allowed:
			r.Cure, r.LowerBy = CureLowerRow, lower.By
		case r.Verdict == Blocked:
			r.Cure = CureNone
		default:
			r.Cure = cutting(k, results, r)
		}
	}
}

// cutting is the worst cut that a cabinet needs among the overheads in its way.
func cutting(k *kitchen.Kitchen, all []Result, r *Result) Cure {
	out := CureTrim
	for _, l := range r.Limits {
		if l.Verdict == NeedsTrim && l.Overhead != nil {
			out = max(out, cutOf(k, all, r.Cabinet, l.Overhead))
		}
	}
	return out
}

func cutOf(k *kitchen.Kitchen, all []Result, c *cabinet.Placed, o *survey.Overhead) Cure {
	if o.MayCut == survey.CutAsk {
		return CureAsk
	}
	from, to := InWay(all, o)
	if Stub(k, o, c.Top+headroom(k, c), from, to).CmpLength(o.Make.LeastStub) >= 0 {
		return CureTrim
	}
	if max(from-o.From, o.To-to) >= o.Make.LeastRun {
		return CureOpen
	}
	return CureRemove
}

func headroom(k *kitchen.Kitchen, c *cabinet.Placed) length.Length {
	need, _ := k.System.Headroom(c.Kind)
	return need
}

// InWay is the stretch of an overhead from the first to the last cabinet that
// overlaps it as found; empty (from = to) where none does.
func InWay(found []Result, o *survey.Overhead) (from, to length.Length) {
	for i := range found {
		for _, l := range found[i].Limits {
			if l.Overhead != o || l.Margin.Sign() >= 0 {
				continue
			}
			f, t := max(l.From, o.From), min(l.To, o.To)
			if from == to {
				from, to = f, t
			}
			from, to = min(from, f), max(to, t)
		}
	}
	return from, to
}

// Stub is the least height of an overhead that a cut at a height above the datum
// leaves hanging over a stretch; a stub under its LeastStub cannot be built.
func Stub(k *kitchen.Kitchen, o *survey.Overhead, cut, from, to length.Length) length.Exact {
	return k.Above(o.Wall, k.Room.CeilingOver(o).Lowest(from, to).Value).Minus(cut)
}
