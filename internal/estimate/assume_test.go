package estimate

import (
	"testing"

	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/money"
	"railhead/internal/takeoff"
)

func TestBuiltInRatesInUseAreAssumed(t *testing.T) {
	b := NewBook(kitchen.Prices{Currency: euro, PerEuro: money.Unit, Rates: map[string]kitchen.Rate{
		"wage.painter": {Spread: known(amount(t, "50")), Pointer: "/money/rates/wage.painter"},
	}})
	lines := b.Price("s", []takeoff.Item{{Work: takeoff.Paint, Quantity: money.One}, {Work: takeoff.Paint, Quantity: money.One}})
	got := b.Assumptions(lines, "worth.open_gap")
	want := []finding.Assumption{
		{Code: "hours.paint", Value: finding.Word("value", "0.12 / 0.2 / 0.35 h/m2"), Override: "/money/rates/hours.paint"},
		{Code: "material.paint", Value: finding.Word("value", "1.2 / 2 / 3.5 EUR/m2"), Override: "/money/rates/material.paint"},
		{Code: "worth.open_gap", Value: finding.Word("value", "80 / 120 / 200 EUR/m"), Override: "/money/rates/worth.open_gap"},
	}
	if len(got) != len(want) {
		t.Fatalf("%+v", got)
	}
	for i := range want {
		if got[i] != want[i] {
			t.Errorf("%+v, want %+v", got[i], want[i])
		}
	}
}

func TestHoursByTrade(t *testing.T) {
	b := euros()
	lines := b.Price("s", []takeoff.Item{{Work: takeoff.Paint, Quantity: 10 * money.One}, {Work: takeoff.BoardOn, Quantity: 2 * money.One}})
	lines = append(lines, b.PriceAt("s", []takeoff.Item{{Work: takeoff.Paint, Quantity: money.One}}, Event{Chance: percent(10)})...)
	if got := Hours(lines); got[Painter] != 2000 || got[Drywaller] != 1800 || got[Helper] != 0 {
		t.Errorf("%v", got)
	}
}
