package fill

import (
	"railhead/internal/length"
	"railhead/internal/mip"
)

// segments keeps a filler from filling a whole segment, and holes out of a row that is closed.
func (p *program) segments() {
	for from := 0; from <= p.steps; from++ {
		if !p.begins[from].bound {
			continue
		}
		to := from
		for !p.ends[to].bound {
			to++
		}
		all := &mip.Sum{}
		for q := from; q < to; q++ {
			all.Add(1, p.filler[q])
		}
		p.AtMost(all, int64(max(0, to-from-1)))
		if p.Closed {
			p.noHoles(from, to)
		}
		from = to
	}
}

// noHoles lets an open stretch of a segment only be at an open side.
func (p *program) noHoles(from, to int) {
	lefts, rights := map[int]*mip.Sum{}, map[int]*mip.Sum{}
	for q := from; q < to; q++ {
		lefts[q], rights[q] = &mip.Sum{}, &mip.Sum{}
		if p.free(q) && p.begins[from].side.Open {
			lefts[q].Plus(1, p.Binary(0))
		}
		if p.free(q) && p.ends[to].side.Open {
			rights[q].Plus(1, p.Binary(0))
		}
		p.Equals(new(mip.Sum).Add(1, lefts[q]).Add(1, rights[q]).Add(-1, p.open[q]), 0)
	}
	for q := from; q < to; q++ {
		left, right := &mip.Sum{}, &mip.Sum{}
		if q > from {
			left.Add(1, lefts[q]).Add(-1, lefts[q-1])
		}
		if q < to-1 {
			right.Add(1, rights[q]).Add(-1, rights[q+1])
		}
		p.AtMost(left, 0)
		p.AtMost(right, 0)
	}
}

// wholes has one cabinet stand over each stretch that asks for it, whose panels do not count.
func (p *program) wholes() {
	for _, s := range p.Whole {
		over := &mip.Sum{}
		for _, v := range p.cabinets {
			from, to := length.Length(v.from)*p.Grid, length.Length(v.to)*p.Grid
			if v.panels[0] {
				from += p.Panel
			}
			if v.panels[1] {
				to -= p.Panel
			}
			if from <= s.From && s.To <= to {
				over.Plus(1, v.is)
			}
		}
		for _, f := range p.Fixed {
			if f.At <= s.From && s.To <= f.At+f.Width {
				over.Constant++
			}
		}
		p.AtLeast(over, 1)
	}
}
