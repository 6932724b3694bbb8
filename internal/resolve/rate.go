package resolve

import (
	"maps"
	"math/big"
	"slices"
	"strconv"
	"strings"

	"railhead/api"
	"railhead/internal/estimate"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/money"
)

// Rates that have a member of their own beside the list of rates.
const (
	probeRate     = "material.probe"
	remeasureRate = "material.remeasure"
)

// mostHours is more than one unit of any work takes anybody.
const mostHours = 1000

// readRates reads the rates that replace built-in ones, in order of code.
func (b *body) readRates(in *api.Money) {
	rates := map[string]kitchen.Rate{}
	for _, code := range slices.Sorted(maps.Keys(in.Rates)) {
		rate, pointer := in.Rates[code], member("/money/rates", code)
		if !estimate.IsCode(code) {
			b.fault("money.rate.unknown", pointer)
		}
		rates[code] = b.rate(&rate, pointer)
		if strings.HasPrefix(code, "hours.") && rates[code].High > mostHours*money.Unit {
			b.fault("money.rate.too_many_hours", pointer, finding.Word("most", strconv.Itoa(mostHours)))
		}
	}
	b.ownRate(rates, in.Probe, probeRate, "/money/probe")
	b.ownRate(rates, in.Remeasure, remeasureRate, "/money/remeasure")
	b.kitchen.Prices.Rates = rates
}

// ownRate reads a rate from its own member, which says it once.
func (b *body) ownRate(rates map[string]kitchen.Rate, in api.Amount, code, pointer string) {
	if !in.Given() {
		return
	}
	if _, twice := rates[code]; twice {
		b.fault("money.rate.twice", pointer, finding.Word("code", code))
	}
	rates[code] = b.rate(&api.Rate{Likely: in, Bare: true}, pointer)
}

// rate reads a single amount, or a spread: what it most likely comes to stands for the least and the most where those
// are left out. It is money for each unit of the work, or hours.
func (b *body) rate(in *api.Rate, pointer string) kitchen.Rate {
	if in.Bare {
		likely, _ := b.money(in.Likely, pointer)
		return kitchen.Rate{Spread: money.Spread{Low: likely, Likely: likely, High: likely}, Pointer: pointer}
	}
	if !in.Likely.Given() {
		b.fault("body.member.missing", pointer+"/likely")
	}
	low, lowOK := b.placed(in.Low, pointer+"/low", moneyPlaces)
	likely, likelyOK := b.placed(in.Likely, pointer+"/likely", moneyPlaces)
	high, highOK := b.placed(in.High, pointer+"/high", moneyPlaces)
	b.ascending(low, likely, lowOK && likelyOK, pointer+"/low")
	b.ascending(likely, high, likelyOK && highOK, pointer+"/high")
	if !likelyOK {
		b.ascending(low, high, lowOK && highOK, pointer+"/high")
	}
	out := kitchen.Rate{Pointer: pointer}
	out.Likely = roundedOr(likely, likelyOK, 0)
	out.Low = roundedOr(low, lowOK, out.Likely)
	out.High = roundedOr(high, highOK, out.Likely)
	if in.TaxPercent.Given() && untaxed(pointer) {
		b.fault("money.rate.no_tax", pointer+"/tax_percent")
	}
	if tax, ok := b.placed(in.TaxPercent, pointer+"/tax_percent", quantityPlaces); ok {
		if out.Tax, _ = money.QuantityFromRat(tax); out.Tax > 100*money.One {
			b.fault("money.rate.tax_too_high", pointer+"/tax_percent")
		}
		out.TaxSet = true
	}
	return out
}

// untaxed reports whether a rate is of hours, or of what something is worth.
func untaxed(pointer string) bool {
	code := strings.TrimPrefix(pointer, "/money/rates/")
	return strings.HasPrefix(code, "hours.") || strings.HasPrefix(code, "worth.")
}

// ascending refuses a spread that does not go up; at is the outer one of the two.
func (b *body) ascending(less, more *big.Rat, read bool, at string) {
	if read && less.Cmp(more) > 0 {
		b.fault("money.rate.out_of_order", at)
	}
}

func roundedOr(value *big.Rat, read bool, otherwise money.Amount) money.Amount {
	if !read {
		return otherwise
	}
	return rounded(value)
}
