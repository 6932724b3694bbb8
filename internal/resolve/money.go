package resolve

import (
	"maps"
	"slices"

	"railhead/api"
	"railhead/internal/kitchen"
	"railhead/internal/money"
)

// readMoney reads what things are worth. Only whether going to the ceiling is worth anything is used so far; the rest is
// checked, and listed as not assessed.
func (b *body) readMoney() {
	in := b.req.Money
	if in == nil {
		return
	}
	b.amount(in.StoragePerLitre, "/money/storage_per_litre")
	b.amount(in.Probe, "/money/probe")
	if worth, ok := b.amount(in.ToCeilingWorth, "/money/to_ceiling_worth"); ok {
		amount, inRange := money.FromRat(worth)
		if !inRange {
			b.fault("money.amount.too_large", "/money/to_ceiling_worth")
		}
		b.kitchen.Prices.Worth.ToCeiling = kitchen.Worthy{Amount: amount, Pointer: "/money/to_ceiling_worth"}
	}
	for _, code := range slices.Sorted(maps.Keys(in.Rates)) {
		rate := in.Rates[code]
		b.checkRate(&rate, member("/money/rates", code))
	}
}

// checkRate checks one rate and the order of its spread.
func (b *body) checkRate(in *api.Rate, pointer string) {
	if in.Bare {
		b.amount(in.Likely, pointer)
		return
	}
	if !in.Likely.Given() {
		b.fault("request.member.missing", pointer+"/likely")
	}
	low, lowOK := b.amount(in.Low, pointer+"/low")
	likely, likelyOK := b.amount(in.Likely, pointer+"/likely")
	high, highOK := b.amount(in.High, pointer+"/high")
	b.amount(in.TaxPercent, pointer+"/tax_percent")
	if lowOK && likelyOK && low.Cmp(likely) > 0 {
		b.fault("money.rate.out_of_order", pointer+"/low")
	}
	if highOK && likelyOK && high.Cmp(likely) < 0 {
		b.fault("money.rate.out_of_order", pointer+"/high")
	}
}
