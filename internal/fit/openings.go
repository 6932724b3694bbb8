package fit

import (
	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// openings holds a patch against the windows, doors and passages of its wall,
// each with the casing around it, and against those of a joined wall where the
// cabinet's flank touches that wall.
func (b *beside) openings(p cabinet.Patch) {
	for i := range b.k.Room.Walls[p.Wall].Openings {
		b.opening(p, &b.k.Room.Walls[p.Wall].Openings[i])
	}
	for _, q := range p.Joined(b.k.Room) {
		if q.Near > 0 {
			continue
		}
		for i := range b.k.Room.Walls[q.Wall].Openings {
			b.openingBeside(q, &b.k.Room.Walls[q.Wall].Openings[i])
		}
	}
}

func (b *beside) opening(p cabinet.Patch, o *survey.Opening) {
	from, to := o.From-o.Casing, o.To+o.Casing
	low, high := Cased(b.k, p.Wall, o)
	if high.CmpLength(lowest(b.c)) <= 0 {
		return
	}
	if low.CmpLength(b.c.Top) < 0 {
		b.along(o.Pointer, p, from, to, finding.Finding{
			Code: "fit.opening.covered", Params: []finding.Param{finding.Word("kind", openingWord(o.Kind))},
			Remedies: remedies(moveCabinet, narrower, changeCasing),
		})
		return
	}
	b.counter(p, o, low)
}

// openingBeside is an opening of the wall that the cabinet's flank lies against:
// what of it the depth covers.
func (b *beside) openingBeside(q cabinet.Patch, o *survey.Opening) {
	from, to, shared := common(q.From, q.To, o.From-o.Casing, o.To+o.Casing)
	low, high := Cased(b.k, q.Wall, o)
	if !shared || high.CmpLength(lowest(b.c)) <= 0 || low.CmpLength(b.c.Top) >= 0 {
		return
	}
	depth := q.To - q.From
	over := q
	over.From, over.To = from, to
	b.clash(o.Pointer, Out, over, invades(q, o.From-o.Casing, o.To+o.Casing), to-from, finding.Finding{
		Code: "fit.opening.covered", Params: []finding.Param{finding.Word("kind", openingWord(o.Kind))},
		Need: finding.Up(depth.Exact()), Have: finding.Down((depth - (to - from)).Exact()),
		Remedies: remedies(shallower, moveCabinet, changeCasing),
	})
}

// Cased is the height of a wall's opening with its casing, above the datum. Casing
// runs on all sides but the floor's.
func Cased(k *kitchen.Kitchen, wall int, o *survey.Opening) (low, high length.Exact) {
	low, high = Underfoot.Exact(), k.Above(wall, o.Head.Value).Plus(o.Casing)
	if !o.ToFloor {
		low = k.Above(wall, o.Sill.Value).Minus(o.Casing)
	}
	return low, high
}

// counter minds a window over a base cabinet whose counter reaches above the
// casing's lower edge: the cabinet is clear, the counter is not.
func (b *beside) counter(p cabinet.Patch, o *survey.Opening, low length.Exact) {
	from, _, shared := common(p.From, p.To, o.From-o.Casing, o.To+o.Casing)
	counter := b.k.Plan.Counter
	if !shared || b.c.Kind != cabinet.Base || low.CmpLength(counter) >= 0 {
		return
	}
	b.findings = append(b.findings, finding.Finding{
		Code: "fit.opening.counter", Severity: finding.AsCaution, Pointer: o.Pointer,
		Params: []finding.Param{finding.Word("kind", openingWord(o.Kind)), place(from)},
		Need:   finding.Up(counter.Exact()), Have: finding.Down(low),
		Remedies: remedies(lowerCounter, changeCasing),
	})
}

func openingWord(k survey.OpeningKind) string {
	return [...]string{"window", "door", "passage", "hatch"}[k]
}
