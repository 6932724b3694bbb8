package decide

import (
	"math/big"
	"slices"

	"railhead/internal/belief"
	"railhead/internal/cabinet"
	"railhead/internal/estimate"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/money"
	"railhead/internal/survey"
)

// Gain is one part of what an option is worth to the client: a quantity at a
// rate, negative for a loss.
type Gain struct {
	Code     string
	Quantity money.Quantity
	Unit     string
	Rate     money.Amount // of one unit
	exact    money.Amount // what a quantity in percent comes to, since that is told rounded
}

// Worth is the quantity at its rate.
func (g Gain) Worth() money.Amount {
	if g.Unit == percent {
		return g.exact
	}
	return g.Rate.Times(g.Quantity)
}

// percent is the unit of risks, a chance at what is then lost, and of shares of the run.
const percent = "%"

func riskOf(code string, chance belief.Chance, lost, expected money.Amount) Gain {
	hundredths := money.Quantity(money.Amount(chance).Share(100*int64(money.One), int64(belief.Certain)))
	return Gain{Code: code, Quantity: hundredths, Unit: percent, Rate: lost.Share(1, 100), exact: expected}
}

// What an option may be worth.
const (
	gainStorage   = "gain.storage.litres"
	gainToCeiling = "gain.row.to_ceiling"
	gainShorter   = "gain.plan.shorter"
	gainOpenGap   = "gain.gap.left_open"
	gainStray     = "gain.overhead.over_nothing"
	gainEvenLine  = "gain.row.even_line"
	gainShared    = "gain.cabinet.shared"
	gainMisfit    = "gain.risk.row_does_not_fit"
	gainStopped   = "gain.risk.immovable"
)

// gained is how much of something an option gains, whatever it is worth.
type gained struct {
	code     string
	quantity money.Quantity
	width    length.Length // of the run that goes up to the ceiling, in place of a quantity
}

// values are what things are worth under one rate book.
type values struct {
	kitchen.Worth
	openGap, stray money.Amount // for each metre
	run            length.Length
}

func valuesOf(run length.Length, w kitchen.Worth, b *estimate.Book) values {
	return values{Worth: w, openGap: b.Rate("worth.open_gap").Mean(), stray: b.Rate("worth.stray_overhead").Mean(), run: run}
}

// runOf is the length of all wall and tall cabinets of the plan.
func runOf(k *kitchen.Kitchen) length.Length {
	var run length.Length
	for i := range k.Plan.Cabinets {
		if c := &k.Plan.Cabinets[i]; c.Kind != cabinet.Base {
			run += c.Width()
		}
	}
	return run
}

// worth is what gains come to.
func (v *values) worth(in []gained) money.Amount {
	var out money.Amount
	for i := range in {
		if g, counts := v.gain(&in[i]); counts {
			out = out.Plus(g.Worth())
		}
	}
	return out
}

// gains are the gains that count, with their rates. Shorter cabinets cost the
// client the change of plan only where the request puts a price on that.
func (v *values) gains(in []gained) []Gain {
	var out []Gain
	for i := range in {
		if g, counts := v.gain(&in[i]); counts {
			out = append(out, g)
		}
	}
	return out
}

func (v *values) gain(g *gained) (Gain, bool) {
	switch g.code {
	case gainStorage:
		return Gain{Code: g.code, Quantity: g.quantity, Unit: "l", Rate: v.Litre.Amount}, true
	case gainToCeiling:
		return Gain{
			Code: g.code, Quantity: share(g.width, v.run), Unit: percent, Rate: v.ToCeiling.Share(1, 100),
			exact: v.ToCeiling.Share(int64(g.width), int64(v.run)),
		}, v.ToCeiling.Amount != 0
	case gainShorter:
		if v.Shorter == nil {
			return Gain{}, false
		}
		return Gain{Code: g.code, Quantity: g.quantity, Unit: "1", Rate: v.Shorter.Amount}, true
	case gainOpenGap:
		return Gain{Code: g.code, Quantity: g.quantity, Unit: "m", Rate: v.openGap}, true
	default:
		return Gain{Code: g.code, Quantity: g.quantity, Unit: "m", Rate: v.stray}, true
	}
}

// share is a part in percent.
func share(part, whole length.Length) money.Quantity {
	return money.Quantity(money.Amount(100*money.One).Share(int64(part), int64(whole)))
}

// gained is what an option of a group gains once it is done as meant; swaps are
// the cabinets that it alone exchanges.
func (m *matter) gained(o kitchen.Option, swaps []cabinet.Swap) []gained {
	out := gainedBy(swaps, o == kitchen.RemoveTaller && m.reachesCeiling())
	if wide := m.plannedUp(o); wide > 0 {
		out = append(out, gained{code: gainToCeiling, width: wide})
	}
	if gap := m.openGap(o); gap > 0 {
		out = append(out, gained{code: gainOpenGap, quantity: -metres(gap)})
	}
	if stray := m.stray(o); stray > 0 {
		out = append(out, gained{code: gainStray, quantity: -metres(stray)})
	}
	return out
}

// plannedUp is the width of the cabinets that are planned up to the ceiling where the
// group is in their way, and that an option lets go there: it leaves nothing over them
// but a gap that is too narrow to stay open.
func (m *matter) plannedUp(o kitchen.Option) (out length.Length) {
	if o == kitchen.Keep || o == kitchen.Trim || o == kitchen.RemoveTaller {
		return 0
	}
	seen := map[*cabinet.Placed]bool{}
	for _, r := range m.under {
		in := slices.ContainsFunc(m.overlaps, func(l overlap) bool { return l.cabinet == r.Cabinet })
		if !in || seen[r.Cabinet] {
			continue
		}
		seen[r.Cabinet] = true
		low, _ := m.roomWithout(r, m.only())
		narrow := low.value.Minus(r.Cabinet.Top).CmpLength(m.k.Prices.Figures.Length(kitchen.NarrowGap)) < 0
		if narrow && !m.isOverhead(low.by) {
			out += r.Cabinet.Width()
		}
	}
	return out
}

// isOverhead reports whether a pointer is an overhead's own.
func (m *matter) isOverhead(by string) bool {
	return slices.ContainsFunc(m.k.Overheads(), func(o *survey.Overhead) bool { return o.Pointer == by })
}

// reachesCeiling reports whether the taller row goes up to the ceiling: the gap that
// it leaves is narrow enough to be closed.
func (m *matter) reachesCeiling() bool {
	t := &m.taller
	return t.row != nil && t.have.Minus(t.need).CmpLength(m.k.Prices.Figures.Length(kitchen.NarrowGap)) < 0
}

// gainedBy is what exchanged cabinets gain: the storage, and their share of the run
// that goes to the ceiling, by width.
func gainedBy(swaps []cabinet.Swap, toCeiling bool) []gained {
	if len(swaps) == 0 {
		return nil
	}
	litres, wide, shorter := new(big.Int), length.Length(0), money.Quantity(0)
	for _, s := range swaps {
		litres.Add(litres, s.Cabinet.Volume(s.Height-s.Cabinet.Height))
		wide += s.Cabinet.Width()
		if s.Height < s.Cabinet.Height {
			shorter += money.One
		}
	}
	out := []gained{{code: gainStorage, quantity: cabinet.Litres(litres)}}
	if toCeiling {
		out = append(out, gained{code: gainToCeiling, width: wide})
	}
	if shorter > 0 {
		out = append(out, gained{code: gainShorter, quantity: -shorter})
	}
	return out
}

// openGap is the length over cabinets along which an option leaves a gap that is
// too narrow to clean: such a gap only gathers dust (common practice, no source).
func (m *matter) openGap(o kitchen.Option) length.Length {
	leaves := o == kitchen.RemoveOpen || o == kitchen.Move || o == kitchen.OpenPart
	if !leaves || !m.leavesNarrowGap() {
		return 0
	}
	if o != kitchen.OpenPart {
		return m.standsOver().new
	}
	var out length.Length
	for i := range m.opened {
		out += m.opened[i].To - m.opened[i].From
	}
	return out
}

// stray is the length of soffit that an option leaves hanging over nothing, where
// it looks lost (common practice, no source). Beams and duct boxes are there for
// a reason of their own, and a lowered ceiling is a ceiling.
func (m *matter) stray(o kitchen.Option) length.Length {
	if o.TakesDown() || m.goesAnyhow() {
		return 0
	}
	return m.standsOver().stray
}

func metres(l length.Length) money.Quantity {
	return money.Quantity(money.Amount(l).Share(int64(money.One), int64(length.Metre)))
}

// isStray reports whether an overhead of this kind looks lost over nothing.
func isStray(o *survey.Overhead) bool { return o.Kind == survey.Soffit || o.Kind == survey.ClosedGap }
