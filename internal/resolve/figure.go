package resolve

import (
	"maps"
	"slices"

	"railhead/api"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/money"
)

// readFigures reads the figures that the request gives in place of assumed ones.
func (b *body) readFigures(in map[string]api.Amount) {
	given := kitchen.Figures{}
	for _, name := range slices.Sorted(maps.Keys(in)) {
		pointer := member("/money/figures", name)
		value, ok := b.placed(in[name], pointer, quantityPlaces)
		f, known := kitchen.FigureOf(name)
		switch least, most := f.Range(); {
		case !known:
			b.fault("money.figure.unknown", pointer)
		case ok:
			q, _ := money.QuantityFromRat(value) // amounts are bounded where they are read
			if q < least || q > most {
				b.fault("money.figure.out_of_range", pointer, finding.Word("least", least.Decimal()), finding.Word("most", most.Decimal()), finding.Word("unit", f.Unit()))
				continue
			}
			given[f] = q
		}
	}
	b.kitchen.Prices.Figures = given
}
