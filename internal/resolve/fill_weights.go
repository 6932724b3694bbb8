package resolve

import (
	"railhead/api"
	"railhead/internal/cabinet"
	"railhead/internal/money"
	"railhead/internal/survey"
)

// weight is what one thing along a run is worth.
type weight struct {
	name  string // of the member, and of the assumption
	in    api.Amount
	out   *money.Amount
	cents int64 // where nobody says: hundredths of a euro (from memory)
	bears bool  // something that is proposed may rest on it
}

// fillWeights reads what things along a run are worth. Those that nobody gives and that something rests on are named. A
// side that shows costs something whether a panel closes it or it is finished.
func (b *body) fillWeights() {
	var in api.FillWeights
	if b.fill.Weights != nil {
		in = *b.fill.Weights
	}
	out, asks := &b.filling.Weights, b.filling.Asks
	for _, w := range []weight{
		{"cabinet", in.Cabinet, &out.Cabinet, 4000, true},
		{"filler", in.Filler, &out.Filler, 1500, true},
		{"filler_per_mm", in.FillerPerMm, &out.FillerPerMM, 30, true},
		{"open_per_mm", in.OpenPerMm, &out.OpenPerMM, 10, true},
		{"panel", in.Panel, &out.Panel, 3000, true},
		{"height_change", in.HeightChange, &out.HeightChange, 1500, true},
		{"base_line_miss", in.BaseLineMiss, &out.BaseLineMiss, 1000, asks(cabinet.Wall)},
		{"symmetry", in.Symmetry, &out.Symmetry, 2000, asks(cabinet.Wall)},
		{"duct_pair", in.DuctPair, &out.DuctPair, 10000, asks(cabinet.Wall) && b.ductBoxes()},
		{"counter_per_mm", in.CounterPerMm, &out.CounterPerMM, 15, asks(cabinet.Base)},
	} {
		b.fillWeight(w)
	}
}

func (b *body) fillWeight(w weight) {
	pointer := "/fill/weights/" + w.name
	if w.in.Given() {
		*w.out, _ = b.money(w.in, pointer)
		if !w.bears {
			b.idle(pointer)
		}
		return
	}
	*w.out = b.kitchen.Prices.PerEuro.Share(w.cents, 100)
	if w.bears {
		b.suppose("assume.fill."+w.name, w.out.Decimal(), pointer)
	}
}

// ductBoxes reports whether there is a duct box anywhere.
func (b *body) ductBoxes() bool {
	for w := range b.walls {
		for i := range b.walls[w].overheads {
			if b.walls[w].overheads[i].Kind == survey.DuctBox {
				return true
			}
		}
	}
	return false
}
