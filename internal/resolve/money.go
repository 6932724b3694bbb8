package resolve

import (
	"math/big"

	"railhead/api"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/money"
)

// litreInCents is what a litre of storage is worth where nobody says, in hundredths of a euro: a cabinet of 150 l is then
// worth 60 euros (from memory).
const litreInCents = 40

// readMoney reads the currency, the rates, and what things are worth.
func (b *body) readMoney() {
	in := b.req.Money
	if in == nil {
		in = &api.Money{}
	}
	prices := &b.kitchen.Prices
	b.readCurrency(in)
	b.readRates(in)
	b.readFigures(in.Figures)
	prices.Worth = kitchen.Worth{
		Litre:     b.litre(in),
		ToCeiling: b.worth(in.ToCeilingWorth, "/money/to_ceiling_worth"),
		EvenLine:  b.worth(in.EvenLineWorth, "/money/even_line_worth"),
	}
	if in.ShorterCabinet.Given() {
		shorter := b.worth(in.ShorterCabinet, "/money/shorter_cabinet")
		prices.Worth.Shorter = &shorter
	}
}

// worth reads what something is worth: nothing, where nobody says.
func (b *body) worth(in api.Amount, pointer string) kitchen.Worthy {
	amount, _ := b.money(in, pointer)
	return kitchen.Worthy{Amount: amount, Pointer: pointer}
}

func (b *body) litre(in *api.Money) kitchen.Worthy {
	const pointer = "/money/storage_per_litre"
	if in.StoragePerLitre.Given() {
		return b.worth(in.StoragePerLitre, pointer)
	}
	usual := b.kitchen.Prices.PerEuro.Share(litreInCents, 100)
	b.suppose("assume.money.litre", usual.Decimal(), pointer)
	return kitchen.Worthy{Amount: usual, Pointer: pointer}
}

// money reads an amount of money; false where it is refused or absent.
func (b *body) money(in api.Amount, pointer string) (money.Amount, bool) {
	value, ok := b.placed(in, pointer, moneyPlaces)
	if !ok {
		return 0, false
	}
	return rounded(value), true
}

// rounded is a number within the bounds of an amount, rounded to the last place that is kept.
func rounded(value *big.Rat) money.Amount {
	amount, _ := money.FromRat(value)
	return amount
}

// suppose names a value of money that nobody gave, once. Only what is done about overheads is weighed in money, and what
// is proposed for the walls.
func (b *body) suppose(code, value, override string) {
	if (len(b.ids.groups) > 0 || b.fill != nil) && b.first(code) {
		b.out.Assumptions = append(b.out.Assumptions, finding.Assumption{
			Code: code, Value: finding.Word("value", value), Override: override,
		})
	}
}
