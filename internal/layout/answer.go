package layout

import (
	"railhead/internal/cabinet"
	"railhead/internal/fill"
	"railhead/internal/length"
	"railhead/internal/money"
	"railhead/internal/survey"
)

// account adds up what an answer is worth, part by part.
type account [PartNames]Part

func (a *account) add(n PartName, q money.Quantity, worth money.Amount) {
	a[n].Quantity, a[n].Worth = a[n].Quantity+q, a[n].Worth.Plus(worth)
}

func (a *account) parts() (out []Part, sum money.Amount) {
	for n := range a {
		if a[n].Quantity != 0 || a[n].Worth != 0 {
			a[n].Name = PartName(n)
			out, sum = append(out, a[n]), sum.Plus(a[n].Worth)
		}
	}
	return out, sum
}

func (a *account) cabinet(w worth) {
	a.add(Storage, w.litres, w.storage)
	a.add(Cabinets, money.One, w.price.Neg())
	if w.counter != 0 {
		a.add(Counter, millimetres(w.run), w.counter)
	}
	if w.prefer != 0 {
		a.add(Preferred, money.One, w.prefer)
	}
}

// millimetres are a length as a quantity.
func millimetres(l length.Length) money.Quantity {
	return money.Quantity(money.Amount(l).Share(int64(money.One), int64(length.Millimetre)))
}

// answer turns what was found into cabinets in their places.
func (s *solver) answer(f *found) Answer {
	var a account
	var out Answer
	for w := range f.stand {
		for i := range f.stand[w] {
			s.tower(&out, &a, &f.stand[w][i])
		}
	}
	for _, w := range []*way{&f.base, &f.wall} {
		w.each(func(l *link) {
			if l.turn != nil {
				s.cornered(&out, &a, l.turn)
			}
			s.ran(&out, &a, &l.ran)
		})
	}
	out.Parts, out.Worth = a.parts()
	return out
}

func (s *solver) tower(out *Answer, a *account, t *standing) {
	switch {
	case t.side.From == t.side.To:
	case t.shows:
		out.Panels = append(out.Panels, Panel{len(out.Cabinets), t.right, t.cabinet.Wall, t.side})
		a.add(Panels, money.One, s.room.Filling.Weights.Panel.Neg())
	default:
		s.closing(out, a, cabinet.Filler{Kind: cabinet.Tall, Wall: t.cabinet.Wall, From: t.side.From, To: t.side.To})
	}
	out.Cabinets = append(out.Cabinets, t.cabinet)
	a.cabinet(t.worth)
}

func (s *solver) closing(out *Answer, a *account, c cabinet.Filler) {
	out.Fillers = append(out.Fillers, c)
	a.add(Fillers, money.One, s.room.Filling.Weights.Filler.Neg())
	a.add(FillerWidth, millimetres(c.To-c.From), perMM(s.room.Filling.Weights.FillerPerMM, c.To-c.From).Neg())
}

// standingWorth is what a tall cabinet is worth with what closes its side.
func (s *solver) standingWorth(t *standing) money.Amount {
	var a account
	var none Answer
	s.tower(&none, &a, t)
	_, sum := a.parts()
	return sum.Plus(s.toCeiling(s.rows[cabinet.Tall][t.cabinet.Wall], t.cabinet.Width(), t.cabinet.Height))
}

// ran adds one row. What closes it against a wall that ends between marks reaches up
// to the wall.
func (s *solver) ran(out *Answer, a *account, one *ran) {
	r, first := one.row, len(out.Cabinets)
	for _, p := range one.answer.Pieces {
		if p.Size == fill.Stays {
			continue
		}
		c := r.cabinet(p.At, p.Width, p.Height)
		out.Cabinets = append(out.Cabinets, c)
		a.cabinet(s.worthOf(&c))
	}
	for _, f := range one.answer.Fillers {
		if f.To == r.whole && one.ends.turnAt(true) == nil {
			f.To = r.Length
		}
		s.closing(out, a, cabinet.Filler{Kind: r.Kind, Wall: r.Wall, From: f.From, To: f.To})
	}
	for _, p := range one.answer.Panels {
		out.panel(first, r, p)
	}
	for _, o := range one.answer.Open {
		out.Open = append(out.Open, Open{r.Kind, r.Wall, survey.Span{From: o.From, To: o.To}})
	}
	for _, p := range one.answer.Parts {
		n, ok := partOfRun(p.Name)
		if ok && (n != LineMisses || r.Kind == cabinet.Wall) { // a base row that meets the wall row's joints gains nothing by itself
			quantity := money.Quantity(p.Count) * money.One
			if n == OpenWidth {
				quantity = millimetres(length.Length(p.Count) * r.grid)
			}
			a.add(n, quantity, p.Worth)
		}
	}
}

// cornered adds what turns a corner.
func (s *solver) cornered(out *Answer, a *account, c *corner) {
	if c.cabinet != nil {
		out.Cabinets = append(out.Cabinets, *c.cabinet)
		a.cabinet(c.worth)
	}
	if c.open != nil {
		out.Open = append(out.Open, *c.open)
		wide := c.open.To - c.open.From
		a.add(OpenWidth, millimetres(wide), perMM(s.room.Filling.Weights.OpenPerMM, wide).Neg())
	}
}

// panel finds the cabinet whose side a panel closes.
func (a *Answer) panel(first int, r *row, p fill.Span) {
	for i := first; i < len(a.Cabinets); i++ {
		c := &a.Cabinets[i]
		if c.From == p.To || c.To == p.From {
			a.Panels = append(a.Panels, Panel{i, c.To == p.From, r.Wall, survey.Span{From: p.From, To: p.To}})
			return
		}
	}
}

// partOfRun is what a part of a run is called here; false for those that are taken apart
// cabinet by cabinet and filler by filler.
func partOfRun(name string) (PartName, bool) {
	switch name {
	case fill.Panels:
		return Panels, true
	case fill.OpenWidth:
		return OpenWidth, true
	case fill.HeightChanges:
		return HeightChanges, true
	case fill.LineMisses:
		return LineMisses, true
	case fill.Pairs:
		return Equal, true
	default:
		return 0, false
	}
}
