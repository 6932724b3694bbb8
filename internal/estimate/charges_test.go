package estimate

import (
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/belief"
	"railhead/internal/money"
	"railhead/internal/takeoff"
)

func find(lines []Line, code string) (Line, bool) {
	for _, l := range lines {
		if l.RateCode == code {
			return l, true
		}
	}
	return Line{}, false
}

// callFor calls trades for sure, with the labour of some lines.
func callFor(lines []Line, trades ...Trade) [Trades]Call {
	var calls [Trades]Call
	for _, t := range trades {
		calls[t].Chance = belief.Certain
	}
	for i := range lines {
		if l := &lines[i]; l.hourly() {
			calls[l.Trade].Labour = calls[l.Trade].Labour.Plus(l.Mean)
		}
	}
	return calls
}

// By hand: 1 m² of paint takes 0.2 h at 48 EUR/h, 9.60 EUR; a painter comes for 95
// at least and charges 40 for coming: 85.40 on top, and 40.
func TestAPainterForOneSquareMetre(t *testing.T) {
	b := euros()
	lines := b.Price("s", []takeoff.Item{{Work: takeoff.Paint, Quantity: money.One}})
	shared := b.Shared(callFor(lines, Painter, Site), lines)
	if call, ok := find(shared, "call_out.painter"); !ok || call.Spread != units(25, 40, 70) || call.Group != "" || call.Code != "work.call_out" {
		t.Errorf("call-out: %+v", call)
	}
	least, ok := find(shared, "minimum.painter")
	if !ok || least.Spread.Likely != amount(t, "85.4") || least.Code != "work.minimum" {
		t.Errorf("minimum: %+v", least)
	}
	if sum, want := least.Mean.Plus(lines[0].Mean), b.Rate("minimum.painter").Mean(); sum != want {
		t.Errorf("with its minimum it comes to %s, not to %s", sum.Decimal(), want.Decimal())
	}
	if site, ok := find(shared, "setup.site"); !ok || site.Code != "work.setup" || site.Trade != Site {
		t.Errorf("setting up: %+v", site)
	}
	if len(shared) != 3 {
		t.Errorf("%d lines: %+v", len(shared), shared)
	}
}

func TestTwoSmallJobsShareOneMinimum(t *testing.T) {
	b := euros()
	one := b.Price("s", []takeoff.Item{{Work: takeoff.Paint, Quantity: 4 * money.One}})
	two := append(one[:len(one):len(one)], b.Price("t", []takeoff.Item{{Work: takeoff.Paint, Quantity: 4 * money.One}})...)
	alone, _ := find(b.Shared(callFor(one, Painter), one), "minimum.painter")
	both, ok := find(b.Shared(callFor(two, Painter), two), "minimum.painter")
	if hours := one[0].Mean; !ok || alone.Mean.Minus(both.Mean) != hours {
		t.Errorf("one job falls %s short, two %s; the hours of one are %s", alone.Mean.Decimal(), both.Mean.Decimal(), hours.Decimal())
	}
}

func TestAMinimumWithoutASpreadStaysWithinItsHours(t *testing.T) {
	b := euros().With("minimum.painter", known(amount(t, "110")))
	lines := b.Price("s", []takeoff.Item{{Work: takeoff.Paint, Quantity: 5 * money.One}}) // 22.8 / 48 / 108.5
	least, _ := find(b.Shared(callFor(lines, Painter), lines), "minimum.painter")
	if want := (money.Spread{Low: amount(t, "1.5"), Likely: amount(t, "62"), High: amount(t, "87.2")}); least.Spread != want {
		t.Errorf("%+v, want %+v", least.Spread, want)
	}
}

// With its shared lines a trade is expected to come to C·call-out + what its counted
// labour falls short of C·minimum.
func TestATradeComesToItsCallOutAndItsHoursOrItsMinimum(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := someBook(t)
		lines := b.Price("s", someItems(t))
		calls := someCalls(t)
		shared := b.Shared(calls, lines)
		for trade := range Trades {
			var all money.Amount
			for _, l := range shared {
				if l.Trade == trade {
					all = all.Plus(l.Mean)
				}
			}
			callOut, minimum := b.Charges(trade)
			call := calls[trade]
			want := call.Chance.Of(callOut.Mean()).Plus(max(0, call.Chance.Of(minimum.Mean()).Minus(call.Labour)))
			if call.Chance == 0 {
				want = 0
			}
			if all != want {
				t.Fatalf("%s: %s, want %s", trade, all.Decimal(), want.Decimal())
			}
		}
	})
}
